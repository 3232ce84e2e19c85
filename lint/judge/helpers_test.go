package judge_test

import (
	"context"
	"testing"
	"testing/fstest"

	"github.com/rogpeppe/go-internal/txtar"

	"stringline/lint/facts"
	"stringline/lint/judge"
	"stringline/lint/verdict"
	"stringline/schema/design"
)

// folder makes a tree of files from a txtar archive.
func folder(archive string) fstest.MapFS {
	tree := fstest.MapFS{}
	for _, f := range txtar.Parse([]byte(archive)).Files {
		tree[f.Name] = &fstest.MapFile{Data: f.Data}
	}
	return tree
}

// system loads a design and its facts; the design must be sound.
func system(t testing.TB, text string) *facts.System {
	t.Helper()
	d := design.Load(design.Options{Files: fstest.MapFS{}, Path: "hut.design.hcl", Text: []byte(text)})
	if len(d.Problems) > 0 {
		t.Fatalf("the test's design has problems:\n%v", d.Problems)
	}
	return facts.New(d)
}

// loaded loads a codebook that must be sound.
func loaded(t testing.TB, archive string) *judge.Book {
	t.Helper()
	b, problems := judge.Load(context.Background(), judge.Source{Files: folder(archive), Show: "book"})
	if len(problems) > 0 {
		t.Fatalf("loading the test's codebook:\n%v", problems)
	}
	return b
}

// verdicts judges a design by one codebook.
func verdicts(t testing.TB, archive, text string) []verdict.Verdict {
	t.Helper()
	j := judge.New(judge.Options{Books: []*judge.Book{loaded(t, archive)}})
	vs, err := j.Judge(context.Background(), system(t, text))
	if err != nil {
		t.Fatal(err)
	}
	return vs
}

// hut is a small sound design. Part names and values are invented.
const hut = `design "Hut" {}
site {
  coldest = "-27 degC"
  hottest = "29 degC"
}
panel "slate" {
  pmax     = "410 W"
  voc      = "37.4 V"
  isc      = "13.8 A"
  vmp      = "31.4 V"
  imp      = "13.06 A"
  temp_voc = "-0.26 %/K"
  cells    = 54
}
controller "ridge" {
  kind               = "mppt"
  pv_voltage_max     = "150 V"
  charge_current_max = "70 A"
}
battery "fell" {
  chemistry = "lifepo4"
  nominal   = "25.6 V"
  capacity  = "200 Ah"
  cells     = 8
}
bank "house" {
  battery  = "fell"
  series   = 1
  parallel = 2
}
charger "main" {
  controller = "ridge"
  bank       = "house"
}
array "south" {
  charger = "main"
  string "a" {
    panels = { "slate" = 3 }
  }
}
`

// declaring loads a design that answers a codebook's own questions.
func declaring(t testing.TB, text string, book *judge.Book) *facts.System {
	t.Helper()
	d := design.Load(design.Options{Files: fstest.MapFS{}, Path: "hut.design.hcl", Text: []byte(text),
		Declares: func(name string) (map[string][]design.Attribute, bool) {
			return book.Codebook().Declares(), name == book.Name()
		}})
	if len(d.Problems) > 0 {
		t.Fatalf("the test's design has problems:\n%v", d.Problems)
	}
	return facts.New(d)
}
