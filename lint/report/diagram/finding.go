package diagram

import (
	"slices"
	"strconv"
	"strings"

	"stringline/lint"
	"stringline/lint/report"
	"stringline/lint/verdict"
)

// finding is what rules found against one subject, of one grade and outcome.
type finding struct {
	grade verdict.Grade
	open  bool     // unproven, or void: nobody knows yet
	what  string   // "STOP breaks", "FIX unproven"
	rules []string // that found it
	on    string   // the subject, where it is not the one that it is shown beside
}

// text is what is written beside the mark.
func (f *finding) text() string {
	const most = 4
	rules := f.rules
	more := ""
	if len(rules) > most+1 {
		more = " and " + strconv.Itoa(len(rules)-most) + " more"
		rules = rules[:most]
	}
	text := f.what + ": " + strings.Join(rules, ", ") + more
	if f.on != "" {
		text += ", on " + f.on
	}
	return text
}

// put adds a finding to those of the same kind on the same subject, or as one
// more.
func put(all []finding, f finding) []finding {
	for i := range all {
		if all[i].what == f.what && all[i].on == f.on {
			for _, rule := range f.rules { // a rule may judge a subject twice
				if !slices.Contains(all[i].rules, rule) {
					all[i].rules = append(all[i].rules, rule)
				}
			}
			return all
		}
	}
	return append(all, f)
}

// mark sorts the findings: beside the item that is their subject, or that stands
// for it; else among those elsewhere.
func (p *plan) mark(d *lint.DesignResult) {
	shown := map[string]string{} // by subject: the item that it is shown beside
	p.each(func(it *item) {
		if it.id == "" {
			return
		}
		shown[it.id] = it.id
		for _, other := range it.also {
			if _, taken := shown[other]; !taken {
				shown[other] = it.id
			}
		}
	})
	p.findings = map[string][]finding{}
	for i := range d.Verdicts {
		v := &d.Verdicts[i]
		if !v.Finding() {
			continue
		}
		f := finding{grade: v.Grade, open: v.Outcome != verdict.Breaks,
			what: strings.ToUpper(string(v.Grade)) + " " + string(v.Outcome), rules: []string{report.Escape(v.Rule)}}
		beside, drawn := shown[v.About]
		if beside != v.About {
			f.on = report.Escape(v.About)
		}
		if drawn {
			p.findings[beside] = put(p.findings[beside], f)
		} else {
			p.elsewhere = put(p.elsewhere, f)
		}
	}
}

func (f finding) hue() hue {
	switch f.grade {
	case verdict.Stop:
		return stop()
	case verdict.Fix:
		return fix()
	}
	return ink()
}

// sign draws a finding's mark: an octagon for a stop, a triangle for a fix, a
// circle else; full where the rule is broken, with a question mark where that is
// not known. The shape carries the meaning as the color does.
func (f finding) sign(p *picture, x, y float64) {
	fill := attribute{"fill", "none"}
	paint := color("stroke", f.hue())
	if !f.open {
		paint = []attribute{{"fill", f.hue().standIn}, {"stroke", f.hue().standIn},
			{"style", "fill:var(" + f.hue().property + "," + f.hue().standIn + ");stroke:var(" + f.hue().property + "," + f.hue().standIn + ")"}}
	} else {
		paint = append(paint, fill)
	}
	at := "M" + place(x) + " " + place(y)
	switch f.grade {
	case verdict.Stop:
		p.path(at+"m-2.2 -5.2h4.4l3 3v4.4l-3 3h-4.4l-3 -3v-4.4z", paint...)
	case verdict.Fix:
		p.path(at+"m0 -5.5l5.5 10h-11z", paint...)
	default:
		p.circle(x, y, 4.5, paint...)
	}
}
