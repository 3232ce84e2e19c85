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
	var waived []string
	for i := range d.Verdicts {
		if v := &d.Verdicts[i]; v.Outcome == verdict.Waived && v.Waiver != nil {
			waived = append(waived, fmt.Sprintf("%s on %s, until %s", v.Rule, subject(v), v.Waiver.Expires))
		}
	}
	assumed := assumptions(d)
	if len(waived)+len(assumed) > 0 {
		p.blank()
	}
	for i, words := range waived {
		if i == 0 {
			p.line().put("Waived", plain).to(9).wrap(words, plain)
		} else {
			p.line().to(9).wrap(words, plain)
		}
	}
	if len(assumed) > 0 {
		p.line().put("Assumed", plain).to(9).wrap(strings.Join(assumed, "; "), plain)
	}
	return len(waived)+len(assumed) > 0
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

// date names the day that decided about waivers, where there was one to decide
// about.
func (p *page) date(r *lint.Result) {
	for i := range r.Designs {
		for j := range r.Designs[i].Verdicts {
			if r.Designs[i].Verdicts[j].Waiver != nil {
				p.line().put("Date", plain).to(9).wrap(r.Date+", which decides the ends of waivers", plain)
				return
			}
		}
	}
}

// counts says in one sentence what was done.
func (p *page) counts(s *lint.Summary) { p.line().wrap(countsWords(s), plain) }

func countsWords(s *lint.Summary) string {
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

func (p *page) caution() {
	p.line().wrap("Caution: t"+strings.TrimPrefix(Caution, "T"), plain)
}
