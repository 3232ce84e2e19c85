# METADATA
# title: A controller that is not isolated has its common pole on the grounded side
# description: "Such a controller joins one pole of array and bank and switches the other. Grounding the switched pole bridges its switch: it cannot stop charging, or burns."
# custom:
#   grade: stop
#   each: chargers
#   waivable: false
#   source: maker's data sheet
#   remedy: ground the pole that the controller has in common, leave the system floating, or use an isolated controller
package codebooks.limits.common_pole

check contains {
	"about": c.id, "when": fact.all([fact.no(c.controller.isolated), fact.no(fact.one_of(input.grounding.dc, ["floating"]))]),
	"otherwise": "the controller is isolated, or nothing is grounded",
	"all_equal": [c.controller.common, input.grounding.dc], "because": "the pole that is grounded is not the one that the controller has in common",
} if some c in input.chargers
