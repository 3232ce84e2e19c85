# METADATA
# title: Controller bears the array's largest short-circuit current
# description: The short-circuit rating of a PV input is an absolute maximum for the worst conditions. What is compared with it is KI times the current of the data sheets, not that current itself.
# custom:
#   grade: stop
#   each: pv_inputs
#   source: IEC 62109-1 Isc PV (absolute maximum rating) and IEC 62548-1 7.2, ISC MAX = KI x Isc with KI 1.25
#   cites: [iec_62109_1, iec_62548_1]
#   remedy: put fewer strings on this input, or choose a controller for more
package codebooks.iec.input_short_circuit

check contains {"about": i.id, "is": fact.times([input.params.ki, i.isc_stc]), "at_most": i.controller.pv_short_circuit_max} if some i in input.pv_inputs
