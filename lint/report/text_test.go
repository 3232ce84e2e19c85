package report

import (
	"regexp"
	"strings"
	"testing"
	"unicode"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"stringline/lint"
	"stringline/lint/verdict"
	"stringline/schema/source"
)

func TestTextOfTheSample(t *testing.T) {
	golden(t, "hut.txt", text(t, run(hut()), Page{}))
	golden(t, "hut-60.txt", text(t, run(hut()), Page{Width: 60}))
	golden(t, "hut-40.txt", text(t, run(hut()), Page{Width: 40}))
	golden(t, "hut-100.txt", text(t, run(hut()), Page{Width: 300}))
}

func TestTextOfOddities(t *testing.T) {
	r := run(oddities()...)
	r.Problems = source.Problems{{Kind: "codebook", Message: "codebook \"county\" has no rule", At: at("workshop.hcl", 3, 1, 17)}}
	golden(t, "odd.txt", text(t, r, Page{}))
}

// marks stands in for colors so that a test can read them.
type marks struct{}

func (marks) Stop(text string) string   { return "<stop " + text + ">" }
func (marks) Fix(text string) string    { return "<fix " + text + ">" }
func (marks) Supply(text string) string { return "<supply " + text + ">" }

// TestColorAddsNothing: without the paint a painted text is the plain one, so
// that color never carries meaning alone nor moves a column.
func TestColorAddsNothing(t *testing.T) {
	for _, r := range []*lint.Result{run(hut()), run(oddities()...)} {
		painted := string(text(t, r, Page{Style: marks{}}))
		golden := string(text(t, r, Page{}))
		if painted == golden {
			t.Error("nothing is painted")
		}
		bare := regexp.MustCompile(`<(stop|fix|supply) ([^>]*)>`).ReplaceAllString(painted, "$2")
		// "->" marks a value off the paper; its own > closes the paint early.
		bare = strings.ReplaceAll(bare, "->>", "->")
		if diff := cmp.Diff(golden, bare); diff != "" {
			t.Errorf("paint changes the text:\n%s", diff)
		}
	}
}

// TestNoLineIsTooWide holds the 80 columns of the layout, and that no line ends
// in a space, which reviews and mail mangle.
func TestNoLineIsTooWide(t *testing.T) {
	for _, width := range []int{0, 40, 60, 80, 100, 1000} {
		limit := min(max(width, 40), 100)
		if width == 0 {
			limit = 80
		}
		for _, line := range strings.Split(string(text(t, run(hut()), Page{Width: width})), "\n") {
			if n := columns(line); n >= limit {
				t.Errorf("at %d columns a line takes %d: %s", width, n, line)
			}
			if strings.TrimRight(line, " ") != line {
				t.Errorf("line ends in a space: %q", line)
			}
		}
	}
}

func TestVerdictLine(t *testing.T) {
	one := func(o verdict.Outcome, g verdict.Grade) verdict.Verdict { return verdict.Verdict{Outcome: o, Grade: g} }
	meets := one(verdict.Meets, verdict.Stop)
	for _, c := range []struct {
		design lint.DesignResult
		want   string
	}{
		{lint.DesignResult{Verdicts: []verdict.Verdict{meets}}, "Nothing found against it."},
		{lint.DesignResult{Verdicts: []verdict.Verdict{one(verdict.Waived, verdict.Stop)}}, "Nothing found against it."},
		{lint.DesignResult{}, "Not judged: no rule in force applies to what this design holds."},
		{lint.DesignResult{Verdicts: []verdict.Verdict{one(verdict.DoesNotApply, verdict.Stop)}}, "Not judged: no rule in force applies to what this design holds."},
		{lint.DesignResult{Verdicts: []verdict.Verdict{meets, one(verdict.Unproven, verdict.Stop)}}, "NOT TO BE ENERGIZED: 1 stop unproven."},
		{lint.DesignResult{Verdicts: []verdict.Verdict{one(verdict.Breaks, verdict.Fix), one(verdict.Breaks, verdict.Fix), meets}}, "To be put right before sign-off: 2 fixes found."},
		{lint.DesignResult{Verdicts: []verdict.Verdict{one(verdict.Breaks, verdict.Advise), meets}}, "Nothing that stops it; worth knowing: 1 point of advice found."},
		{lint.DesignResult{Verdicts: []verdict.Verdict{one(verdict.Void, verdict.Advise), meets}}, "NOT JUDGED IN FULL: 1 judgement void."},
		{lint.DesignResult{Verdicts: []verdict.Verdict{meets}, Problems: make(source.Problems, 2)}, "NOT JUDGED IN FULL: 2 errors in what was read."},
		{lint.DesignResult{Verdicts: []verdict.Verdict{one(verdict.Breaks, verdict.Stop)}, Problems: make(source.Problems, 1)},
			"NOT TO BE ENERGIZED: 1 stop found, 1 error in what was read."},
	} {
		if got, _ := tallyOf(&c.design).verdictLine(); got != c.want {
			t.Errorf("got %q, want %q", got, c.want)
		}
	}
}

// TestNoDesignIsCleanWithoutItsRules: where a codebook or the workshop file
// could not be read nothing is called clean; a path that leads nowhere changes
// nothing about the designs that were found.
func TestNoDesignIsCleanWithoutItsRules(t *testing.T) {
	clean := oddities()[2]
	for kind, want := range map[string]bool{"trust": false, "unknown_rule": false, "syntax": false, "path": true, "no_design": true} {
		r := run(clean)
		r.Problems = source.Problems{{Kind: kind, Message: "something"}}
		if got := strings.Contains(string(text(t, r, Page{})), "Nothing found against it."); got != want {
			t.Errorf("with a problem of kind %s: called clean %v", kind, got)
		}
	}
}

func TestTautLine(t *testing.T) {
	for _, c := range []struct {
		name     string
		headroom float64
		broken   bool
		want     string
	}{
		{"the layout's 13.2 % over", -0.1321728, true, "-----------|-o"},
		{"the layout's 4.5 % left", 0.045, false, "----------o|"},
		{"the layout's 14.3 % left", 1.0 / 7, false, "---------o |"},
		{"exactly at the limit, from inside", 0, false, "----------o|"},
		{"just past it", -1e-6, true, "-----------|o"},
		{"within the slack of the judge", -1e-10, false, "----------o|"},
		{"far off the paper", -25, true, "-----------|->"},
		{"nothing used", 1, false, "o          |"},
		{"thrice what is required", 2, false, "o          |"},
	} {
		before, past := tautLine(&limitRow{headroom: c.headroom, measured: true, broken: c.broken}, scaleColumns)
		if got := before + past; got != c.want {
			t.Errorf("%s: got %q, want %q", c.name, got, c.want)
		}
	}
}

func TestPercent(t *testing.T) {
	for share, want := range map[float64]string{
		0.045: "4.5 %", -0.1321728: "-13.2 %", 1.0 / 7: "14.3 %", 0: "0.0 %", -1e-10: "0.0 %",
		-0.0001: "-0.01 %", 0.00004: "0.004 %", 25: "2500 %", 1: "100.0 %",
	} {
		if got := percent(share); got != want {
			t.Errorf("percent(%v) = %q, want %q", share, got, want)
		}
	}
}

func TestApart(t *testing.T) {
	if a, b := apart(150.00001, 150, "V"); a == b {
		t.Errorf("two values read alike: %s and %s", a, b)
	}
	if a, b := apart(150, 150, "V"); a != "150.0 V" || b != a {
		t.Errorf("one value reads as %s and %s", a, b)
	}
}

// TestGlued: a number and its unit stay on one line.
func TestGlued(t *testing.T) {
	got := glued(strings.Fields("headroom 95.3 %. at -27 degC (25 A) of 3 panels in _____ V"))
	want := []string{"headroom", "95.3 %.", "at", "-27 degC", "(25 A)", "of", "3", "panels", "in", "_____ V"}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
}

func TestDifference(t *testing.T) {
	for _, c := range []struct {
		value float64
		shown []string
		want  string
	}{
		{19.82592, []string{"169.8 V", "150.0 V"}, "19.8 V"},
		{0.09, []string{"1.91 V", "2.00 V"}, "0.09 V"},
		{0.00001, []string{"150.0 V"}, "0.0000100 V"},
		{9.82592, []string{"169.8 V", "160.0 V"}, "9.8 V"},
	} {
		if got := difference(c.value, "V", c.shown...); got != c.want {
			t.Errorf("difference(%v) = %q, want %q", c.value, got, c.want)
		}
	}
}

func TestSupply(t *testing.T) {
	for id, want := range map[string]string{
		"battery.fell-200.charge_current_max":     `charge_current_max of battery "fell-200", from its data sheet`,
		"battery.fell-200.bms.charge_cutoff":      `bms.charge_cutoff of battery "fell-200", from its data sheet`,
		"charger.main.settings.absorption":        `settings.absorption of charger "main"`,
		"site.coldest":                            "coldest of site",
		"string.south.a.panels":                   "panels of string.south.a",
		"cable_run.string.south.a.size":           "size of cable_run.string.south.a",
		"protection.bank.house.each.rating":       "rating of protection.bank.house.each",
		"disconnect.array.south.rating":           "rating of disconnect.array.south",
		"bank.house.declared.county.ventilated":   `ventilated of bank.house, in its declared "county"`,
		"cable_run.array.south.declared.county.x": `x of cable_run.array.south, in its declared "county"`,
		"grounding": "grounding",
	} {
		if got := strings.Join(supplies([]string{id}), "|"); got != want {
			t.Errorf("supplies(%q) = %q, want %q", id, got, want)
		}
	}
	got := supplies([]string{"battery.b.cells", "site.coldest", "battery.b.nominal", "battery.b.cells", "battery.b.usable"})
	want := []string{`cells, nominal and usable of battery "b", from its data sheet`, "coldest of site"}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
}

// TestEscape: Unicode's bidirectional controls (annex 9) and terminal control
// sequences (ECMA-48) never come through, letters of any script do.
func TestEscape(t *testing.T) {
	for in, want := range map[string]string{
		"plain °Ω²": "plain °Ω²", "a\x1b[31mb": `a\x1b[31mb`, "a\nb\tc\rd": `a\nb\tc\rd`, "\u202eabc": `\u202eabc`,
		"\u2066x": `\u2066x`, "zero\u200bwidth": `zero\u200bwidth`, "\u009b31m": `\u009b31m`, "\xff\xfe": `\xff\xfe`,
		"no\u00a0break": "no break", "\U000e0041": `\U000e0041`, "\x7f": `\x7f`, "漢字": "漢字", "\ufffd": "\ufffd", "": "",
	} {
		if got := Escape(in); got != want {
			t.Errorf("Escape(%q) = %q, want %q", in, got, want)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		in := string(rapid.SliceOf(rapid.Byte()).Draw(t, "bytes"))
		for _, r := range Escape(in) {
			if r != ' ' && !unicode.IsPrint(r) {
				t.Fatalf("%U comes through", r)
			}
		}
	})
}
