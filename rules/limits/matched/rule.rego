# METADATA
# title: Batteries of a bank are of one model, age and state of charge
# description: Joined batteries push whatever current it takes to become equal. Unlike ones never do, and the weakest sets the bank's life.
# custom:
#   grade: fix
#   each: banks
#   source: "common practice: within 0.05 V of each other before lithium batteries are joined"
#   remedy: use batteries of one model and age, each charged full before they are joined
#   equivalent:
#     - mutant: "1 x 1.01"
#       reason: "batteries are counted whole: more than 1.01 is more than 1"
#     - mutant: "1 x 1.01 #2"
#       reason: "strings are counted whole: more than 1.01 is more than 1"
package codebooks.limits.matched

check contains {
	"about": b.id, "when": fact.any([fact.more_than(b.series, 1), fact.more_than(b.parallel, 1)]), "otherwise": "one battery",
	"is_true": b.matched, "because": "the batteries are not matched",
} if some b in input.banks
