# METADATA
# title: Compensation setting within what the controller can be set to
# description: A setting that the controller does not have ends at its nearest one, and the voltages on paper are not those at the bank.
# custom:
#   grade: advise
#   each: chargers
#   source: maker's data sheet
#   remedy: choose a setting in the controller's range, or another controller
package codebooks.limits.compensation_supported

check contains {
	"about": c.id, "is": c.settings.temperature_compensation,
	"between": [c.controller.compensation_min, c.controller.compensation_max],
} if some c in input.chargers
