# What several rules of this book share: by which standard a vehicle is built,
# and the gas of its lead batteries.
package codebooks.vehicle.shared

vehicle(site) := fact.one_of(site.place, ["vehicle"])

by_en_1648(site) := fact.all([vehicle(site), fact.one_of(site.declared.standard, ["en_1648"])])

by_as_nzs_3001(site) := fact.all([vehicle(site), fact.one_of(site.declared.standard, ["as_nzs_3001"])])

by_nec_552(site) := fact.all([vehicle(site), fact.one_of(site.declared.standard, ["nec_552"])])

by_rvia_lv(site) := fact.all([vehicle(site), fact.one_of(site.declared.standard, ["rvia_lv"])])

lead(battery) := fact.one_of(battery.chemistry, ["flooded", "agm", "gel"])

lithium(battery) := fact.one_of(battery.chemistry, ["lifepo4", "nmc"])

# A device that stands in each parallel string of a bank, not in its main.
in_each(p) if {
	startswith(p.id, "protection.bank.")
	endswith(trim_prefix(p.id, "protection.bank."), ".each")
}

# On the AC side: what hangs on an inverter's output.
on_ac(x) if {
	some l in x.loads
	count(l.ac_outputs) > 0
}

# What charges a bank, and at which voltage a cell.
sources(b) := array.concat([c.id | some c in input.chargers; c.bank.id == b.id], [e.id | some e in input.charge_sources; e.bank.id == b.id])

highest(b) := fact.largest(array.concat(
	[c.absorption_per_cell | some c in input.chargers; c.bank.id == b.id],
	[fact.ratio(e.charge_voltage, b.cells_in_series) | some e in input.charge_sources; e.bank.id == b.id],
))

# Current that makes gas, mA for each Ah, up to 2.40 V a cell; beyond that its maker's.
gas(b) := fact.either(
	fact.any(array.concat([fact.more_than(highest(b), fact.number(2.4, "V"))], [c.settings.equalize | some c in input.chargers; c.bank.id == b.id])),
	fact.times([fact.number(10, ""), fact.ratio(b.declared.gas_current, fact.number(1, "A"))]),
	fact.lookup("gas_current", [b.battery.chemistry]),
)

# 28 cm2 for each m3/h, of which each ampere that makes gas needs 0.05 in each cell.
opening(b) := fact.times([fact.number(1.4, "cm2"), b.cells_in_series, gas(b), fact.ratio(b.capacity, fact.number(1000, "Ah"))])
