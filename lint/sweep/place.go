package sweep

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"stringline/lint/facts"
	"stringline/schema/design"
	"stringline/schema/rewrite"
	"stringline/schema/source"
)

// place is where a value is written. Two axes with one place are the same.
type place struct {
	parameter string // the id of a codebook's parameter, which no file of the design holds; else:
	file      string // as shown
	start     int    // of the block's header
	name      string // of the attribute
	panel     string // of a string's panels: which
	book      string // whose question is answered
}

// axis settles an axis on a design.
func (s *sweeper) axis(o Over) (*Axis, error) {
	a, block, err := s.find(o.ID)
	switch {
	case err != nil:
		return nil, err
	case a.Attribute.Form == design.QuantityList || a.Attribute.Form == design.NumberList:
		return nil, fmt.Errorf("%s is a list; a sweep takes one value", o.ID)
	case block == nil && a.at.parameter == "":
		return nil, fmt.Errorf("%s: the design has no block that it could stand in; write one first", o.ID)
	}
	if block != nil {
		a.at.file, a.at.start = block.Header.File, block.Header.Start.Byte
		if top := topOf(block); top.Kind.Part {
			a.Part = top.Kind.Name + " " + strconv.Quote(top.Name)
		}
	}
	if o.Values != nil {
		err = a.listed(o)
	} else {
		err = a.ranged(o)
	}
	if err != nil {
		return nil, fmt.Errorf("%s: %w", o.ID, err)
	}
	return a, nil
}

// find tells what an id names, and the block that holds it or would.
func (s *sweeper) find(id string) (*Axis, *design.Block, error) {
	a := &Axis{ID: id}
	if block, declared, ok := s.base.System.Attribute(id); ok {
		a.Attribute, a.at.name = declared, declared.Name
		return a, block, nil
	}
	if block, count, panel, ok := s.panels(id); ok {
		a.Attribute, a.at.name, a.at.panel = count, count.Name, panel
		return a, block, nil
	}
	if p, ok := s.bench.Parameter(id); ok {
		a.Attribute, a.at.parameter = p.Attribute(), id
		a.Book, _, _ = strings.Cut(strings.TrimPrefix(id, "param."), ".")
		a.InForce = s.bench.InForce(id)
		return a, nil, nil
	}
	about, book, question, ok := answerID(id)
	if !ok {
		return nil, nil, s.noAttribute(id)
	}
	subject, known := s.base.System.Subject(about)
	if !known {
		return nil, nil, s.noAttribute(id)
	}
	a.Book, a.at.book, a.at.name = book, book, question
	block := subject.Block()
	if block == nil {
		return nil, nil, fmt.Errorf("%s: the design has no block that it could stand in; write one first", id)
	}
	asked, inForce := s.bench.Asked(book, block.Kind.Name)
	if !inForce {
		return nil, nil, fmt.Errorf("%s: no codebook %q is in force for this design, so nothing asks for that answer", id, book)
	}
	i := slices.IndexFunc(asked, func(q design.Attribute) bool { return q.Name == question })
	if i < 0 {
		return nil, nil, s.noAttribute(id)
	}
	a.Attribute = &asked[i]
	return a, block, nil
}

// answerID parts SUBJECT.declared.BOOK.NAME.
func answerID(id string) (about, book, question string, ok bool) {
	parts := strings.Split(id, ".")
	n := len(parts)
	if n < 4 || parts[n-3] != "declared" {
		return "", "", "", false
	}
	return strings.Join(parts[:n-3], "."), parts[n-2], parts[n-1], true
}

// panels finds how many of a panel stand in series in a string, which is no fact:
// string.ARRAY.NAME.panels.PANEL.
func (s *sweeper) panels(id string) (block *design.Block, count *design.Attribute, panel string, ok bool) {
	about, panel, found := strings.Cut(id, ".panels.")
	subject, known := s.base.System.Subject(about)
	if !found || !known || subject.Block() == nil {
		return nil, nil, "", false
	}
	v, given := subject.Block().Values["panels"]
	if !given || !slices.ContainsFunc(v.Panels, func(p design.PanelCount) bool { return p.Panel == panel }) {
		return nil, nil, "", false
	}
	return subject.Block(), &design.Attribute{Name: "panels", Form: design.Count, Min: v.Attribute.Min, Max: v.Attribute.Max, Means: v.Attribute.Means}, panel, true
}

// write puts a value in its place.
func (a *Axis) write(d *rewrite.Document, p Point) error {
	block := d.At(a.at.start)
	literal := a.Attribute.Literal(p.Text)
	switch {
	case a.at.book != "":
		return d.SetIn(block, "declared", a.at.book, a.at.name, literal)
	case a.at.panel == "":
		return d.Set(block, a.at.name, literal)
	}
	for _, attribute := range block.Body.Attributes {
		for _, pair := range attribute.Value.Pairs {
			if attribute.Name == "panels" && pair.Key == a.at.panel {
				return d.Replace(pair.Value.At, p.Text)
			}
		}
	}
	return errors.New("the string has no such panel")
}

func topOf(b *design.Block) *design.Block {
	for b.Parent != nil {
		b = b.Parent
	}
	return b
}

// noAttribute says what was meant by an id that is no attribute's.
func (s *sweeper) noAttribute(id string) error {
	_, _, _, answer := answerID(id)
	if f, ok := s.base.System.Fact(id); ok && !answer {
		return fmt.Errorf("%s is computed (%s); a sweep varies what is written: one of the attributes below it", f.ID, f.Unit)
	}
	known := s.bench.Parameters()
	for _, c := range facts.Collections() {
		for _, about := range s.base.System.Subjects(c.Name) {
			for _, e := range c.Entries {
				if e.Attribute {
					known = append(known, about.ID()+"."+e.Name)
				}
			}
			if block := about.Block(); c.Name == "strings" && block != nil {
				for _, p := range block.Values["panels"].Panels {
					known = append(known, about.ID()+".panels."+p.Panel)
				}
			}
			known = append(known, s.answers(about)...)
		}
	}
	if near := source.Nearest(id, known); near != "" {
		return fmt.Errorf("there is no attribute %q; did you mean %q?", id, near)
	}
	if strings.HasPrefix(id, "param.") {
		return fmt.Errorf("no codebook in force has the parameter %q; stringline codebook list shows them", id)
	}
	return fmt.Errorf("there is no attribute %q; stringline facts lists them", id)
}

// answers lists what codebooks in force ask of a subject, by the ids of answers.
func (s *sweeper) answers(about *facts.Subject) []string {
	if about.Block() == nil || !about.Collection().Declares {
		return nil
	}
	var ids []string
	for _, book := range s.base.Books {
		asked, _ := s.bench.Asked(book, about.Block().Kind.Name)
		for i := range asked {
			ids = append(ids, about.ID()+".declared."+book+"."+asked[i].Name)
		}
	}
	return ids
}
