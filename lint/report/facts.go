package report

import (
	"fmt"
	"io"
	"maps"
	"math"
	"slices"
	"strconv"
	"strings"

	"stringline/lint"
	"stringline/lint/facts"
)

// factRow is one fact with its declaration, where it has one.
type factRow struct {
	name      string // within its subject
	means     string
	fact      facts.Fact
	attribute bool
	given     bool   // an attribute that is written down, or a derived fact
	over      string // the unit of what a series runs over
}

// factsOf lists a subject's facts: attributes as the language orders them,
// derived facts, answers to codebooks' own questions.
func factsOf(s *facts.System, about *facts.Subject) []factRow {
	var rows []factRow
	for _, e := range about.Collection().Entries {
		if f, ok := s.Fact(about.ID() + "." + e.Name); ok {
			unset := e.Attribute && !f.Known && len(s.At(f.ID)) == 0
			rows = append(rows, factRow{e.Name, e.Means, f, e.Attribute, !unset, e.Over})
		}
	}
	if block := about.Block(); block != nil {
		for _, book := range slices.Sorted(maps.Keys(block.Declared)) {
			answers := about.Declared(book)
			for _, name := range slices.Sorted(maps.Keys(answers)) {
				if f, ok := s.Fact(answers[name]); ok {
					rows = append(rows, factRow{strings.TrimPrefix(f.ID, about.ID()+"."), "", f, true, true, ""})
				}
			}
		}
	}
	return rows
}

// subjects lists all subjects of a design in the order of the facts document.
func subjects(s *facts.System) []*facts.Subject {
	var all []*facts.Subject
	for _, c := range facts.Collections() {
		all = append(all, s.Subjects(c.Name)...)
	}
	return all
}

// Facts writes the computed facts of one design as a table for people, subject
// by subject. Attributes that the design leaves out are named in one line; a
// computed fact that is unknown is an empty entry with what to supply,
// or with why its method has no answer.
func Facts(w io.Writer, d *lint.DesignResult, opts Page) error {
	p := newPage(opts)
	p.head(d)
	if len(d.Problems) > 0 {
		p.blank()
		p.errors(d.Problems)
	}
	if d.System != nil {
		for _, about := range subjects(d.System) {
			p.subjectFacts(d.System, about)
		}
	}
	return p.flush(w)
}

func (p *page) subjectFacts(s *facts.System, about *facts.Subject) {
	rows := factsOf(s, about)
	names, values := 0, 0
	var unset []string
	for _, r := range rows {
		if !r.given {
			unset = append(unset, r.name)
			continue
		}
		names = max(names, columns(r.name))
		if n := columns(Escape(factEntry(&r.fact, r.attribute))); n <= 14 {
			values = max(values, n)
		}
	}
	p.blank()
	p.line().put(about.ID(), plain).end()
	stacked := 2+names+2+values > p.width // in a narrow terminal values stand below their names
	for _, r := range rows {
		if !r.given {
			continue
		}
		l := p.line().to(2).put(r.name, plain)
		if text := factEntry(&r.fact, r.attribute); stacked {
			l.end()
			p.line().to(4).wrap(text, plain)
			l = p.line().to(4)
		} else if columns(Escape(text)) > values {
			if _, list := r.fact.Value().([]float64); list {
				l.to(2+names+2).wrapPieces(strings.Split(strings.ReplaceAll(text, ", ", ",\n"), "\n"), " ", plain)
				l = p.line().to(4)
			} else if l.to(2 + names + 2); l.at+columns(Escape(text)) > p.width {
				l.wrap(text, plain)
				l = p.line().to(4)
			} else {
				l.put(text, plain).to(2 + names + 2 + values + 2)
			}
		} else {
			l.right(2+names+2+values, text, plain).to(2 + names + 2 + values + 2)
		}
		words, with := factNote(&r)
		if words == "" {
			if l.written() {
				l.end()
			}
			continue
		}
		if p.width-l.at < 24 && l.written() {
			l.end()
			l = p.line().to(4)
		}
		l.wrap(words, with)
	}
	if len(unset) > 0 {
		p.line().to(2).put("not given:", plain).gap().wrap(strings.Join(unset, ", "), plain)
	}
}

// clearSky is the fact that is assumed where a site names no weather: what rests on
// it says so beside its figure.
const clearSky = "site.sky"

// factNote says what a fact means, or, where it is unknown, what it wants.
func factNote(r *factRow) (string, ink) {
	f := &r.fact
	if f.Known {
		if slices.Contains(f.Assumed, f.ID) && !strings.HasSuffix(r.means, "(assumed)") {
			return strings.TrimSpace(r.means + " (assumed)"), plain
		}
		if f.ID != clearSky && slices.Contains(f.Assumed, clearSky) {
			return r.means + " (under a clear sky)", plain
		}
		return r.means, plain
	}
	words := ""
	if f.AtLeast != nil {
		words = "at least " + showSI(*f.AtLeast, f.Unit) + "; "
	}
	return words + lacks(f.Missing, f.Because), inkSupply
}

// factEntry gives a fact's value for people, or its empty entry. An attribute
// keeps the digits that its data sheet gives.
func factEntry(f *facts.Fact, attribute bool) string {
	switch {
	case !f.Known:
		return empty(f.Unit)
	case attribute && f.Kind == facts.Quantity:
		value, unit := forPeople(inUnit(f.SI, f.Unit), f.Unit)
		return strings.TrimSpace(digits(value) + " " + unit)
	}
	return factValue(f)
}

// digits writes a number with at most 6 significant digits and no exponent
// where that stays readable.
func digits(value float64) string {
	text := strconv.FormatFloat(value, 'g', 6, 64)
	if short, err := strconv.ParseFloat(text, 64); err == nil && math.Abs(short) < 1e12 {
		text = strconv.FormatFloat(short, 'f', -1, 64)
	}
	return text
}

// FactNames lists the ids of all facts of a design, for near names.
func FactNames(s *facts.System) []string {
	var names []string
	for _, about := range subjects(s) {
		for _, r := range factsOf(s, about) {
			names = append(names, r.fact.ID)
		}
	}
	return names
}

// unknownFact says that a design has no such fact.
func unknownFact(id string) error { return fmt.Errorf("no fact %q in this design", Escape(id)) }

// FactsJSON writes the facts document (schema/facts.schema.json) of one design.
func FactsJSON(w io.Writer, d *lint.DesignResult) error {
	if err := d.System.WriteDocument(w); err != nil {
		return fmt.Errorf("writing facts as JSON: %w", err)
	}
	return nil
}
