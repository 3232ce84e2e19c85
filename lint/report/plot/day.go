package plot

import (
	"slices"
	"strings"

	"stringline/lint/facts"
)

const dayHeight = 120

// days draws a charger's power through a clear day of June and of December: what
// it gives, what its array could give, and between the two what is clipped.
func days(s *facts.System, charger *facts.Subject, f *figure) *figure {
	id := charger.ID()
	f.called(id + ": power into the bank through a clear day")
	f.say("Power of %s into the bank's terminals through a clear day, after losses, the bank always accepting.", id)
	f.heads = []string{"Clear day", "Into the bank", "Clipped", "Largest power"}
	most := 0.0
	type day struct {
		name           string
		potential, out facts.Fact
	}
	all := []day{{name: "june"}, {name: "december"}}
	for n := range all {
		d := &all[n]
		d.potential, _ = s.Fact(id + ".clear_" + d.name + "_potential")
		d.out, _ = s.Fact(id + ".clear_" + d.name + "_output")
		for _, fact := range []*facts.Fact{&d.potential, &d.out} {
			if fact.Known {
				most = max(most, slices.Max(fact.List))
			}
		}
	}
	y, clips := axisTo(most*1.1, "W", 4), false
	for n := range all {
		d := &all[n]
		title := "21 " + strings.ToUpper(d.name[:1]) + d.name[1:]
		given, kept := figures(s, id+".clear_"+d.name+"_energy"), figures(s, id+".clear_"+d.name+"_clipped")
		row := Row{Head: title, Values: []string{given, kept, "_____ W"}}
		if !d.potential.Known || !d.out.Known {
			f.supply(title, &d.out)
			f.rows = append(f.rows, row)
			continue
		}
		row.Values[2] = show(slices.Max(d.out.List), "W")
		f.rows = append(f.rows, row)
		f.say("%s: %s into the bank, %s clipped, at most %s.", title, given, kept, row.Values[2])
		f.y += 14
		f.text(left, f.y, "head", "start", title)
		f.text(right, f.y, "", "end", given+" into the bank, "+kept+" clipped")
		f.text(6, f.y, "minor", "start", "W")
		f.y += 8
		p := f.panel(d.name, dayHeight, axis{unit: "h", end: 24, step: 4}, y)
		p.grid(n == len(all)-1)
		low := p.top + p.height
		f.put(`<path class="under" d="%sL%s %sH%sZ"/>`, p.way(d.out.Over, d.out.List), num(right), num(low), num(left))
		if !slices.Equal(d.out.List, d.potential.List) {
			clips = true
			back := slices.Clone(d.out.Over)
			kept := slices.Clone(d.out.List)
			slices.Reverse(back)
			slices.Reverse(kept)
			f.put(`<path data-area="clipped" fill="%s" d="%s%sZ"/>`, f.hatch(), p.way(d.potential.Over, d.potential.List), "L"+p.way(back, kept)[1:])
		}
		p.curve("potential", "dash", &d.potential)
		p.curve("output", "solid", &d.out)
		p.end()
		f.y += 3
	}
	if most > 0 {
		f.y += 8
		f.text(right, f.y, "minor", "end", "hours, local standard time")
		f.sample("solid", "power into the bank")
		f.sample("dash", "without the controller's limit")
		if clips {
			f.y += 13
			f.put(`<rect x="6" y="%s" width="28" height="9" fill="%s"/>`, num(f.y-8), f.hatch())
			f.text(left, f.y, "", "start", "clipped by the limit")
		}
		f.y += 2
	}
	return f
}

// sample shows a kind of line with what it stands for.
func (f *figure) sample(class, words string) {
	f.y += 13
	f.put(`<path class="line %s" d="M6 %sH34"/>`, class, num(f.y-4))
	f.text(left, f.y, "", "start", words)
}
