package sweep_test

import (
	"fmt"
	"math"
	"os"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint"
	"stringline/lint/linttest"
	"stringline/lint/sweep"
	"stringline/lint/verdict"
	"stringline/rules"
)

// example reads a workshop of the examples, changed as asked: file, from, to.
func example(t testing.TB, name string, changes ...[3]string) map[string]string {
	t.Helper()
	return linttest.Change(t, linttest.Texts(t, os.DirFS("../../examples"), name), changes...)
}

// asCheck holds a row against what a run over the changed files says.
func asCheck(t *testing.T, what string, row *sweep.Row, design string, texts map[string]string) {
	t.Helper()
	found := linttest.Judged(t, rules.Books, texts, design)
	d := &found.Designs[0]
	if len(d.Problems)+len(found.Problems) > 0 || len(d.Verdicts) < 50 {
		t.Fatalf("%s: %d verdicts, %v %v", what, len(d.Verdicts), d.Problems, found.Problems)
	}
	findings := [3]int{}
	for i := range d.Verdicts {
		v := &d.Verdicts[i]
		if v.Finding() {
			findings[v.Grade.Rank()]++
		}
		if got, ok := row.Outcome(v.Key()); !ok || got != v.Outcome {
			t.Errorf("%s: %s is %q in the sweep, %s in check", what, v.Key(), got, v.Outcome)
		}
	}
	if diff := cmp.Diff(findings, row.Findings); diff != "" {
		t.Errorf("%s (-check +sweep):\n%s", what, diff)
	}
}

// The limit at which a cable still passes is its own drop: 2 x length x current x
// resistance over the voltage (common practice). The fact is told by the base.
func TestDropLimitTurnsAtTheDrop(t *testing.T) {
	r := must(t, hut(t), sweep.Options{WithoutYear: true}, "param.practice.voltage_drop_max=0.5%..5%/0.5%")
	if a := r.Axes[0]; a.Book != "practice" || a.InForce != "3 %" || a.Part != "" || !a.Between {
		t.Errorf("axis: %+v", a)
	}
	seen := 0
	for i := range r.Turns {
		turn := &r.Turns[i]
		if turn.Rule != "practice.voltage_drop" {
			t.Errorf("%s turns by the drop's limit", turn.Rule)
			continue
		}
		drop, ok := r.Base.System.Fact(turn.About + ".path_drop")
		if !ok || !drop.Known || math.Abs(turn.Met().Value-drop.SI*100) > r.Axes[0].Tolerance {
			t.Errorf("%s turns at %v %%, its drop is %v %%", turn.About, turn.Met().Value, drop.SI*100)
		}
		if turn.Before != verdict.Breaks || turn.After != verdict.Meets || turn.Limited != turn.About+".path_drop" {
			t.Errorf("%+v", turn)
		}
		seen++
	}
	if seen < 5 {
		t.Errorf("%d cables turn", seen)
	}
	for i := range r.Rows {
		for _, c := range r.Facts {
			if got := r.Rows[i].Limits[c.ID]; !c.LimitMoves || math.Abs(got-r.Axes[0].Points[i].Value) > 1e-9 {
				t.Errorf("%s at %s: allowed %v, moves %v", c.ID, r.Axes[0].Points[i].Text, got, c.LimitMoves)
			}
		}
	}
}

// A parameter is judged as a workshop that sets it would be, one that it sets
// already included; beside an attribute too; and a yes or no, and a word.
func TestParametersAreWhatCheckSays(t *testing.T) {
	set := func(text string) [3]string {
		return [3]string{"hut/workshop.hcl", `parts = ["parts/*.parts.hcl"]`, "parts = [\"parts/*.parts.hcl\"]\ncodebook \"practice\" {\n  params {\n    " + text + "\n  }\n}\n"}
	}
	r := must(t, hut(t, set(`voltage_drop_max = "4 %"`)), sweep.Options{}, "param.practice.voltage_drop_max=1%,1.5%,2%")
	if r.Axes[0].InForce != "4 %" {
		t.Errorf("in force: %q", r.Axes[0].InForce)
	}
	asCheck(t, "1.5 %", &r.Rows[1], "hut/hut.design.hcl", hut(t, set(`voltage_drop_max = "1.5 %"`)))
	r = must(t, hut(t), sweep.Options{}, "param.practice.autonomy_min=1d..5d/1d", "cable_run.array.south.length=10m,80m")
	asCheck(t, "80 m and 4 d", &r.Rows[8], "hut/hut.design.hcl", hut(t, set(`autonomy_min = "4 d"`), [3]string{"hut/hut.design.hcl", `length               = "10 m"`, `length               = "80 m"`}))
}

// An answer is written where it stands, or would stand: into the block that
// answers the codebook, or a new one.
func TestAnswersAreWhatCheckSays(t *testing.T) {
	const design = "ranch/ranch.design.hcl"
	open := func(changes ...[3]string) *lint.Bench {
		return linttest.Bench(t, rules.Books, example(t, "ranch", changes...), design)
	}
	const site = "  declared \"us_2023\" {\n    occupancy = \"other\"\n    structure = \"building\"\n  }\n"
	stands := func(occupancy, structure string) [3]string {
		return [3]string{design, site, fmt.Sprintf("  declared \"us_2023\" {\n    occupancy = %q\n    structure = %q\n  }\n", occupancy, structure)}
	}
	both := []string{"site.declared.us_2023.occupancy=other,one_two_family", "site.declared.us_2023.structure=building,open_detached"}
	for what, bench := range map[string]*lint.Bench{
		"stands":      open(),
		"one missing": open([3]string{design, "    structure = \"building\"\n", ""}),
		"no block":    open([3]string{design, site, ""}),
	} {
		r, err := runOn(t, bench, sweep.Options{}, both...)
		if err != nil {
			t.Fatalf("%s: %v", what, err)
		}
		if a := r.Axes[1]; a.Book != "us_2023" || a.InForce != "" || a.Between {
			t.Errorf("%s: axis %+v", what, a)
		}
		asCheck(t, what, &r.Rows[1], design, example(t, "ranch", stands("one_two_family", "building")))
		asCheck(t, what, &r.Rows[2], design, example(t, "ranch", stands("other", "open_detached")))
	}
	bench := open()
	r, err := runOn(t, bench, sweep.Options{WithoutYear: true}, "bank.house.declared.us_2023.ventilated=true,false")
	if err != nil {
		t.Fatal(err)
	}
	if found := turn(t, r, "us_2023.ventilation", "bank.house"); found.High.Text != "false" || found.After != verdict.Breaks {
		t.Errorf("ventilation: %+v", found)
	}
	r, err = runOn(t, bench, sweep.Options{WithoutYear: true}, "disconnect.array.south.declared.us_2023.distance_to_equipment=1m..10m/1m")
	if err != nil {
		t.Fatal(err)
	}
	// NEC 2023 690.15(D): within 3 m (10 ft), from memory.
	if found := turn(t, r, "us_2023.disconnect_distance", "disconnect.array.south"); math.Abs(found.Met().Value-3) > 1e-3 {
		t.Errorf("the distance turns at %v", found.Met())
	}
	for over, want := range map[string]string{
		"bank.house.declared.us_2023.ventilatd=true,false": `did you mean "bank.house.declared.us_2023.ventilated"?`,
		"bank.house.declared.us_2023.ventilated=yes,no":    "true or false",
		"pv_input.main.1.declared.us_2023.listed=true":     "no block",
		"site.declared.us_2023.occupancy=shop,other":       "one_two_family",
	} {
		if _, err := runOn(t, bench, sweep.Options{WithoutYear: true}, over); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%s: %v; want %q", over, err, want)
		}
	}
	if _, err := runOn(t, bench, sweep.Options{WithoutYear: true}, both[0], both[0]); err == nil || !strings.Contains(err.Error(), "are the same value") {
		t.Errorf("twice the same: %v", err)
	}
}

// Two attributes that a block on one line does not have yet.
func TestTwoAbsentOnOneLine(t *testing.T) {
	const long = "grounding {\n"
	texts := hut(t)
	at := strings.Index(texts["hut/hut.design.hcl"], long)
	end := at + strings.Index(texts["hut/hut.design.hcl"][at:], "\n}") + 2
	before := texts["hut/hut.design.hcl"]
	with := func(block string) map[string]string {
		all := hut(t)
		all["hut/hut.design.hcl"] = before[:at] + block + before[end:]
		return all
	}
	for _, short := range []string{`grounding { dc = "negative" }`, "grounding {}", "grounding { }"} {
		r := must(t, with(short), sweep.Options{}, "grounding.frames_bonded=true,false", "grounding.dc_bonds=0..2/1")
		first := ""
		if strings.Contains(short, "dc") {
			first = "  dc = \"negative\"\n"
		}
		asCheck(t, short, &r.Rows[3], "hut/hut.design.hcl", with("grounding {\n"+first+"  frames_bonded = false\n  dc_bonds = 1\n}"))
	}
}
