# METADATA
# title: Batteries that gas stand where the gas can leave
# description: A flooded battery gives off hydrogen when it is charged. In a closed box a spark sets it off.
# custom:
#   grade: stop
#   each: banks
#   source: common practice
#   remedy: open the enclosure to the outside, high up and low down, or use sealed batteries
package codebooks.bookname.ventilation

import data.codebooks.bookname.shared

# Where `when` says no the rule does not apply, and `otherwise` says why. A
# yes/no is judged by is_true, with the words to show where it is not.
check contains {
	"about": b.id,
	"when": shared.gasses(b.battery), "otherwise": "a sealed battery gives off no gas in use",
	"is_true": b.declared.vented, "because": "the bank gasses and its enclosure does not vent to the outside",
} if some b in input.banks
