# METADATA
# title: Inverter gives all its loads at once
# description: Where everything runs at once an inverter that is too small switches off. People who take turns can live with less.
# custom:
#   grade: advise
#   each: ac_outputs
#   source: common practice
#   remedy: choose a larger inverter, or agree on what may run together
package codebooks.limits.inverter_load

check contains {"about": o.id, "which": "running", "is": o.load_power, "at_most": o.inverter.continuous} if some o in input.ac_outputs

check contains {"about": o.id, "which": "as the heaviest starts", "is": o.load_peak, "at_most": o.inverter.surge} if some o in input.ac_outputs
