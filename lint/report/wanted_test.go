package report

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/santhosh-tekuri/jsonschema/v6"

	"stringline/lint"
	"stringline/lint/verdict"
	"stringline/schema/source"
)

// unproven makes a finding for want of something.
func unproven(rule, about string, grade verdict.Grade, because string, missing ...string) verdict.Verdict {
	return verdict.Verdict{Rule: rule, About: about, Grade: grade, BookGrade: grade, Outcome: verdict.Unproven, Title: "t", Message: "m", Missing: missing, Because: because,
		At: []source.Range{{File: "a.design.hcl", Start: source.Position{Line: 7, Column: 3}, End: source.Position{Line: 7, Column: 5}}}}
}

// wanting is a design in which several findings want the same.
func wanting() *lint.DesignResult {
	return &lint.DesignResult{File: "a.design.hcl", Name: "A", Digest: "sha256:0", Verdicts: []verdict.Verdict{
		unproven("limits.cold", "bank.b", verdict.Stop, "", "battery.x.charge_above"),
		unproven("limits.heat", "bank.b", verdict.Fix, "", "site.hottest", "site.hottest", "bank.b.hottest"),
		unproven("limits.volts", "string.s.a", verdict.Stop, "", "site.coldest", "site.hottest"),
		unproven("limits.volts", "string.s.b", verdict.Stop, "", "site.coldest", "site.hottest"),
		unproven("limits.window", "pv_input.m.1", verdict.Advise, "panel.p.model: no curve fits"),
		{Rule: "limits.fuse", About: "string.s.a", Grade: verdict.Fix, BookGrade: verdict.Fix, Outcome: verdict.Breaks, Message: "m"},
		{Rule: "limits.meets", About: "string.s.a", Grade: verdict.Stop, BookGrade: verdict.Stop, Outcome: verdict.Meets, Missing: []string{"site.coldest"}},
		// One that a baseline accepts is no finding, and wants nothing.
		{Rule: "limits.held", About: "string.s.a", Grade: verdict.Fix, BookGrade: verdict.Fix, Outcome: verdict.Unproven, Missing: []string{"site.coldest"}, Accepted: &verdict.Acceptance{Was: verdict.Accepted{Since: "2026-01-01", Outcome: verdict.Unproven, Grade: verdict.Fix}}},
	}}
}

// What leaves findings unproven is grouped: the worst grade first, then what most
// of them want. In text attributes of one subject that the same items want stand
// together.
func TestSupplyIndex(t *testing.T) {
	d := wanting()
	p := newPage(Page{})
	p.supplyIndex(wantedOf(findings(d.Verdicts)))
	want := `
SUPPLY, worst first
STOP      3 items  hottest of site
STOP      2 items  coldest of site
STOP       1 item  charge_above of battery "x", from its data sheet
FIX        1 item  hottest of bank "b"
ADVISE     1 item  no answer: panel.p.model: no curve fits
`
	if diff := cmp.Diff(want, p.take()); diff != "" {
		t.Errorf("text (-want +got):\n%s", diff)
	}
	d.Verdicts[1].Missing = []string{"bank.b.hottest"}
	p.supplyIndex(wantedOf(findings(d.Verdicts)))
	if text := p.take(); !strings.Contains(text, "STOP      2 items  coldest and hottest of site\n") {
		t.Errorf("two attributes that the same items want:\n%s", text)
	}
}

// The JSON tells the same by the keys of the findings.
func TestSupplyInJSON(t *testing.T) {
	var b strings.Builder
	if err := JSON(&b, &lint.Result{Version: "0", Date: "2026-05-02", Designs: []lint.DesignResult{*wanting()}}); err != nil {
		t.Fatal(err)
	}
	fits, err := jsonschema.UnmarshalJSON(strings.NewReader(b.String()))
	if err == nil {
		err = checkSchema(t).Validate(fits)
	}
	if err != nil {
		t.Error(err)
	}
	var doc struct {
		Designs []struct {
			Supply []struct {
				ID, Because *string
				Grade       string
				Verdicts    []string
			}
		}
	}
	if err := json.Unmarshal([]byte(b.String()), &doc); err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, s := range doc.Designs[0].Supply {
		what := "none"
		if s.ID != nil {
			what = *s.ID
		} else if s.Because != nil {
			what = *s.Because
		}
		got = append(got, s.Grade+" "+what+": "+strings.Join(s.Verdicts, " "))
	}
	want := []string{
		"stop site.hottest: limits.volts|string.s.a| limits.volts|string.s.b| limits.heat|bank.b|",
		"stop site.coldest: limits.volts|string.s.a| limits.volts|string.s.b|",
		"stop battery.x.charge_above: limits.cold|bank.b|",
		"fix bank.b.hottest: limits.heat|bank.b|",
		"advise panel.p.model: no curve fits: limits.window|pv_input.m.1|",
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("supply (-want +got):\n%s", diff)
	}
}

// A page that has scrolled away ends in an index of its items, by the numbers and
// in the order that they have above; a short one does not. One unproven item says
// by itself what it wants.
func TestClosing(t *testing.T) {
	for _, c := range []struct {
		name             string
		d                *lint.DesignResult
		width, lines     int
		supply, findings bool
		shows            string
	}{
		{"short", wanting(), 80, 49, true, false, "SUPPLY"},
		{"long", wanting(), 80, 50, true, true, fmt.Sprintf("\n%-65s%14s\n", "  1  STOP ?   limits.cold on bank.b", "a.design.hcl:7")},
		{"narrow", wanting(), 40, 50, true, true, "\n  1  STOP ?   limits.cold bank.b\n              a.design.hcl:7\n"},
		{"one unproven, short", &lint.DesignResult{Verdicts: wanting().Verdicts[:1]}, 80, 10, false, false, ""},
		{"one unproven, long", &lint.DesignResult{Verdicts: wanting().Verdicts[:1]}, 80, 90, false, true, "FINDINGS by item, worst first; ? is unproven\n"},
		{"one that breaks, long", &lint.DesignResult{Verdicts: wanting().Verdicts[5:6]}, 80, 90, false, true, "FINDINGS by item, worst first\n  1  FIX      limits.fuse on string.s.a\n"},
		{"nothing found", &lint.DesignResult{Verdicts: wanting().Verdicts[6:7]}, 80, 90, false, false, ""},
		{"nothing but errors", &lint.DesignResult{Problems: source.Problems{{Kind: "unit", Message: "m", At: source.Range{File: "a.design.hcl", Start: source.Position{Line: 3, Column: 1}}}}}, 80, 90, false, true, "a.design.hcl:3\n"},
	} {
		p := newPage(Page{Width: c.width})
		p.closing(c.d, c.lines)
		text := p.take()
		if strings.Contains(text, "SUPPLY") != c.supply || strings.Contains(text, "FINDINGS") != c.findings || !strings.Contains(text, c.shows) {
			t.Errorf("%s:\n%s", c.name, text)
		}
	}
}

// An index stays short: it says how much it leaves out.
func TestIndexStaysShort(t *testing.T) {
	d := &lint.DesignResult{}
	for i := range 40 {
		d.Verdicts = append(d.Verdicts, unproven("limits.cold", fmt.Sprint("bank.b", i), verdict.Stop, "", fmt.Sprintf("bank.b%d.coldest", i)))
	}
	for width, want := range map[int][]string{80: {"  and 28 values more", "  and 25 more, above\n"}, 40: {"  and 28 values more", "  and 32 more, above\n"}} {
		p := newPage(Page{Width: width})
		p.closing(d, 100)
		text := p.take()
		for _, words := range want {
			if !strings.Contains(text, words) {
				t.Errorf("%d columns lack %q:\n%s", width, words, text)
			}
		}
		for line := range strings.Lines(text) {
			if len(line) > width {
				t.Errorf("%d columns: %q", width, line)
			}
		}
	}
}
