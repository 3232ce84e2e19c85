package quantity

import (
	"slices"
	"strconv"
	"strings"
)

// Error says why a text is no quantity.
type Error struct {
	// Kind is "number" (the number is at fault), "unit" (none, an unknown one,
	// or one of another dimension) or "syntax" (no quantity at all).
	Kind string
	// Expected and Found read in one sentence: "expected a voltage (V), found
	// a current, "5 A"". Text of the user in Found is quoted, shortened and
	// free of control characters.
	Expected, Found string
	Hint            string // what to write instead, "" where there is no guess
}

// Error gives the whole sentence.
func (e *Error) Error() string {
	s := "reading a quantity: expected " + e.Expected + ", found " + e.Found
	if e.Hint != "" {
		s += "; " + e.Hint
	}
	return s
}

// show quotes a user's text: printable characters as they are, at most 40.
func show(text string) string {
	const most = 40
	n := 0
	for i := range text {
		if n++; n > most {
			return strconv.Quote(text[:i] + "…")
		}
	}
	return strconv.Quote(text)
}

// WrongUnit is the error for a quantity whose unit has another dimension than
// the ones due. It names both.
func WrongUnit(q Quantity, due ...string) *Error {
	e := &Error{Kind: "unit", Expected: expectation(due), Found: noun(q.Unit) + ", " + show(q.Text)}
	for _, symbol := range due {
		u, ok := Lookup(symbol)
		if ok && u.Dimension != q.Unit.Dimension && u.Dimension.Temperature == 1 && q.Unit.Dimension.Temperature == 1 {
			e.Hint = "a temperature is written in degC or degF, a temperature difference in K"
		}
	}
	return e
}

// expectation names the units due: "a voltage (V)".
func expectation(due []string) string {
	var parts []string
	for _, symbol := range due {
		u, ok := Lookup(symbol)
		switch {
		case !ok:
			parts = append(parts, symbol)
		case u.Symbol == "":
			parts = append(parts, "a bare number")
		default:
			parts = append(parts, noun(u)+" ("+u.Symbol+")")
		}
	}
	if len(parts) == 0 {
		return example
	}
	return strings.Join(parts, " or ")
}

// noun names what a unit measures; a percentage is not called a number.
func noun(u Unit) string {
	if u.Symbol == "%" {
		return "a percentage"
	}
	return u.Dimension.Noun()
}

// habits are units as people write them in haste, in lower case, and the unit
// that they mean.
var habits = map[string]string{
	"volt": "V", "volts": "V", "vdc": "V", "vac": "V", "voc": "V", "v dc": "V", "amp": "A", "amps": "A", "ampere": "A", "amperes": "A", "adc": "A",
	"watt": "W", "watts": "W", "wp": "W", "kwp": "kW", "wdc": "W", "kva": "VA", "ohms": "ohm", "r": "ohm",
	"c": "degC", "celsius": "degC", "deg c": "degC", "℃": "degC", "ºc": "degC", "f": "degF", "deg f": "degF", "fahrenheit": "degF", "℉": "degF", "ºf": "degF",
	"kelvin": "K", "degk": "K", "deg k": "K", "%/c": "%/K", "%/k": "%/K", "%/℃": "%/K", "%k": "%/K", "%/ºc": "%/K", "percent": "%", "degree": "deg", "degrees": "deg", "º": "deg",
	"sqmm": "mm2", "mm^2": "mm2", "qmm": "mm2", "sq mm": "mm2", "mcm": "kcmil", "ga": "AWG", "gauge": "AWG",
	"meter": "m", "metre": "m", "meters": "m", "metres": "m", "feet": "ft", "foot": "ft", "'": "ft", "inch": "in", "inches": "in", "\"": "in",
	"hr": "h", "hrs": "h", "hour": "h", "hours": "h", "day": "d", "days": "d", "sec": "s", "second": "s", "seconds": "s", "minute": "min", "minutes": "min",
	"lbs": "lb", "kilo": "kg", "newton meter": "N m", "n*m": "N m", "n.m": "N m", "w/m^2": "W/m2", "w/sqm": "W/m2", "kwh/m^2": "kWh/m2", "m^3/h": "m3/h",
	"amp hours": "Ah", "amp-hours": "Ah", "a h": "Ah", "w h": "Wh", "kw h": "kWh",
}

// unknownUnit says that there is no such unit and names the one that was
// probably meant.
func unknownUnit(text, symbol string) *Error {
	e := &Error{Kind: "unit", Expected: "a unit that the language has", Found: show(symbol) + " in " + show(text)}
	lower := strings.ToLower(plain(symbol))
	var meant []string
	for _, u := range units {
		if u.Symbol != "" && strings.ToLower(u.Symbol) == lower {
			meant = append(meant, u.Symbol)
		}
	}
	if h, ok := habits[lower]; ok && !slices.Contains(meant, h) {
		meant = append(meant, h)
	}
	if len(meant) > 0 {
		e.Hint = "did you mean " + strings.Join(meant, " or ") + "?"
	}
	return e
}

// noNumberHint looks at a text that does not begin with a number.
func noNumberHint(sign, symbol string) string {
	lower := strings.ToLower(symbol)
	switch {
	case strings.HasPrefix(lower, "awg"):
		return `write the gauge first: "10 AWG"`
	case strings.HasPrefix(lower, "inf") || strings.HasPrefix(lower, "nan"):
		return "a finite number is due"
	case sign != "" && symbol != "" && isDigit(symbol[0]):
		return "no space between the sign and the number"
	case strings.HasPrefix(symbol, ","):
		return `a decimal point is written as "."`
	case strings.HasPrefix(symbol, "–") || strings.HasPrefix(symbol, "—"):
		return "a minus sign is due, not a dash"
	}
	return ""
}

// afterNumberHint refuses what looks like more of the number behind it: an
// exponent, hexadecimal, a decimal comma, separators. "" means that nothing
// does.
func afterNumberHint(digits, symbol string) string {
	if symbol == "" {
		return ""
	}
	first, more := symbol[0], symbol[1:]
	digitNext := more != "" && (isDigit(more[0]) || len(more) > 1 && strings.IndexByte(plusMinus, more[0]) >= 0 && isDigit(more[1]))
	switch {
	case first == ',' && more != "" && isDigit(more[0]):
		n := 0
		for n < len(more) && isDigit(more[n]) {
			n++
		}
		if n == 3 && !strings.Contains(digits, ".") {
			return `no separators between digits: write "` + digits + more[:n] + `" or, for a decimal comma, "` + digits + "." + more[:n] + `"`
		}
		return `a decimal point is written as ".": "` + digits + "." + more[:n] + `"`
	case isDigit(first):
		return "no spaces between digits"
	case (first == '_' || first == '\'') && digitNext:
		return "no separators between digits"
	case (first == 'e' || first == 'E') && digitNext:
		return "no exponents: write the number out"
	case (first == 'p' || first == 'P' || first == 'x' || first == 'X') && digitNext:
		return "decimal digits only"
	case first == '/' && digitNext:
		return `no fractions; "1/0" to "4/0" stand before AWG only`
	}
	return ""
}
