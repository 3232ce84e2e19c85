package rules_test

import (
	"context"
	"encoding/json"
	"io/fs"
	"math"
	"testing"

	"stringline/lint/facts"
	"stringline/lint/judge"
	"stringline/lint/verdict"
	"stringline/rules"
	"stringline/schema/design"
)

// codeTable is one data/NAME.json of a codebook, as it is written.
type codeTable struct {
	name   string
	Status string  `json:"status"`
	Rows   [][]any `json:"rows"`
}

// codeTableOf reads a table of a codebook.
func codeTableOf(t *testing.T, book, name string) codeTable {
	t.Helper()
	text, err := fs.ReadFile(rules.Books, book+"/data/"+name+".json")
	if err != nil {
		t.Fatal(err)
	}
	table := codeTable{name: book + "/" + name}
	if err := json.Unmarshal(text, &table); err != nil {
		t.Fatal(err)
	}
	if len(table.Rows) == 0 {
		t.Fatalf("%s has no rows", table.name)
	}
	return table
}

// at gives the value of the row with these axis values, as they are written.
func (c codeTable) at(t *testing.T, axes ...any) float64 {
	t.Helper()
rows:
	for _, r := range c.Rows {
		for i, a := range axes {
			if n, ok := a.(int); ok {
				a = float64(n)
			}
			if r[i] != a {
				continue rows
			}
		}
		if v, ok := r[len(r)-1].(float64); ok {
			return v
		}
		t.Fatalf("%s gives no value for %v", c.name, axes)
	}
	t.Fatalf("%s has no row for %v", c.name, axes)
	return 0
}

// column gives what the last axis and the value hold in the rows that start
// with these axis values, in their order.
func (c codeTable) column(t *testing.T, first ...any) (axis, value []float64) {
	t.Helper()
rows:
	for _, r := range c.Rows {
		for i, a := range first {
			if n, ok := a.(int); ok {
				a = float64(n)
			}
			if r[i] != a {
				continue rows
			}
		}
		x, isNumber := r[len(r)-2].(float64)
		y, known := r[len(r)-1].(float64)
		if !isNumber || !known {
			t.Fatalf("%s: row %v is no pair of numbers", c.name, r)
		}
		axis, value = append(axis, x), append(value, y)
	}
	if len(axis) == 0 {
		t.Fatalf("%s has no rows for %v", c.name, first)
	}
	return axis, value
}

// holdWithin holds a table's value to a formula's within a share of it.
func holdWithin(t *testing.T, what string, got, want, share float64) {
	t.Helper()
	if math.IsNaN(want) || math.Abs(got-want) > share*math.Abs(want) {
		t.Errorf("%s: the table says %g, the formula %.4g; they may differ by %g %%", what, got, want, 100*share)
	}
}

// powerLaw fits y = a x^m by least squares of the logarithms.
func powerLaw(x, y []float64) (a, m float64) {
	var n, sx, sy, sxx, sxy float64
	for i := range x {
		lx, ly := math.Log(x[i]), math.Log(y[i])
		n, sx, sy, sxx, sxy = n+1, sx+lx, sy+ly, sxx+lx*lx, sxy+lx*ly
	}
	m = (n*sxy - sx*sy) / (n*sxx - sx*sx)
	return math.Exp((sy - m*sx) / n), m
}

// holdOwnCommon holds that a code book finds nothing against the design that
// its own examples share, so that a breaking example breaks by what it changes.
func holdOwnCommon(t *testing.T, name string, least int) {
	t.Helper()
	files := books(t)[name]
	book, problems := judge.Load(context.Background(), judge.Source{Name: name, Files: files, Show: "rules/" + name, Embedded: true})
	if book == nil {
		t.Fatal(problems)
	}
	d := design.Load(design.Options{
		Files: files, Path: "common.design.hcl", Parts: []design.PartsGlob{{Glob: "common.parts.hcl"}},
		Declares: func(asked string) (map[string][]design.Attribute, bool) {
			return book.Codebook().Declares(), asked == name
		},
	})
	if len(d.Problems) > 0 {
		t.Fatal(d.Problems)
	}
	verdicts, err := judge.New(judge.Options{Books: []*judge.Book{book}}).Judge(context.Background(), facts.New(d))
	if err != nil {
		t.Fatal(err)
	}
	met := 0
	for i := range verdicts {
		if v := &verdicts[i]; v.Finding() {
			t.Errorf("%s on %s %s %s: %s %v", v.Rule, v.About, v.Which, v.Outcome, v.Message, v.Missing)
		} else if v.Outcome == verdict.Meets {
			met++
		}
	}
	if met < least {
		t.Errorf("only %d verdicts meet: the design shows too little", met)
	}
}
