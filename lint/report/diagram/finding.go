package diagram

import (
	"strings"

	"stringline/lint"
	"stringline/lint/report"
	"stringline/lint/verdict"
)

// finding is what a rule found against one subject.
type finding struct {
	about string
	grade verdict.Grade
	open  bool // unproven, or void: nobody knows yet
	text  string
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
		f := finding{about: v.About, grade: v.Grade, open: v.Outcome != verdict.Breaks}
		f.text = strings.ToUpper(string(v.Grade)) + " " + string(v.Outcome) + ": " + report.Escape(v.Rule)
		beside, drawn := shown[v.About]
		if beside != v.About {
			f.text += ", on " + report.Escape(v.About)
		}
		if drawn {
			p.findings[beside] = append(p.findings[beside], f)
		} else {
			p.elsewhere = append(p.elsewhere, f)
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
