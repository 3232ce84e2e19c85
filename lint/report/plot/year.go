package plot

import (
	"fmt"
	"slices"
	"strings"

	"stringline/lint/facts"
)

const yearHeight = 140

var months = [12]string{"Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"}

// year draws for each bank, month by month, what a mean day brings into it and
// what it is asked for.
func year(s *facts.System, banks []*facts.Subject, f *figure) *figure {
	f.called("The year by month: energy of a mean day")
	f.say("Energy of a mean day of each month: what the sun brings into the bank's terminals, and what its loads take.")
	f.heads = []string{"Month", "Yield", "Load", "Left over", "Not served"}
	drawn, barred, short := false, false, false
	for _, bank := range banks {
		id := bank.ID()
		yield, _ := s.Fact(id + ".yield_by_month")
		load, _ := s.Fact(id + ".load_by_month")
		balance, _ := s.Fact(id + ".balance_by_month")
		unserved, _ := s.Fact(id + ".unserved_by_month")
		f.y += 12
		f.text(left, f.y, "head", "start", id)
		f.text(right, f.y, "minor", "end", "Wh a day")
		f.y += 5
		if most := largest(&yield, &load); most > 0 {
			drawn, barred = true, barred || yield.Known
			short = f.bars(&yield, &load, axisTo(inUnit(most, "Wh")*1.08, "Wh", 5)) || short
		}
		for _, one := range []struct {
			what string
			fact *facts.Fact
		}{{"yield", &yield}, {"load", &load}} {
			if !one.fact.Known {
				f.supply(one.what+" of "+id, one.fact)
			}
		}
		for m, month := range months {
			head := month
			if len(banks) > 1 {
				head += ", " + id
			}
			f.rows = append(f.rows, Row{Head: head, Values: []string{nth(&yield, m), nth(&load, m), nth(&balance, m), nth(&unserved, m)}})
		}
		f.say("%s: yield %s; load %s.", id, list(&yield), list(&load))
	}
	if drawn {
		if barred {
			f.y += 12
			f.put(`<rect class="bar" x="6" y="%s" width="28" height="9"/>`, num(f.y-8))
			f.text(left, f.y, "", "start", "yield, into the bank's terminals")
		}
		f.sample("solid", "load")
		if short {
			f.y += 13
			f.put(`<rect x="6" y="%s" width="28" height="9" fill="%s"/>`, num(f.y-8), f.hatch())
			f.text(left, f.y, "", "start", "load above the yield")
		}
		f.y += 2
	}
	return f
}

func largest(all ...*facts.Fact) (most float64) {
	for _, fact := range all {
		if fact.Known && len(fact.List) == len(months) {
			most = max(most, slices.Max(fact.List))
		}
	}
	return most
}

// bars draws one year, and tells whether a month's load is above its yield.
func (f *figure) bars(yield, load *facts.Fact, y axis) (short bool) {
	p := f.panel("year", yearHeight, axis{unit: "", end: 12, step: 1}, y)
	p.x.step = 13 // its only tick is at the axis: months stand between
	p.grid(false)
	wide := (right - left) / float64(len(months))
	low := p.top + p.height
	if yield.Known && len(yield.List) == len(months) {
		f.put(`<g data-bars="yield" data-fact="%s" data-y="%s">`, escape(yield.ID), plain(yield.List, y.unit))
		for m, joules := range yield.List {
			top := p.y.at(joules)
			f.put(`<rect class="bar" x="%s" y="%s" width="%s" height="%s"/>`, num(left+(float64(m)+0.15)*wide), num(top), num(0.7*wide), num(low-top))
		}
		f.put("</g>")
	}
	if load.Known && len(load.List) == len(months) {
		var d strings.Builder
		for m, joules := range load.List {
			at := p.y.at(joules)
			if m == 0 {
				fmt.Fprintf(&d, "M%s %s", num(left), num(at))
			} else {
				fmt.Fprintf(&d, "V%s", num(at))
			}
			fmt.Fprintf(&d, "H%s", num(left+float64(m+1)*wide))
			if yield.Known && len(yield.List) == len(months) && joules > yield.List[m] {
				short = true
				f.put(`<rect data-short="%s" x="%s" y="%s" width="%s" height="%s" fill="%s"/>`, months[m], num(left+(float64(m)+0.15)*wide), num(at),
					num(0.7*wide), num(p.y.at(yield.List[m])-at), f.hatch())
			}
		}
		f.put(`<path class="line" data-curve="load" data-fact="%s" data-y="%s" d="%s"/>`, escape(load.ID), plain(load.List, y.unit), d.String())
	}
	for m, month := range months {
		f.text(left+(float64(m)+0.5)*wide, low+13, "minor", "middle", month)
	}
	f.y += 18
	p.end()
	return short
}

// nth gives one month of a series as people read it.
func nth(fact *facts.Fact, m int) string {
	if !fact.Known || len(fact.List) <= m {
		return "_____ " + fact.Unit
	}
	return show(fact.List[m], fact.Unit)
}

func list(fact *facts.Fact) string {
	words := make([]string, len(months))
	for m := range months {
		words[m] = months[m] + " " + nth(fact, m)
	}
	return strings.Join(words, ", ")
}
