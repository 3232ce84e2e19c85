# METADATA
# title: Bank has a main fuse or breaker
# description: Without a main fuse a short circuit anywhere behind the bank draws thousands of amperes until something has burned through.
# custom:
#   grade: stop
#   each: banks
#   waivable: false
#   source: common practice
#   remedy: put a fuse with enough interrupting capacity at the bank's positive post
#   equivalent:
#     - mutant: "1 / 1.01"
#       reason: "what stands there is counted whole: at least 0.99 is at least 1"
package codebooks.limits.bank_protection

import data.codebooks.limits.shared

check contains {
	"about": b.id, "is": fact.number(count(shared.mains(b)), ""), "at_least": fact.number(1, ""),
	"say": "{is} main fuses or breakers stand at {about}; {limit} is due.",
} if some b in input.banks
