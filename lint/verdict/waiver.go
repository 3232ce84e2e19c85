package verdict

import (
	"fmt"

	"stringline/schema/source"
)

// WaiverRule is the id under which waivers themselves are found wanting.
const WaiverRule = "waiver.in_force"

// WaiverInput is one waiver block of a design.
type WaiverInput struct {
	Rule       string
	On         []string       // subjects, as verdicts name them
	OnAt       []source.Range // the place of each of On; may be shorter
	Reason     string
	ApprovedBy string
	Expires    string // yyyy-mm-dd, in force through that day
	At         source.Range
}

// Apply puts waivers to verdicts: one that is in force on date (yyyy-mm-dd, its
// last day included) turns what breaks into waived. Unproven and void verdicts
// stay what they are, waived or not: nobody can permit what nobody knows.
//
// A waiver that has expired, that matches no verdict, that has nothing to waive
// (all of them are met or do not apply), or that is on a rule which cannot be
// waived is itself a finding, of grade fix, about the system; Which says "RULE
// on SUBJECT". The verdicts come back in the order of [Sort]; those handed in
// are not changed.
func Apply(vs []Verdict, ws []WaiverInput, date string) []Verdict {
	out := append([]Verdict(nil), vs...)
	type subject struct{ rule, about string }
	found := map[subject][]int{}
	for i := range out {
		k := subject{out[i].Rule, out[i].About}
		found[k] = append(found[k], i)
	}
	told := map[string]bool{}
	for _, w := range ws {
		for n, on := range w.On {
			at := w.At
			if n < len(w.OnAt) && w.OnAt[n].Valid() {
				at = w.OnAt[n]
			}
			why := w.apply(out, found[subject{w.Rule, on}], date)
			which := w.Rule + " on " + on
			if why == "" || told[which] {
				continue
			}
			told[which] = true
			out = append(out, w.finding(which, why, at))
		}
	}
	Sort(out)
	return out
}

// apply waives what the waiver covers among the verdicts of one rule and
// subject, and says what is wrong with the waiver, or "".
func (w *WaiverInput) apply(vs []Verdict, of []int, date string) string {
	if len(of) == 0 {
		return fmt.Sprintf("no verdict of %s is about that", w.Rule)
	}
	if !vs[of[0]].Waivable {
		return "the rule cannot be waived"
	}
	if date > w.Expires {
		return "it expired on " + w.Expires
	}
	useful := false
	for _, i := range of {
		switch vs[i].Outcome {
		case Breaks:
			vs[i].Outcome = Waived
			vs[i].Waiver = &Waiver{Reason: w.Reason, ApprovedBy: w.ApprovedBy, Expires: w.Expires, At: w.At}
			useful = true
		case Waived, Unproven, Void: // it may be needed once more is known
			useful = true
		}
	}
	if !useful {
		return "there is nothing to waive: the rule is met or does not apply"
	}
	return ""
}

func (w *WaiverInput) finding(which, why string, at source.Range) Verdict {
	v := Verdict{
		Rule: WaiverRule, About: "system", Which: which,
		Outcome: Breaks, Grade: Fix, BookGrade: Fix,
		Title:   "Waivers are in force, needed and permitted",
		Message: fmt.Sprintf("The waiver of %s is of no use: %s.", which, why),
		Because: why,
		Remedy:  "take the waiver out, or have it renewed for what still departs from the rule",
		Source:  "common practice: a permission names a rule, a subject and an end",
	}
	if at.Valid() {
		v.At = []source.Range{at}
	}
	return v
}
