package report

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"stringline/lint"
	"stringline/lint/facts"
	"stringline/lint/verdict"
)

// footnotes writes what a design's verdicts stand on besides its own figures:
// waivers in force and assumptions. It reports whether there were any.
func (p *page) footnotes(d *lint.DesignResult) bool {
	var waived, accepted []string
	for i := range d.Verdicts {
		if v := &d.Verdicts[i]; v.Held() {
			accepted = append(accepted, acceptedWords(v))
		}
		if v := &d.Verdicts[i]; v.Outcome == verdict.Waived && v.Waiver != nil {
			waived = append(waived, fmt.Sprintf("%s on %s, until %s", v.Rule, subject(v), v.Waiver.Expires))
		}
	}
	assumed := assumptions(d)
	if len(accepted)+len(waived)+len(assumed) > 0 {
		p.blank()
	}
	p.listed("Accepted", accepted)
	p.listed("Waived", waived)
	if len(assumed) > 0 {
		p.line().put("Assumed", plain).to(9).wrap(strings.Join(assumed, "; "), plain)
	}
	return len(accepted)+len(waived)+len(assumed) > 0
}

// listed writes lines under one word.
func (p *page) listed(word string, lines []string) {
	for i, words := range lines {
		l := p.line()
		if i == 0 {
			l.put(word, plain)
		}
		l.to(9).wrap(words, plain)
	}
}

// acceptedWords says of a finding that a baseline accepts what it is, and how far
// past its limit.
func acceptedWords(v *verdict.Verdict) string {
	words := fmt.Sprintf("%s on %s, since %s: ", v.Rule, subject(v), v.Accepted.Was.Since)
	if v.Outcome == verdict.Unproven {
		return words + "unproven, " + string(v.Grade)
	}
	words += string(v.Grade)
	for _, m := range measures(v) {
		if m.label == "found" || m.label == "over by" || m.label == "short by" || m.label == "off by" {
			words += ", " + m.label + " " + m.value
		}
	}
	return words
}

// baseline tells what became of the findings that were accepted before.
func (p *page) baseline(b *lint.BaselineUse) {
	if b == nil {
		return
	}
	p.line().wrap(baselineWords(b), plain)
	var gone []string
	for i := range b.Gone {
		gone = append(gone, goneWords(&b.Gone[i]))
	}
	p.listed("Gone", gone)
}

// baselineWords counts a baseline's findings in one sentence.
func baselineWords(b *lint.BaselineUse) string {
	text := fmt.Sprintf("Against %s: %s as accepted, %d worse, %d new.", b.Name, count(b.Held, "finding", "findings"), b.Worse, b.Fresh)
	if len(b.Gone) > 0 {
		text += fmt.Sprintf(" %d gone; --accept takes them out.", len(b.Gone))
	}
	return text
}

func goneWords(a *verdict.Accepted) string {
	about := a.About
	if a.Which != "" {
		about += ", " + a.Which
	}
	return fmt.Sprintf("%s on %s in %s, accepted %s", a.Rule, about, a.File, a.Since)
}

// assumptions lists every fact that a judgement assumed, with its value; facts
// of one name and value are told together, and names that stand on the same
// subjects too.
func assumptions(d *lint.DesignResult) []string {
	var ids []string
	for i := range d.Verdicts {
		if d.Verdicts[i].Outcome != verdict.DoesNotApply {
			ids = append(ids, d.Verdicts[i].Assumed...)
		}
	}
	slices.Sort(ids)
	ids = slices.Compact(ids)

	type group struct {
		what     string
		subjects []string
	}
	var groups []*group
	byWhat := map[string]*group{}
	for _, id := range ids {
		subject, name := subjectOf(id)
		what := strings.ReplaceAll(name, "_", " ")
		if value := assumedValue(d.System, id); value != "" {
			what += " " + value
		}
		g, ok := byWhat[what]
		if !ok {
			g = &group{what: what}
			byWhat[what] = g
			groups = append(groups, g)
		}
		g.subjects = append(g.subjects, subject)
	}
	var merged []*group
	bySubjects := map[string]*group{}
	for _, g := range groups {
		key := strings.Join(g.subjects, " ")
		if first, ok := bySubjects[key]; ok {
			first.what += ", " + g.what
			continue
		}
		bySubjects[key] = g
		merged = append(merged, g)
	}
	slices.SortStableFunc(merged, func(a, b *group) int { return cmp.Compare(a.what, b.what) })
	words := make([]string, len(merged))
	for i, g := range merged {
		words[i] = g.what + " in " + strings.Join(g.subjects, ", ")
	}
	return words
}

func assumedValue(s *facts.System, id string) string {
	if s == nil {
		return ""
	}
	f, ok := s.Fact(id)
	if !ok || !f.Known {
		return ""
	}
	return factValue(&f)
}

// counts says in one sentence what was done.
func (p *page) counts(s *lint.Summary) { p.line().wrap(countWords(s), plain) }

func countWords(s *lint.Summary) string {
	n := func(count int) string {
		if count == 0 {
			return "none"
		}
		return fmt.Sprint(count)
	}
	text := fmt.Sprintf("%s put to %s gave %s: %s met, %s broken, %s unproven, %s waived, %s void.",
		count(s.Rules, "rule", "rules"), count(s.Designs, "design", "designs"), count(s.Judgements, "judgement", "judgements"),
		n(s.Meets), n(s.Breaks), n(s.Unproven), n(s.Waived), n(s.Void))
	if s.DoesNotApply > 0 {
		text += fmt.Sprintf(" %d more did not apply.", s.DoesNotApply)
	}
	return text
}

// cautionWords stand in every output that a person may act on.
const cautionWords = "Caution: t" + caution

func (p *page) caution() { p.line().wrap(cautionWords, plain) }
