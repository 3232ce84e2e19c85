package report

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"io"
	"slices"
	"strings"
	"testing"

	"github.com/joshdk/go-junit"

	"stringline/lint"
	"stringline/lint/verdict"
	"stringline/schema/source"
)

// forHosts are the outputs for code hosts.
var forHosts = map[string]func(io.Writer, *lint.Result) error{"sarif": SARIF, "junit": JUnit, "annotations": Annotations}

func output(t testing.TB, form string, r *lint.Result) string {
	t.Helper()
	var b bytes.Buffer
	if err := forHosts[form](&b, r); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// accepted is the hut with a baseline: one finding held, one worse, one gone, and
// rules of its codebooks.
func accepted() *lint.Result {
	d := hut()
	for i := range d.Verdicts {
		v := &d.Verdicts[i]
		if v.Rule == "practice.voltage_drop" {
			v.Outcome, v.Is.Value, v.Spare.Value, v.Headroom = verdict.Breaks, ptr(2.1), -0.1, ptr(-0.05)
			was := v.Accept(d.File, "2026-01-04")
			was.At = at("accepted.csv", 2, 1, 60)
			v.Accepted = &verdict.Acceptance{Was: was}
		}
	}
	worse := d.Verdicts[slices.IndexFunc(d.Verdicts, func(v verdict.Verdict) bool { return v.Rule == "practice.voltage_drop" })]
	worse.About, worse.Headroom = "cable_run.array.north", ptr(-0.2)
	worse.Accepted = &verdict.Acceptance{Was: worse.Accepted.Was, Worse: "headroom -20.0 %, accepted at -5.0 %"}
	d.Verdicts = append(d.Verdicts, worse)
	verdict.Sort(d.Verdicts)
	r := run(d)
	r.RejectFrom = verdict.Fix
	r.Baseline = &lint.BaselineUse{Name: "accepted.csv", Held: 1, Worse: 1, Fresh: 2, Gone: []verdict.Accepted{
		{File: "hut.design.hcl", Rule: "practice.labels", About: "bank.house", Since: "2026-01-04", At: at("accepted.csv", 3, 1, 60)}}}
	r.Summary.Accepted = 1
	for i := range r.Books {
		for _, v := range d.Verdicts {
			if strings.HasPrefix(v.Rule, r.Books[i].Name+".") {
				rule := lint.RuleInUse{ID: v.Rule, Title: v.Title, Description: "Why " + v.Title + ".", Source: v.Source, Remedy: v.Remedy, Grade: v.Grade, BookGrade: v.BookGrade}
				if !slices.Contains(r.Books[i].Rules, rule) {
					r.Books[i].Rules = append(r.Books[i].Rules, rule)
				}
			}
		}
	}
	return r
}

// samples are runs that every output must be able to tell.
func samples() map[string]*lint.Result {
	odd := run(oddities()...)
	odd.Problems = source.Problems{
		{Kind: "interrupted", Message: "interrupted: 4 of 9 designs were judged; of the rest nothing is known"},
		{Kind: "path", Message: "looking for designs: no such file", At: source.Range{File: "a:b/50% #?.design.hcl"}},
		{Kind: "baseline", Message: "reading the baseline: a damaged line", At: at("accepted.csv", 3, 7, 4)}}
	odd.Exit, odd.Summary.NotJudged = 2, 5
	return map[string]*lint.Result{
		"hut": accepted(), "odd": odd, "clean": run(oddities()[2]),
		"none": {Date: "2026-05-02", Exit: 2, Problems: source.Problems{{Kind: "no_design", Message: "no design was named"}}},
	}
}

// TestMachineOutputs pins what each output says of the samples.
func TestMachineOutputs(t *testing.T) {
	for name, r := range samples() {
		for form, ext := range map[string]string{"sarif": "sarif.json", "junit": "junit.xml", "annotations": "annotations.txt"} {
			first := output(t, form, r)
			golden(t, name+"."+ext, []byte(first))
			if again := output(t, form, r); first != again {
				t.Errorf("%s of %s differs from itself", form, name)
			}
		}
	}
	golden(t, "accepted.txt", text(t, accepted(), Page{}))
	golden(t, "accepted.json", asJSON(t, accepted()))
}

// crowd is a design with so many findings of each grade.
func crowd(n int) lint.DesignResult {
	d := lint.DesignResult{File: "crowd.design.hcl", Name: "Crowd"}
	for i := range n {
		for _, grade := range []verdict.Grade{verdict.Advise, verdict.Stop, verdict.Fix} {
			d.Verdicts = append(d.Verdicts, verdict.Verdict{Rule: "limits." + string(grade), About: fmt.Sprintf("load.n%05d", i), Outcome: verdict.Breaks,
				Grade: grade, Title: "T", Message: "M", At: []source.Range{at("crowd.design.hcl", i+1, 1, 4)}})
		}
	}
	verdict.Sort(d.Verdicts)
	return d
}

// TestLimits: the worst come first, no more than hosts take, and what is cut is
// told, on both sides of each limit.
func TestLimits(t *testing.T) {
	at := sarifOf(t, run(lint.DesignResult{File: "a", Verdicts: crowd(mostResults / 3).Verdicts}))
	if n := len(at.Results); n > mostResults || at.Properties.Cut != 0 || len(at.Invocations[0].Notifications) != 0 {
		t.Errorf("%d results, %d cut", n, at.Properties.Cut)
	}
	over := sarifOf(t, run(crowd(4000), crowd(4000)))
	levels := map[string]int{}
	for _, x := range over.Results {
		levels[x.Level]++
	}
	if len(over.Results) != mostResults || levels["error"] != mostResults || over.Properties.Cut != 24000-mostResults {
		t.Errorf("%v, %d cut", levels, over.Properties.Cut)
	}
	if n := over.Invocations[0].Notifications; len(n) != 1 || !strings.HasPrefix(n[0].Message.Text, "19000 results are not told here") {
		t.Errorf("%+v", n)
	}
	for _, n := range []int{1, 10, 11, 300} {
		out := output(t, "annotations", run(crowd(n)))
		for _, level := range annotationLevels {
			want, more := n, 0
			if n > mostAnnotations {
				want, more = mostAnnotations, n-mostAnnotations+1
			}
			if got := strings.Count(out, "\n::"+level+" ") + b2i(strings.HasPrefix(out, "::"+level+" ")); got != want {
				t.Errorf("%d findings a level: %d of %s", n, got, level)
			}
			told := fmt.Sprintf("::%s title=%d more of level %s::%d more are not shown here", level, more, level, more)
			if strings.Contains(out, told) != (more > 0) {
				t.Errorf("%d findings a level: %q in\n%.2000s", n, told, out)
			}
		}
		if plain := strings.Count(out, "\nSTOP limits.stop on load."); n > mostAnnotations && plain != min(n-mostAnnotations+1, mostPlain+1) {
			t.Errorf("%d findings: %d plain lines", n, plain)
		}
		if cut := strings.Contains(out, "89 of level error are not told here") || strings.Contains(out, "90 of level error are not told here"); cut != (n == 300) {
			t.Errorf("%d findings: cut told %v\n%s", n, cut, out[max(0, len(out)-800):])
		}
	}
}

func b2i(b bool) int {
	if b {
		return 1
	}
	return 0
}

// TestJUnitBySecondReader: a general-purpose reader of the format (joshdk/go-junit)
// finds what was found, case by case; the counts in the file are its counts.
func TestJUnitBySecondReader(t *testing.T) {
	for name, r := range samples() {
		t.Run(name, func(t *testing.T) {
			out := output(t, "junit", r)
			suites, err := junit.Ingest([]byte(out))
			if err != nil {
				t.Fatalf("%v\n%s", err, out)
			}
			var totals junit.Totals
			seen := map[string]bool{}
			for _, s := range suites {
				totals.Tests += s.Totals.Tests
				totals.Failed += s.Totals.Failed
				totals.Error += s.Totals.Error
				totals.Skipped += s.Totals.Skipped
				for _, c := range s.Tests {
					if id := c.Classname + "\x00" + c.Name; seen[id] || c.Classname == "" || c.Name == "" {
						t.Errorf("%q of %q is there twice, or has no name", c.Name, c.Classname)
					} else {
						seen[id] = true
					}
				}
			}
			if totals.Tests == 0 {
				t.Error("no case")
			}
			want := junit.Totals{}
			for i := range r.Designs {
				d := &r.Designs[i]
				want.Tests += len(d.Problems) + len(d.Verdicts)
				want.Error += len(d.Problems)
				if tallyOf(d).judged == 0 && len(d.Problems) == 0 {
					want.Tests, want.Error = want.Tests+1, want.Error+1
				}
				for j := range d.Verdicts {
					switch v := &d.Verdicts[j]; {
					case v.Outcome == verdict.Void:
						want.Error++
					case v.Finding() && v.Grade.Rank() <= r.RejectFrom.Rank():
						want.Failed++
					case v.Outcome != verdict.Meets:
						want.Skipped++
					}
				}
			}
			want.Tests += len(r.Problems) + 1
			want.Error += len(r.Problems)
			if r.Summary.Designs == 0 || r.Summary.NotJudged > 0 {
				want.Error++
			}
			if totals.Tests != want.Tests || totals.Failed != want.Failed || totals.Error != want.Error || totals.Skipped != want.Skipped {
				t.Errorf("read %+v, want %+v", totals, want)
			}
			if red := totals.Failed+totals.Error > 0; r.RejectFrom != "" && red != (r.Exit != 0) {
				t.Errorf("red %v with exit %d", red, r.Exit)
			}
			var counted struct {
				Suites []struct {
					Tests    int `xml:"tests,attr"`
					Failures int `xml:"failures,attr"`
					Errors   int `xml:"errors,attr"`
					Skipped  int `xml:"skipped,attr"`
					Cases    []struct {
						Failure []struct{} `xml:"failure"`
						Error   []struct{} `xml:"error"`
						Skipped []struct{} `xml:"skipped"`
					} `xml:"testcase"`
				} `xml:"testsuite"`
			}
			if err := xml.Unmarshal([]byte(out), &counted); err != nil {
				t.Fatal(err)
			}
			for _, s := range counted.Suites {
				var failures, errors, skipped int
				for _, c := range s.Cases {
					if len(c.Failure)+len(c.Error)+len(c.Skipped) > 1 {
						t.Error("a case has more than one outcome")
					}
					failures, errors, skipped = failures+len(c.Failure), errors+len(c.Error), skipped+len(c.Skipped)
				}
				if s.Tests != len(s.Cases) || s.Failures != failures || s.Errors != errors || s.Skipped != skipped {
					t.Errorf("a suite counts %d %d %d %d and holds %d %d %d %d", s.Tests, s.Failures, s.Errors, s.Skipped, len(s.Cases), failures, errors, skipped)
				}
			}
		})
	}
}

// TestJUnitIsRedWhereTheExitIs: advice below the grade to reject does not fail a
// case, but is told.
func TestJUnitIsRedWhereTheExitIs(t *testing.T) {
	r := run(crowd(1))
	for reject, failed := range map[verdict.Grade]int{verdict.Stop: 1, verdict.Fix: 2, verdict.Advise: 3} {
		r.RejectFrom = reject
		suites, err := junit.Ingest([]byte(output(t, "junit", r)))
		if err != nil {
			t.Fatal(err)
		}
		if got := suites[0].Totals; got.Failed != failed || got.Skipped != 3-failed {
			t.Errorf("rejecting from %s: %+v", reject, got)
		}
	}
	r.RejectFrom = verdict.Fix
	if out := output(t, "junit", r); !strings.Contains(out, "ADVISE limits.advise on load.n00000, below what is rejected (fix). M.") {
		t.Errorf("advice is not told:\n%s", out)
	}
}
