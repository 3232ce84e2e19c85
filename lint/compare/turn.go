package compare

import (
	"cmp"
	"slices"
	"strings"

	"stringline/lint"
	"stringline/lint/verdict"
)

// Direction says where a verdict went.
type Direction string

// The directions.
//
// Worse: a finding that was none (or is new with its subject, its rule or its
// design), one that breaks where it was unproven, one of a higher grade, one that
// is further past its limit, or headroom that fell below what was asked for.
// Better: a finding that is met now, does not apply any more, or left with its
// subject; one that is less far past its limit. Turned: anything else that changed
// the verdict and is neither: waived now, judged less seriously, not judged any
// more, unproven where it broke. Lost and Won: still met, with less or more
// headroom. Held: the figures moved and the headroom did not. Came and Left: no
// finding, and on one side alone.
const (
	Worse  Direction = "worse"
	Better Direction = "better"
	Turned Direction = "turned"
	Lost   Direction = "headroom_lost"
	Won    Direction = "headroom_won"
	Held   Direction = "held"
	Came   Direction = "came"
	Left   Direction = "left"
)

// Turn is a verdict that differs between the sides; Was or Now is nil where that
// side has none.
type Turn struct {
	Was, Now  *verdict.Verdict
	Direction Direction
	Why       string // in a few words
}

// Grade is the grade in force, on the newer side where it has the verdict.
func (t *Turn) Grade() verdict.Grade { return t.either().Grade }

func (t *Turn) either() *verdict.Verdict {
	if t.Now != nil {
		return t.Now
	}
	return t.Was
}

// Change of the headroom as a share of the limit; ok is false where a side has
// none.
func (t *Turn) Change() (share float64, ok bool) {
	if t.Was == nil || t.Now == nil || t.Was.Headroom == nil || t.Now.Headroom == nil {
		return 0, false
	}
	return *t.Now.Headroom - *t.Was.Headroom, true
}

// change is [Turn.Change], and where there is no headroom by nature (temperatures,
// a limit of nought) that of the distance to the limit, in its unit.
func (t *Turn) change() (by float64, ok bool) {
	if by, ok = t.Change(); ok {
		return by, true
	}
	if t.Was == nil || t.Now == nil || t.Was.Spare == nil || t.Now.Spare == nil || t.Was.Spare.Unit != t.Now.Spare.Unit {
		return 0, false
	}
	return t.Now.Spare.Value - t.Was.Spare.Value, true
}

// slight is a move of the headroom that is rounding, not a change: below what
// machine output shows.
const slight = 1e-9

// turns pairs the verdicts of two designs and keeps what differs, worst first.
// was is nil where the design is new: only its findings are told then.
func turns(was, now *lint.DesignResult, n *names, o *Options) []Turn {
	var list []Turn
	left := map[string]*verdict.Verdict{}
	var order []string
	if was != nil {
		for i := range was.Verdicts {
			v := &was.Verdicts[i]
			key := v.Rule + "|" + n.id(v.About) + "|" + n.words(v.Which)
			left[key] = v
			order = append(order, key)
		}
	}
	var alone []*verdict.Verdict
	for i := range now.Verdicts {
		v := &now.Verdicts[i]
		if w, ok := left[v.Key()]; ok {
			delete(left, v.Key())
			list = append(list, Turn{Was: w, Now: v})
			continue
		}
		alone = append(alone, v)
	}
	others := onlyOthers(alone, left)
	for _, v := range alone {
		list = append(list, Turn{Was: others[v], Now: v})
	}
	for _, key := range order {
		if w, ok := left[key]; ok {
			list = append(list, Turn{Was: w})
		}
	}
	for i := range list {
		list[i].Direction, list[i].Why = list[i].judge(was, now, o)
	}
	list = slices.DeleteFunc(list, func(t Turn) bool { return t.Direction == "" })
	for i := range list { // one verdict that is kept must not keep all the others
		list[i].Was, list[i].Now = own(list[i].Was), own(list[i].Now)
	}
	slices.SortStableFunc(list, compareTurns)
	return list
}

func own(v *verdict.Verdict) *verdict.Verdict {
	if v == nil {
		return nil
	}
	c := *v
	return &c
}

// onlyOthers pairs what stands alone with the one verdict of the older side that has
// the same rule and subject and another word that tells several apart, where there is
// one on either side, and takes that out of left.
func onlyOthers(alone []*verdict.Verdict, left map[string]*verdict.Verdict) map[*verdict.Verdict]*verdict.Verdict {
	subject := func(key string) string { // rule|about
		rule, rest, _ := strings.Cut(key, "|")
		about, _, _ := strings.Cut(rest, "|")
		return rule + "|" + about
	}
	mine, theirs := map[string]int{}, map[string][]string{}
	for _, v := range alone {
		mine[subject(v.Key())]++
	}
	for key := range left {
		of := subject(key)
		theirs[of] = append(theirs[of], key)
	}
	found := map[*verdict.Verdict]*verdict.Verdict{}
	for _, v := range alone {
		of := subject(v.Key())
		if keys := theirs[of]; mine[of] == 1 && len(keys) == 1 {
			found[v] = left[keys[0]]
			delete(left, keys[0])
		}
	}
	return found
}

// inForce tells whether a design is judged by a rule's codebook.
func inForce(d *lint.DesignResult, rule string) bool {
	book, _, _ := strings.Cut(rule, ".")
	return d != nil && (slices.Contains(d.Books, book) || rule == verdict.WaiverRule)
}

func (t *Turn) judge(was, now *lint.DesignResult, o *Options) (Direction, string) {
	switch {
	case t.Was == nil && t.Now.Finding():
		switch {
		case was == nil:
			return Worse, "the design is new"
		case !inForce(was, t.Now.Rule):
			return Worse, "its codebook was not in force"
		}
		return Worse, "new here"
	case t.Was == nil && was == nil:
		return "", "" // of a new design its findings are told
	case t.Was == nil:
		return Came, ""
	case t.Now == nil && !t.Was.Finding():
		return Left, ""
	case t.Now == nil && !inForce(now, t.Was.Rule):
		return Turned, "its codebook is not in force any more"
	case t.Now == nil:
		return Better, "gone"
	case t.Was.Finding() && t.Now.Finding():
		return t.stillFound()
	case t.Now.Finding():
		return Worse, ""
	case t.Was.Finding() && t.Now.Outcome == verdict.Waived:
		return Turned, "waived, not put right"
	case t.Was.Finding():
		return Better, ""
	case t.Was.Outcome != t.Now.Outcome:
		if t.Now.Outcome == verdict.Waived {
			return Turned, "departs from the rule now, with a waiver"
		}
		return Turned, ""
	}
	return t.stillMet(o)
}

// stillFound compares two findings.
func (t *Turn) stillFound() (Direction, string) {
	w, v := t.Was, t.Now
	switch {
	case v.Outcome == verdict.Void && w.Outcome != verdict.Void:
		return Worse, "the rule itself fails now"
	case w.Outcome == verdict.Void && v.Outcome != verdict.Void:
		return Turned, "the rule itself failed"
	case v.Grade.Rank() < w.Grade.Rank():
		return Worse, "graded " + string(v.Grade) + ", was " + string(w.Grade)
	case v.Grade != w.Grade:
		return Turned, "judged less seriously, not put right"
	case w.Outcome == verdict.Unproven && v.Outcome == verdict.Breaks:
		return Worse, "was unproven"
	case w.Outcome != v.Outcome:
		return Turned, "still a finding"
	}
	by, ok := t.change()
	switch {
	case ok && by < -slight && v.Outcome == verdict.Breaks:
		return Worse, "further past its limit"
	case ok && by > slight && v.Outcome == verdict.Breaks:
		return Better, "less far past its limit"
	case t.figuresMoved():
		return Held, ""
	}
	return "", ""
}

// stillMet compares two verdicts of one outcome that are no findings.
func (t *Turn) stillMet(o *Options) (Direction, string) {
	by, ok := t.change()
	switch {
	case t.Now.Outcome == verdict.DoesNotApply:
		return "", ""
	case ok && by < -slight:
		if below := o.HeadroomBelow; below != nil && t.Now.Headroom != nil && t.Now.Outcome == verdict.Meets && *t.Now.Headroom < *below {
			return Worse, "met, with less headroom than asked for"
		}
		return Lost, ""
	case ok && by > slight:
		return Won, ""
	case t.Was.Grade != t.Now.Grade:
		return Turned, "met, graded " + string(t.Now.Grade) + ", was " + string(t.Was.Grade)
	case t.figuresMoved():
		return Held, ""
	}
	return "", ""
}

// figuresMoved tells whether what was found or what is allowed changed.
func (t *Turn) figuresMoved() bool { return !verdict.SameFigures(t.Was, t.Now) }

// compareTurns orders turns: what got worse first, by grade, what breaks before
// what is unproven; then what turned, what lost most headroom, what won, and what
// got better.
func compareTurns(a, b Turn) int {
	order := []Direction{Worse, Turned, Lost, Held, Won, Better, Left, Came}
	outcomes := []verdict.Outcome{verdict.Breaks, verdict.Void, verdict.Unproven, verdict.Waived, verdict.Meets, verdict.DoesNotApply}
	rank := func(t *Turn) int {
		switch t.Direction {
		case Lost, Won, Held:
			return 0
		}
		return t.Grade().Rank()*len(outcomes) + slices.Index(outcomes, t.either().Outcome)
	}
	moved := func(t *Turn) float64 {
		by, _ := t.Change()
		if t.Direction == Won { // most first, as with what is lost
			return -by
		}
		return by
	}
	return cmp.Or(
		cmp.Compare(slices.Index(order, a.Direction), slices.Index(order, b.Direction)),
		cmp.Compare(rank(&a), rank(&b)),
		cmp.Compare(moved(&a), moved(&b)),
		cmp.Compare(a.either().Rule, b.either().Rule),
		cmp.Compare(a.either().About, b.either().About),
		cmp.Compare(a.either().Which, b.either().Which),
	)
}
