package quantity

import (
	"strconv"
	"strings"
	"unicode/utf8"
)

// Quantity is a value that a person wrote.
type Quantity struct {
	SI   float64 // in SI base units; K for a temperature, m2 for a wire size
	Unit Unit    // as written; its Symbol is the table's spelling ("mm2" for "mm²")
	Text string  // as written
}

// Bounds on a quantity's text. The digits are those that the language allows.
const (
	maxDigits = 30
	maxText   = 120 // bytes
)

const example = `a number and a unit, such as "37.4 V"`

// Parse reads a number and a unit: "37.4 V", "-27 degC", "6mm²", "4/0 AWG".
//
// The number is an optional sign, digits, and optionally a point and digits.
// Whitespace between number and unit, and around both, is optional. A pasted
// minus sign (U+2212) and no-break spaces are accepted. Exponents, "inf",
// "nan", hexadecimal, separators, a leading zero, more than 30 digits and a
// missing unit are refused. Nothing depends on a locale.
//
// The error is always an *[Error].
func Parse(text string) (Quantity, error) {
	if len(text) > maxText {
		return Quantity{}, &Error{Kind: "syntax", Expected: example, Found: "a text of " + strconv.Itoa(len(text)) + " bytes"}
	}
	if !utf8.ValidString(text) {
		return Quantity{}, &Error{Kind: "syntax", Expected: example, Found: "bytes that are not UTF-8"}
	}
	rest := strings.Trim(text, blanks)
	if rest == "" {
		return Quantity{}, &Error{Kind: "syntax", Expected: example, Found: "an empty text"}
	}
	end := numberEnd(rest)
	digits, symbol := rest[:end], strings.Trim(rest[end:], blanks)
	if zeros, found := strings.CutPrefix(symbol, "/0"); found && strings.Trim(zeros, blanks) == gaugeSymbol {
		return parseGauge(text, digits+"/0")
	}
	if symbol == gaugeSymbol {
		return parseGauge(text, digits)
	}
	value, problem := readNumber(text, digits, symbol)
	if problem != nil {
		return Quantity{}, problem
	}
	if symbol == "" {
		return Quantity{}, &Error{Kind: "unit", Expected: "a unit after the number", Found: show(text) + " without a unit"}
	}
	u, ok := Lookup(symbol)
	if !ok {
		return Quantity{}, unknownUnit(text, symbol)
	}
	return Quantity{SI: u.ToSI(value), Unit: u, Text: text}, nil
}

// ParseAs is Parse for a place where one of the given units is due: the result
// has the dimension of one of them, in any unit of that dimension. Where "" is
// among them a bare number is accepted; a percentage is none, nor is a bare
// number a percentage. Units that the table does not have accept nothing.
//
// The error is always an *[Error]; it names what was due and what was found.
func ParseAs(text string, due ...string) (Quantity, error) {
	for _, symbol := range due {
		if plain(symbol) == "" {
			if v, err := ParseNumber(text); err == nil {
				return Quantity{SI: v, Unit: MustLookup(""), Text: text}, nil
			} else if len(due) == 1 {
				return Quantity{}, err
			}
		}
	}
	q, err := Parse(text)
	if err != nil {
		if e, ok := err.(*Error); ok && e.Kind == "unit" {
			e.Expected = expectation(due)
		}
		return Quantity{}, err
	}
	for _, symbol := range due {
		if u, ok := Lookup(symbol); ok && Fits(q.Unit, u) {
			return q, nil
		}
	}
	return Quantity{}, WrongUnit(q, due...)
}

// Fits tells whether a value written in one unit may stand where another is
// due: the dimensions are the same, and a bare number is no percentage.
func Fits(written, due Unit) bool {
	return written.Dimension == due.Dimension && (written.Symbol == "") == (due.Symbol == "")
}

// ParseNumber reads a bare number, in the form that Parse takes before a unit.
// The error is always an *[Error].
func ParseNumber(text string) (float64, error) {
	const due = "a number without a unit"
	if len(text) > maxText || !utf8.ValidString(text) {
		return 0, &Error{Kind: "syntax", Expected: due, Found: show(text)}
	}
	rest := strings.Trim(text, blanks)
	end := numberEnd(rest)
	symbol := strings.Trim(rest[end:], blanks)
	value, problem := readNumber(text, rest[:end], symbol)
	if problem != nil {
		problem.Expected = due
		return 0, problem
	}
	if symbol != "" {
		return 0, &Error{Kind: "unit", Expected: due, Found: show(text)}
	}
	return value, nil
}

// blanks are the characters taken as whitespace: space, tab, no-break space and
// narrow no-break space.
const blanks = " \t\u00a0\u202f"

const (
	minusSign = "\u2212"
	plusMinus = "+-"
)

// numberEnd gives the length of the leading part of s that can belong to a
// number: a sign, then digits and points.
func numberEnd(s string) int {
	end := 0
	if strings.HasPrefix(s, minusSign) {
		end = len(minusSign)
	} else if s != "" && strings.IndexByte(plusMinus, s[0]) >= 0 {
		end = 1
	}
	for end < len(s) && (isDigit(s[end]) || s[end] == '.') {
		end++
	}
	return end
}

func isDigit(c byte) bool { return c >= '0' && c <= '9' }

// readNumber reads what stands before the unit. text and symbol serve the
// error alone.
func readNumber(text, s, symbol string) (float64, *Error) {
	refuse := func(hint string) *Error {
		return &Error{Kind: "number", Expected: example, Found: show(text), Hint: hint}
	}
	sign, digits := "", s
	if after, found := strings.CutPrefix(s, minusSign); found {
		sign, digits = "-", after
	} else if s != "" && strings.IndexByte(plusMinus, s[0]) >= 0 {
		sign, digits = s[:1], s[1:]
	}
	whole, fraction, point := strings.Cut(digits, ".")
	switch {
	case digits == "" || digits == ".":
		return 0, refuse(noNumberHint(sign, symbol))
	case whole == "":
		return 0, refuse("write a digit before the point: \"0." + fraction + "\"")
	case point && fraction == "":
		return 0, refuse("write a digit after the point, or leave the point out")
	case strings.Contains(fraction, "."):
		return 0, refuse("one decimal point, no separators between digits")
	case len(whole)+len(fraction) > maxDigits:
		return 0, refuse("at most 30 digits")
	case len(whole) > 1 && whole[0] == '0':
		return 0, refuse("a number has no leading zero")
	}
	if hint := afterNumberHint(digits, symbol); hint != "" {
		return 0, refuse(hint)
	}
	v, err := strconv.ParseFloat(sign+digits, 64)
	if err != nil { // cannot be: at most 30 digits and a point
		return 0, refuse("")
	}
	return v + 0, nil // "-0" is 0
}
