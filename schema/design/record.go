package design

import (
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"

	"stringline/schema/hcltext"
	"stringline/schema/quantity"
	"stringline/schema/source"
)

// Readings and waivers: what is written down about a system.

// Measured says what can be measured on a subject, and in which unit.
var measured = []struct{ quantity, unit string }{
	{"voc", "V"}, {"isc", "A"}, {"vmp", "V"}, {"imp", "A"}, {"power", "W"}, {"voltage", "V"}, {"current", "A"},
}

// ReadingOf splits what a reading is of, "string.south.a.voc", into the id of
// the subject and what was measured. unit is the unit of that; ok is false
// where the text has not this form.
func ReadingOf(of string) (subject, quantity, unit string, ok bool) {
	i := strings.LastIndexByte(of, '.')
	if i <= 0 {
		return "", "", "", false
	}
	for _, m := range measured {
		if m.quantity == of[i+1:] {
			return of[:i], m.quantity, m.unit, true
		}
	}
	return "", "", "", false
}

// generating kinds have an open circuit and a maximum power point.
var generating = []string{"string", "array", "pv_input"}

func (l *loader) readingOf(b *Block) {
	of, given := b.Values["of"]
	if !given || of.Bad {
		return
	}
	subject, what, unit, ok := ReadingOf(of.Text)
	if !ok {
		of.Bad = true
		_, last := cutLast(of.Text)
		var names []string
		for _, m := range measured {
			names = append(names, m.quantity)
		}
		p := source.Problem{Kind: "reference", Expected: "a subject and one of " + strings.Join(names, ", "), Found: of.Text, At: of.At,
			Message: fmt.Sprintf("of: expected a subject and what was measured, such as string.south.a.voc, found %s", strconv.Quote(hcltext.Shorten(of.Text)))}
		if near := l.Near(last, names); near != "" {
			before, _ := cutLast(of.Text)
			p.Near = before + "." + near
		}
		l.say(b, p)
		return
	}
	subjects := l.subjects()
	if !subjects[subject] {
		of.Bad = true
		if !l.incomplete && len(l.refused) == 0 {
			l.say(b, source.Problem{Kind: "unknown_name", Message: fmt.Sprintf("of: there is no %s in this design", strconv.Quote(hcltext.Shorten(subject))),
				Expected: "a subject of this design", Found: subject, Near: l.Near(subject, slices.Sorted(maps.Keys(subjects))), At: of.At})
		}
		return
	}
	kind, _, _ := strings.Cut(subject, ".")
	if !slices.Contains(generating, kind) && !slices.Contains([]string{"power", "voltage", "current"}, what) {
		of.Bad = true
		l.say(b, source.Problem{Kind: "reference", Message: fmt.Sprintf("of: %s is measured on strings, arrays and PV inputs; on a %s power, voltage or current", what, kind),
			Expected: "power, voltage or current", Found: what, At: of.At})
		return
	}
	if v := b.known("value"); v != nil && !quantity.Fits(v.Written, quantity.MustLookup(unit)) {
		v.Bad = true
		e := quantity.WrongUnit(quantity.Quantity{Unit: v.Written, Text: v.Text}, unit)
		l.say(b, source.Problem{Kind: "unit", Message: fmt.Sprintf("value: %s is %s, found %s", what, e.Expected, e.Found), Expected: e.Expected, Found: e.Found, At: v.At})
	}
}

func cutLast(s string) (before, after string) {
	i := strings.LastIndexByte(s, '.')
	return s[:max(i, 0)], s[i+1:]
}

// subjects holds the ids that something can be measured on.
func (l *loader) subjects() map[string]bool {
	if l.measurable != nil {
		return l.measurable
	}
	l.measurable = map[string]bool{}
	add := func(id string) { l.measurable[id] = true }
	for _, b := range l.design.Blocks {
		switch b.Kind.Name {
		case "array":
			add(b.ID())
			for _, s := range b.Blocks {
				if s.Kind.Name == "string" {
					add(s.ID())
				}
			}
			if v := b.known("charger"); v != nil {
				input := 1.0
				if n := b.known("pv_input"); n != nil {
					input = n.SI
				}
				add(fmt.Sprintf("pv_input.%s.%g", v.Text, input))
			}
		case "bank":
			add(b.ID())
			add(b.ID() + ".each") // one of its parallel strings of batteries, not joined yet
		case "charger", "ac_output", "load", "supply", "charge_source":
			add(b.ID())
		}
	}
	return l.measurable
}

// waivers reads the waiver blocks. Whether a waiver matches a verdict is not
// decided here; that no rule and subject have two is.
func (l *loader) waivers() {
	first := map[string]source.Range{}
	for _, b := range l.design.Blocks {
		if b.Kind.Name == "waiver" {
			l.waiver(b, first)
		}
	}
}

// waiver keeps a waiver that could be read whole. One with a problem permits
// nothing.
func (l *loader) waiver(b *Block, first map[string]source.Range) {
	w := &Waiver{Rule: b.Name, Block: b}
	for _, name := range []string{"on", "reason", "expires"} {
		if b.known(name) == nil {
			return
		}
	}
	on := b.Values["on"]
	w.Reason, w.Expires = b.Values["reason"].Text, b.Values["expires"].Text
	if v, given := b.Values["approved_by"]; given {
		if v.Bad {
			return
		}
		w.ApprovedBy = v.Text
	}
	for i, subject := range on.Texts {
		key := w.Rule + " " + subject
		if at, twice := first[key]; twice {
			l.say(b, source.Problem{Kind: "duplicate", Message: fmt.Sprintf("%s on %s has a waiver already, at %s", w.Rule, subject, at),
				Expected: "one waiver for a rule and subject", Found: "a second one", At: on.TextsAt[i]})
			continue
		}
		first[key] = on.TextsAt[i]
		w.On = append(w.On, subject)
		w.OnAt = append(w.OnAt, on.TextsAt[i])
	}
	if len(w.On) > 0 {
		l.design.Waivers = append(l.design.Waivers, w)
	}
}
