package verdict

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"stringline/schema/source"
)

// Accepted is one line of a baseline: a finding as it stood on the day when it was
// accepted.
type Accepted struct {
	File         string // of the design, relative to the baseline's folder, with /
	Rule         string
	About, Which string
	Outcome      Outcome // breaks or unproven
	Grade        Grade   // fix or advise
	Found        string  // for people and reviews: "169.8 V"; "" where nothing was measured or it was unknown
	Spare        *Spare
	Headroom     *float64
	Since        string       // yyyy-mm-dd
	At           source.Range // its line
	keyAt        source.Range
}

// Key identifies a line, as [Verdict.Key] does behind the file.
func (a *Accepted) Key() string { return a.File + "|" + a.Rule + "|" + a.About + "|" + a.Which }

// Baseline holds the findings that were accepted, ordered by file, rule, about
// and which. It is made by [ReadBaseline], and not changed after.
type Baseline struct {
	Name   string // as shown to people
	Lines  []Accepted
	byFile map[string][]int
}

// Acceptance is what a baseline says about a finding that it lists.
type Acceptance struct {
	Was   Accepted
	Worse string // why it is worse than what was accepted; "" where it is not
}

// Tolerance is how much lower headroom may be than what was accepted, as a share
// of the limit: 0.001 is a tenth of a percent. It takes in what rounding and a
// change of the method's last digits do, and no change of a part.
const Tolerance = 0.001

// Acceptable says why a finding cannot be accepted, or "". Stops cannot, nor what
// a waiver could not permit either, nor what nobody judged.
func (v *Verdict) Acceptable() string {
	switch {
	case v.Grade == Stop:
		return "it is a stop"
	case v.Outcome == Void:
		return "the rule itself failed"
	case !v.Waivable:
		return "nobody may permit a departure from this rule"
	}
	return ""
}

// Accept gives a finding's line as of a day. The file is the design's.
func (v *Verdict) Accept(file, date string) Accepted {
	a := Accepted{File: file, Rule: v.Rule, About: v.About, Which: v.Which, Outcome: v.Outcome, Grade: v.Grade, Since: date}
	if v.Is != nil {
		switch {
		case v.Is.Value != nil:
			a.Found = strings.TrimSpace(nine(*v.Is.Value) + " " + v.Is.Unit)
		case v.Is.Word != nil:
			a.Found = *v.Is.Word
		case v.Is.Yes != nil && *v.Is.Yes:
			a.Found = "yes"
		case v.Is.Yes != nil:
			a.Found = "no"
		}
	}
	if v.Spare != nil && finite(v.Spare.Value) {
		spare := Spare{Value: rounded(v.Spare.Value), Unit: v.Spare.Unit}
		a.Spare = &spare
	}
	if v.Headroom != nil && finite(*v.Headroom) {
		headroom := rounded(*v.Headroom)
		a.Headroom = &headroom
	}
	return a
}

func finite(v float64) bool { return !math.IsNaN(v) && !math.IsInf(v, 0) }

// nine writes a number to 9 significant digits, as all machine output has it.
func nine(v float64) string { return strconv.FormatFloat(v, 'g', 9, 64) }

func rounded(v float64) float64 {
	r, err := strconv.ParseFloat(nine(v), 64)
	if err != nil || r == 0 {
		return 0 // and never -0
	}
	return r
}

// Compare puts a design's lines to its verdicts, and marks those that it lists.
// It gives the indices in Lines of those that a finding, or a void verdict (of
// which nothing is known), stands for; the others are gone.
func (b *Baseline) Compare(file string, vs []Verdict) (stand map[int]bool) {
	stand = map[int]bool{}
	of := map[string]int{}
	for _, i := range b.byFile[file] {
		of[b.Lines[i].Key()] = i
	}
	if len(of) == 0 {
		return stand
	}
	for n := range vs {
		v := &vs[n]
		i, listed := of[file+"|"+v.Key()]
		if !listed {
			continue
		}
		switch v.Outcome {
		case Breaks, Unproven:
			stand[i] = true
			v.Accepted = &Acceptance{Was: b.Lines[i], Worse: b.Lines[i].worse(v)}
		case Void:
			stand[i] = true
		}
	}
	return stand
}

// OfFile gives the indices in Lines of one design's.
func (b *Baseline) OfFile(file string) []int { return b.byFile[file] }

// worse says why a finding is worse than what was accepted, or "".
func (a *Accepted) worse(v *Verdict) string {
	switch {
	case v.Acceptable() != "" && v.Grade != Stop:
		return v.Acceptable()
	case v.Grade.Rank() < a.Grade.Rank():
		return fmt.Sprintf("its grade rose from %s to %s", a.Grade, v.Grade)
	case a.Outcome == Unproven && v.Outcome == Breaks:
		return "it was unproven and is now known to break the rule"
	case a.Outcome == Breaks && v.Outcome == Unproven:
		return "it broke the rule by a known figure, and now nothing is known"
	case v.Outcome == Unproven:
		return ""
	}
	now := v.Accept(a.File, a.Since)
	switch {
	case a.Headroom != nil && now.Headroom != nil:
		if *now.Headroom < *a.Headroom-Tolerance {
			return fmt.Sprintf("headroom %s, accepted at %s", share(*now.Headroom), share(*a.Headroom))
		}
		return ""
	case a.Headroom == nil && now.Headroom == nil && a.Spare != nil && now.Spare != nil && a.Spare.Unit == now.Spare.Unit:
		if now.Spare.Value < a.Spare.Value-Tolerance*math.Abs(a.Spare.Value) {
			return strings.TrimSpace(fmt.Sprintf("%s %s", nine(now.Spare.Value), now.Spare.Unit)) + " to the limit, accepted at " +
				strings.TrimSpace(nine(a.Spare.Value)+" "+a.Spare.Unit)
		}
		return ""
	case a.Headroom == nil && now.Headroom == nil && a.Spare == nil && now.Spare == nil:
		return "" // a yes or no: nothing to be more or less of
	}
	return "it is no longer measured as it was, so nobody can tell that it is no worse"
}

// better tells whether a finding has drawn nearer to its limit by more than the
// tolerance, so that a new acceptance must hold it there.
func (a *Accepted) better(now *Accepted) bool {
	switch {
	case a.Outcome != now.Outcome || a.Grade != now.Grade:
		return true
	case a.Headroom != nil && now.Headroom != nil:
		return *now.Headroom > *a.Headroom+Tolerance
	case a.Spare != nil && now.Spare != nil:
		return now.Spare.Value > a.Spare.Value+Tolerance*math.Abs(a.Spare.Value)
	}
	return false
}

// Renew gives the line that a finding has after it is accepted on a day: as it
// was where nothing moved; from its own day but with the new figures where it got
// better; of the new day where it got worse.
func (a *Acceptance) Renew(v *Verdict, date string) Accepted {
	now := v.Accept(a.Was.File, a.Was.Since)
	switch {
	case a.Worse != "":
		now.Since = date
		return now
	case a.Was.better(&now):
		return now
	}
	return a.Was
}

// share writes a share of a limit for people.
func share(v float64) string { return strconv.FormatFloat(v*100, 'f', 1, 64) + " %" }

func sortAccepted(lines []Accepted) {
	slices.SortStableFunc(lines, func(a, b Accepted) int {
		return cmp.Or(cmp.Compare(a.File, b.File), cmp.Compare(a.Rule, b.Rule), cmp.Compare(a.About, b.About), cmp.Compare(a.Which, b.Which))
	})
}
