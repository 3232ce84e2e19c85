package report

import (
	"cmp"
	"math"
	"slices"
	"strconv"
	"strings"

	"stringline/lint/verdict"
)

// The taut line: every limit of the table stands in one column, and marks stop
// short of it or stick out past it.
const (
	scaleColumns = 11 // from nought to the limit
	pastColumns  = 2  // behind the limit's own column
	longSubject  = 24
)

// limitRow is one row of the headroom table.
type limitRow struct {
	subject, what  string
	found, allowed string
	left           string
	headroom       float64
	measured       bool // headroom holds
	unproven       bool
	broken         bool
}

// limitRows collects every verdict that has a limit in numbers: what is past
// its limit; then by headroom, least first; then those that have none by nature
// (temperatures, a limit of nought); then the unproven.
func limitRows(all []verdict.Verdict) []limitRow {
	var rows []limitRow
	for i := range all {
		if r, ok := limitRowOf(&all[i]); ok {
			rows = append(rows, r)
		}
	}
	class := func(r *limitRow) int {
		switch {
		case r.broken && r.measured:
			return 0
		case r.broken:
			return 1
		case r.measured:
			return 2
		case !r.unproven:
			return 3
		}
		return 4
	}
	slices.SortStableFunc(rows, func(a, b limitRow) int {
		return cmp.Or(cmp.Compare(class(&a), class(&b)), cmp.Compare(a.headroom, b.headroom))
	})
	return rows
}

func limitRowOf(v *verdict.Verdict) (limitRow, bool) {
	compares := v.Relation == "at_most" || v.Relation == "at_least" || v.Relation == "between"
	if !compares || v.Is == nil || len(v.Limits) == 0 || v.Outcome == verdict.DoesNotApply || v.Outcome == verdict.Void {
		return limitRow{}, false
	}
	if _, err := strconv.ParseFloat(v.Is.Formula, 64); err == nil {
		return limitRow{}, false // a count that the design's structure settles: nothing measured
	}
	limit := nearest(v)
	r := limitRow{subject: v.About, what: label(v), found: entry(v.Is), allowed: entry(limit)}
	r.unproven = v.Outcome == verdict.Unproven
	r.broken = v.Outcome == verdict.Breaks || v.Outcome == verdict.Waived
	switch {
	case r.unproven && (limit.Unit == "degC" || limit.Unit == "K"):
		r.left = "___ K"
	case r.unproven:
		r.left = "___ %"
	case v.Headroom != nil:
		r.headroom, r.measured = *v.Headroom, true
		r.left = percent(*v.Headroom)
	case v.Spare != nil:
		r.left = difference(v.Spare.Value, v.Spare.Unit, r.found, r.allowed)
	}
	if v.Is.Value == nil && v.Is.AtLeast != nil && !r.unproven {
		r.found = show(*v.Is.AtLeast, v.Is.Unit)
	}
	return r, true
}

// nearest is the limit that the headroom is taken from: of a range the end
// that is closer, as a share of itself.
func nearest(v *verdict.Verdict) *verdict.Measured {
	if v.Relation != "between" || len(v.Limits) < 2 || v.Is.Value == nil ||
		v.Limits[0].Value == nil || v.Limits[1].Value == nil {
		return &v.Limits[0]
	}
	is, low, high := *v.Is.Value, *v.Limits[0].Value, *v.Limits[1].Value
	if (is-low)/math.Max(math.Abs(low), math.SmallestNonzeroFloat64) <
		(high-is)/math.Max(math.Abs(high), math.SmallestNonzeroFloat64) {
		return &v.Limits[0]
	}
	return &v.Limits[1]
}

// label names a rule in a row: its own name in words, without the kind of its
// subject, which stands beside it already.
func label(v *verdict.Verdict) string {
	_, name, found := strings.Cut(v.Rule, ".")
	if !found {
		name = v.Rule
	}
	kind, _, _ := strings.Cut(v.About, ".")
	if short := strings.TrimPrefix(name, kind+"_"); short != "" {
		name = short
	}
	name = strings.ReplaceAll(name, "_", " ")
	if v.Is != nil && perCell(v.Is) {
		name += " per cell"
	}
	if v.Which != "" {
		name += ", " + v.Which
	}
	return name
}

// tautLine draws one row's line. The mark stands at the share of the limit that
// is used: 1 - headroom, so it works alike for limits from above and below. A
// mark off the paper is drawn as >.
func tautLine(r *limitRow, scale int) (before, past string) {
	switch {
	case r.unproven:
		return strings.Repeat(" ", scale-1) + "?|", ""
	case !r.measured && r.broken:
		return strings.Repeat(" ", scale) + "|", " o"
	case !r.measured:
		return strings.Repeat(" ", scale) + "|", ""
	}
	used := (1 - r.headroom) * float64(scale)
	if r.headroom < 0 && r.broken {
		// At the least one column past; the limit's own column stays free.
		at := int(math.Min(math.Ceil(used), 1e6)) - scale - 1
		if at < 0 {
			at = 0
		}
		line := strings.Repeat("-", scale) + "|"
		if at >= pastColumns {
			return line, strings.Repeat("-", pastColumns-1) + ">"
		}
		return line, strings.Repeat("-", at) + "o"
	}
	at := min(max(int(math.Floor(math.Max(used, 0))), 0), scale-1)
	return strings.Repeat("-", at) + "o" + strings.Repeat(" ", scale-1-at) + "|", ""
}

// table holds the columns of the headroom table.
type table struct {
	lead           int // subject and what it is about
	subject        int // where the second of them starts; 0 for right behind the first
	found, allowed int // widths; a wider entry reaches to the left
	left, scale    int
}

// widest is how wide the columns of figures grow; what is wider still reaches to
// the left in its own row, so that one odd unit does not widen all rows.
const widest = 9

func (t *table) foundEnd() int   { return t.lead + 2 + t.found }
func (t *table) allowedEnd() int { return t.foundEnd() + 2 + t.allowed }
func (t *table) lineStart() int  { return t.allowedEnd() + 1 + t.left + 1 }

// columnsOf measures the rows for a page.
func (p *page) columnsOf(rows []limitRow) *table {
	t := &table{found: 7, allowed: 7, left: 7, scale: scaleColumns}
	wanted := 37
	for i := range rows {
		r := &rows[i]
		if n := columns(Escape(r.subject)); n <= longSubject {
			t.subject = max(t.subject, n)
		}
		if n := columns(Escape(r.found)); n <= widest {
			t.found = max(t.found, n)
		}
		if n := columns(Escape(r.allowed)); n <= widest {
			t.allowed = max(t.allowed, n)
		}
		if n := columns(Escape(r.left)); n <= widest {
			t.left = max(t.left, n)
		}
	}
	what := 0
	for i := range rows {
		what = max(what, columns(Escape(rows[i].what)))
		wanted = max(wanted, columns(Escape(rows[i].subject))+1+columns(Escape(rows[i].what)))
	}
	end := func() int { return t.lineStart() + t.scale + 1 + pastColumns }
	for t.scale > 5 && end() >= p.width {
		t.scale--
	}
	t.lead = max(0, min(max(wanted, t.subject+1+what), p.width-1-end()))
	// Where not all rows fit with a column of their own for the rules, none has
	// one: a ragged edge reads better than two.
	if t.subject++; t.subject+what > t.lead {
		t.subject = 0
	}
	return t
}

// headroom writes the table.
func (p *page) headroom(all []verdict.Verdict) {
	rows := limitRows(all)
	if len(rows) == 0 {
		return
	}
	t := p.columnsOf(rows)
	p.blank()
	l := p.line().put("HEADROOM, least first", plain)
	if l.at > t.foundEnd()-len("found")-1 {
		l.end()
		l = p.line()
	}
	l.right(t.foundEnd(), "found", plain).right(t.allowedEnd(), "allowed", plain)
	l.right(t.lineStart()-1, "left", plain).to(t.lineStart()).put("0", plain)
	l.to(t.lineStart()+t.scale-3).put("limit", plain).end()
	for i := range rows {
		p.limitRow(t, &rows[i])
	}
}

func (p *page) limitRow(t *table, r *limitRow) {
	allowedEnd := min(t.allowedEnd(), t.lineStart()-2-columns(Escape(r.left)))
	foundEnd := min(t.foundEnd(), allowedEnd-columns(Escape(r.allowed))-2)
	room := foundEnd - columns(Escape(r.found)) - 1 // for subject and rule
	l := p.line().put(r.subject, plain)
	second := columns(Escape(r.what))
	switch {
	case l.at < t.subject && t.subject+second <= room:
		l.to(t.subject).put(r.what, plain)
	case l.at+1+second <= room:
		l.gap().put(r.what, plain)
	default: // two lines: the limit keeps its column
		if l.at+1+second > p.width {
			l.end()
			l = p.line().to(1)
		}
		l.gap().put(r.what, plain).end()
		l = p.line()
	}
	l.right(foundEnd, r.found, plain).right(allowedEnd, r.allowed, plain).right(t.lineStart()-1, r.left, plain)
	before, past := tautLine(r, t.scale)
	l.to(t.lineStart()).put(before, plain).put(past, inkStop).end()
}
