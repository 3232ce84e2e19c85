package judge

import (
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"stringline/lint/facts"
	"stringline/schema/codebook"
	"stringline/schema/design"
	"stringline/schema/quantity"
)

// structure is what a codebook's rules are given of a design: the tree that
// becomes `input`, and every leaf in it. It holds ids, units and links, no value.
type structure struct {
	input  ast.Value
	leaves map[string]leaf
}

// builder makes the tree once for a codebook and a design. Each subject's term
// is made once and shared wherever it stands nested.
type builder struct {
	book   *codebook.Codebook
	system *facts.System
	leaves map[string]leaf
	whole  map[string]*ast.Term // subjects with their links, by id
	nested map[string]*ast.Term // placed subjects with their facts alone
	units  map[string]*ast.Term
	paths  map[string]*ast.Term
}

func buildStructure(book *codebook.Codebook, s *facts.System) *structure {
	b := &builder{
		book: book, system: s, leaves: map[string]leaf{},
		whole: map[string]*ast.Term{}, nested: map[string]*ast.Term{},
		units: map[string]*ast.Term{}, paths: map[string]*ast.Term{},
	}
	collections := facts.Collections()
	top := make([][2]*ast.Term, 0, len(collections)+1)
	for _, c := range collections {
		subjects := s.Subjects(c.Name)
		if c.Single {
			if len(subjects) == 1 {
				top = append(top, [2]*ast.Term{b.key(c.Name), b.subject(subjects[0], true)})
			}
			continue
		}
		terms := make([]*ast.Term, len(subjects))
		for i, subject := range subjects {
			terms[i] = b.subject(subject, true)
		}
		top = append(top, [2]*ast.Term{b.key(c.Name), ast.ArrayTerm(terms...)})
	}
	params := make([][2]*ast.Term, len(book.Parameters))
	for i := range book.Parameters {
		p := &book.Parameters[i]
		unit := p.Unit
		if p.Kind != "quantity" {
			unit = p.Kind
		}
		params[i] = [2]*ast.Term{b.key(p.Name), b.leaf(ParameterID(book.Name, p.Name), unit, parameterKind(p.Kind))}
	}
	top = append(top, [2]*ast.Term{b.key("params"), ast.ObjectTerm(params...)})
	return &structure{input: ast.NewObject(top...), leaves: b.leaves}
}

// ParameterID is the fact id of a codebook's parameter.
func ParameterID(book, name string) string { return "param." + book + "." + name }

func parameterKind(k string) kind {
	switch k {
	case "word":
		return word
	case "yes_no":
		return yesNo
	}
	return number
}

func (b *builder) key(name string) *ast.Term {
	t := b.paths[name]
	if t == nil {
		t = ast.StringTerm(name)
		b.paths[name] = t
	}
	return t
}

func (b *builder) leaf(id, unit string, k kind) *ast.Term {
	if _, twice := b.leaves[id]; !twice {
		l := leaf{kind: k, text: unit}
		if k == number || k == list {
			var ok bool
			if l.unit, ok = quantity.Lookup(unit); !ok {
				l.unit = quantity.Unit{Symbol: unit, Scale: 1}
			}
		}
		b.leaves[id] = l
	}
	u := b.units[unit]
	if u == nil {
		u = ast.StringTerm(unit)
		b.units[unit] = u
	}
	return ast.ObjectTerm([2]*ast.Term{keyID, ast.StringTerm(id)}, [2]*ast.Term{keyUnit, u})
}

func (b *builder) subject(s *facts.Subject, links bool) *ast.Term {
	c := s.Collection()
	made := b.whole
	if c.Placed && !links {
		made = b.nested
	}
	if t := made[s.ID()]; t != nil {
		return t
	}
	items := make([][2]*ast.Term, 0, len(c.Entries)+len(c.Links)+2)
	items = append(items, [2]*ast.Term{keyID, ast.StringTerm(s.ID())})
	groups := map[string][][2]*ast.Term{}
	var order []string
	for _, e := range c.Entries {
		if !visible(e) {
			continue
		}
		id := s.ID() + "." + e.Name
		unit := e.Unit
		if len(e.Units) > 0 { // a reading's value: what was measured decides
			if x, ok := b.system.Fact(id); ok {
				unit = x.Unit
			}
		}
		l := b.leaf(id, unit, kindOf(e.Kind))
		group, name, grouped := strings.Cut(e.Name, ".")
		if !grouped {
			items = append(items, [2]*ast.Term{b.key(e.Name), l})
			continue
		}
		if groups[group] == nil {
			order = append(order, group)
		}
		groups[group] = append(groups[group], [2]*ast.Term{b.key(name), l})
	}
	for _, g := range order {
		items = append(items, [2]*ast.Term{b.key(g), ast.ObjectTerm(groups[g]...)})
	}
	items = append(items, [2]*ast.Term{b.key("declared"), b.answers(s)})
	if !c.Placed || links {
		for _, l := range c.Links {
			linked := s.Linked(l.Name)
			if !l.Many {
				if len(linked) == 1 {
					items = append(items, [2]*ast.Term{b.key(l.Name), b.subject(linked[0], false)})
				}
				continue
			}
			terms := make([]*ast.Term, len(linked))
			for i, to := range linked {
				terms[i] = b.subject(to, false)
			}
			items = append(items, [2]*ast.Term{b.key(l.Name), ast.ArrayTerm(terms...)})
		}
	}
	t := ast.ObjectTerm(items...)
	made[s.ID()] = t
	return t
}

// answers gives the leaves of the codebook's own questions, answered or not.
func (b *builder) answers(s *facts.Subject) *ast.Term {
	var items [][2]*ast.Term
	asked := asks(b.book, s.Collection())
	for i := range asked {
		a := &asked[i]
		unit, k := a.Unit, number
		switch a.Form {
		case design.Word, design.Text, design.Date:
			unit, k = "word", word
		case design.YesNo:
			unit, k = "yes_no", yesNo
		}
		id := s.ID() + ".declared." + b.book.Name + "." + a.Name
		items = append(items, [2]*ast.Term{b.key(a.Name), b.leaf(id, unit, k)})
	}
	return ast.ObjectTerm(items...)
}
