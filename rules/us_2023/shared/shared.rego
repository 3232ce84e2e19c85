# What several rules of this book share: where the code applies, the voltage and
# the maximum current of a circuit, and what its conductors carry.
package codebooks.us_2023.shared

# The code does not cover watercraft (90.2(B), from memory). A word is a fact, so
# every rule asks this in its `when`.
on_land(site) := fact.no(fact.one_of(site.place, ["boat"]))

# The bank's side of a vehicle is not under the articles of this book either.
premises(site) := fact.one_of(site.place, ["building", "ground"])

# Where the code covers a circuit: the PV side of everything on land, the rest on
# premises.
covered(x, site) := on_land(site) if on_pv(x)

covered(x, site) := premises(site) if not on_pv(x)

# On the PV side: in a string or an array.
on_pv(x) if count(array.concat(x.strings, x.arrays)) > 0

# A device that stands in each parallel string of a bank, not in its main. Any
# block may be named "each", a bank too, so the end of the id alone does not tell.
in_each(p) if {
	startswith(p.id, "protection.bank.")
	endswith(trim_prefix(p.id, "protection.bank."), ".each")
}

# The runs beside something, as they stand at the top: nested ones have no links.
runs_beside(x, cable_runs) := [r | some r in cable_runs; r.id in {n.id | some n in x.cable_runs}]

# On the AC side: what hangs on an inverter's output.
on_ac(x) if {
	some l in x.loads
	count(l.ac_outputs) > 0
}

# 690.7(A): by the panels' coefficients where their data sheets give them all, else
# by Table 690.7(A), which is for crystalline silicon and ends at -40 degC.
by_table(s) := fact.all([
	fact.no(s.temp_voc_given),
	fact.all([fact.one_of(p.technology, ["mono_si", "poly_si"]) | some p in s.panels]),
	fact.at_least(s.pv_input.cell_cold, fact.number(-40, "degC")),
])

table_voltage(s) := fact.times([s.voc_stc, fact.lookup("cold_690_7_a", [s.pv_input.cell_cold])])

# A string's maximum voltage.
string_voltage(s) := fact.either(by_table(s), table_voltage(s), s.voc_cold)

# An input's: 690.7 makes it the voltage for every later limit.
input_voltage(i, strings) := fact.largest([string_voltage(s) | some s in strings; s.pv_input.id == i.id])

# The controller input of what stands on the PV side.
inputs(x) := array.concat([s.pv_input | some s in x.strings], [a.pv_input | some a in x.arrays])

circuit_voltage(x, strings) := fact.largest([input_voltage(i, strings) | some i in inputs(x)]) if on_pv(x)

circuit_voltage(x, _) := x.bus_voltage if not on_pv(x)

# 690.8(A)(1): 1.25 times the short-circuit current. Elsewhere the equipment's own.
maximum_current(x) := fact.times([1.25, x.current]) if on_pv(x)

maximum_current(x) := x.current if not on_pv(x)

# 690.8(B)(1), 690.9(B), 210.19, 210.20: a quarter more for continuous duty.
continuous_current(x) := fact.times([1.25, maximum_current(x)])

# The larger of what a circuit's dc makes dangerous: above 30 V, or above 8 A.
above_30_v_or_8_a(i, strings) := fact.any([
	fact.more_than(input_voltage(i, strings), fact.number(30, "V")),
	fact.more_than(fact.times([1.25, i.isc_stc]), fact.number(8, "A")),
])

# A size to look up. Printed areas are rounded (10 AWG is 5.26 mm2, exactly 5.2612):
# half a percent of slack, where sizes are a quarter apart. Metric sizes take the
# row whose area is not larger: 4 mm2 that of 12 AWG.
size(r) := fact.times([r.area, 1.005])

# 310.3(A) and Table 310.16, which begins there too.
smallest_size(r) := fact.lookup("smallest_310_3", [r.material])

in_tables(r) := fact.all([fact.at_least(size(r), smallest_size(r)), fact.at_least(r.insulation, fact.number(60, "degC"))])

# The column of an insulation: 60, 75 or 90 degC; hotter insulation reads the last.
column(r) := fact.lookup("column_310_16", [r.insulation])

# Ampacity before corrections, of one conductor: Table 310.17 for single conductors
# in free air, Table 310.16 for all others; none outside the tables.
uncorrected(r) := fact.either(in_tables(r),
	fact.either(in_free_air(r),
		fact.lookup("ampacity_310_17", [r.material, column(r), size(r)]),
		fact.lookup("ampacity_310_16", [r.material, column(r), size(r)])),
	fact.number(0, "A"))

in_free_air(r) := fact.all([fact.one_of(r.method, ["free_air"]), fact.one_of(r.cores, ["single"])])

# 110.14(C): Table 310.16 at the temperature of the terminals, or of the insulation
# where that is less, even for a run in free air.
at_terminals(r) := fact.either(fact.all([in_tables(r), fact.at_least(r.terminal_temperature, fact.number(60, "degC"))]),
	fact.lookup("ampacity_310_16", [r.material, fact.lookup("column_310_16", [fact.smallest([r.terminal_temperature, r.insulation])]), size(r)]),
	fact.number(0, "A"))

# 310.15(B)(2): a raceway or cable in the sun less than 19 mm over a roof is 33 K
# hotter, whatever the run says of the rest of its way. XHHW-2 is excepted.
hot_roof(r) := fact.all([
	r.declared.on_roof, fact.more_than(fact.number(19, "mm"), r.above_roof),
	fact.no(fact.one_of(r.declared.cable_type, ["xhhw2"])),
])

surroundings(r) := fact.either(hot_roof(r), fact.plus([r.ambient, fact.number(33, "K")]), r.ambient) if on_pv(r)

surroundings(r) := r.ambient if not on_pv(r)

# 310.15(B)(1). The last row of each column ends 5 K below its temperature; hotter
# there is no ampacity.
ambient_factor(r) := fact.either(fact.more_than(surroundings(r), fact.minus(column(r), fact.number(5, "K"))),
	fact.number(0, ""),
	fact.lookup("ambient_310_15_b_1", [column(r), surroundings(r)]))

# 310.15(C)(1), not for bundles and raceways of up to 600 mm.
grouping_factor(r) := fact.either(fact.at_least(fact.number(600, "mm"), r.length),
	fact.number(1, ""),
	fact.lookup("grouping_310_15_c_1", [r.grouped]))

# Ampacity after corrections, of all conductors of a pole.
corrected(r) := fact.either(in_tables(r), fact.times([uncorrected(r), ambient_factor(r), grouping_factor(r), r.per_pole]), fact.number(0, "A"))

# 240.4(B): the next standard size above the ampacity, up to 800 A; what feeds
# receptacles does not get it, and a load's circuit may be one.
largest_device(p, r) := fact.either(fact.all([fact.more_than(protected(r), fact.number(0, "A")), fact.at_least(fact.number(800, "A"), protected(r))]),
	fact.lookup("standard_240_6", [p.kind, protected(r)]),
	protected(r)) if count(r.loads) == 0

largest_device(_, r) := protected(r) if count(r.loads) > 0

# The ampacity that a device protects: what the terminals allow limits it too, 110.14(C).
protected(r) := fact.smallest([corrected(r), fact.times([at_terminals(r), r.per_pole])])

# Solidly grounded: one pole is joined to ground without a ground-fault device.
solidly_grounded(g) := fact.all([fact.one_of(g.dc, ["negative", "positive"]), fact.no(g.ground_fault_protection)])

# On or in a building, as the design says or as its mounting shows.
on_building(a, site) := fact.any([a.declared.on_building, fact.all([fact.one_of(a.mounting, ["roof_standoff", "roof_flush"]), fact.one_of(site.place, ["building"])])])

# All PV conductors of an array: its own and its strings'.
pv_runs(a, strings) := array.concat(a.cable_runs, [r | some s in strings; s.array.id == a.id; some r in s.cable_runs])

# Whether its circuit goes into a building, wherever the panels stand. The inside
# of a vehicle is none.
enters(a, strings, site) := fact.all([premises(site), fact.any(array.concat([false], [r.indoors | some r in pv_runs(a, strings)]))])

# 690.12 controls circuits on and in buildings. A structure for PV alone is excepted,
# and an open detached one as long as the circuit does not go on into a building.
shutdown_due(a, strings, site) := fact.all([
	on_land(site), fact.no(fact.one_of(site.declared.structure, ["pv_only"])),
	fact.any([enters(a, strings, site), fact.all([on_building(a, site), fact.no(fact.one_of(site.declared.structure, ["open_detached"]))])]),
])

dwelling(site) := fact.one_of(site.declared.occupancy, ["one_two_family"])
