# METADATA
# title: PV conductors without a device bear what a fault sends through them
# description: A string's or array's conductor without a device of its own carries, in a fault, what the others and the controller feed into it, until the sun goes down.
# custom:
#   grade: fix
#   each: cable_runs
#   source: IEC 62548-1 6.3, conductors of strings and arrays (from memory); IEC 60364-7-712 712.433, (n - 1) x ISC MAX
#   cites: [iec_62548_1_memory, iec_60364_7_712, iec_60364_5_52]
#   remedy: use a larger conductor, or put a device in it
package codebooks.iec.pv_fault_current

import data.codebooks.iec.shared

check contains {"about": r.id, "is": fact.largest([shared.design_current(r), fed_string(s, r)]), "at_most": shared.capacity(r)} if {
	some r in input.cable_runs
	some s in r.strings
	count(r.protections) == 0
}

check contains {"about": r.id, "is": fact.largest([shared.design_current(r), fed_array(a, r)]), "at_most": shared.capacity(r)} if {
	some r in input.cable_runs
	some a in r.arrays
	count(r.protections) == 0
}

check contains {"about": r.id, "does_not_apply": "it has a device of its own, or is on the bank's side"} if {
	some r in input.cable_runs
	not bare(r)
}

bare(r) if {
	shared.on_pv(r)
	count(r.protections) == 0
}

# What the others give in bright sun and the controller feeds back; but no more
# than the array's device lets pass and a string gives. 712 knows the first alone.
fed_string(s, r) := fact.either(
	fact.one_of(input.params.string_fuse_school, ["hd_712"]), others(s, r),
	fact.smallest([others(s, r), fact.plus([shared.design_current(r), f.rating])]),
) if some f in s.array.protections

fed_string(s, r) := others(s, r) if count(s.array.protections) == 0

others(s, r) := fact.plus([
	s.fault_current,
	fact.times([fact.minus(input.params.ki, 1), fact.minus(s.pv_input.isc_stc, r.current)]),
])

fed_array(a, r) := fact.plus([
	fact.times([input.params.ki, fact.minus(a.pv_input.isc_stc, r.current)]),
	a.charger.controller.pv_backfeed_max,
])
