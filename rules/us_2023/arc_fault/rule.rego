# METADATA
# title: PV circuits of 80 V and more have arc-fault protection
# description: A poor contact in a dc circuit burns on as an arc until somebody cuts it. Circuits that neither stand on a building nor go into one, or are on a structure for PV alone, that run all in metal or below ground are excepted. The coldest morning's voltage counts.
# custom:
#   grade: stop
#   each: arrays
#   source: NEC 2023 690.11, 690.7
#   cites: [nec_2023, nec_2023_memory]
#   remedy: use a controller or combiner with a listed PV arc-fault circuit interrupter
package codebooks.us_2023.arc_fault

import data.codebooks.us_2023.shared

check contains {
	"about": a.id, "when": fact.all([shared.on_land(input.site), fact.at_least(shared.input_voltage(a.pv_input, input.strings), fact.number(80, "V"))]),
	"otherwise": "below 80 V, or not under this code",
	"is_true": fact.any([a.declared.arc_fault, excepted(a)]), "because": "no arc-fault circuit interrupter watches the array",
} if some a in input.arrays

excepted(a) := fact.all(array.concat([off_buildings(a)], [enclosed(r) | some r in shared.pv_runs(a, input.strings)])) if count(shared.pv_runs(a, input.strings)) > 0

excepted(a) := fact.any([false]) if count(shared.pv_runs(a, input.strings)) == 0

# Or on a detached structure for PV equipment alone.
off_buildings(a) := fact.any([fact.all([fact.no(shared.on_building(a, input.site)), fact.no(shared.enters(a, input.strings, input.site))]), fact.one_of(input.site.declared.structure, ["pv_only"])])

enclosed(r) := fact.any([fact.one_of(r.declared.raceway, ["metal", "mc_cable"]), fact.one_of(r.method, ["buried", "direct_buried"])])
