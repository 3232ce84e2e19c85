# METADATA
# title: Every parallel string of batteries has its own fuse
# description: When a battery fails, the other strings feed the fault. The main fuse does not see that current.
# custom:
#   grade: fix
#   each: banks
#   source: common practice
#   remedy: put a fuse in each parallel string of batteries
#   equivalent:
#     - mutant: "1 x 1.01"
#       reason: "strings are counted whole: more than 1.01 is more than 1"
#     - mutant: "1 / 1.01 #2"
#       reason: "what stands there is counted whole: at least 0.99 is at least 1"
package codebooks.limits.bank_string_protection

import data.codebooks.limits.shared

check contains {
	"about": b.id, "when": fact.more_than(b.parallel, 1), "otherwise": "one string: the main fuse protects it",
	"is": fact.number(count([p | some p in b.protections; shared.in_each(p)]), ""), "at_least": fact.number(1, ""),
	"say": "{is} fuses are described for each parallel string of {about}; {limit} is due.",
} if some b in input.banks
