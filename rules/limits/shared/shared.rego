# What several rules of this book share. Lists of links hold none or one, so a
# list built from all of them holds what belongs to the one place that a thing
# stands in.
package codebooks.limits.shared

# Chemistries without, and with, a management system of their own.
lead(battery) := fact.one_of(battery.chemistry, ["flooded", "agm", "gel"])

managed(battery) := fact.one_of(battery.chemistry, ["lifepo4", "nmc", "sodium_ion"])

# A device that stands in each parallel string of a bank, not in its main. Any
# block may be named "each", a bank too, so the end of the id alone does not tell.
in_each(p) if {
	startswith(p.id, "protection.bank.")
	endswith(trim_prefix(p.id, "protection.bank."), ".each")
}

# A bank's main protection.
mains(b) := [p | some p in b.protections; not in_each(p)]

# On the AC side: what hangs on an inverter's output.
on_ac(x) if {
	some l in x.loads
	count(l.ac_outputs) > 0
}

# Where the bank itself would feed a fault: not on the PV side, behind a
# converter, a controller's load terminals or an inverter.
bank_feeds(x) if count(array.flatten([x.chargers, x.banks, x.ac_outputs, x.supplies, x.charge_sources])) > 0

bank_feeds(x) if {
	some l in x.loads
	count(l.banks) > 0
}

# What a run or switch must carry for minutes and hours. A circuit on the PV side
# has the short-circuit current of standard light; under bright cloud edges and
# off snow it is a quarter more (IEC 62548-1; isc_max of the inputs has the same).
sustained(x) := fact.times([1.25, x.current]) if on_pv(x)

sustained(x) := x.current if not on_pv(x)

# On the PV side: in a string or an array.
on_pv(x) if count(array.concat(x.strings, x.arrays)) > 0
