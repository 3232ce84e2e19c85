package report

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"stringline/lint"
	"stringline/lint/verdict"
	"stringline/schema/source"
)

// wanted is one thing that leaves findings unproven: an attribute to supply, or a
// reason why a method has no answer.
type wanted struct {
	id      string // "" for a reason
	because string // "" for an attribute
	of      []int  // places of the findings in the list that it was made of, ascending
	grade   verdict.Grade
}

// wantedOf groups unproven findings by what they want: the worst grade first, then
// what most of them want, then in the order of the findings. A finding that wants
// several things stands under each.
func wantedOf(found []*verdict.Verdict) []wanted {
	type key struct{ id, because string }
	var all []wanted
	at := map[key]int{}
	note := func(k key, n int) {
		i, ok := at[k]
		if !ok {
			i = len(all)
			at[k] = i
			all = append(all, wanted{id: k.id, because: k.because, grade: found[n].Grade})
		}
		w := &all[i]
		if last := len(w.of) - 1; last >= 0 && w.of[last] == n {
			return
		}
		w.of = append(w.of, n)
		if found[n].Grade.Rank() < w.grade.Rank() {
			w.grade = found[n].Grade
		}
	}
	for n, v := range found {
		if v.Outcome != verdict.Unproven {
			continue
		}
		for _, id := range v.Missing {
			note(key{id: id}, n)
		}
		if v.Because != "" {
			note(key{because: v.Because}, n)
		}
	}
	slices.SortStableFunc(all, func(a, b wanted) int {
		return cmp.Or(cmp.Compare(a.grade.Rank(), b.grade.Rank()), -cmp.Compare(len(a.of), len(b.of)))
	})
	return all
}

// mostWanted and mostIndexed are how long the lists at the foot of a design grow;
// the items above tell the rest, and the JSON all.
const (
	mostWanted        = 12
	mostIndexed       = 15
	mostIndexedNarrow = 8 // where an item takes three lines
)

// closing gives what stands below a design's figures, for who sees but the end of
// it: of a long page an index of the items, and what to supply, where several items
// want something. lines is how long the page is so far.
func (p *page) closing(d *lint.DesignResult, lines int) {
	found := findings(d.Verdicts)
	unproven := 0
	for _, v := range found {
		if v.Outcome == verdict.Unproven {
			unproven++
		}
	}
	if lines >= longPage {
		p.findingIndex(found, d.Problems)
	}
	if unproven > 1 {
		p.supplyIndex(wantedOf(found))
	}
}

// supplyIndex writes what unproven items want. Attributes of one subject that the
// same items want stand together.
func (p *page) supplyIndex(all []wanted) {
	type row struct {
		wanted
		ids []string
	}
	var rows []*row
	for _, w := range all {
		subject, _ := subjectOf(w.id)
		same := func(r *row) bool {
			with, _ := subjectOf(r.id)
			return w.id != "" && r.id != "" && with == subject && slices.Equal(r.of, w.of)
		}
		if i := slices.IndexFunc(rows, same); i >= 0 {
			rows[i].ids = append(rows[i].ids, w.id)
			continue
		}
		rows = append(rows, &row{w, []string{w.id}})
	}
	if len(rows) == 0 {
		return
	}
	p.blank()
	p.line().put("SUPPLY, worst first", plain).end()
	for i, r := range rows {
		if i == mostWanted {
			p.line().to(2).wrap(fmt.Sprintf("and %s more that fewer items or lesser grades want", count(len(rows)-i, "value", "values")), plain)
			break
		}
		l := p.line().put(strings.ToUpper(string(r.grade)), gradeInk(r.grade))
		items := count(len(r.of), "item", "items")
		l.right(max(l.at+1+columns(items), 17), items, plain).to(19)
		if r.id == "" {
			l.wrap("no answer: "+r.because, plain)
			continue
		}
		l.wrap(strings.Join(supplies(r.ids), "; "), inkSupply)
	}
}

// findingIndex lists the items of a long page, and what could not be read, by
// place, last.
func (p *page) findingIndex(found []*verdict.Verdict, problems source.Problems) {
	if len(found)+len(problems) == 0 {
		return
	}
	p.blank()
	unproven := slices.ContainsFunc(found, func(v *verdict.Verdict) bool { return v.Outcome == verdict.Unproven })
	if heading := "FINDINGS by item, worst first"; unproven {
		p.line().wrap(heading+"; ? is unproven", plain)
	} else {
		p.line().wrap(heading, plain)
	}
	most := mostIndexed
	if p.narrow() {
		most = mostIndexedNarrow
	}
	for i, v := range found {
		if i == most {
			p.line().to(2).wrap(fmt.Sprintf("and %d more, above", len(found)-i), plain)
			break
		}
		l := p.line().right(3, fmt.Sprint(i+1), plain).to(5)
		switch v.Outcome {
		case verdict.Void:
			l.put("VOID", plain)
		case verdict.Unproven:
			l.put(strings.ToUpper(string(v.Grade)), gradeInk(v.Grade)).gap().put("?", plain)
		default:
			l.put(strings.ToUpper(string(v.Grade)), gradeInk(v.Grade))
		}
		at := source.Range{}
		if len(v.At) > 0 {
			at = v.At[0]
		}
		if l.to(14); p.narrow() {
			l.wrapPieces([]string{v.Rule, subject(v), linePlace(at)}, " ", plain)
			continue
		}
		if words := v.Rule + " on " + subject(v); l.at+columns(Escape(words)) > p.width {
			l.wrapPieces([]string{v.Rule, "on " + subject(v), linePlace(at)}, " ", plain)
		} else {
			p.pair(l, words, linePlace(at))
		}
	}
	if len(problems) > 0 {
		p.pair(p.line().put("ERRORS", inkFix).gap(), fmt.Sprintf("%d, told above the items", len(problems)), linePlace(problems[0].At))
	}
}

// linePlace gives a place without its column: an index only leads there.
func linePlace(at source.Range) string {
	if !at.Valid() {
		return at.String()
	}
	return fmt.Sprintf("%s:%d", at.File, at.Start.Line)
}
