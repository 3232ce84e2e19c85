package judge

import (
	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/cover"

	"stringline/schema/source"
)

// Coverage tells how much of a rule its Rego tests reach: of the heads of its
// definitions and the expressions of their bodies, those that were evaluated at
// least once. What was reached is not yet tested; mutation tells that.
type Coverage struct {
	Rule           string // or "shared"
	Reached, Total int
	Missed         []source.Range // sorted
}

// coverage turns what the tests reached into figures by rule.
func (t *bookTest) coverage(reached *cover.Cover, rules []string) {
	for _, rule := range t.book.names {
		if t.asked(rules, rule) {
			t.reached(reached, rule, rule+"/rule.rego")
		}
	}
	if len(rules) == 0 {
		for _, file := range t.book.sharedFiles() {
			t.reached(reached, "shared", file)
		}
	}
}

func (t *bookTest) reached(reached *cover.Cover, rule, file string) {
	m, err := t.book.parseFile(file, false)
	if err != nil {
		return // the book has loaded, so its text parses
	}
	name := t.book.source.show(file)
	c := Coverage{Rule: rule, Total: len(countable(m))}
	if f := reached.Report(map[string]*ast.Module{name: m}).Files[name]; f != nil {
		for _, r := range f.NotCovered {
			c.Missed = append(c.Missed, source.Range{File: name,
				Start: source.Position{Line: r.Start.Row, Column: r.Start.Col}, End: source.Position{Line: r.End.Row, Column: r.End.Col}})
		}
	}
	c.Reached = c.Total - len(c.Missed)
	t.report.Coverage = append(t.report.Coverage, c)
}

// extent is where a head or an expression stands.
type extent struct{ row, column, endRow, endColumn int }

// countable gives the places that the engine's coverage looks at: the heads of
// definitions, and the expressions that do not only declare variables.
func countable(m *ast.Module) map[extent]bool {
	places := map[extent]bool{}
	add := func(l *ast.Location) {
		if l.HasFile() {
			row, column := l.End()
			places[extent{l.Row, l.Col, row, column}] = true
		}
	}
	ast.WalkRules(m, func(r *ast.Rule) bool {
		add(r.Head.Location)
		return false
	})
	ast.WalkExprs(m, func(e *ast.Expr) bool {
		if _, declares := e.Terms.(*ast.SomeDecl); !declares {
			add(e.Location)
		}
		return false
	})
	return places
}
