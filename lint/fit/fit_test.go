package fit_test

import (
	"context"
	"fmt"
	"math"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint"
	"stringline/lint/fit"
	"stringline/lint/linttest"
	"stringline/lint/verdict"
	"stringline/rules"
)

// example reads a workshop of the examples, by path on the disk of a test.
func example(t testing.TB, name string) map[string]string {
	t.Helper()
	return linttest.Texts(t, os.DirFS("../../examples"), name)
}

func options(texts map[string]string, file string) lint.Options {
	return linttest.Options(rules.Books, texts, file)
}

func find(t testing.TB, texts map[string]string, file string, o fit.Options) *fit.Result {
	t.Helper()
	opts := options(texts, file)
	opts.Trust = []string{"fell_county"}
	bench, err := lint.OpenBench(context.Background(), opts)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(bench.Close)
	r, err := fit.Find(context.Background(), bench, o)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// farm is the farm with four batteries side by side, nothing but the controller
// on its bank, and a fuse in every string.
func farm(t testing.TB) map[string]string {
	texts := example(t, "growth")
	text := texts["growth/growth-12.design.hcl"]
	for _, c := range [][2]string{
		{"parallel               = 2\n", "parallel               = 4\n"},
		{"    cable_run {\n      cable                = \"ply-6\"\n      length               = \"2 m\"", "    fuse {\n      fuse     = \"pv-25\"\n      distance = \"0.2 m\"\n    }\n    cable_run {\n      cable                = \"ply-6\"\n      length               = \"2 m\""},
	} {
		if strings.Count(text, c[0]) != 1 {
			t.Fatalf("%q stands %d times in the example", c[0], strings.Count(text, c[0]))
		}
		text = strings.Replace(text, c[0], c[1], 1)
	}
	from, to := strings.Index(text, "# 800 W / (12.2 V"), strings.Index(text, "grounding {")
	text = text[:from] + text[to:]
	return map[string]string{"growth/farm.design.hcl": text, "growth/workshop.hcl": texts["growth/workshop.hcl"], "growth/parts/store.parts.hcl": texts["growth/parts/store.parts.hcl"]}
}

// shape is an arrangement of like panels on one array.
type shape struct{ volts, series, parallel int }

func shapes(list []*fit.Arrangement) (all []shape) {
	for _, a := range list {
		all = append(all, shape{int(a.Banks[0].Voltage), a.Strings[0].Series[0].Count, a.Strings[0].Parallel})
	}
	slices.SortFunc(all, func(a, b shape) int {
		return slices.Compare([]int{a.volts, a.series, a.parallel}, []int{b.volts, b.series, b.parallel})
	})
	return all
}

// Nine like panels and one controller of 60 A, 150 V at 12, 24 and 48 V, by hand:
//   - the coldest morning (check-values A2: Voc x (1 + coefficient x difference))
//     keeps the string under the controller's limit
//   - hot, the working voltage Vmp x (1 + (gamma - alpha) x difference) (part 2 of
//     the specification, from memory) stays above absorption and 1 V
//   - power: bank voltage x rated current (check-values F2), and the maker's 130 %
//   - Isc of all strings, a quarter more under bright cloud edges (common practice)
//     and hot, under what the input survives
func TestNinePanelsByHand(t *testing.T) {
	const (
		voc, isc, vmp, pmax           = 37.4, 13.95, 31.4, 410.0
		tempVoc, tempIsc, tempPmax    = -0.0026, 0.00045, -0.0034
		coldest, hottest, noct        = -15.0, 33.0, 45.0
		limit, survives, rated, above = 150.0, 60.0, 60.0, 1.0
		absorption                    = 14.2 // for 12 V
		count                         = 9
	)
	cellHot := hottest + (noct-20)*1000/800
	var want []shape
	for _, volts := range []int{12, 24, 48} {
		bank := absorption * float64(volts) / 12
		for n := 1; n <= count; n++ {
			for p := 1; n*p <= count; p++ {
				cold := float64(n) * voc * (1 + tempVoc*(coldest-25))
				hot := float64(n) * vmp * (1 + (tempPmax-tempIsc)*(cellHot-25))
				power := float64(n*p) * pmax
				if cold <= limit && hot >= bank+above && power <= 1.3*float64(volts)*rated && float64(p)*isc*1.25*(1+tempIsc*(cellHot-25)) <= survives {
					want = append(want, shape{volts, n, p})
				}
			}
		}
	}
	byHand := []shape{{12, 1, 1}, {12, 1, 2}, {12, 2, 1}, {24, 2, 1}, {24, 2, 2}, {24, 3, 1}, {48, 3, 1}, {48, 3, 2}, {48, 3, 3}}
	if diff := cmp.Diff(byHand, want, cmp.AllowUnexported(shape{})); diff != "" {
		t.Fatalf("the closed forms give another list than was worked out on paper:\n%s", diff)
	}
	texts := farm(t)
	r := find(t, texts, "growth/farm.design.hcl", fit.Options{Panels: []fit.Panels{{Name: "shale-410", Count: count}}})
	if diff := cmp.Diff(byHand, shapes(r.Answers), cmp.AllowUnexported(shape{})); diff != "" {
		t.Errorf("answers (-by hand +fit):\n%s", diff)
	}
	for _, g := range r.Stopped {
		t.Logf("%s %s: %v", g.Grade, g.Rule, shapes(g.Stopped))
	}
	if len(r.After) > 0 || r.Judged != 3*23 || r.Possible != r.Judged || r.More {
		t.Errorf("%d after changes, %d judged of %d", len(r.After), r.Judged, r.Possible)
	}
	if best := r.Answers[0]; best.Number != 1 || shapes(r.Answers[:1])[0] != (shape{48, 3, 3}) || len(best.LeftOver) > 0 || best.YearlyEnergy == nil || best.Least == nil {
		t.Errorf("the best is %+v", best)
	}
	takeAll(t, texts, "growth/farm.design.hcl", r)
}

// takeAll writes out every answer and has check judge it, as a file beside the
// design: nothing may be found that the fit did not tell.
func takeAll(t *testing.T, texts map[string]string, file string, r *fit.Result) {
	t.Helper()
	told := func(list []verdict.Verdict) map[string]bool {
		keys := map[string]bool{}
		for i := range list {
			keys[list[i].Key()] = true
		}
		return keys
	}
	beside := told(r.Beside)
	written := map[string]string{}
	for name, text := range texts {
		if name != file {
			written[name] = text
		}
	}
	answers := map[string]*fit.Arrangement{}
	var paths []string
	for _, a := range r.Numbered() {
		text, taken, err := r.Take(context.Background(), a.Number)
		if err != nil {
			t.Errorf("arrangement %d: %v", a.Number, err)
			continue
		}
		copied := fmt.Sprintf("%s/taken-%d.design.hcl", path.Dir(file), a.Number)
		written[copied], answers[copied] = string(text), taken
		paths = append(paths, copied)
		if a.State == fit.Meets && taken.State != fit.Meets {
			t.Errorf("arrangement %d was an answer, and is %s", a.Number, taken.State)
		}
	}
	if len(paths) == 0 {
		return
	}
	o := options(written, "")
	o.Paths, o.Trust = paths, []string{"fell_county"}
	found, err := lint.Run(context.Background(), o)
	if err != nil {
		t.Fatal(err)
	}
	if len(found.Problems) > 0 || len(found.Designs) != len(paths) {
		t.Errorf("%d designs of %d: %v", len(found.Designs), len(paths), found.Problems)
	}
	for i := range found.Designs {
		d := &found.Designs[i]
		taken := answers[d.File]
		if len(d.Problems) > 0 {
			t.Errorf("arrangement %d has errors: %v", taken.Number, d.Problems)
		}
		change, stops := told(taken.MustChange), told(taken.Stops)
		for i := range d.Verdicts {
			v := &d.Verdicts[i]
			if !v.Finding() || v.Grade == verdict.Advise {
				continue
			}
			if !beside[v.Key()] && !change[v.Key()] && !stops[v.Key()] {
				t.Errorf("%s, arrangement %d (%+v): check finds %s %s: %s", file, taken.Number, taken.Strings, v.Grade, v.Key(), v.Message)
			}
			if taken.State == fit.Meets && !beside[v.Key()] {
				t.Errorf("%s, arrangement %d is an answer, and check finds %s", file, taken.Number, v.Key())
			}
		}
		if taken.YearlyEnergy != nil {
			if f, ok := d.System.Fact("system.yearly_yield"); !ok || !f.Known || math.Abs(f.SI-*taken.YearlyEnergy) > 1e-9*f.SI {
				t.Errorf("arrangement %d: a year gives %v, its own text %v", taken.Number, *taken.YearlyEnergy, f.SI)
			}
		}
	}
}

// Of every example, sound or broken: what fit answers check does not refuse, and
// the design itself is among the answers where it is sound.
func TestExamples(t *testing.T) {
	files, err := filepath.Glob("../../examples/*/*.design.hcl")
	if err != nil || len(files) < 10 {
		t.Fatalf("%d examples: %v", len(files), err)
	}
	for _, file := range files {
		folder, name := filepath.Base(filepath.Dir(file)), filepath.Base(file)
		if underRace && !slices.Contains([]string{"growth-24.design.hcl", "clinic.design.hcl", "hut-broken.design.hcl"}, name) {
			continue
		}
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			texts := example(t, folder)
			o := fit.Options{Most: 90, Years: 5}
			if underRace {
				o = fit.Options{Most: 12, Years: 2}
			}
			r := find(t, texts, folder+"/"+name, o)
			sound := !strings.Contains(name, "broken")
			asIs := slices.ContainsFunc(r.Answers, func(a *fit.Arrangement) bool { return a.AsIs })
			if sound && !asIs && !underRace { // a dozen need not hold it
				t.Errorf("the sound design is not among the %d answers", len(r.Answers))
				for _, g := range r.Stopped {
					for _, a := range g.Stopped {
						if a.AsIs {
							t.Errorf("it is stopped: %s %v %v", g.Rule, a.Problems, a.Stops)
						}
					}
				}
			}
			takeAll(t, texts, folder+"/"+name, r)
			t.Logf("%d answers, %d after changes, %d judged of %d", len(r.Answers), len(r.After), r.Judged, r.Possible)
		})
	}
}
