package judge_test

import (
	"context"
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint/judge"
	"stringline/lint/verdict"
	"stringline/schema/codebook"
	"stringline/schema/source"
)

const withParameter = bookHead + `
parameter "cold_share" {
  kind    = "quantity"
  unit    = "%"
  default = "90 %"
  range   = ["50 %", "100 %"]
  means   = "share of the controller's limit that may be used"
}
attribute "shaded" {
  of    = "arrays"
  kind  = "yes_no"
  means = "a tree stands before it"
}
`

func TestParametersAndGrades(t *testing.T) {
	files := withParameter + rule("r", "pv_inputs", `check contains {
	"about": i.id, "is": i.voc_cold, "at_most": fact.times([input.params.cold_share, i.controller.pv_voltage_max]),
	"say": "{about}: {is} of {limit}", "remedy": "stay below {limit}", "also": [i.voc_stc],
} if some i in input.pv_inputs`)
	at := source.Range{File: "workshop.hcl", Start: source.Position{Line: 3, Column: 5}, End: source.Position{Line: 3, Column: 9}}
	for _, test := range []struct {
		name       string
		options    judge.Options
		outcome    verdict.Outcome
		grade      verdict.Grade
		message    string
		parameters []verdict.Parameter
	}{
		// 3 x 37.4 V x (1 + 0.0026 x 52) = 127.3694 V, and 90 % of 150 V is 135 V.
		{"default", judge.Options{}, verdict.Meets, verdict.Stop, "pv_input.main.1: 127.4 V of 135.0 V",
			[]verdict.Parameter{{Name: "cold_share", Value: "90 %"}}},
		{"set", judge.Options{Parameters: map[string]map[string]judge.Setting{"small": {"cold_share": {Value: codebook.Value{SI: 0.8, Text: "80 %"}, SetAt: at}}},
			Grades: map[string]verdict.Grade{"small.r": verdict.Advise}}, verdict.Breaks, verdict.Advise, "pv_input.main.1: 127.4 V of 120.0 V",
			[]verdict.Parameter{{Name: "cold_share", Value: "80 %", SetAt: at}}},
	} {
		t.Run(test.name, func(t *testing.T) {
			test.options.Books = []*judge.Book{loaded(t, files)}
			vs, err := judge.New(test.options).Judge(context.Background(), system(t, hut))
			if err != nil || len(vs) != 1 {
				t.Fatal(lines(vs), err)
			}
			v := vs[0]
			if v.Outcome != test.outcome || v.Grade != test.grade || v.BookGrade != verdict.Stop || v.Message != test.message {
				t.Errorf("%s, grade %s of %s, %q", v.Outcome, v.Grade, v.BookGrade, v.Message)
			}
			if diff := cmp.Diff(test.parameters, v.Parameters); diff != "" {
				t.Errorf("parameters:\n%s", diff)
			}
			if got, want := v.Limits[0].Formula, "param.small.cold_share x controller.ridge.pv_voltage_max"; got != want {
				t.Errorf("formula %q", got)
			}
			if got := v.Limits[0].Says; got != test.parameters[0].Value[:2]+".0 % x 150.0 V" {
				t.Errorf("says %q", got)
			}
			if got := v.Is.Value; got == nil || math.Abs(*got-127.36944) > 1e-5 || v.Is.Unit != "V" {
				t.Errorf("is %v %s", got, v.Is.Unit)
			}
			if len(v.Also) != 1 || v.Also[0].ID != "pv_input.main.1.voc_stc" || *v.Also[0].Value < 112.19 || *v.Also[0].Value > 112.21 {
				t.Errorf("also %+v", v.Also)
			}
			var places []string
			for _, r := range v.At {
				places = append(places, fmt.Sprintf("%d", r.Start.Line))
			}
			// The array's header; then voc, the string's panels, temp_voc,
			// coldest; then the controller's limit.
			if len(places) < 4 || places[0] != "35" || !strings.HasPrefix(v.Remedy, "stay below 1") {
				t.Errorf("places %v, remedy %q", places, v.Remedy)
			}
		})
	}
}

// A setting that could not be read is unknown; the default does not stand for it.
func TestBadSetting(t *testing.T) {
	book := loaded(t, withParameter+rule("r", "pv_inputs", `check contains {"about": i.id, "is": i.voc_cold, "at_most": fact.times([input.params.cold_share, i.controller.pv_voltage_max])} if some i in input.pv_inputs`))
	j := judge.New(judge.Options{Books: []*judge.Book{book}, Parameters: map[string]map[string]judge.Setting{"small": {"cold_share": {Bad: true}}}})
	vs, err := j.Judge(context.Background(), system(t, hut))
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff([]string{"r pv_input.main.1: unproven, missing param.small.cold_share"}, lines(vs)); diff != "" {
		t.Error(diff)
	}
	if diff := cmp.Diff([]verdict.Parameter{{Name: "cold_share", Value: "unknown"}}, vs[0].Parameters); diff != "" {
		t.Error(diff)
	}
}

// A codebook's own question: answered, and left open.
func TestDeclared(t *testing.T) {
	files := withParameter + rule("r", "arrays", `check contains {"about": a.id, "is_true": fact.no(a.declared.shaded), "because": "it is shaded"} if some a in input.arrays`)
	book := loaded(t, files)
	for _, test := range []struct{ name, answer, want string }{
		{"open", "", "r array.south: unproven, missing array.south.declared.small.shaded"},
		{"no", `declared "small" { shaded = false }`, "r array.south: meets"},
		{"yes", `declared "small" { shaded = true }`, "r array.south: breaks, because it is shaded"},
	} {
		t.Run(test.name, func(t *testing.T) {
			s := declaring(t, strings.Replace(hut, "array \"south\" {\n", "array \"south\" {\n  "+strings.Replace(strings.Replace(test.answer, "{ ", "{\n", 1), " }", "\n}", 1)+"\n", 1), book)
			vs, err := judge.New(judge.Options{Books: []*judge.Book{book}}).Judge(context.Background(), s)
			if err != nil {
				t.Fatal(err)
			}
			if diff := cmp.Diff([]string{test.want}, lines(vs)); diff != "" {
				t.Error(diff)
			}
		})
	}
}

// A table, a word and a yes/no parameter in one codebook: rows of the ambient
// correction of NEC 310.15(B)(1), 90 degC column, public transcription. 10 AWG
// carries 40 A in that column, 34.8 A at 45 degC (published study notes).
func TestTableInARule(t *testing.T) {
	const book = bookHead + `
parameter "method" {
  kind    = "word"
  words   = ["table", "none"]
  default = "table"
  means   = "how ambient temperature counts"
}
parameter "strict" {
  kind    = "yes_no"
  default = true
  means   = "whether it counts at all"
}
-- data/factors.json --
{"title": "ambient correction", "source": "sheet", "status": "transcribed", "unit": "",
 "axes": [{"name": "ambient", "unit": "degC", "match": "up_to"}],
 "rows": [[30, 1.0], [35, 0.96], [40, 0.91], [45, 0.87], [50, 0.82]]}
`
	body := `check contains {
	"about": r.id, "when": fact.all([input.params.strict, fact.one_of(input.params.method, ["table"])]),
	"is": fact.number(%s, "A"), "at_most": fact.times([fact.number(40, "A"), fact.lookup("factors", [r.ambient])]),
} if some r in input.cable_runs`
	design := func(ambient string) string {
		return strings.Replace(hut, "array \"south\" {\n", "array \"south\" {\n  cable_run {\n    size = \"10 AWG\"\n    length = \"5 m\"\n"+ambient+"  }\n", 1)
	}
	for _, test := range []struct{ name, current, ambient, want string }{
		{"exactly", "34.8", "    ambient = \"45 degC\"\n", "r cable_run.array.south: meets, spare 0 A, headroom 0.0000"},
		{"above", "34.81", "    ambient = \"45 degC\"\n", "r cable_run.array.south: breaks, spare -0.01 A, headroom -0.0003"},
		{"a little hotter takes the next row", "34.8", "    ambient = \"45.1 degC\"\n", "r cable_run.array.south: breaks, spare -2 A, headroom -0.0610"},
		{"beyond the table", "1", "    ambient = \"51 degC\"\n", `r cable_run.array.south: void, book/r/rule.rego:15:74: fact.lookup: table "factors" has no row for ambient 51.0 degC: it goes from 30.0 degC to 50.0 degC`},
		{"unknown", "1", "", "r cable_run.array.south: unproven, missing cable_run.array.south.ambient"},
	} {
		t.Run(test.name, func(t *testing.T) {
			vs := verdicts(t, book+rule("r", "cable_runs", fmt.Sprintf(body, test.current)), design(test.ambient))
			if diff := cmp.Diff([]string{test.want}, lines(vs)); diff != "" {
				t.Errorf("verdicts (-want +got):\n%s", diff)
			}
			if vs[0].Outcome != verdict.Meets {
				return
			}
			want := []verdict.Parameter{{Name: "strict", Value: "yes"}, {Name: "method", Value: "table"}}
			if diff := cmp.Diff(want, vs[0].Parameters); diff != "" {
				t.Errorf("parameters:\n%s", diff)
			}
			if got, want := vs[0].Limits[0].Formula, "40 A x factors (cable_run.array.south.ambient)"; got != want {
				t.Errorf("formula %q, want %q", got, want)
			}
		})
	}
}
