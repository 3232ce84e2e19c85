package verdict

import (
	"math"
	"slices"
)

// slight is how far apart two numbers may be, as a share of the larger, that differ
// by rounding alone: below what machine output shows.
const slight = 1e-9

// SameNumber tells that two numbers are one but for rounding, or both not there.
func SameNumber(a, b *float64) bool {
	if a == nil || b == nil {
		return a == b
	}
	return *a == *b || math.Abs(*a-*b) <= slight*math.Max(math.Abs(*a), math.Abs(*b))
}

// SameFigures tells that two verdicts of one rule found and allow the same, but for
// rounding. Where a figure comes from, and its workings, do not count.
func SameFigures(a, b *Verdict) bool {
	return sameMeasured(a.Is, b.Is) && slices.EqualFunc(a.Limits, b.Limits, func(x, y Measured) bool { return sameMeasured(&x, &y) })
}

func sameMeasured(a, b *Measured) bool {
	if a == nil || b == nil {
		return a == b
	}
	return a.Unit == b.Unit && SameNumber(a.Value, b.Value) && SameNumber(a.AtLeast, b.AtLeast) && same(a.Word, b.Word) && same(a.Yes, b.Yes)
}

func same[T comparable](a, b *T) bool { return a == b || a != nil && b != nil && *a == *b }
