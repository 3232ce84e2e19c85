# METADATA
# title: Every part on the PV side bears the array's maximum voltage
# description: The maximum voltage of an array is its open-circuit voltage at the lowest temperature that is expected. Every part that it reaches, not the controller alone, is rated for it.
# custom:
#   grade: stop
#   each: pv_inputs
#   source: IEC 62548-1 7.2, voltage corrected by the maker's coefficient
#   cites: [iec_62548_1]
#   remedy: take panels out of series, or choose parts for a higher voltage
package codebooks.iec.array_voltage

check contains {"about": i.id, "which": "controller", "is": i.voc_cold, "at_most": i.controller.pv_voltage_max} if some i in input.pv_inputs

check contains {"about": i.id, "which": concat(" ", ["panels of", s.id]), "is": i.voc_cold, "at_most": s.system_voltage_max} if {
	some i in input.pv_inputs
	some s in input.strings
	s.pv_input.id == i.id
}

check contains {"about": i.id, "which": part.id, "is": i.voc_cold, "at_most": part.voltage} if {
	some i in input.pv_inputs
	some s in input.strings
	s.pv_input.id == i.id
	some part in parts(s)
}

check contains {"about": i.id, "which": part.id, "is": i.voc_cold, "at_most": part.voltage} if {
	some i in input.pv_inputs
	some a in input.arrays
	a.pv_input.id == i.id
	some part in parts(a)
}

parts(x) := array.flatten([x.cable_runs, x.protections, x.disconnects])
