# METADATA
# title: PV voltage within what the place allows
# description: On and in buildings an array stays within low voltage of the usual kind; more is for places that only trained people enter.
# custom:
#   grade: fix
#   each: pv_inputs
#   source: "IEC 62548-1 7.2 (from memory): 1000 V on and in buildings, 1500 V elsewhere"
#   cites: [iec_62548_1_memory]
#   remedy: take panels out of series
package codebooks.iec.voltage_ceiling

check contains {
	"about": i.id, "is": i.voc_cold,
	"at_most": fact.either(fact.one_of(input.site.place, ["ground"]), fact.number(1500, "V"), input.params.building_voltage_max),
} if some i in input.pv_inputs
