# METADATA
# title: Surge protection bears the array's maximum voltage
# description: Surge protection for less than the coldest morning's voltage conducts without a surge, and burns.
# custom:
#   grade: fix
#   each: arrays
#   source: IEC 60364-7-712 712.443 (UCPV at least UOC MAX, from memory)
#   cites: [iec_60364_7_712_memory]
#   remedy: choose surge protection for direct current with a higher UCPV
package codebooks.iec.surge_voltage

check contains {
	"about": a.id, "when": input.grounding.surge_protection, "otherwise": "no surge protection is fitted",
	"is": a.pv_input.voc_cold, "at_most": a.declared.spd_ucpv,
} if some a in input.arrays
