package report

import (
	"fmt"
	"io"
	"strconv"
	"strings"

	"stringline/lint/fit"
	"stringline/lint/verdict"
)

// shownArrangements is how many of a list the text shows; the JSON has them all.
const shownArrangements = 20

// Fit writes which arrangements of the panels can be built, best first, and what
// stops the others.
func Fit(w io.Writer, r *fit.Result, opts Page) error {
	p := newPage(opts)
	p.head(r.Base)
	text, with := fitLine(r)
	p.line().wrap(text, with)
	p.blank()
	p.inHand(r)
	if len(r.Answers) > 0 {
		p.blank()
		p.arrangements("MEETS EVERY RULE, best first", r.Answers)
	}
	if len(r.After) > 0 {
		p.blank()
		p.after(r)
	}
	if len(r.Waiting) > 0 {
		p.blank()
		p.arrangements("NOT STOPPED SO FAR: no year was computed, and the rules that need one were not put", r.Waiting)
	}
	p.newSettings(r)
	if len(r.Stopped) > 0 {
		p.blank()
		p.stopped(r)
	}
	p.besides(r.Beside)
	p.blank()
	p.fitBasis(r)
	p.caution()
	return p.flush(w)
}

// fitLine says in one sentence what was found.
func fitLine(r *fit.Result) (string, ink) {
	stopped := 0
	for _, g := range r.Stopped {
		stopped += len(g.Stopped)
	}
	rest := ""
	if n := len(r.After); n > 0 {
		rest += fmt.Sprintf("; %d more would once other things are changed too", n)
	}
	if n := len(r.Waiting); n > 0 {
		rest += fmt.Sprintf("; %s not put to all", count(n, "was", "were"))
	}
	if stopped > 0 {
		rest += fmt.Sprintf("; %s stopped", count(stopped, "is", "are"))
	}
	switch len(r.Answers) {
	case 0:
		return "NO ARRANGEMENT meets every rule" + rest + ".", inkFix
	case 1:
		return "1 arrangement meets every rule" + rest + ".", plain
	}
	return fmt.Sprintf("%d arrangements meet every rule%s.", len(r.Answers), rest), plain
}

func (p *page) inHand(r *fit.Result) {
	var texts []string
	for _, h := range r.Hand {
		texts = append(texts, fmt.Sprintf("%d x %s", h.Count, h.Name))
	}
	p.line().put("In hand", plain).to(9).wrapPieces(texts, ", ", plain)
	for _, n := range r.NoBanks {
		p.line().put("Not at", plain).to(9).wrap(fmt.Sprintf("%s, bank %s: %s", showSI(n.Voltage, "V"), n.Bank, n.Why), plain)
	}
}

// arrangements writes a list: two lines each, or one figure a line where the page
// is narrow.
func (p *page) arrangements(title string, list []*fit.Arrangement) {
	p.line().wrap(title, plain)
	if !p.narrow() {
		p.line().right(3, "No", plain).to(5).put("bank", plain).right(28, "a year", plain).right(38, "headroom", plain).to(40).put("least of the limits", plain).right(p.width, "metal", plain).end()
	}
	for i, a := range list {
		if i == shownArrangements {
			p.line().to(5).wrap(fmt.Sprintf("%s not shown here; --as json lists all", count(len(list)-i, "more is", "more are")), plain)
			return
		}
		p.arrangement(a)
	}
}

func (p *page) arrangement(a *fit.Arrangement) {
	energy, headroom, limit, metal := "_____", "___ %", "", "_____ kg"
	if a.YearlyEnergy != nil {
		energy = kilowattHours(*a.YearlyEnergy)
	}
	if a.Least != nil {
		headroom, limit = percent(*a.Least.Headroom), label(a.Least)
	}
	if a.ConductorMass != nil {
		metal = showSI(*a.ConductorMass, "kg")
	}
	number := strconv.Itoa(a.Number)
	if p.narrow() {
		p.line().put("No "+number, plain).to(9).put(banksOf(a), plain).end()
		for _, row := range [][2]string{{"a year", energy}, {"left", strings.TrimSpace(headroom + " " + limit)}, {"metal", metal}} {
			p.line().to(2).put(row[0], plain).to(9).wrap(row[1], plain)
		}
	} else {
		if room := p.width - 41 - columns(metal); len(limit) > room {
			limit = limit[:room]
		}
		p.line().right(3, number, plain).to(5).put(banksOf(a), plain).right(28, energy, plain).right(38, headroom, plain).to(40).put(limit, plain).right(p.width, metal, plain).end()
	}
	p.line().to(5).wrap(stringsText(a), plain)
	if notes := arrangementNotes(a); notes != "" {
		p.line().to(5).wrap(notes, plain)
	}
}

// kilowattHours writes a year's energy in joules.
func kilowattHours(joules float64) string { return showSI(joules, "kWh") }

func banksOf(a *fit.Arrangement) string {
	var volts []string
	for _, b := range a.Banks {
		volts = append(volts, strings.TrimSuffix(strings.TrimSuffix(showSI(b.Voltage, "V"), " V"), ".0"))
	}
	return strings.Join(volts, "/") + " V"
}

// stringsText says how the panels stand, array by array.
func stringsText(a *fit.Arrangement) string {
	var texts []string
	for i, s := range a.Strings {
		var series []string
		for _, n := range s.Series {
			series = append(series, fmt.Sprintf("%d %s", n.Count, n.Name))
		}
		text := strings.Join(series, " + ") + " in series, " + count(s.Parallel, "such string", "such strings")
		if i == 0 || a.Strings[i-1].Array != s.Array {
			on := s.Array
			if s.CopyOf != "" {
				on = fmt.Sprintf("%s (a new array on input %d of charger %s, a copy of %s)", s.Array, s.Input, s.Charger, s.CopyOf)
			}
			text = on + ": " + text
		}
		texts = append(texts, text)
	}
	return strings.Join(texts, "; ")
}

func arrangementNotes(a *fit.Arrangement) string {
	var notes []string
	if a.AsIs {
		notes = append(notes, "as it stands")
	}
	if len(a.LeftOver) > 0 {
		var left []string
		for _, n := range a.LeftOver {
			left = append(left, fmt.Sprintf("%d %s", n.Count, n.Name))
		}
		notes = append(notes, strings.Join(left, " and ")+" left over")
	}
	for _, b := range a.Banks {
		if b.LeftOver > 0 {
			notes = append(notes, count(b.LeftOver, "battery", "batteries")+" of bank "+b.Bank+" left over")
		}
	}
	if len(a.NotPut) > 0 {
		notes = append(notes, "not put to "+strings.Join(a.NotPut, ", "))
	}
	for i := range a.Waived {
		notes = append(notes, fmt.Sprintf("waived: %s on %s", a.Waived[i].Rule, a.Waived[i].About))
	}
	if a.Advice > 0 {
		notes = append(notes, count(a.Advice, "point", "points")+" of advice")
	}
	return strings.Join(notes, "; ")
}

// after writes the arrangements that fit the panels but not all else, with what
// must be changed at each voltage.
func (p *page) after(r *fit.Result) {
	p.arrangements("ONCE OTHER THINGS ARE CHANGED TOO: each is no answer until they are", r.After)
	told := map[string]bool{}
	for _, a := range r.After {
		volts := banksOf(a)
		for i := range a.MustChange {
			v := &a.MustChange[i]
			if told[volts+v.Key()] {
				continue
			}
			if !told[volts] {
				p.line().put("To be changed for "+volts, plain).end()
			}
			told[volts], told[volts+v.Key()] = true, true
			p.finding(v)
		}
	}
}

// finding writes a verdict on two lines.
func (p *page) finding(v *verdict.Verdict) {
	word := strings.ToUpper(string(v.Grade))
	p.line().to(2).put(word, gradeInk(v.Grade)).to(9).wrap(fmt.Sprintf("%s, %s", subject(v), v.Rule), plain)
	text := v.Message
	switch {
	case v.Outcome == verdict.Unproven:
		text = "unproven: " + lacks(v.Missing, v.Because)
		p.line().to(9).wrap(text, inkSupply)
		return
	case v.Is != nil && len(v.Limits) > 0:
		text = fmt.Sprintf("found %s, allowed %s", entry(v.Is), entry(nearest(v)))
	case v.Because != "":
		text = v.Because
	}
	p.line().to(9).wrap(text, plain)
}

// newSettings says which set-points go with each bank voltage.
func (p *page) newSettings(r *fit.Result) {
	told := map[string]bool{}
	for _, list := range [][]*fit.Arrangement{r.Numbered()} {
		for _, a := range list {
			for _, b := range a.Banks {
				key := fmt.Sprint(b.Bank, b.Voltage)
				if b.AsIs || told[key] {
					continue
				}
				told[key] = true
				p.blank()
				p.line().wrap(fmt.Sprintf("TO BE PROGRAMMED for bank %s at %s: %d in series, %d in parallel", b.Bank, showSI(b.Voltage, "V"), b.Series, b.Parallel), plain)
				for _, s := range b.Settings {
					p.line().to(2).wrap(fmt.Sprintf("%s: %s, was %s", s.ID, s.Now, s.Was), plain)
				}
				if len(b.Settings) == 0 {
					p.line().to(2).wrap("the design gives no set-point that goes with the voltage", plain)
				}
			}
		}
	}
}

// stopped writes the groups: the rule, how many it stops, which, and the one that
// comes nearest.
func (p *page) stopped(r *fit.Result) {
	groups := r.Stopped
	p.line().put("STOPPED, by the first rule against each", plain).end()
	for i := range groups {
		g := &groups[i]
		p.pair(p.line().to(2).put(strings.ToUpper(string(g.Grade)), gradeInk(g.Grade)).to(9), count(len(g.Stopped), "arrangement", "arrangements"), g.Rule)
		p.line().to(9).wrap(g.Title, plain)
		if v := g.Nearest; v != nil {
			text := "nearest: " + v.Message
			switch {
			case v.Outcome == verdict.Unproven:
				text = "unproven: " + lacks(v.Missing, v.Because)
			case v.Is != nil && len(v.Limits) > 0 && v.Relation != "is_true":
				text = fmt.Sprintf("nearest: found %s, allowed %s", entry(v.Is), entry(nearest(v)))
			case v.Because != "":
				text = "because " + v.Because
			}
			p.line().to(9).wrap(text, plain)
		} else if problems := g.Stopped[0].Problems; len(problems) > 0 {
			p.line().to(9).wrap(problems[0].Error(), plain)
		}
		p.line().to(9).wrapPieces(shortLayouts(g.Stopped, r.Arrays > 1, len(r.Hand) > 1), " ", plain)
	}
}

// shortLayouts names arrangements briefly: "24 V 3x2" is three in series, two such
// strings. Where there are several arrays, or kinds of panel, it says which.
func shortLayouts(list []*fit.Arrangement, arrays, kinds bool) []string {
	const most = 10
	var texts []string
	for i, a := range list {
		if i == most && len(list) > most+1 {
			texts = append(texts, fmt.Sprintf("and %d more", len(list)-i))
			break
		}
		var parts []string
		for _, s := range a.Strings {
			text := ""
			for n, x := range s.Series {
				if n > 0 {
					text += "+"
				}
				if text += strconv.Itoa(x.Count); kinds {
					text += " " + x.Name
				}
			}
			if kinds {
				text += " "
			}
			text += "x" + strconv.Itoa(s.Parallel)
			if arrays {
				text = s.Array + " " + text
			}
			parts = append(parts, text)
		}
		between := "+"
		if arrays || kinds {
			between = " & "
		}
		text := banksOf(a) + " " + strings.Join(parts, between)
		if i+1 < len(list) {
			text += ";"
		}
		texts = append(texts, text)
	}
	return texts
}

func (p *page) besides(all []verdict.Verdict) {
	if len(all) == 0 {
		return
	}
	p.blank()
	p.line().wrap("BESIDE THIS the design has, whatever the arrangement", plain)
	for i := range all {
		p.finding(&all[i])
	}
}

// fitBasis says what was tried and how it is measured.
func (p *page) fitBasis(r *fit.Result) {
	text := fmt.Sprintf("All %d arrangements that make sense were judged.", r.Judged)
	if r.More || r.Judged < r.Possible {
		more := ""
		if r.More {
			more = "more than "
		}
		text = fmt.Sprintf("NOT ALL WERE TRIED: %d of %s%d arrangements, the likeliest by voltage, current, power and panels used; --most N tries more.", r.Judged, more, r.Possible)
	}
	sky := ""
	for _, list := range [][]*fit.Arrangement{r.Answers, r.After} {
		for _, a := range list {
			if sky == "" && a.Sky != "" {
				sky = "; sky: " + a.Sky
			}
		}
	}
	p.line().wrap(text, plain)
	year := fmt.Sprintf("A year: energy into the banks, for the likeliest %d%s.", r.Years, sky)
	if r.Years == 0 {
		year = "No year was computed: everything is stopped without one."
	}
	p.line().wrap(fmt.Sprintf("%s Energies within 1 %% of the best, then headrooms within 1 %% of the limit, count as equal. "+
		"Metal: both conductors of the strings' and arrays' runs in the sizes that the design has, area x length x density; a run that is too thin stops its arrangement, one that could be thinner for less current is not counted so.", year), plain)
	p.line().wrap("3x2 is three in series, two such strings. On one array like panels stand in strings of one length. Strings on one input agree within 15 % in voltage, unlike panels in a string within 25 % in current; others were not tried.", plain)
}

// Taken says what was written into a copy of the design, and what must still be
// seen to.
func Taken(w io.Writer, a *fit.Arrangement, file string) error {
	p := newPage(Page{})
	p.line().wrap(fmt.Sprintf("Arrangement %d at %s is in %s:", a.Number, banksOf(a), file), plain)
	p.line().to(2).wrap(stringsText(a), plain)
	if notes := arrangementNotes(a); notes != "" {
		p.line().to(2).wrap(notes, plain)
	}
	for _, b := range a.Banks {
		for _, s := range b.Settings {
			p.line().to(2).wrap(fmt.Sprintf("to be programmed: %s: %s, was %s", s.ID, s.Now, s.Was), plain)
		}
	}
	for _, g := range []struct {
		word string
		list []verdict.Verdict
	}{{"It is stopped by", a.Stops}, {"To be changed too", a.MustChange}} {
		if len(g.list) == 0 {
			continue
		}
		p.line().put(g.word, plain).end()
		for i := range g.list {
			p.finding(&g.list[i])
		}
	}
	p.line().wrap("Comments in it may still speak of the arrangement before. Readings of that are kept as comments: measure again.", plain)
	return p.flush(w)
}
