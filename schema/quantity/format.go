package quantity

import (
	"math"
	"strconv"
	"strings"
)

// Round rounds to 9 significant digits. It is the one rounding place of machine
// output; verdicts come from unrounded values. Negative zero becomes zero; NaN
// and infinities, which no document may hold, come back unchanged.
func Round(v float64) float64 {
	if v == 0 || math.IsNaN(v) || math.IsInf(v, 0) {
		return v + 0 // -0 + 0 is 0
	}
	// The text cannot fail to parse: the largest float64 rounds down.
	r, _ := strconv.ParseFloat(strconv.FormatFloat(v, 'g', 9, 64), 64)
	return r
}

// Format writes an SI value for people, in the named unit: "169.8 V", "60.0 A",
// "1.91 %". The rule, the same everywhere so that columns line up:
//
//   - from 10 to below 1000 one decimal, from 1 to below 10 two, below 1 three
//     significant digits (0.00420), from 1000 up whole numbers to 4 significant
//     digits; trailing zeros are kept
//   - a temperature always has one decimal ("-27.0 degC"), zero is "0"
//   - a bare number that is whole has no decimals ("3")
//   - an area in AWG is its gauge ("4/0 AWG"); one that is no gauge is in mm2
//   - what documents have in V/K is in mV/K, as menus and data sheets have it; see
//     [ForPeople]
//
// A unit that the table does not have is printed behind the SI value. NaN and
// infinities read "unknown".
func Format(si float64, unit string) string {
	u, ok := Lookup(unit)
	if !ok {
		u = Unit{Symbol: unit, Scale: 1}
	}
	if u.Symbol == gaugeSymbol {
		if name, ok := gaugeName(u.FromSI(si)); ok {
			return name + " " + gaugeSymbol
		}
		u = MustLookup("mm2")
	}
	u = ForPeople(u)
	v := Round(u.FromSI(si))
	var text string
	switch {
	case math.IsNaN(v) || math.IsInf(v, 0):
		return "unknown"
	case u.Dimension.Point:
		text = fixed(v, 1)
	case u.Symbol == "" && v == math.Trunc(v) && math.Abs(v) < 1e15:
		text = fixed(v, 0)
	default:
		text = people(v)
	}
	if u.Symbol == "" {
		return text
	}
	return text + " " + u.Symbol
}

// ForPeople gives the unit in which people read what documents hold in another: mV/K
// for V/K, the unit itself for all others.
func ForPeople(u Unit) Unit {
	if u.Symbol == "V/K" {
		return MustLookup("mV/K")
	}
	return u
}

// people writes a finite number by the rule of Format.
func people(v float64) string {
	if v == 0 {
		return "0"
	}
	size := math.Abs(v)
	if size >= 1e15 || size < 1e-9 { // nobody reads that many zeros
		return strconv.FormatFloat(v, 'g', 4, 64)
	}
	keep := 4
	if size < 100 {
		keep = 3
	}
	// Rounding may carry into the next decade (9.996 is 10.0), so the decimals
	// follow from the number as rounded.
	rounded := strconv.FormatFloat(v, 'e', keep-1, 64)
	exponent, _ := strconv.Atoi(rounded[strings.IndexByte(rounded, 'e')+1:])
	r, _ := strconv.ParseFloat(rounded, 64)
	switch {
	case exponent >= 3:
		return fixed(r, 0)
	case exponent >= 1:
		return fixed(r, 1)
	}
	return fixed(r, 2-exponent)
}

// fixed writes v with so many decimals and never as "-0.0".
func fixed(v float64, decimals int) string {
	s := strconv.FormatFloat(v, 'f', decimals, 64)
	if s[0] == '-' {
		if f, err := strconv.ParseFloat(s, 64); err == nil && f == 0 {
			return s[1:]
		}
	}
	return s
}
