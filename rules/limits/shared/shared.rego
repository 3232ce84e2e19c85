# What several rules of this book share. Lists of links hold none or one, so a
# list built from all of them holds what belongs to the one place that a thing
# stands in.
package codebooks.limits.shared

# Chemistries without, and with, a management system of their own.
lead(battery) := fact.one_of(battery.chemistry, ["flooded", "agm", "gel"])

managed(battery) := fact.one_of(battery.chemistry, ["lifepo4", "nmc", "sodium_ion"])

# A device that stands in each parallel string of a bank, not in its main.
in_each(p) if endswith(p.id, ".each")

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
