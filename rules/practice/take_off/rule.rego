# METADATA
# title: Parallel batteries share one path length
# description: Taken off at one end, the first battery of a row works hardest and dies first.
# custom:
#   grade: advise
#   each: banks
#   source: common practice
#   remedy: take plus and minus off at opposite corners, or join all strings at busbars
#   equivalent:
#     - mutant: "1 x 1.01"
#       reason: "strings are counted whole: more than 1.01 is more than 1"
package codebooks.practice.take_off

check contains {
	"about": b.id, "when": fact.more_than(b.parallel, 1), "otherwise": "one string",
	"is_true": fact.one_of(b.take_off, ["diagonal", "busbar"]), "because": "the parallel strings are taken off at one end",
} if some b in input.banks
