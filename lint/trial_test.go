package lint_test

import (
	"context"
	"fmt"
	"math"
	"strings"
	"sync"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint"
	"stringline/lint/facts"
	"stringline/lint/linttest"
	"stringline/lint/verdict"
	"stringline/rules"
)

func benchOf(t testing.TB, texts map[string]string, path string, stdin []byte) *lint.Bench {
	t.Helper()
	var paths []string
	if path != "" {
		paths = []string{path}
	}
	b, err := lint.OpenBench(context.Background(), lint.Options{Disk: linttest.NewDisk(texts), Embedded: rules.Books, WorkingDir: "/hut", Paths: paths,
		Stdin: stdin, Date: examplesDate, RejectFrom: verdict.Fix})
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(b.Close)
	return b
}

// A text on the bench is judged as the same text in its file: design and parts
// file alike, from several goroutines at once.
func TestBenchJudgesAsRun(t *testing.T) {
	texts := hutTexts(t, 1)
	const file, parts = "0000.design.hcl", "parts/devices.parts.hcl"
	bench := benchOf(t, texts, file, nil)
	changes := []struct{ file, from, to string }{
		{file, "", ""},
		{file, `series                 = 1`, `series                 = 2`},
		{file, `coldest   = "-27 degC"`, `coldest   = "-60 degC"`},
		{file, `design "Larch Col hut" {`, `design "Larch Col hut {`},
		{parts, `kind `, `kindd `},
		{parts, `charge_current_max   = "85 A"`, `charge_current_max   = "20 A"`},
	}
	var all sync.WaitGroup
	for _, c := range changes {
		all.Go(func() {
			before := texts["hut/"+c.file]
			after := strings.Replace(before, c.from, c.to, 1)
			if c.from != c.to && after == before {
				t.Errorf("%q does not stand in %s", c.from, c.file)
				return
			}
			whole := map[string]string{}
			for name, text := range texts {
				whole[name] = text
			}
			whole["hut/"+c.file] = after
			want, err := lint.Run(context.Background(), lint.Options{Disk: linttest.NewDisk(whole), Embedded: rules.Books, WorkingDir: "/hut", Paths: []string{file}, Date: examplesDate})
			if err != nil {
				t.Error(err)
				return
			}
			got, err := bench.Judge(context.Background(), lint.Trial{Texts: map[string][]byte{c.file: []byte(after)}})
			if err != nil {
				t.Error(err)
				return
			}
			if diff := cmp.Diff(want.Designs[0].Verdicts, got.Verdicts); diff != "" {
				t.Errorf("%q: verdicts (-run +bench):\n%s", c.to, diff)
			}
			if diff := cmp.Diff(want.Designs[0].Problems, got.Problems); diff != "" || want.Designs[0].Digest != got.Digest {
				t.Errorf("%q: problems (-run +bench):\n%s", c.to, diff)
			}
		})
	}
	all.Wait()
	if p := bench.Problems(); len(p) > 0 {
		t.Error(p)
	}
}

// Without the year nothing is met that needs it, and nothing else changes.
func TestBenchWithoutYear(t *testing.T) {
	bench := benchOf(t, hutTexts(t, 1), "0000.design.hcl", nil)
	whole, err := bench.Judge(context.Background(), lint.Trial{})
	if err != nil {
		t.Fatal(err)
	}
	short, err := bench.Judge(context.Background(), lint.Trial{WithoutYear: true})
	if err != nil {
		t.Fatal(err)
	}
	byKey := map[string]verdict.Verdict{}
	for _, v := range whole.Verdicts {
		byKey[v.Key()] = v
	}
	var left []string
	for i := range short.Verdicts {
		v := &short.Verdicts[i]
		if lint.Awaits(v) {
			left = append(left, v.Rule)
			continue
		}
		if diff := cmp.Diff(byKey[v.Key()], *v); diff != "" {
			t.Errorf("%s is another verdict without the year:\n%s", v.Key(), diff)
		}
	}
	if diff := cmp.Diff([]string{"practice.winter_balance", "practice.clipped_energy", "practice.unserved_hours"}, left); diff != "" {
		t.Errorf("rules that wait for the year:\n%s", diff)
	}
	if len(short.Verdicts) != len(whole.Verdicts) {
		t.Errorf("%d verdicts, %d with the year", len(short.Verdicts), len(whole.Verdicts))
	}
	if f, _ := short.System.Fact("system.yearly_yield"); f.Known || f.Missing[0] != facts.WithheldYear {
		t.Errorf("the year's yield without the year: %+v", f)
	}
}

// The metal of the hut's PV side by hand: three strings of 3 m in 6 mm2 and an array
// run of 10 m in 25 mm2, both conductors, copper of 8890 kg/m3 (IEC 60028, from
// memory).
func TestConductorMass(t *testing.T) {
	d, err := benchOf(t, hutTexts(t, 1), "0000.design.hcl", nil).Judge(context.Background(), lint.Trial{WithoutYear: true})
	if err != nil {
		t.Fatal(err)
	}
	want := 2 * (3*3*6e-6 + 10*25e-6) * 8890
	if f, ok := d.System.Fact("system.pv_conductor_mass"); !ok || !f.Known || math.Abs(f.SI-want) > 1e-9 {
		t.Errorf("%+v, want %v kg", f, want)
	}
}

func TestBenchRefuses(t *testing.T) {
	texts := hutTexts(t, 2)
	texts["hut/empty.design.hcl"] = "\x00"
	for path, want := range map[string]string{
		".": "holds 3 designs", "none.design.hcl": "looking for designs", "empty.design.hcl": "could not be read", "parts/devices.parts.hcl": "holds 3 designs",
	} {
		_, err := lint.OpenBench(context.Background(), lint.Options{Disk: linttest.NewDisk(texts), Embedded: rules.Books, WorkingDir: "/hut", Paths: []string{path}})
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%s: %v; want %q", path, err, want)
		}
	}
	if _, err := lint.OpenBench(context.Background(), lint.Options{}); err == nil {
		t.Error("a bench without a disk was opened")
	}
	b := benchOf(t, hutTexts(t, 1), "", []byte(texts["hut/0000.design.hcl"]))
	if d, err := b.Judge(context.Background(), lint.Trial{}); err != nil || d.File != "-" || len(d.Verdicts) < 50 || len(d.Problems) > 0 {
		t.Errorf("standard input: %+v, %v", d.Problems, err)
	}
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	if _, err := b.Judge(ctx, lint.Trial{}); err == nil {
		t.Error("judged after the end")
	}
}

// BenchmarkTrial judges another text of one design on an open bench: the ratio to
// BenchmarkRun/designs=1 is what fit and sweep save.
func BenchmarkTrial(b *testing.B) {
	texts := hutTexts(b, 1)
	text := texts["hut/0000.design.hcl"]
	for _, year := range []bool{false, true} {
		b.Run(fmt.Sprintf("year=%v", year), func(b *testing.B) {
			bench := benchOf(b, texts, "0000.design.hcl", nil)
			b.ReportAllocs()
			n := 0
			for b.Loop() {
				n++
				tried := strings.Replace(text, `charge_current           = "80 A"`, fmt.Sprintf(`charge_current           = "%g A"`, 80-float64(n%1000)/100), 1)
				d, err := bench.Judge(context.Background(), lint.Trial{Texts: map[string][]byte{"0000.design.hcl": []byte(tried)}, WithoutYear: !year})
				if err != nil || len(d.Verdicts) < 50 {
					b.Fatal(err)
				}
			}
		})
	}
}
