# METADATA
# title: Unlike panels on one input cost each other little
# description: Panels in series share one current, strings in parallel one voltage. What does not match is lost, and a tracking controller cannot win it back.
# custom:
#   grade: advise
#   each: pv_inputs
#   source: single-diode curves of the panels, after De Soto, Klein and Beckman, Solar Energy 80 (2006)
#   cites: [de_soto]
#   remedy: match currents in series and voltages in parallel, or give unlike panels an input of their own
package codebooks.practice.unlike_panels

check contains {"about": i.id, "which": "loss", "is": i.mismatch_loss, "at_most": input.params.mismatch_max} if some i in input.pv_inputs

# A tracker climbs to the nearest maximum, which may be a lesser one.
check contains {"about": i.id, "which": "maxima", "is": i.maxima_count, "equals": 1} if some i in input.pv_inputs
