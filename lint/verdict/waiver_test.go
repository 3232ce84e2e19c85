package verdict

import (
	"testing"

	"github.com/google/go-cmp/cmp"
)

func TestApply(t *testing.T) {
	const rule = "practice.voltage_drop"
	verdicts := func(outcomes ...Outcome) []Verdict {
		var vs []Verdict
		for i, o := range outcomes {
			vs = append(vs, Verdict{Rule: rule, About: "cable_run.array.south", Which: string(rune('a' + i)), Outcome: o, Grade: Fix, Waivable: true})
		}
		return vs
	}
	waiver := func(on ...string) []WaiverInput {
		return []WaiverInput{{Rule: rule, On: on, Reason: "cable already buried", ApprovedBy: "letter 14/26", Expires: "2027-04-01"}}
	}
	const run, last = "cable_run.array.south", "2027-04-01"
	unwaivable := verdicts(Breaks)
	unwaivable[0].Waivable = false
	for _, test := range []struct {
		name    string
		vs      []Verdict
		ws      []WaiverInput
		date    string
		want    []Outcome // in order of Sort: the rule's, then the waiver's finding
		because string
	}{
		{"before its end", verdicts(Breaks), waiver(run), "2026-05-02", []Outcome{Waived}, ""},
		{"on its last day", verdicts(Breaks), waiver(run), last, []Outcome{Waived}, ""},
		{"the day after", verdicts(Breaks), waiver(run), "2027-04-02", []Outcome{Breaks, Breaks}, "it expired on 2027-04-01"},
		{"unproven stays unproven", verdicts(Unproven), waiver(run), last, []Outcome{Unproven}, ""},
		{"void stays void", verdicts(Void), waiver(run), last, []Outcome{Void}, ""},
		{"all of a subject's", verdicts(Breaks, Meets, Breaks), waiver(run), last, []Outcome{Waived, Meets, Waived}, ""},
		{"nothing to waive", verdicts(Meets, DoesNotApply), waiver(run), last, []Outcome{Meets, DoesNotApply, Breaks}, "there is nothing to waive: the rule is met or does not apply"},
		{"matches nothing", verdicts(Breaks), waiver("cable_run.array.north"), last, []Outcome{Breaks, Breaks}, "no verdict of practice.voltage_drop is about that"},
		{"unwaivable", unwaivable, waiver(run), last, []Outcome{Breaks, Breaks}, "the rule cannot be waived"},
		{"no waiver", verdicts(Breaks), nil, last, []Outcome{Breaks}, ""},
	} {
		t.Run(test.name, func(t *testing.T) {
			before := append([]Verdict(nil), test.vs...)
			got := Apply(test.vs, test.ws, test.date)
			if diff := cmp.Diff(before, test.vs); diff != "" {
				t.Errorf("Apply changed what it was handed:\n%s", diff)
			}
			var outcomes []Outcome
			for _, v := range got {
				outcomes = append(outcomes, v.Outcome)
				if (v.Outcome == Waived) != (v.Waiver != nil) {
					t.Errorf("%s: outcome %s, waiver %v", v.Key(), v.Outcome, v.Waiver)
				}
			}
			if diff := cmp.Diff(test.want, outcomes); diff != "" {
				t.Errorf("outcomes:\n%s", diff)
			}
			if last := got[len(got)-1]; test.because != "" {
				want := Verdict{Rule: WaiverRule, About: "system", Which: rule + " on " + test.ws[0].On[0], Outcome: Breaks, Grade: Fix, BookGrade: Fix, Because: test.because}
				if last.Rule != want.Rule || last.About != want.About || last.Which != want.Which || last.Grade != want.Grade || last.Because != want.Because || !last.Finding() {
					t.Errorf("the finding is %+v", last)
				}
			}
		})
	}
}

func TestSortIsTotalOnKeys(t *testing.T) {
	vs := []Verdict{
		{Rule: "b.x", About: "a", Grade: Advise},
		{Rule: "b.x", About: "b", Which: "2", Grade: Stop},
		{Rule: "b.x", About: "b", Which: "1", Grade: Stop},
		{Rule: "a.x", About: "c", Grade: Fix},
	}
	Sort(vs)
	var keys []string
	for i := range vs {
		keys = append(keys, vs[i].Key())
	}
	if diff := cmp.Diff([]string{"b.x|b|1", "b.x|b|2", "a.x|c|", "b.x|a|"}, keys); diff != "" {
		t.Error(diff)
	}
}
