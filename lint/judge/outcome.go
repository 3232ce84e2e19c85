package judge

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"stringline/lint/verdict"
	"stringline/schema/quantity"
	"stringline/schema/source"
)

// bench judges one rule's records on one design.
type bench struct {
	rule   *Rule
	grade  verdict.Grade // in force
	values values
	// parameter gives a parameter's values for reports by its fact id.
	parameter func(id string) (verdict.Parameter, bool)
	// assumed gives what a fact assumes, and places where it comes from.
	assumed func(id string) []string
	at      func(id string) []source.Range
	// relied, if not nil, is told the leaves that a verdict rests on.
	relied func(v *verdict.Verdict, ids []string)
	// went, if not nil, is told what was missing where logic decided without it.
	went func(v *verdict.Verdict, despite []string)
}

// verdict starts a verdict of the rule.
func (b *bench) verdict(about, which string) verdict.Verdict {
	return verdict.Verdict{
		Rule: b.rule.ID, About: about, Which: which,
		Grade: b.grade, BookGrade: b.rule.Grade,
		Title: b.rule.Title, Waivable: b.rule.Waivable,
		Remedy: b.rule.Remedy, Source: b.rule.Source,
		At: b.at(about),
	}
}

func (b *bench) void(about, which string, f *fault) verdict.Verdict {
	v := b.verdict(about, which)
	v.Outcome = verdict.Void
	v.Message = "The rule could not be applied: " + f.message
	v.Fault = &verdict.Fault{Message: f.message, At: f.at}
	return v
}

func (b *bench) doesNotApply(about, which, because string) verdict.Verdict {
	v := b.verdict(about, which)
	v.Outcome, v.Because, v.Message = verdict.DoesNotApply, because, because
	return v
}

// unprovenBy is the verdict on a subject where the rule read an unknown by
// itself: what it would say otherwise nobody knows.
func (b *bench) unprovenBy(about string, r *reading) verdict.Verdict {
	v := b.verdict(about, "")
	v.Outcome, v.Message = verdict.Unproven, b.rule.Description
	v.Missing, v.Because = r.missing, r.because
	b.rest(&v, r.from)
	return v
}

// judge gives the verdict of one record, in v. Verdicts are large, so they are made
// where they stay.
func (b *bench) judge(v *verdict.Verdict, rec *record) {
	if rec.fault != nil {
		*v = b.void(rec.about, rec.which, rec.fault)
		return
	}
	if rec.relation == "" {
		*v = b.doesNotApply(rec.about, rec.which, rec.because)
		return
	}
	*v = b.verdict(rec.about, rec.which)
	v.Relation = rec.relation
	var when value
	if rec.when != nil {
		var wrong *fault
		if when, wrong = rec.when.evaluate(b.values); wrong != nil {
			*v = b.void(rec.about, rec.which, wrong)
			return
		}
		if when.known && !when.yes {
			*v = b.doesNotApply(rec.about, rec.which, rec.otherwise)
			if v.Because == "" {
				v.Because = "not the case: " + rec.when.words(nil)
				v.Message = v.Because
			}
			b.rest(v, when.from)
			return
		}
	}
	undecided := rec.when != nil && !when.known
	is, wrong := rec.is.evaluate(b.values)
	limits := make([]value, len(rec.limits))
	for i := range rec.limits {
		var w *fault
		limits[i], w = rec.limits[i].evaluate(b.values)
		wrong = firstFault(wrong, w)
	}
	if wrong != nil && !undecided {
		*v = b.void(rec.about, rec.which, wrong)
		return
	}
	unit := shownUnit(rec)
	if wrong == nil {
		m := rec.is.measured(&is, b.values, unit)
		v.Is = &m
		if len(limits) > 0 {
			v.Limits = make([]verdict.Measured, len(limits))
		}
		for i := range limits {
			v.Limits[i] = rec.limits[i].measured(&limits[i], b.values, unit)
		}
	}
	for _, f := range rec.also {
		x, w := f.evaluate(b.values)
		if w != nil {
			if undecided {
				continue
			}
			*v = b.void(rec.about, rec.which, w)
			return
		}
		v.Also = append(v.Also, f.measured(&x, b.values, f.unit))
	}
	if undecided {
		v.Outcome, v.Missing, v.Because = verdict.Unproven, when.missing, when.because
		b.rest(v, when.from, is.from, fromOf(limits))
	} else {
		b.compare(v, rec, &is, limits)
		b.rest(v, is.from, fromOf(limits), when.from)
	}
	if b.went != nil {
		despite := merge(when.despite, is.despite)
		for i := range limits {
			despite = merge(despite, limits[i].despite)
		}
		b.went(v, despite)
	}
	b.word(v, rec, &is, limits, unit)
}

func fromOf(vs []value) []string {
	var from []string
	for i := range vs {
		from = merge(from, vs[i].from)
	}
	return from
}

// shownUnit is the unit of a verdict's numbers: that of the limit where it is a
// fact, else that of what is measured where it is one, else the limit's.
func shownUnit(rec *record) quantity.Unit {
	for _, l := range rec.limits {
		if l.op == "leaf" && l.kind == number {
			return l.unit
		}
	}
	if rec.is.op == "leaf" || len(rec.limits) == 0 || rec.is.kind != number {
		return rec.is.unit
	}
	for _, l := range rec.limits {
		if l.unit.Symbol != "" {
			return l.unit
		}
	}
	return rec.is.unit
}

// compare decides between meets, breaks and unproven. An unknown never meets;
// it breaks where its known bound alone is past the limit.
func (b *bench) compare(v *verdict.Verdict, rec *record, is *value, limits []value) {
	known := is.known
	for i := range limits {
		known = known && limits[i].known
	}
	holds := true
	switch rec.relation {
	case "is_true":
		holds = is.yes
	case "equals", "all_equal":
		for i := range limits {
			holds = holds && same1(rec.is.kind, is, &limits[i])
		}
		if !known && apart(rec.is.kind, is, limits) {
			v.Outcome = verdict.Breaks
		}
	case "at_most":
		holds = !above(is.low, limits[0].high)
	case "at_least":
		holds = !above(limits[0].low, is.high)
	case "between":
		holds = !above(limits[0].low, is.high) && !above(is.low, limits[1].high)
	}
	switch {
	case v.Outcome != "":
	case !known && holds, !known && (rec.relation == "is_true" || rec.relation == "equals" || rec.relation == "all_equal"):
		v.Outcome = verdict.Unproven
	case holds:
		v.Outcome = verdict.Meets
	default:
		v.Outcome = verdict.Breaks
	}
	if !known {
		v.Missing = is.missing
		because := is.because
		for i := range limits {
			v.Missing = merge(v.Missing, limits[i].missing)
			because = cmp.Or(because, limits[i].because)
		}
		if v.Outcome == verdict.Unproven {
			v.Because = because
		}
		return
	}
	b.margin(v, rec, is, limits)
}

// above tells whether a is above b by more than the slack.
func above(a, b float64) bool { return a > b && !near(a, b) }

func same1(k kind, a, b *value) bool {
	switch k {
	case word:
		return a.word == b.word
	case yesNo:
		return a.yes == b.yes
	}
	return near(a.si, b.si)
}

// apart tells whether two of the known values differ already: nothing unknown
// can make all of them equal then.
func apart(k kind, is *value, limits []value) bool {
	var first *value
	if is.known {
		first = is
	}
	for i := range limits {
		switch {
		case !limits[i].known:
		case first == nil:
			first = &limits[i]
		case !same1(k, first, &limits[i]):
			return true
		}
	}
	return false
}

// margin gives spare and headroom. Temperatures and a limit of 0 have no
// headroom, since a share of them means nothing; equality and yes/no have neither.
func (b *bench) margin(v *verdict.Verdict, rec *record, is *value, limits []value) {
	if rec.is.kind != number {
		return
	}
	unit := shownUnit(rec)
	spare, limit, ok := 0.0, 0.0, false
	take := func(s, l float64) {
		better := !ok || s < spare
		if l != 0 && limit != 0 && ok { // between: the smaller headroom decides
			better = s/math.Abs(l) < spare/math.Abs(limit)
		}
		if better {
			spare, limit = s, l
		}
		ok = true
	}
	switch rec.relation {
	case "at_most":
		take(limits[0].si-is.si, limits[0].si)
	case "at_least":
		take(is.si-limits[0].si, limits[0].si)
	case "between":
		take(is.si-limits[0].si, limits[0].si)
		take(limits[1].si-is.si, limits[1].si)
	default:
		return
	}
	symbol, scale := unit.Symbol, unit.Scale
	if unit.Dimension.Point { // a distance between two temperatures
		symbol, scale = "K", 1
	}
	if scale == 0 { // a gauge is no scale
		symbol, scale = "mm2", 1e-6
	}
	v.Spare = &verdict.Spare{Value: spare / scale, Unit: symbol}
	if limit != 0 && !unit.Dimension.Point {
		headroom := spare / math.Abs(limit)
		if !math.IsInf(headroom, 0) && !math.IsNaN(headroom) {
			v.Headroom = &headroom
		}
	}
}

// rest fills in what a verdict rests on: assumptions, parameters and places.
func (b *bench) rest(v *verdict.Verdict, from ...[]string) {
	n := 0
	for _, ids := range from {
		n += len(ids)
	}
	v.At = append(make([]source.Range, 0, len(v.At)+n), v.At...) // the subject's own places are shared
	done := make([]string, 0, n)
	for _, ids := range from {
		if b.relied != nil {
			b.relied(v, ids)
		}
		for _, id := range ids {
			if slices.Contains(done, id) {
				continue
			}
			done = append(done, id)
			if p, ok := b.parameter(id); ok {
				if !slices.ContainsFunc(v.Parameters, func(q verdict.Parameter) bool { return q.Name == p.Name }) {
					v.Parameters = append(v.Parameters, p)
				}
				continue
			}
			v.Assumed = append(v.Assumed, b.assumed(id)...)
			for _, r := range b.at(id) {
				if !slices.Contains(v.At, r) {
					v.At = append(v.At, r)
				}
			}
		}
	}
	slices.Sort(v.Assumed)
	v.Assumed = slices.Compact(v.Assumed)
}

// word fills in the texts for people.
func (b *bench) word(v *verdict.Verdict, rec *record, is *value, limits []value, unit quantity.Unit) {
	if v.Outcome == verdict.Breaks {
		v.Because = rec.because
	}
	switch {
	case rec.say != "":
		v.Message = b.fill(rec.say, rec, is, limits, unit)
	case v.Outcome == verdict.Breaks && v.Because != "":
		v.Message = v.Because
	case v.Outcome == verdict.Meets:
		v.Message = b.rule.Title
	default:
		v.Message = b.rule.Description
	}
	if rec.remedy != "" {
		v.Remedy = b.fill(rec.remedy, rec, is, limits, unit)
	}
}

// fill puts a record's values into one of its texts.
func (b *bench) fill(text string, rec *record, is *value, limits []value, unit quantity.Unit) string {
	if !strings.Contains(text, "{") {
		return text
	}
	shown := make([]string, len(limits))
	for i := range limits {
		shown[i] = rec.limits[i].show(&limits[i], unit)
	}
	return strings.NewReplacer("{is}", rec.is.show(is, unit), "{limit}", strings.Join(shown, " to "), "{about}", rec.about).Replace(text)
}
