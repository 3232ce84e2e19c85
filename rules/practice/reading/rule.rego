# METADATA
# title: A reading close to what was due
# description: A meter that shows much less than the curve at the recorded light and temperature has found a broken string, a dirty array or a wrong panel; much more, a wrong design.
# custom:
#   grade: fix
#   each: readings
#   source: common practice after IEC 62446-1
#   remedy: measure again; then look for a bypassed or missing panel, shade, dirt, or a wrong value in the design
package codebooks.practice.reading

check contains {
	"about": r.id, "is": r.difference_share,
	"between": [fact.times([-1, tolerance(r)]), tolerance(r)],
} if {
	some r in input.readings
	sunlit(r)
}

check contains {"about": r.id, "does_not_apply": "no curve tells what it should be; commission holds it against its limits"} if {
	some r in input.readings
	not sunlit(r)
}

# Strings, arrays and controller inputs have a curve.
sunlit(r) if count(r.strings) + count(r.arrays) + count(r.pv_inputs) > 0

# Without the light only a voltage tells anything, and less.
tolerance(r) := fact.either(r.with_irradiance, input.params.reading_tolerance, input.params.reading_tolerance_unlit)
