# What several rules of this book share: whether it is a boat, by whose standard
# it is built, what feeds a fault where, and what a conductor bears.
package codebooks.marine.shared

boat(site) := fact.one_of(site.place, ["boat"])

# By the standard of this name: "iso", "abyc" or "cfr".
by(standard) := fact.one_of(input.params.standard, [standard])

lead(battery) := fact.one_of(battery.chemistry, ["flooded", "agm", "gel"])

lithium(battery) := fact.one_of(battery.chemistry, ["lifepo4", "nmc"])

# A lithium bank of a size that the standards speak of.
large_lithium(b) := fact.all([
	boat(input.site),
	lithium(b.battery),
	fact.either(by("abyc"), fact.at_least(b.energy, fact.number(600, "Wh")), fact.more_than(b.energy, fact.number(500, "Wh"))),
])

# A device that stands in each parallel string of a bank, not in its main.
in_each(p) if {
	startswith(p.id, "protection.bank.")
	endswith(trim_prefix(p.id, "protection.bank."), ".each")
}

# Where the bank itself would feed a fault.
bank_feeds(x) if count(array.flatten([x.chargers, x.banks, x.ac_outputs, x.supplies, x.charge_sources])) > 0

bank_feeds(x) if {
	some l in x.loads
	count(l.banks) > 0
}

on_pv(x) if count(array.concat(x.strings, x.arrays)) > 0

on_ac(x) if {
	some l in x.loads
	count(l.ac_outputs) > 0
}

# What a run must carry: on the PV side a quarter more than the data sheet's
# short-circuit current, for bright sun.
needed(r) := fact.times([1.25, r.current]) if on_pv(r)

needed(r) := r.current if not on_pv(r)

# What it bears: by the tables, beyond them by its maker's own figure. In air that is
# hotter than the tables know, that figure counts up to what they give for their
# hottest.
capacity(r) := fact.times([r.per_pole, fact.either(
	tabulated(r),
	fact.either(fact.at_least(fact.number(50, "degC"), r.ambient), by_table(r), fact.smallest([by_table(r), r.ampacity])),
	r.ampacity,
)])

tabulated(r) := fact.all([
	fact.one_of(r.material, ["Cu"]),
	fact.at_least(r.area, fact.either(by("iso"), fact.number(0.75, "mm2"), fact.number(0.82, "mm2"))),
	fact.at_least(fact.either(by("iso"), fact.number(150, "mm2"), fact.number(120, "mm2")), r.area),
	fact.at_least(r.insulation, fact.number(60, "degC")),
	fact.no(fact.all([by("iso"), hot(r), fact.more_than(fact.number(70, "degC"), r.insulation)])),
])

hot(r) := fact.any([r.engine_space, fact.more_than(r.ambient, fact.number(30, "degC"))])

by_table(r) := fact.either(
	by("iso"),
	fact.times([
		fact.lookup("conductor_iso", [r.insulation, r.area]),
		fact.either(hot(r), fact.lookup("engine_space_iso", [r.insulation]), fact.number(1, "")),
		fact.either(bundled(r), fact.lookup("bundle_iso", [r.grouped]), fact.number(1, "")),
	]),
	fact.times([
		fact.lookup("conductor_cfr", [r.insulation, r.area]),
		fact.either(hot(r), fact.lookup("engine_space_cfr", [r.insulation]), fact.number(1, "")),
		fact.either(bundled(r), fact.lookup("bundle_cfr", [r.grouped]), fact.number(1, "")),
	]),
)

# Whether bundles count below 50 V the schools do not agree on.
bundled(r) := fact.any([input.params.bundle_below_50v, fact.at_least(r.bus_voltage, fact.number(50, "V"))])
