# METADATA
# title: A floating array has its insulation watched
# description: Where no pole is earthed a first fault changes nothing that anybody sees. The resistance to earth is measured before the array is switched on, and too little of it sounds an alarm.
# custom:
#   grade: fix
#   each: grounding
#   source: IEC 62548-1 6.4 (from memory)
#   cites: [iec_62548_1_memory]
#   remedy: fit an insulation monitor, or use a controller that measures before it starts
package codebooks.iec.insulation_monitor

check contains {
	"about": "grounding",
	"when": fact.all([fact.one_of(input.grounding.dc, ["floating"]), fact.more_than(input.system.pv_voltage_max, fact.number(60, "V"))]),
	"otherwise": "a pole is earthed, or the array may be touched",
	"is_true": input.grounding.declared.insulation_monitor, "because": "nothing watches the insulation of the array",
}
