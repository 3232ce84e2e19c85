package judge

import (
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"stringline/lint/facts"
	"stringline/schema/codebook"
)

// siblings knows, for a path in a rule, which fact stands next to the one that
// the path ends in.
type siblings struct {
	book *codebook.Codebook
}

// of gives the path of another fact of the same subject with the same unit and
// kind: of those whose names share most words with it the next one in the table,
// round to the first again. nil where the path ends in no fact, or in the
// only one of its unit. known is the collection that the path's variable stands
// for; where that is not to be told, the first one that has all the names which
// the rule reads of it: paths are all those that begin with the variable.
func (s *siblings) of(r ast.Ref, known *facts.Collection, paths []ast.Ref) ast.Ref {
	names, ok := pathNames(r)
	if !ok {
		return nil
	}
	if r[0].Equal(ast.InputRootDocument) {
		switch {
		case names[0] == "params" && len(names) == 2:
			return renamed(r, 1, s.parameter(names[1]))
		default:
			c, ok := facts.CollectionOf(names[0])
			if !ok || !c.Single {
				return nil
			}
			last, at := s.walk(c, names[1:])
			if last == nil {
				return nil
			}
			return s.swap(r, last, names[1+at:], at+1)
		}
	}
	if known != nil {
		if last, at := s.walk(known, names); last != nil {
			return s.swap(r, last, names[at:], at)
		}
		return nil
	}
	for _, c := range facts.Collections() {
		fits := true
		for _, p := range paths {
			read, ok := pathNames(p)
			if ok && len(read) > 0 {
				fits = fits && s.fits(c, read)
			}
		}
		if !fits {
			continue
		}
		if last, at := s.walk(c, names); last != nil {
			return s.swap(r, last, names[at:], at)
		}
	}
	return nil
}

// pathNames gives what stands behind a path's head: texts alone.
func pathNames(r ast.Ref) ([]string, bool) {
	var names []string
	for _, t := range r[1:] {
		s, ok := t.Value.(ast.String)
		if !ok {
			return names, false
		}
		names = append(names, string(s))
	}
	return names, true
}

// walk follows links from a collection; at is where the last subject's own names
// begin. nil where the path does not lead to a subject's own fact.
func (s *siblings) walk(c *facts.Collection, names []string) (last *facts.Collection, at int) {
	for at < len(names) {
		l, ok := c.Link(names[at])
		if !ok {
			break
		}
		if l.Many {
			return nil, 0 // a list: nothing stands below it by name
		}
		if c, ok = facts.CollectionOf(l.To); !ok {
			return nil, 0
		}
		at++
	}
	if at == len(names) {
		return nil, 0
	}
	return c, at
}

// fits tells whether names lead anywhere in a collection.
func (s *siblings) fits(c *facts.Collection, names []string) bool {
	for i, name := range names {
		l, ok := c.Link(name)
		if !ok {
			own := strings.Join(names[i:], ".")
			if _, known := c.Entry(own); known || own == "id" {
				return true
			}
			if names[i] == "declared" && len(names) == i+2 {
				for _, a := range asks(s.book, c) {
					if a.Name == names[i+1] {
						return true
					}
				}
			}
			return false
		}
		if l.Many {
			return i == len(names)-1
		}
		if c, ok = facts.CollectionOf(l.To); !ok {
			return false
		}
	}
	return true
}

// swap exchanges the fact that own names, from place at in the path on.
func (s *siblings) swap(r ast.Ref, c *facts.Collection, own []string, at int) ast.Ref {
	name := strings.Join(own, ".")
	if own[0] == "declared" {
		return renamed(r, at+1, s.declared(c, own[len(own)-1]))
	}
	is, ok := c.Entry(name)
	if !ok || !visible(is) {
		return nil
	}
	best, most := "", -1
	for i := range c.Entries { // those behind it first, round to those before
		e := c.Entries[(slices.Index(c.Entries, is)+i)%len(c.Entries)]
		if e == is || !visible(e) || e.Unit != is.Unit || e.Kind != is.Kind {
			continue
		}
		if n := alike(name, e.Name); n > most {
			best, most = e.Name, n
		}
	}
	if best == "" {
		return nil
	}
	made := append(ast.Ref{}, r[:at+1]...)
	for _, n := range strings.Split(best, ".") {
		made = append(made, ast.StringTerm(n))
	}
	return located(made, r)
}

// alike counts the words that two names share: what is named alike is mixed up
// most easily.
func alike(a, b string) int {
	words := func(s string) []string {
		return strings.FieldsFunc(s, func(r rune) bool { return r == '_' || r == '.' })
	}
	n := 0
	for _, w := range words(a) {
		if slices.Contains(words(b), w) {
			n++
		}
	}
	return n
}

func located(made, from ast.Ref) ast.Ref {
	for i := range made {
		if made[i].Location == nil {
			made[i].Location = from[min(i, len(from)-1)].Location
		}
	}
	return made
}

// parameter gives another parameter of the same kind and unit.
func (s *siblings) parameter(name string) string {
	is, ok := s.book.Parameter(name)
	if !ok {
		return ""
	}
	for i := range s.book.Parameters {
		if p := &s.book.Parameters[i]; p.Name != name && p.Kind == is.Kind && p.Unit == is.Unit {
			return p.Name
		}
	}
	return ""
}

// declared gives another attribute that the codebook asks of a collection.
func (s *siblings) declared(c *facts.Collection, name string) string {
	asked := asks(s.book, c)
	for i := range asked {
		for j := range asked {
			if asked[i].Name == name && j != i && asked[j].Form == asked[i].Form && asked[j].Unit == asked[i].Unit {
				return asked[j].Name
			}
		}
	}
	return ""
}

// renamed exchanges one name of a path; nil where there is no other name.
func renamed(r ast.Ref, at int, name string) ast.Ref {
	if name == "" || at >= len(r) {
		return nil
	}
	made := append(ast.Ref{}, r[:at+1]...)
	made = append(made, ast.StringTerm(name))
	return located(made, r)
}
