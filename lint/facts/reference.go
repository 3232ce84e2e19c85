package facts

import (
	"fmt"
	"strings"
)

// ReferencePage gives the page, in Markdown, that says what every fact is, made
// from the one table. It is committed as REFERENCE.md beside this file.
func ReferencePage() []byte {
	var b strings.Builder
	b.WriteString(`# Facts

Generated from the fact table: do not edit.

What rules judge. Each fact has an id, a value and a unit. A fact whose inputs are
unknown is unknown, and names the attributes that would make it known. Facts without
a formula are attributes: they are written in the design or in a data sheet, and the
language's own page gives their ranges. Units: "word" is one of some words, "yes_no"
is true or false, an empty unit is a count or a bare number. A fact with "bound" keeps
a lower bound (at_least) of the known parts where it is unknown. What a fact assumes
is listed with every fact that rests on it.
`)
	for _, c := range Collections() {
		fmt.Fprintf(&b, "\n## %s\n\n%s. Id: `%s`.\n", c.Name, sentence(c.Means), c.ID)
		if len(c.Links) > 0 {
			b.WriteString("\nLinks:\n\n")
			for _, l := range c.Links {
				fmt.Fprintf(&b, "- `%s`: %s\n", l.Name, l.Means)
			}
		}
		b.WriteString("\n| fact | unit | what it is | formula | source |\n| --- | --- | --- | --- | --- |\n")
		for _, e := range c.Entries {
			fmt.Fprintf(&b, "| `%s` | %s | %s | %s | %s |\n", e.Name, cell(e.units()), cell(e.Means), cell(e.formulaNote()), cell(e.Source))
		}
	}
	return []byte(b.String())
}

func (e *Entry) units() string {
	unit := strings.Join(append([]string{e.Unit}, e.Units...), " or ")
	if e.Kind == List {
		unit = strings.TrimSpace("list, " + unit)
		unit = strings.TrimSuffix(unit, ",")
	}
	if e.Kind == Series {
		unit = strings.TrimSuffix("series, "+unit, ", ") + strings.TrimSuffix(" over "+e.Over, " over ")
	}
	return unit
}

// formulaNote gives the formula with what the reader must know beside it.
func (e *Entry) formulaNote() string {
	note := e.Formula
	if e.Assumes != "" {
		note = strings.TrimPrefix(note+"; assumed where not given: "+e.Assumes, "; ")
		if !e.Attribute {
			note = e.Formula + "; assumed: " + e.Assumes
		}
	}
	if e.Bound {
		note = strings.TrimPrefix(note+"; bound", "; ")
	}
	return note
}

func sentence(text string) string {
	if text == "" {
		return ""
	}
	return strings.ToUpper(text[:1]) + text[1:]
}

// cell keeps a text from ending its cell of a table.
func cell(text string) string { return strings.NewReplacer("|", `\|`, "\n", " ").Replace(text) }
