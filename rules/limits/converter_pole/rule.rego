# METADATA
# title: A converter that is not isolated shares a pole that may be grounded
# description: Converters without isolation have one negative for both sides. On a bank whose positive is grounded, what hangs on them then stands at the bank's full voltage against ground.
# custom:
#   grade: stop
#   each: supplies
#   source: common practice
#   remedy: use an isolated converter
package codebooks.limits.converter_pole

check contains {
	"about": u.id, "is_true": fact.any([fact.one_of(input.grounding.dc, ["negative", "floating"]), u.converter.isolated]),
	"because": "the bank's positive is grounded, and the converter joins the negatives",
} if some u in input.supplies
