package judge

import (
	"strings"

	"stringline/lint/facts"
	"stringline/lint/verdict"
	"stringline/schema/quantity"
)

// words writes a formula for people: "1.25 x cable_run.array.south.current".
// With values the leaves are their numbers instead of their ids, "1.25 x 40 A".
func (f *formula) words(vs values) string {
	if vs == nil {
		if ids := f.ids.Load(); ids != nil {
			return *ids
		}
	}
	var b strings.Builder
	f.write(&b, vs, 0)
	words := b.String()
	if vs == nil {
		f.ids.Store(&words)
	}
	return words
}

// strength orders operators for brackets: sums 1, products 2, all else 3.
func (f *formula) strength() int {
	switch f.op {
	case "plus", "minus":
		return 1
	case "times", "ratio":
		return 2
	case "more_than", "at_least", "one_of", "no", "all", "any", "either":
		return 0
	}
	return 3
}

func (f *formula) write(b *strings.Builder, vs values, around int) {
	if chosen := f.chosen(vs); chosen != nil {
		chosen.write(b, vs, around)
		return
	}
	if len(f.of) > 0 && f.table == nil && f.op != "largest" && f.op != "smallest" && f.strength() < around {
		b.WriteByte('(')
		defer b.WriteByte(')')
	}
	list := func(separator string, around int) {
		for i, x := range f.of {
			if i > 0 {
				b.WriteString(separator)
			}
			x.write(b, vs, around)
		}
	}
	switch f.op {
	case "leaf":
		b.WriteString(leafWords(f, vs))
	case "number":
		b.WriteString(f.text)
	case "yes_no":
		b.WriteString(yesNoWord(f.yes))
	case "times":
		list(" x ", 2)
	case "ratio":
		list(" / ", 3)
	case "plus":
		list(" + ", 1)
	case "minus":
		list(" - ", 2)
	case "more_than":
		list(" > ", 1)
	case "at_least":
		list(" >= ", 1)
	case "all":
		list(" and ", 1)
	case "any":
		list(" or ", 1)
	case "no":
		b.WriteString("not ")
		list("", 1)
	case "either":
		f.of[1].write(b, vs, 1)
		b.WriteString(" if ")
		f.of[0].write(b, vs, 1)
		b.WriteString(", else ")
		f.of[2].write(b, vs, 1)
	case "one_of":
		f.of[0].write(b, vs, 1)
		b.WriteString(" is one of ")
		if len(f.of) == 2 {
			b.WriteString(leafWords(f.of[1], vs))
			return
		}
		for i, c := range f.choices {
			if i > 0 {
				b.WriteString(", ")
			}
			if c.isWord {
				b.WriteString(c.word)
				continue
			}
			b.WriteString(quantity.Format(f.of[0].unit.ToSI(c.number), f.of[0].unit.Symbol))
		}
	case "largest", "smallest":
		b.WriteString(f.op + " of (")
		list(", ", 0)
		b.WriteByte(')')
	case "lookup", "interpolate":
		b.WriteString(f.table.name + " (")
		list(", ", 0)
		b.WriteByte(')')
	}
}

// chosen gives the branch that an either takes where its condition is known. With
// the numbers of a design the other one says nothing, and a code's tables make
// dozens of them.
func (f *formula) chosen(vs values) *formula {
	if f.op != "either" || vs == nil {
		return nil
	}
	switch y, wrong := f.of[0].evaluate(vs); {
	case wrong != nil || !y.known:
		return nil
	case y.yes:
		return f.of[1]
	}
	return f.of[2]
}

func leafWords(f *formula, vs values) string {
	if vs == nil {
		return f.id
	}
	x, ok := vs.fact(f.id)
	if !ok {
		return f.id
	}
	return factWords(&x, f.unit)
}

// factWords writes a fact's value; an unknown one is an empty place to fill in.
func factWords(x *facts.Fact, unit quantity.Unit) string {
	switch kindOf(x.Kind) {
	case word:
		if x.Known {
			return x.Word
		}
	case yesNo:
		if x.Known {
			return yesNoWord(x.Yes)
		}
	case list:
		if x.Known {
			parts := make([]string, len(x.List))
			for i, v := range x.List {
				parts[i] = quantity.Format(v, unit.Symbol)
			}
			return strings.Join(parts, ", ")
		}
	default:
		if x.Known {
			return quantity.Format(x.SI, unit.Symbol)
		}
		return strings.TrimSpace("_____ " + quantity.ForPeople(unit).Symbol)
	}
	return "_____"
}

func yesNoWord(yes bool) string {
	if yes {
		return "yes"
	}
	return "no"
}

// show writes what a formula came to, for messages.
func (f *formula) show(v *value, unit quantity.Unit) string {
	switch {
	case !v.known:
		return "unknown"
	case f.kind == word:
		return v.word
	case f.kind == yesNo:
		return yesNoWord(v.yes)
	}
	return quantity.Format(v.si, unit.Symbol)
}

// measured gives one side of a comparison in the unit that the verdict shows.
func (f *formula) measured(v *value, vs values, unit quantity.Unit) verdict.Measured {
	m := verdict.Measured{}
	switch f.kind {
	case word:
		m.Unit = "word"
		if v.known {
			m.Word = &v.word
		}
	case yesNo:
		m.Unit = "yes_no"
		if v.known {
			m.Yes = &v.yes
		}
	default:
		m.Unit = unit.Symbol
		if v.known {
			shown := unit.FromSI(v.si)
			m.Value = &shown
		} else if v.low > -maxFinite {
			shown := unit.FromSI(v.low)
			m.AtLeast = &shown
		}
	}
	if f.op == "leaf" {
		m.ID = f.id
		if x, ok := vs.fact(f.id); ok {
			m.Says = x.Says
		}
		return m
	}
	m.Formula = f.words(nil)
	if len(f.of) > 0 {
		m.Says = f.words(vs)
	}
	return m
}
