package lint_test

import (
	"bytes"
	"context"
	"flag"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint"
	"stringline/lint/linttest"
	"stringline/lint/verdict"
	"stringline/rules"
)

var update = flag.Bool("update", false, "write the golden files instead of comparing with them")

// The examples are judged as on this day; it decides the ends of waivers.
const examplesDate = "2026-11-25"

// brokenSuffix ends the name of a design that shows mistakes. What stands
// before it names the clean design that it was made from.
const brokenSuffix = "-broken.design.hcl"

// exampleTexts reads everything under examples but the codebooks there, by path
// from the top level.
func exampleTexts(t *testing.T) map[string]string {
	t.Helper()
	texts := treeTexts(t, "examples")
	for name := range texts {
		if strings.Contains(name, "/codebooks/") {
			delete(texts, name)
		}
	}
	return texts
}

// treeTexts reads all files of a folder.
func treeTexts(t *testing.T, folder string) map[string]string {
	t.Helper()
	texts := map[string]string{}
	err := fs.WalkDir(os.DirFS(".."), folder, func(name string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		text, err := os.ReadFile(filepath.Join("..", filepath.FromSlash(name)))
		texts[name] = string(text)
		return err
	})
	if err != nil {
		t.Fatalf("reading the examples: %v", err)
	}
	return texts
}

func runExamples(t *testing.T, texts map[string]string) *lint.Result {
	t.Helper()
	result, err := lint.Run(context.Background(), lint.Options{
		Disk: linttest.NewDisk(texts), Embedded: rules.Books, WorkingDir: "/", Paths: []string{"examples"},
		Date: examplesDate, RejectFrom: verdict.Fix, Version: "0.1.0",
	})
	if err != nil {
		t.Fatal(err)
	}
	for _, p := range result.Problems {
		t.Errorf("not of one design: %v", p)
	}
	return result
}

// TestExamples pins what is found about every example: all that neither meets
// nor does not apply, word for word, and how many judgements there were.
func TestExamples(t *testing.T) {
	result := runExamples(t, exampleTexts(t))
	if len(result.Designs) < 8 {
		t.Fatalf("only %d designs under examples", len(result.Designs))
	}
	known := map[string]bool{}
	for i := range result.Designs {
		d := &result.Designs[i]
		name := strings.TrimSuffix(path.Base(d.File), ".design.hcl")
		known[name+".golden"] = true
		t.Run(name, func(t *testing.T) {
			golden := filepath.Join("testdata", "examples", name+".golden")
			got := pin(d)
			if *update {
				if err := os.MkdirAll(filepath.Dir(golden), 0o755); err != nil {
					t.Fatal(err)
				}
				if err := os.WriteFile(golden, got, 0o644); err != nil {
					t.Fatal(err)
				}
			}
			want, err := os.ReadFile(golden)
			if err != nil {
				t.Fatal(err)
			}
			want = bytes.ReplaceAll(want, []byte("\r\n"), []byte("\n"))
			if diff := cmp.Diff(string(want), string(got)); diff != "" {
				t.Errorf("verdicts moved (-pinned +found); -update pins them anew:\n%s", diff)
			}
		})
	}
	pinned, err := filepath.Glob(filepath.Join("testdata", "examples", "*"))
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range pinned {
		if !known[filepath.Base(name)] {
			t.Errorf("%s belongs to no example", name)
		}
	}
}

// pin writes what a golden file holds.
func pin(d *lint.DesignResult) []byte {
	var b bytes.Buffer
	fmt.Fprintf(&b, "%s\n", d.Name)
	counts := map[verdict.Outcome]int{}
	for i := range d.Verdicts {
		counts[d.Verdicts[i].Outcome]++
	}
	for _, o := range []verdict.Outcome{verdict.Meets, verdict.Breaks, verdict.Unproven, verdict.Waived, verdict.Void, verdict.DoesNotApply} {
		fmt.Fprintf(&b, "%-15s %d\n", o, counts[o])
	}
	for _, p := range d.Problems {
		fmt.Fprintf(&b, "problem: %v\n", p)
	}
	for i := range d.Verdicts {
		v := &d.Verdicts[i]
		if v.Outcome == verdict.Meets || v.Outcome == verdict.DoesNotApply {
			continue
		}
		about := v.About
		if v.Which != "" {
			about += "|" + v.Which
		}
		fmt.Fprintf(&b, "%-6s %s|%s → %s", v.Grade, v.Rule, about, v.Outcome)
		if len(v.Missing) > 0 {
			fmt.Fprintf(&b, ": %s", strings.Join(v.Missing, ", "))
		}
		b.WriteByte('\n')
	}
	return b.Bytes()
}

// TestExamplesAsPromised: a clean design has no finding of any grade, nor any
// waiver that would hide one; a broken twin must not be energized, stands beside
// the clean design that it was made from, and shares most of its lines, so that
// a comparison of the two shows the mistakes and little else.
func TestExamplesAsPromised(t *testing.T) {
	texts := exampleTexts(t)
	result := runExamples(t, texts)
	broken := map[string]int{} // by workshop
	for i := range result.Designs {
		d := &result.Designs[i]
		for _, p := range d.Problems {
			t.Errorf("%s: %v", d.File, p)
		}
		if d.Workshop == "" {
			t.Errorf("%s stands in no workshop", d.File)
		}
		before, isBroken := strings.CutSuffix(d.File, brokenSuffix)
		if !isBroken {
			for k := range d.Verdicts {
				if v := &d.Verdicts[k]; v.Finding() || v.Outcome == verdict.Waived {
					t.Errorf("%s: %s %s", d.File, v.Key(), v.Outcome)
				}
			}
			continue
		}
		broken[d.Workshop]++
		if d.Worst() != verdict.Stop {
			t.Errorf("%s: nothing stops it from being energized", d.File)
		}
		clean, ok := texts[before+".design.hcl"]
		if !ok {
			t.Errorf("%s has no clean design beside it", d.File)
			continue
		}
		if share := sharedLines(clean, texts[d.File]); share < 0.7 {
			t.Errorf("%s shares %.0f %% of the clean design's lines: a comparison does not show the mistakes", d.File, 100*share)
		}
	}
	for name := range texts {
		if path.Base(name) == "workshop.hcl" && broken[name] == 0 {
			t.Errorf("%s has no design that shows mistakes", name)
		}
	}
}

// sharedLines gives the share of the first text's lines that the second has too.
func sharedLines(first, second string) float64 {
	lines := func(text string) []string { return strings.Split(strings.TrimSpace(text), "\n") }
	left := lines(second)
	shared := 0
	for _, line := range lines(first) {
		if k := slices.Index(left, line); k >= 0 {
			left = slices.Delete(left, k, k+1)
			shared++
		}
	}
	return float64(shared) / float64(len(lines(first)))
}
