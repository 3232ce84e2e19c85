# METADATA
# title: Fuses on the PV side are of class gPV
# description: The faults of an array are small and of direct current. A fuse of another class may glow for minutes where one of class gPV breaks.
# custom:
#   grade: fix
#   each: protections
#   source: IEC 60269-6 and IEC 62548-1 7.3
#   cites: [iec_60269_6, iec_62548_1_memory]
#   remedy: use fuses of class gPV
package codebooks.iec.string_fuse_class

import data.codebooks.iec.shared

check contains {
	"about": p.id, "when": fact.one_of(p.kind, ["fuse"]), "otherwise": "a breaker",
	"is_true": fact.one_of(p.class, ["gPV"]), "because": "its class is not gPV",
} if {
	some p in input.protections
	shared.on_pv(p)
}

check contains {"about": p.id, "does_not_apply": "it is not on the PV side"} if {
	some p in input.protections
	not shared.on_pv(p)
}
