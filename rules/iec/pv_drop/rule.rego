# METADATA
# title: Drop between panels and controller small
# description: Volts lost between panels and controller do not charge.
# custom:
#   grade: advise
#   each: cable_runs
#   source: IEC 60364-5-52 525; 3 % on the PV side as IEC 62548-1 7.4 recommends (from memory)
#   cites: [iec_60364_5_52, iec_62548_1_memory]
#   remedy: use thicker or shorter cable, or more panels in series
package codebooks.iec.pv_drop

import data.codebooks.iec.shared

check contains {"about": r.id, "is": r.path_drop, "at_most": input.params.pv_drop_max} if {
	some r in input.cable_runs
	shared.on_pv(r)
}

check contains {"about": r.id, "does_not_apply": "it is no conductor of the array"} if {
	some r in input.cable_runs
	not shared.on_pv(r)
}
