package report

import (
	"fmt"
	"strings"

	"stringline/lint/compare"
	"stringline/lint/facts"
	"stringline/lint/verdict"
)

// turned writes verdicts that turned, as items: what was, what is now.
func (p *comparePage) turned(title string, list []*compare.Turn, numbered bool) {
	if len(list) == 0 {
		return
	}
	p.blank()
	p.line().put(fmt.Sprintf("%s, %d", title, len(list)), plain).end()
	for i, t := range list {
		if numbered {
			p.blank()
		}
		p.turn(i+1, t, numbered)
	}
}

func eitherVerdict(t *compare.Turn) *verdict.Verdict {
	if t.Now != nil {
		return t.Now
	}
	return t.Was
}

func (p *comparePage) turn(number int, t *compare.Turn, full bool) {
	v := eitherVerdict(t)
	l := p.line()
	if full {
		l.put(fmt.Sprintf("Item %d", number), plain)
	}
	l.to(9).put(strings.ToUpper(string(v.Grade)), gradeInk(v.Grade))
	if p.narrow() {
		l.end()
		p.line().to(p.labels()).put(subject(v), plain).end()
		p.line().to(p.labels()).put(v.Rule, plain).end()
	} else {
		p.pair(l.to(p.values()), subject(v), v.Rule)
	}
	if full && t.Now != nil {
		p.line().to(p.values()).wrap(sentence(v), plain)
	}
	p.label("was").wrap(sideWords(t.Was), plain)
	now := sideWords(t.Now)
	if t.Why != "" {
		now += "; " + t.Why
	}
	p.label("now").wrap(now, plain)
	if !full || t.Now == nil {
		return
	}
	if v.Outcome == verdict.Unproven {
		for i, words := range supplies(v.Missing) {
			p.labelOnce("supply", i).wrap(words, inkSupply)
		}
		if v.Because != "" {
			p.label("because").wrap(v.Because, plain)
		}
	} else if v.Remedy != "" && v.Outcome == verdict.Breaks {
		p.label("remedy").wrap(v.Remedy, plain)
	}
	if len(v.At) > 0 {
		p.label("where").wrapPieces(places(v.At), " ", plain)
	}
}

// sideWords says what a verdict was on one side: "meets, 84.9 V of at most
// 150.0 V, 43.4 % left".
func sideWords(v *verdict.Verdict) string {
	if v == nil {
		return "no verdict"
	}
	parts := []string{strings.ReplaceAll(string(v.Outcome), "_", " ")}
	if v.Outcome == verdict.DoesNotApply {
		if v.Because != "" {
			return parts[0] + ": " + v.Because
		}
		return parts[0]
	}
	if v.Is != nil && len(v.Limits) > 0 {
		limits := make([]string, len(v.Limits))
		for i := range v.Limits {
			limits[i] = entry(&v.Limits[i])
		}
		word := map[string]string{"at_most": " of at most ", "at_least": " of at least ", "equals": ", must be ", "between": " in ", "all_equal": " against "}[v.Relation]
		between := ", "
		if v.Relation == "between" {
			between = " to "
		}
		if word != "" {
			parts = append(parts, entry(v.Is)+word+strings.Join(limits, between))
		}
	}
	switch {
	case v.Outcome == verdict.Unproven:
	case v.Headroom != nil && *v.Headroom < 0:
		parts = append(parts, percent(-*v.Headroom)+" past it")
	case v.Headroom != nil:
		parts = append(parts, percent(*v.Headroom)+" left")
	case v.Spare != nil && v.Spare.Value < 0:
		parts = append(parts, show(-v.Spare.Value, v.Spare.Unit)+" past it")
	case v.Spare != nil:
		parts = append(parts, show(v.Spare.Value, v.Spare.Unit)+" left")
	}
	if v.Outcome == verdict.Waived && v.Waiver != nil {
		parts = append(parts, "until "+v.Waiver.Expires)
	}
	return strings.Join(parts, ", ")
}

// margin is one row of limits whose headroom moved.
type margin struct {
	lead             string
	was, now         string // found
	leftWas, leftNow string
	limit            string // where the limit itself moved
}

func marginOf(t *compare.Turn) margin {
	m := margin{lead: t.Now.About + " " + label(t.Now)}
	if r, ok := limitRowOf(t.Was); ok {
		m.was, m.leftWas = r.found, r.left
		m.limit = r.allowed
	}
	if r, ok := limitRowOf(t.Now); ok {
		m.now, m.leftNow = r.found, r.left
		if r.allowed == m.limit {
			m.limit = ""
		} else {
			m.limit = "limit " + m.limit + ", now " + r.allowed
		}
	}
	return m
}

// margins writes limits that are met on both sides, with what is left.
func (p *comparePage) margins(title string, list []*compare.Turn) {
	if len(list) == 0 {
		return
	}
	p.blank()
	shown, rest := p.some(len(list))
	rows := make([]margin, shown)
	widths := [4]int{3, 3, 8, 8}
	for i := range rows {
		rows[i] = marginOf(list[i])
		for j, text := range []string{rows[i].was, rows[i].now, rows[i].leftWas, rows[i].leftNow} {
			widths[j] = max(widths[j], columns(Escape(text)))
		}
	}
	var ends [4]int
	at := p.width
	for j := 3; j >= 0; j-- {
		ends[j] = at
		at -= widths[j] + 2
	}
	write := func(lead string, cells [4]string, with ink) {
		l := p.line().put(lead, with)
		if l.at > at {
			l.end()
			l = p.line()
		}
		for j, text := range cells {
			l.right(ends[j], text, plain)
		}
		l.end()
	}
	write(title, [4]string{"was", "now", "left was", "left now"}, plain)
	for i := range rows {
		r := &rows[i]
		write(r.lead, [4]string{r.was, r.now, r.leftWas, r.leftNow}, plain)
		if r.limit != "" {
			p.line().to(2).wrap(r.limit, plain)
		}
	}
	p.more(rest, "limits")
}

// some gives how many rows of a list are shown and how many are not.
func (p *comparePage) some(n int) (shown, rest int) {
	if p.all || n <= manyRows+1 {
		return n, 0
	}
	return manyRows, n - manyRows
}

func (p *comparePage) more(rest int, what string) {
	if rest > 0 {
		p.line().to(2).wrap(fmt.Sprintf("and %d more %s; --all shows them", rest, what), plain)
	}
}

// changeWords says what one change of a block is; its attribute, where it has
// one, stands before.
func changeWords(c *compare.Change) string {
	switch c.Kind {
	case compare.BlockNew:
		return "new, with " + count(c.Values, "value", "values")
	case compare.BlockGone:
		return "gone, with " + count(c.Values, "value", "values")
	case compare.PartNew:
		return "data sheet in use now"
	case compare.PartGone:
		return "data sheet not in use any more"
	case compare.FileOther:
		return "the file has another content"
	case compare.WaiverNew:
		return "new waiver, " + c.Now
	case compare.WaiverGone:
		return "no waiver any more; it was " + c.Was
	case compare.ValueNew:
		return "was not given, now " + c.Now
	case compare.ValueGone:
		return "was " + c.Was + ", now not given"
	}
	return "was " + c.Was + ", now " + c.Now
}

// placeOf is where a change is seen: now, or where it was.
func placeOf(c *compare.Change) string {
	if c.At.File != "" {
		return c.At.String()
	}
	return "was " + c.WasAt.String()
}

// changesByBlock parts changes where another block begins; they come block by
// block.
func changesByBlock(all []compare.Change) [][]compare.Change {
	var parts [][]compare.Change
	for i := range all {
		if last := len(parts) - 1; last >= 0 && parts[last][0].About == all[i].About {
			parts[last] = append(parts[last], all[i])
			continue
		}
		parts = append(parts, all[i:i+1:i+1])
	}
	return parts
}

// written writes what stands otherwise in the files, block by block.
func (p *comparePage) written(d *compare.Design) {
	n := len(d.Renamed) + len(d.Changes)
	if n == 0 {
		return
	}
	p.blank()
	p.line().put(fmt.Sprintf("WRITTEN OTHERWISE, %d", n), plain).end()
	for _, r := range d.Renamed {
		p.pair(p.line(), r.Now, r.At.String())
		p.line().to(p.labels()).wrap("renamed, was "+r.Was, plain)
	}
	for _, part := range changesByBlock(d.Changes) {
		p.pair(p.line(), part[0].About, placeOf(&part[0]))
		names := 0
		for i := range part {
			names = max(names, columns(Escape(part[i].Attribute)))
		}
		for i := range part {
			l := p.line().to(p.labels()).put(part[i].Attribute, plain)
			if names > 0 {
				l.to(p.labels() + min(names, p.width/3) + 2)
			}
			l.wrap(changeWords(&part[i]), plain)
		}
	}
}

// factGroup is facts that the same blocks moved.
type factGroup struct {
	causes []string
	facts  []*compare.Fact
}

// factGroups puts facts that moved for the same reason together, in the order of
// the worst of each. What is written in the files is left out: it stands there.
func factGroups(all []compare.Fact) []*factGroup {
	var groups []*factGroup
	byKey := map[string]*factGroup{}
	for i := range all {
		f := &all[i]
		if f.Attribute {
			continue
		}
		key := strings.Join(f.Causes, "|")
		g, ok := byKey[key]
		if !ok {
			g = &factGroup{causes: f.Causes}
			byKey[key] = g
			groups = append(groups, g)
		}
		g.facts = append(g.facts, f)
	}
	return groups
}

func (g *factGroup) title() string {
	if len(g.causes) == 0 {
		return "by how the parts hang together"
	}
	return "by " + strings.Join(g.causes, ", ")
}

// moved writes the facts that moved.
func (p *comparePage) moved(d *compare.Design) {
	groups := factGroups(d.Facts)
	n := 0
	for _, g := range groups {
		n += len(g.facts)
	}
	if n == 0 {
		return
	}
	p.blank()
	p.line().put(fmt.Sprintf("FACTS THAT MOVED, %d", n), plain).end()
	for _, g := range groups {
		shown, rest := p.some(len(g.facts))
		p.line().wrap(fmt.Sprintf("%s: %d", g.title(), len(g.facts)), plain)
		widths := [2]int{3, 3}
		for _, f := range g.facts[:shown] {
			was, now := factSides(f)
			widths[0], widths[1] = max(widths[0], columns(Escape(was))), max(widths[1], columns(Escape(now)))
		}
		widths[0], widths[1] = min(widths[0], p.width/4), min(widths[1], p.width/4)
		for _, f := range g.facts[:shown] {
			p.fact(f, widths)
		}
		p.more(rest, "facts")
	}
}

func (p *comparePage) fact(f *compare.Fact, widths [2]int) {
	was, now := factSides(f)
	wide := columns(Escape(was)) > widths[0] || columns(Escape(now)) > widths[1]
	l := p.line().to(2).put(f.ID, plain)
	if wide { // a series: each side on a line of its own
		l.end()
		p.line().to(4).put("was", plain).to(8).wrap(was, plain)
		p.line().to(4).put("now", plain).to(8).wrap(now, plain)
		return
	}
	end := p.width - widths[1] - 2
	if l.at+2+widths[0] > end {
		l.end()
		l = p.line()
	}
	l.right(end, was, plain).right(p.width, now, plain).end()
}

// factSides writes a fact's values so that two that differ also read different.
func factSides(f *compare.Fact) (was, now string) {
	was, now = sideEntry(&f.Was), sideEntry(&f.Now)
	if was == now && f.Was.Known && f.Now.Known && f.Now.Kind == facts.Quantity {
		return apart(facts.InUnit(f.Was.SI, f.Was.Unit), facts.InUnit(f.Now.SI, f.Now.Unit), f.Now.Unit)
	}
	if was == now {
		now += ", other ones"
	}
	return was, now
}

func sideEntry(f *facts.Fact) string {
	if !f.Known {
		return empty(f.Unit)
	}
	return factValue(f)
}
