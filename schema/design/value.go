package design

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
	"time"
	"unicode"

	"stringline/schema/hcltext"
	"stringline/schema/quantity"
	"stringline/schema/source"
)

// valueReader reads one attribute's literal. Its problems carry no block; the
// decoder adds that.
type valueReader struct {
	report func(source.Problem)
	near   func(word string, known []string) string
}

// read gives the value of a declared attribute. It never gives nil; what could
// not be read is Bad and has been reported.
func (r *valueReader) read(a *Attribute, from hcltext.Attribute) *Value {
	v := &Value{Attribute: a, At: from.Value.At, NameAt: from.NameAt}
	l := from.Value
	if l.Kind == hcltext.Bad { // reported by the parser
		v.Bad = true
		return v
	}
	var ok bool
	switch a.Form {
	case Quantity:
		ok = r.quantity(a, l, v)
	case Number:
		v.SI, ok = r.number(a, l)
	case Count:
		v.SI, ok = r.count(a, l)
	case Word:
		ok = r.word(a, l, v)
	case Text:
		v.Text, ok = r.text(a, l)
	case YesNo:
		ok = r.yesNo(a, l, v)
	case Date:
		ok = r.date(a, l, v)
	case QuantityList, NumberList:
		ok = r.list(a, l, v)
	case TextList:
		ok = r.texts(a, l, v)
	case PanelCounts:
		ok = r.panels(a, l, v)
	}
	v.Bad = !ok
	return v
}

func (r *valueReader) problem(kind, name string, l hcltext.Literal, expected, found, hint string) bool {
	message := fmt.Sprintf("%s: expected %s, found %s", name, expected, found)
	if hint != "" {
		message += "; " + hint
	}
	r.report(source.Problem{Kind: kind, Message: message, Expected: expected, Found: found, At: l.At})
	return false
}

// expectedUnit says which quantity is due, in the words of the unit table.
func expectedUnit(a *Attribute) string {
	return quantity.WrongUnit(quantity.Quantity{}, units(a)...).Expected
}

func units(a *Attribute) []string { return append([]string{a.Unit}, a.Accepts...) }

func (r *valueReader) quantity(a *Attribute, l hcltext.Literal, v *Value) bool {
	switch l.Kind {
	case hcltext.String:
	case hcltext.Number:
		return r.problem("unit", a.Name, l, expectedUnit(a), l.Found()+", which has no unit",
			fmt.Sprintf("write it with its unit and in quotes, such as %q", l.Text+" "+a.Unit))
	default:
		return r.problem("value", a.Name, l, expectedUnit(a), l.Found(), "")
	}
	q, err := quantity.ParseAs(l.Text, units(a)...)
	var e *quantity.Error
	if errors.As(err, &e) {
		return r.problem(e.Kind, a.Name, l, e.Expected, e.Found, e.Hint)
	}
	if err != nil {
		return r.problem("number", a.Name, l, expectedUnit(a), l.Found(), "")
	}
	v.SI, v.Written, v.Text = q.SI, q.Unit, q.Text
	return r.inRange(a, l, q)
}

// inRange holds a quantity against the attribute's documented range. One that
// is written in a unit of Accepts cannot be held against it here; whoever
// knows the reference value does (see coefficients).
func (r *valueReader) inRange(a *Attribute, l hcltext.Literal, q quantity.Quantity) bool {
	u, ok := quantity.Lookup(a.Unit)
	if !ok || !quantity.Fits(q.Unit, u) {
		return true
	}
	return r.within(a, l, u.FromSI(q.SI))
}

// slack lets a value that was written in another unit meet the end of a range.
const slack = 1e-9

func (a *Attribute) ranged() bool { return a.Min != 0 || a.Max != 0 }

// holds tells whether x, in the attribute's unit, is in the documented range.
func (a *Attribute) holds(x float64) bool {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return false
	}
	if !a.ranged() {
		return true
	}
	room := slack * math.Max(math.Abs(a.Min), math.Abs(a.Max))
	if a.Exclusive && x <= a.Min {
		return false
	}
	return x >= a.Min-room && x <= a.Max+room
}

// rangeText says the range in words: "0 V to 200 V", "more than 0 V, at most 200 V".
func (a *Attribute) rangeText() string {
	least, most := plainNumber(a.Min), plainNumber(a.Max)
	if a.Unit != "" {
		least, most = least+" "+a.Unit, most+" "+a.Unit
	}
	if a.Exclusive {
		return "more than " + least + ", at most " + most
	}
	return least + " to " + most
}

func plainNumber(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

func (r *valueReader) within(a *Attribute, l hcltext.Literal, x float64) bool {
	if a.holds(x) {
		return true
	}
	found := hcltext.Shorten(l.Text)
	if l.Kind == hcltext.String {
		found = strconv.Quote(found)
	}
	return r.problem("range", a.Name, l, a.rangeText(), found, "")
}

func (r *valueReader) number(a *Attribute, l hcltext.Literal) (float64, bool) {
	if l.Kind != hcltext.Number {
		return 0, r.problem("value", a.Name, l, "a bare number", l.Found(), numberHint(l))
	}
	x, err := quantity.ParseNumber(l.Text)
	if err != nil {
		return 0, r.badNumber(a, l, err)
	}
	return x, r.within(a, l, x)
}

func (r *valueReader) badNumber(a *Attribute, l hcltext.Literal, err error) bool {
	var e *quantity.Error
	if errors.As(err, &e) {
		return r.problem("number", a.Name, l, "a bare number", hcltext.Shorten(l.Text), e.Hint)
	}
	return r.problem("number", a.Name, l, "a bare number", hcltext.Shorten(l.Text), "")
}

func numberHint(l hcltext.Literal) string {
	if l.Kind == hcltext.String {
		if _, err := quantity.ParseNumber(l.Text); err == nil {
			return "write the number without quotes"
		}
	}
	return ""
}

func (r *valueReader) count(a *Attribute, l hcltext.Literal) (float64, bool) {
	const due = "a whole number"
	if l.Kind != hcltext.Number {
		return 0, r.problem("value", a.Name, l, due, l.Found(), numberHint(l))
	}
	if strings.ContainsAny(l.Text, ".eE") {
		return 0, r.problem("number", a.Name, l, due, hcltext.Shorten(l.Text), "")
	}
	x, err := quantity.ParseNumber(l.Text)
	if err != nil {
		return 0, r.badNumber(a, l, err)
	}
	return x, r.within(a, l, x)
}

// text reads a string for people: not empty, no longer than a page takes.
func (r *valueReader) text(a *Attribute, l hcltext.Literal) (string, bool) {
	if l.Kind != hcltext.String {
		return "", r.problem("value", a.Name, l, "a text in quotes", l.Found(), "")
	}
	if strings.TrimFunc(l.Text, unicode.IsSpace) == "" {
		return "", r.problem("value", a.Name, l, "a text", "an empty one", "leave the attribute out where there is nothing to say")
	}
	const most = 4000
	if len(l.Text) > most {
		return "", r.problem("value", a.Name, l, fmt.Sprintf("at most %d bytes", most), fmt.Sprintf("%d bytes", len(l.Text)), "")
	}
	return l.Text, true
}

func (r *valueReader) word(a *Attribute, l hcltext.Literal, v *Value) bool {
	expected := "a word in quotes"
	if len(a.Words) > 0 {
		expected = "one of " + quoteAll(a.Words)
	} else if a.RefersTo != "" {
		expected = "the name of a " + a.RefersTo + " in quotes"
	}
	if l.Kind != hcltext.String {
		return r.problem("value", a.Name, l, expected, l.Found(), "")
	}
	v.Text = l.Text
	for _, w := range a.Words {
		if w == l.Text {
			return true
		}
	}
	found := strconv.Quote(hcltext.Shorten(l.Text))
	if len(a.Words) > 0 {
		message := fmt.Sprintf("%s: expected %s, found %s", a.Name, expected, found)
		if what, ok := notYet(l.Text); ok {
			message = fmt.Sprintf("%s: %s", a.Name, what)
			r.report(source.Problem{Kind: "later", Message: message, Expected: expected, Found: found, At: l.At})
			return false
		}
		r.report(source.Problem{Kind: "word", Message: message, Expected: expected, Found: found, Near: r.near(l.Text, a.Words), At: l.At})
		return false
	}
	if trimmed := strings.TrimFunc(l.Text, unicode.IsSpace); trimmed == "" || trimmed != l.Text || strings.ContainsAny(l.Text, "\n\t") || len(l.Text) > 200 {
		return r.problem("word", a.Name, l, expected, found, "no space before or after it, and one line")
	}
	return true
}

func quoteAll(words []string) string {
	quoted := make([]string, len(words))
	for i, w := range words {
		quoted[i] = strconv.Quote(w)
	}
	return strings.Join(quoted, ", ")
}

func (r *valueReader) yesNo(a *Attribute, l hcltext.Literal, v *Value) bool {
	if l.Kind != hcltext.Bool {
		return r.problem("value", a.Name, l, "true or false, without quotes", l.Found(), "")
	}
	v.Yes = l.Yes
	return true
}

func (r *valueReader) date(a *Attribute, l hcltext.Literal, v *Value) bool {
	const due = `a day of the calendar, such as "2026-05-02"`
	if l.Kind != hcltext.String {
		return r.problem("value", a.Name, l, due, l.Found(), "")
	}
	day, err := time.Parse(time.DateOnly, l.Text)
	if err != nil || day.Year() < 1900 {
		hint := ""
		if len(l.Text) == len(time.DateOnly) && err != nil && strings.Contains(err.Error(), "out of range") {
			hint = "there is no such day"
		}
		return r.problem("date", a.Name, l, due, strconv.Quote(hcltext.Shorten(l.Text)), hint)
	}
	v.Text = l.Text
	return true
}
