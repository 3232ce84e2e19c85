# METADATA
# title: Temperature compensation as a lead battery needs it
# description: A lead battery needs more voltage in the cold and less in the heat. Without compensation it starves in winter and gasses in summer.
# custom:
#   grade: fix
#   each: chargers
#   source: "common practice: -3 to -5 mV/K a cell about 25 degC; makers differ"
#   remedy: set the compensation of the battery's data sheet
package codebooks.limits.compensation_lead

import data.codebooks.limits.shared

check contains {
	"about": c.id, "when": shared.lead(c.bank.battery), "otherwise": "a lithium battery is not compensated: limits.compensation_lithium",
	"is": c.settings.temperature_compensation, "between": [input.params.lead_compensation_steepest, input.params.lead_compensation_least],
} if some c in input.chargers
