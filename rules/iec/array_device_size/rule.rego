# METADATA
# title: Array devices between 1.25 and 2.4 times the strings' current
# description: A sum of strings sees no local over-irradiance, so 1.25 is enough where one string takes 1.5; above 2.4 a fault that the bank feeds lasts too long. Where the bank cannot feed back the upper end falls away.
# custom:
#   grade: fix
#   each: protections
#   source: IEC 62548-1 6.3, sub-array and array devices (from memory)
#   cites: [iec_62548_1_memory]
#   remedy: choose the rating between the two limits
package codebooks.iec.array_device_size

check contains {"about": p.id, "which": "least", "is": p.rating, "at_least": fact.times([input.params.ki, p.current])} if {
	some p in input.protections
	count(p.arrays) > 0
}

# Without a bank behind it that can feed back no device is due, and one that is
# there serves as a switch: what its conductors bear is judged by itself.
check contains {
	"about": p.id, "which": "most", "when": fed_back(a), "otherwise": "the bank cannot feed back: the device serves as a switch",
	"is": p.rating, "at_most": fact.times([2.4, p.current]),
} if {
	some p in input.protections
	some a in p.arrays
}

check contains {"about": p.id, "does_not_apply": "it stands in no array"} if {
	some p in input.protections
	count(p.arrays) == 0
}

fed_back(a) := fact.any([fact.one_of(a.charger.controller.kind, ["pwm"]), fact.more_than(a.charger.controller.pv_backfeed_max, fact.number(0, "A"))])
