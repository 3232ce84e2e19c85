package datasheet

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"stringline/schema/design"
	"stringline/schema/hcltext"
	"stringline/schema/quantity"
)

const formulaWords = "a formula of a spreadsheet: save the table with its values"

// isFormula tells a cell that a spreadsheet would compute.
func isFormula(text string) bool {
	return strings.HasPrefix(text, "=") || strings.HasPrefix(text, "@") || strings.HasPrefix(text, "#") && strings.ToUpper(text) == text && len(text) > 3
}

// untold tells a cell by which people say that the sheet does not tell the value.
func untold(text string) bool {
	return slices.Contains([]string{"", "-", "\u2013", "\u2014", "?", "n/a", "na", "unknown"}, strings.ToLower(text))
}

// figure is a number as people write it, a wire gauge's "/0" included, and what
// stands behind it.
var figure = regexp.MustCompile(`^([-+\x{2212}]?)([0-9.,]+)(/0)?[ \t\x{a0}\x{202f}]*(.*)$`)

// literal writes a cell as a value of the language. What it gives has still to go
// through the reader.
func (r *reader) literal(a *design.Attribute, col *column, c cell) (text string, ok bool) {
	if isFormula(c.text) {
		r.refuse("value", c.at, a.Name+": "+formulaWords, "a value", hcltext.Shorten(c.text))
		return "", false
	}
	switch a.Form {
	case design.Quantity:
		value, ok := r.quantity(a, col, c, c.text, "")
		return quoted(value), ok
	case design.QuantityList:
		return r.list(a, col, c)
	case design.Number, design.Count:
		m := figure.FindStringSubmatch(c.text)
		if m == nil || m[3] != "" || m[4] != "" {
			r.refuse("number", c.at, fmt.Sprintf("%s: expected a number without a unit, found %q", a.Name, hcltext.Shorten(c.text)), "a number", c.text)
			return "", false
		}
		digits, ok := r.decimal(a, c, m[2])
		return sign(m[1]) + digits, ok
	case design.YesNo:
		switch strings.ToLower(c.text) {
		case "yes", "true":
			return "true", true
		case "no", "false":
			return "false", true
		}
		r.refuse("value", c.at, fmt.Sprintf("%s: expected yes or no, found %q", a.Name, hcltext.Shorten(c.text)), "yes or no", c.text)
		return "", false
	case design.Word:
		for _, w := range a.Words {
			if folded(w) == folded(c.text) && !slices.ContainsFunc(a.Words, func(other string) bool { return other != w && folded(other) == folded(w) }) {
				return quoted(w), true
			}
		}
	}
	return quoted(c.text), true
}

// folded is a word without what writers differ in.
func folded(word string) string {
	return betweenWords.ReplaceAllString(strings.ToLower(word), "_")
}

func sign(written string) string {
	if written == "" || written == "+" {
		return ""
	}
	return "-"
}

// quantity writes a number with its unit: the cell's own, the heading's, or, in a
// list, the last one's.
func (r *reader) quantity(a *design.Attribute, col *column, c cell, text, lastUnit string) (value string, ok bool) {
	m := figure.FindStringSubmatch(text)
	if m == nil {
		r.refuse("number", c.at, fmt.Sprintf("%s: expected a number, found %q", a.Name, hcltext.Shorten(text)), "a number", text)
		return "", false
	}
	digits, ok := r.decimal(a, c, m[2])
	if !ok {
		return "", false
	}
	unit := col.unit
	switch own := strings.Trim(m[4], blanks); {
	case own != "":
		u, known := quantity.Lookup(own)
		if !known || u.Symbol == "" {
			r.refuse("unit", c.at, fmt.Sprintf("%s: %q is no unit of the language", a.Name, hcltext.Shorten(own)), "a unit", own)
			return "", false
		}
		if col.unit != "" && !quantity.Fits(u, quantity.MustLookup(col.unit)) {
			r.refuse("unit", c.at, fmt.Sprintf("%s: the cell is in %s, its column in %s: which is meant is not known", a.Name, u.Symbol, col.unit), col.unit, u.Symbol)
			return "", false
		}
		unit = u.Symbol
	case unit == "" && lastUnit != "":
		unit = lastUnit
	case unit == "":
		r.refuse("unit", c.at, fmt.Sprintf("%s: a number without a unit; write the unit into the heading, %q, into the map, or behind the number", a.Name, a.Name+" ["+a.Unit+"]"), "a unit", text)
		return "", false
	}
	return sign(m[1]) + digits + m[3] + " " + unit, true
}

var betweenItems = regexp.MustCompile(`\s*[;|/]\s*`)

// list writes several quantities: "12/24/48 V" and "12 V; 24 V".
func (r *reader) list(a *design.Attribute, col *column, c cell) (string, bool) {
	items := betweenItems.Split(c.text, -1)
	last := ""
	if m := figure.FindStringSubmatch(items[len(items)-1]); m != nil {
		if u, ok := quantity.Lookup(strings.Trim(m[4], blanks)); ok {
			last = u.Symbol
		}
	}
	var values []string
	for _, item := range items {
		if strings.Contains(item, ",") {
			r.refuse("number", c.at, fmt.Sprintf("%s: a comma in a list may part values or decimals; part the values by ; or /", a.Name), "values parted by ; or /", c.text)
			return "", false
		}
		value, ok := r.quantity(a, col, c, item, last)
		if !ok {
			return "", false
		}
		values = append(values, quoted(value))
	}
	return "[" + strings.Join(values, ", ") + "]", true
}

// decimal gives the digits of a number with a decimal point.
func (r *reader) decimal(a *design.Attribute, c cell, digits string) (string, bool) {
	kind := "number"
	refuse := func(what string) (string, bool) {
		r.refuse(kind, c.at, fmt.Sprintf("%s: %q: %s", a.Name, hcltext.Shorten(digits), what), "a number", digits)
		return "", false
	}
	points, commas := strings.Count(digits, "."), strings.Count(digits, ",")
	switch {
	case points > 0 && commas > 0 || points > 1 || commas > 1:
		return refuse("marks between thousands are not read; write the digits without them")
	case points == 1 && r.Decimals == Comma:
		return refuse("a point, where the decimals are said to stand behind a comma")
	case points == 1 && r.Decimals == Plain && r.comma != nil:
		kind = KindDecimal
		return refuse(fmt.Sprintf("a point, and %s writes decimals behind a comma: say which it is", r.comma.at))
	case commas == 0:
		return digits, true
	case r.Decimals == Point:
		return refuse("a comma, where the decimals are said to stand behind a point")
	case r.Decimals == Plain && !certainComma(digits):
		kind = KindDecimal
		return refuse("the comma may part thousands or decimals: say which it is")
	case r.Decimals == Plain && r.point != nil:
		kind = KindDecimal
		return refuse(fmt.Sprintf("a comma, and %s writes decimals behind a point: say which it is", r.point.at))
	}
	return strings.Replace(digits, ",", ".", 1), true
}

// certainComma tells a comma that cannot part thousands: three digits behind it and
// one to three before, not a lone 0, could be thousands.
func certainComma(digits string) bool {
	whole, fraction, found := strings.Cut(digits, ",")
	return found && !strings.ContainsAny(fraction, ",.") && !strings.Contains(whole, ".") && (len(fraction) != 3 || whole == "0" || len(whole) > 3 || whole == "")
}

// findComma looks how the table's numbers write decimals, before any is read.
func (r *reader) findComma(rows []row) {
	for _, one := range rows {
		for i := range r.columns {
			if r.columns[i].what != "" || i >= len(one.cells) {
				continue
			}
			numeric := slices.ContainsFunc(r.declared(&r.columns[i]), func(a *design.Attribute) bool {
				return a.Form == design.Quantity || a.Form == design.Number || a.Form == design.Count
			})
			m := figure.FindStringSubmatch(one.cells[i].text)
			if !numeric || m == nil {
				continue
			}
			switch c := one.cells[i]; {
			case r.comma == nil && certainComma(m[2]):
				r.comma = &c
			case r.point == nil && strings.Count(m[2], ".") == 1 && !strings.Contains(m[2], ","):
				r.point = &c
			}
		}
	}
}

// quoted writes a text as the language does. A control character cannot be there:
// the guard refuses it.
func quoted(text string) string {
	return `"` + strings.NewReplacer(`\`, `\\`, `"`, `\"`, "\t", `\t`).Replace(text) + `"`
}
