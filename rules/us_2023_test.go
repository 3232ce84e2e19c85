package rules_test

import (
	"context"
	"fmt"
	"io/fs"
	"math"
	"os"
	"slices"
	"strings"
	"testing"

	"stringline/lint/facts"
	"stringline/lint/judge"
	"stringline/lint/verdict"
	"stringline/rules"
	"stringline/schema/design"
)

// unitedStates loads us_2023, and gives a function that judges a design's text by
// it alone: verdicts by rule, subject and which.
func unitedStates(t *testing.T) func(t *testing.T, text string) map[string]verdict.Verdict {
	t.Helper()
	files, err := fs.Sub(rules.Books, "us_2023")
	if err != nil {
		t.Fatal(err)
	}
	book, problems := judge.Load(context.Background(), judge.Source{Name: "us_2023", Files: files, Show: "us_2023", Embedded: true})
	if book == nil {
		t.Fatal(problems)
	}
	j := judge.New(judge.Options{Books: []*judge.Book{book}})
	return func(t *testing.T, text string) map[string]verdict.Verdict {
		t.Helper()
		d := design.Load(design.Options{Files: files, Path: "x.design.hcl", Text: []byte(text), Declares: func(name string) (map[string][]design.Attribute, bool) {
			return book.Codebook().Declares(), name == "us_2023"
		}})
		if len(d.Problems) > 0 {
			t.Fatal(d.Problems)
		}
		vs, err := j.Judge(context.Background(), facts.New(d))
		if err != nil {
			t.Fatal(err)
		}
		byKey := map[string]verdict.Verdict{}
		for _, v := range vs {
			byKey[strings.TrimPrefix(v.Key(), "us_2023.")] = v
		}
		return byKey
	}
}

// published is one figure of a published example.
type published struct {
	key    string  // of the verdict
	is     float64 // amperes; 0: not compared
	limit  float64
	met    bool
	source string
}

// TestPublishedExamples holds the currents, derated ampacities and sizes of
// published examples. Tolerance 0.3 %: published work rounds 1.5625 to 1.56.
func TestPublishedExamples(t *testing.T) {
	judged := unitedStates(t)
	const (
		appendix = "Wiles, Suggested Practices, Sandia National Laboratories, design examples (recomputed)"
		memory   = "the same (from memory, recomputed)"
		note     = "study note on the 2023 code (recomputed)"
	)
	for file, figures := range map[string][]published{
		"residential-subarrays": {
			{"conductor_corrected|cable_run.string.one.a|", 4.06, 20.3, true, appendix + ": 35 A x 0.58 on 14 AWG"},
			{"conductor_continuous|cable_run.string.one.a|", 5.08, 35, true, appendix},
			{"conductor_corrected|cable_run.array.one|", 20.3, 31.9, true, appendix + ": 55 A x 0.58 on 10 AWG"},
			{"conductor_continuous|cable_run.array.one|", 25.39, 55, true, appendix},
			{"device_continuous|protection.array.one|", 30, 25.39, true, appendix + ": a 30 A fuse"},
			{"small_conductor|protection.array.one|", 30, 30, true, "240.4(D): 10 AWG"},
			{"conductor_terminals|cable_run.ac_output.house|", 64.6, 85, true, memory + ": 500 W at 10.75 V and 90 %"},
			{"device_continuous|protection.ac_output.house|", 70, 64.6, true, memory},
			{"conductor_terminals|cable_run.bank.house|", 70.85, 85, true, memory + ": 64.6 A + 1.25 x 5 A, given as 71 A"},
			{"device_continuous|protection.bank.house|", 80, 70.85, true, memory + ": an 80 A fuse"},
		},
		"residential-array": {
			{"conductor_corrected|cable_run.array.whole|", 40.6, 46.4, true, memory + ": 80 A x 0.58 on 8 AWG"},
			{"device_continuous|protection.array.whole|", 60, 50.7, true, memory + ": a 60 A breaker"},
		},
		"study-note": {
			{"conductor_corrected|cable_run.string.south.a|", 14.0, 34.8, true, note + ": 40 A x 0.87"},
			{"conductor_continuous|cable_run.string.south.a|", 17.5, 40, true, note},
			{"device_continuous|protection.string.south.a|", 20, 17.5, true, note + ": next standard fuse 20 A"},
			{"conductor_corrected|cable_run.ac_output.house|", 133.7, 195, true, "2500 W at 22 V and 85 % (recomputed)"},
			{"conductor_terminals|cable_run.ac_output.house|", 167.1, 175, true, "the same, x 1.25, on 2/0 AWG"},
			{"device_continuous|protection.ac_output.house|", 175, 167.1, true, "the same"},
		},
	} {
		text, err := os.ReadFile("testdata/published/" + file + ".design.hcl")
		if err != nil {
			t.Fatal(err)
		}
		verdicts := judged(t, string(text))
		for _, want := range figures {
			v, ok := verdicts[want.key]
			if !ok || v.Is == nil || v.Is.Value == nil || len(v.Limits) != 1 || v.Limits[0].Value == nil {
				t.Errorf("%s: %s: no figures: %s %s", file, want.key, v.Outcome, v.Message)
				continue
			}
			if is, limit := *v.Is.Value, *v.Limits[0].Value; math.Abs(is-want.is) > 0.003*want.is || math.Abs(limit-want.limit) > 0.003*want.limit {
				t.Errorf("%s: %s: %g against %g, want %g against %g (%s)", file, want.key, is, limit, want.is, want.limit, want.source)
			}
			if (v.Outcome == verdict.Meets) != want.met {
				t.Errorf("%s: %s %s", file, want.key, v.Outcome)
			}
		}
		for key, v := range verdicts {
			if v.Outcome == verdict.Void {
				t.Errorf("%s: %s is void: %s", file, key, v.Message)
			}
		}
	}
	// The sizes that the examples choose are the next standard ones: 240.6(A), check value B7.
	standard := column(t, "standard_240_6", func(r []any) bool { return r[0] == "fuse" })
	for need, want := range map[float64]float64{25.39: 30, 50.78: 60, 70.85: 80, 17.5: 20, 167.1: 175, 21.72: 25} {
		i := slices.IndexFunc(standard, func(s float64) bool { return s >= need })
		if i < 0 || standard[i] != want {
			t.Errorf("the next standard size above %g A is not %g A", need, want)
		}
	}
}

// conditions are those that one run lies in, in a design that holds little else.
type conditions struct {
	size, material string
	insulation     float64 // degC
	ambient        string
	grouped        int
	freeAir        bool
	terminals      float64 // degC as marked; 0: not marked
	device         string  // block of its protection, such as "fuse {...}"
}

func (c conditions) judged(t *testing.T, judged func(*testing.T, string) map[string]verdict.Verdict) map[string]verdict.Verdict {
	t.Helper()
	method, material := "conduit", "Cu"
	if c.freeAir {
		method = "free_air"
	}
	if c.material != "" {
		material = c.material
	}
	marked := ""
	if c.terminals > 0 {
		marked = fmt.Sprintf("\n    terminal_temperature = \"%g degC\"", c.terminals)
	}
	return judged(t, fmt.Sprintf(`
design "one run" {
  revision = "A"
}
site {
  place = "building"
}
battery "b" {
  nominal = "51.2 V"
}
controller "c" {
  charge_current_max = "1 A"
}
bank "house" {
  battery  = "b"
  series   = 1
  parallel = 1
}
charger "main" {
  controller = "c"
  bank       = "house"
  cable_run {
    size       = %q
    material   = %q
    length     = "2 m"
    insulation = "%g degC"
    ambient    = %q
    method     = %q%s
    cores      = "single"
    grouped    = %d
  }
  %s
}
`, c.size, material, c.insulation, c.ambient, method, marked, c.grouped, c.device))
}

// ampacity is a run's ampacity under the conditions that it lies in.
func (c conditions) ampacity(t *testing.T, judged func(*testing.T, string) map[string]verdict.Verdict) float64 {
	t.Helper()
	return limit(t, c.judged(t, judged), "conductor_corrected|cable_run.charger.main|")
}

func limit(t *testing.T, verdicts map[string]verdict.Verdict, key string) float64 {
	t.Helper()
	v, ok := verdicts[key]
	if !ok || len(v.Limits) != 1 || v.Limits[0].Value == nil {
		t.Fatalf("%s: %s %s %v", key, v.Outcome, v.Message, v.Missing)
	}
	return *v.Limits[0].Value
}

// TestMemoryIsNoStop: no rule that rests on memory alone stops anybody.
func TestMemoryIsNoStop(t *testing.T) {
	files, err := fs.Sub(rules.Books, "us_2023")
	if err != nil {
		t.Fatal(err)
	}
	book, problems := judge.Load(context.Background(), judge.Source{Name: "us_2023", Files: files, Show: "us_2023", Embedded: true})
	if book == nil {
		t.Fatal(problems)
	}
	read := map[string]bool{}
	for _, s := range book.Codebook().Sources {
		read[s.Key] = s.Status != "from memory"
	}
	stops := 0
	for _, r := range book.Rules() {
		if r.Grade != verdict.Stop {
			continue
		}
		stops++
		if !slices.ContainsFunc(r.Cites, func(key string) bool { return read[key] }) {
			t.Errorf("%s is a stop and cites %v, from memory alone", r.ID, r.Cites)
		}
	}
	if stops < 20 {
		t.Errorf("only %d stops", stops)
	}
}
