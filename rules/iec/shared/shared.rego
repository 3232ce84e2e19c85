# METADATA
# description: What several rules of this book share. What a conductor of copper carries by IEC 60364-5-52 and EN 50618, and where a thing stands.
# custom:
#   equivalent:
#     - mutant: "40 x 1.01"
#       reason: "conductors are counted whole: up to 40.4 is up to 40"
#     - mutant: "2 x 1.01"
#       reason: "conductors are counted whole: up to 2.02 is up to 2"
#     - mutant: "2 x 1.01 #2"
#       reason: "conductors are counted whole: up to 2.02 is up to 2"
#     - mutant: "90 x 1.01 #4"
#       reason: "the table has no row between 90 degC and 90.9: the lower one counts"
#     - mutant: "60 / 1.01 #2"
#       reason: "the table has no row between 59.4 degC and 60: the hotter one counts"
package codebooks.iec.shared

# A device that stands in each parallel string of a bank, not in its main.
in_each(p) if {
	startswith(p.id, "protection.bank.")
	endswith(trim_prefix(p.id, "protection.bank."), ".each")
}

# On the PV side: in a string or an array.
on_pv(x) if count(array.concat(x.strings, x.arrays)) > 0

# What a run must carry: on the PV side ISC MAX = KI x Isc.
design_current(r) := fact.times([input.params.ki, r.current]) if on_pv(r)

design_current(r) := r.current if not on_pv(r)

# What the run carries: by the tables, beyond them by its maker's own figure. In air
# that is hotter than the tables know, that figure counts up to what they give for
# their hottest.
capacity(r) := capacity_at(r, r.ambient)

capacity_at(r, ambient) := fact.times([r.per_pole, fact.either(
	tabulated(r),
	fact.either(too_hot(r, ambient), fact.smallest([tables, r.ampacity]), tables),
	r.ampacity,
)]) if tables := by_table(r, fact.smallest([ambient, hottest_row(r)]))

too_hot(r, ambient) := fact.all([fact.no(fact.one_of(r.method, ["buried", "direct_buried"])), fact.more_than(ambient, hottest_row(r))])

# How it is laid decides which rows count, and these how they came in.
from_memory(r) := fact.any([fact.one_of(r.method, ["insulated_wall", "buried", "direct_buried"]), pv_cable(r)])

# Whether the tables have a row. Those of buried cables know no groups here, and
# none knows aluminum.
tabulated(r) := fact.all([
	fact.one_of(r.material, ["Cu"]),
	fact.at_least(r.area, fact.number(1.5, "mm2")),
	fact.at_least(fact.number(120, "mm2"), r.area),
	fact.at_least(r.insulation, fact.number(70, "degC")),
	fact.at_least(fact.number(40, ""), r.grouped),
	fact.any([
		fact.no(fact.one_of(r.method, ["buried", "direct_buried"])),
		fact.all([fact.at_least(fact.number(2, ""), r.grouped), fact.at_least(fact.number(45, "degC"), r.declared.ground_temperature)]),
	]),
])

hottest_row(r) := fact.either(
	fact.at_least(r.insulation, fact.number(90, "degC")),
	fact.either(fact.all([pv_cable(r), fact.at_least(input.params.pv_conductor_max, fact.number(120, "degC"))]), fact.number(90, "degC"), fact.number(80, "degC")),
	fact.number(60, "degC"),
)

by_table(r, ambient) := fact.either(
	fact.one_of(r.method, ["buried", "direct_buried"]), buried(r),
	fact.either(
		pv_cable(r), fact.times([pv_row(r, ambient), grouping(r)]),
		fact.times([in_air(r), air_factor(r, ambient), grouping(r)]),
	),
)

in_air(r) := fact.either(
	fact.one_of(r.method, ["conduit"]), by_cores(r, "method_b1", "method_b2"),
	fact.either(
		fact.one_of(r.method, ["insulated_wall"]), by_cores(r, "method_a1", "method_a2"),
		fact.either(
			fact.any([fact.one_of(r.method, ["free_air"]), fact.all([fact.one_of(r.method, ["cable_tray"]), r.declared.perforated])]),
			fact.lookup("method_e", [r.insulation, r.area]), on_wall(r),
		),
	),
)

# On a wall, of PVC and of XLPE: they came in on two ways.
on_wall(r) := fact.either(
	fact.at_least(r.insulation, fact.number(90, "degC")),
	fact.lookup("method_c_xlpe", [r.insulation, r.area]), fact.lookup("method_c", [r.insulation, r.area]),
)

by_cores(r, single, multi) := fact.either(
	fact.one_of(r.cores, ["single"]),
	fact.lookup(single, [r.insulation, r.area]), fact.lookup(multi, [r.insulation, r.area]),
)

buried(r) := fact.times([
	fact.either(fact.one_of(r.method, ["buried"]), fact.lookup("method_d1", [r.insulation, r.area]), fact.lookup("method_d2", [r.insulation, r.area])),
	fact.lookup("ambient_ground", [r.insulation, r.declared.ground_temperature]),
])

# Air takes the next hotter row; below the first one, 10 degC, that counts, which is
# on the safe side.
air_factor(r, ambient) := fact.lookup("ambient_air", [r.insulation, ambient])

# Circuits in one layer need less than those that lie in a bunch. One pair alone
# needs nothing.
grouping(r) := fact.either(
	fact.at_least(fact.number(2, ""), r.grouped), fact.number(1, ""),
	fact.either(
		fact.one_of(r.method, ["conduit", "insulated_wall"]), fact.lookup("grouping_bunched", [r.grouped]),
		fact.either(
			r.declared.single_layer,
			fact.either(
				fact.any([fact.one_of(r.method, ["free_air"]), fact.all([fact.one_of(r.method, ["cable_tray"]), r.declared.perforated])]),
				fact.lookup("grouping_perforated", [r.grouped]), fact.lookup("grouping_layer", [r.grouped]),
			),
			fact.lookup("grouping_bunched", [r.grouped]),
		),
	),
)

# Cable for photovoltaic systems, where a table for it is: open to the air.
pv_cable(r) := fact.all([
	fact.at_least(r.insulation, fact.number(120, "degC")),
	fact.one_of(r.method, ["surface", "free_air"]),
]) if on_pv(r)

pv_cable(r) := fact.all([false]) if not on_pv(r)

# The table is for conductors of 120 degC in air of 60 degC, which they bear for
# 20,000 h only. For 90 degC, which they bear for life, its rows shrink with the
# root of what is left between air and conductor: (90 - 60) / (120 - 60).
pv_row(r, ambient) := fact.times([
	fact.lookup("pv_cable", [r.area]),
	fact.either(
		fact.at_least(input.params.pv_conductor_max, fact.number(120, "degC")),
		fact.lookup("pv_ambient", [ambient]),
		fact.times([
			fact.number(0.7071, ""),
			fact.ratio(fact.lookup("ambient_air", [fact.number(90, "degC"), fact.largest([ambient, fact.number(60, "degC")])]), fact.number(0.71, "")),
		]),
	),
])

# Gas of a lead bank, IEC 62485-2: what makes it, in mA for each Ah, and with it
# the air that is due. Beyond the table's 2.40 V a cell and 40 degC its maker's
# figure counts.
lead(b) := fact.one_of(b.battery.chemistry, ["flooded", "agm", "gel"])

sources(b) := array.concat([c.id | some c in input.chargers; c.bank.id == b.id], [e.id | some e in input.charge_sources; e.bank.id == b.id])

highest(b) := fact.largest(array.concat(
	[c.absorption_per_cell | some c in input.chargers; c.bank.id == b.id],
	[fact.ratio(e.charge_voltage, b.cells_in_series) | some e in input.charge_sources; e.bank.id == b.id],
))

beyond(b) := fact.any(array.concat(
	[fact.more_than(highest(b), fact.number(2.4, "V")), fact.more_than(b.hottest, fact.number(40, "degC"))],
	[c.settings.equalize | some c in input.chargers; c.bank.id == b.id],
))

gas(b) := fact.either(
	beyond(b),
	fact.times([fact.number(10, ""), fact.ratio(b.declared.gas_current, fact.number(1, "A"))]),
	fact.lookup("gas_current", [b.battery.chemistry, highest(b)]),
)

# 0.05 m3/h for each ampere that makes gas, in each cell.
air(b) := fact.times([fact.number(0.05, "m3/h"), b.cells_in_series, gas(b), fact.ratio(b.capacity, fact.number(1000, "Ah"))])
