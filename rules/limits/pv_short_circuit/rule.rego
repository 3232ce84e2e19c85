# METADATA
# title: Array's short-circuit current within what the controller's input survives
# description: "A tracker clips operating current, not short-circuit current. When its protection shorts the array, or it is wired in reverse, all strings feed the fault: above this limit it burns. Cloud edges and heat add to the sheet's value."
# custom:
#   grade: stop
#   each: pv_inputs
#   waivable: false
#   source: maker's data sheet; IEC 62109
#   cites: [iec_62109]
#   remedy: take strings out of parallel, or share them out over more inputs
package codebooks.limits.pv_short_circuit

check contains {"about": i.id, "is": i.isc_max, "at_most": i.controller.pv_short_circuit_max} if some i in input.pv_inputs
