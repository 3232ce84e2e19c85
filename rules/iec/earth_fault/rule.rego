# METADATA
# title: Earth faults are found above 120 V
# description: Up to 120 V of direct current separate sources count as extra-low voltage. Above it the full measures of low voltage are due, and a first fault to earth must be found before a second one burns.
# custom:
#   grade: fix
#   each: pv_inputs
#   source: IEC 60364-7-712 712.414 (limit of 120 V as the vocabulary to IEC 62257-7-1 gives it; its use here from memory) and IEC 62548-1 6.4
#   cites: [iec_60364_7_712_memory, iec_62548_1_memory]
#   remedy: fit detection of earth faults on the DC side, or stay within 120 V
package codebooks.iec.earth_fault

check contains {
	"about": i.id, "when": fact.more_than(i.voc_cold, fact.number(120, "V")), "otherwise": "extra-low voltage",
	"is_true": input.grounding.ground_fault_protection, "because": "no protection against faults to earth is fitted",
} if some i in input.pv_inputs
