package report

import (
	"fmt"
	"strings"

	"stringline/lint/commission"
)

// Lines of a plan of commissioning.

// section writes one part of the plan, numbered as on the trade's sheets.
func (p *page) section(number int, s *commission.Section) {
	p.blank()
	p.line().put(fmt.Sprintf("%d  %s", number, strings.ToUpper(s.Title)), plain).end()
	if len(s.Lines) == 0 {
		p.line().to(p.labels()).wrap("Nothing of this in the design.", plain)
		return
	}
	for i, text := range s.Cautions {
		p.footOnce("Caution", i, text, inkStop, plain)
	}
	for i := range s.Lines {
		p.planLine(&s.Lines[i])
	}
}

// lineWhat is the last part of a line's key: what of its subject it is about.
func lineWhat(l *commission.Line) string {
	return strings.ReplaceAll(l.Key[strings.LastIndexByte(l.Key, '|')+1:], "_", " ")
}

func (p *page) planLine(l *commission.Line) {
	p.blank()
	box := ""
	switch l.Kind {
	case commission.Check:
		box = "seen _____"
	case commission.Set:
		box = "read back " + empty(l.Unit)
	case commission.Do:
		box = "done _____"
	}
	p.lineHead(l, box)
	p.line().to(p.labels()).wrap(l.Says, plain)
	if l.Caution != "" {
		p.label("caution").wrap(l.Caution, inkStop)
	}
	if len(l.With) > 0 {
		p.label("with").wrapPieces(listed(l.With), " ", plain)
	}
	if l.Kind == commission.Measure {
		p.measured(l)
		return
	}
	p.expectations(l)
}

// lineHead names a line at the left, and puts its box for the hand at the right.
func (p *page) lineHead(l *commission.Line, box string) {
	head := p.line().put(fmt.Sprintf("Line %d", l.Number), plain).to(9)
	if !p.narrow() {
		p.pair(head, l.About+", "+lineWhat(l), box)
		return
	}
	head.put(l.About, plain).end()
	p.pair(p.line().to(p.labels()), lineWhat(l), box)
}

// listed writes ids as pieces that a line may end between.
func listed(ids []string) []string {
	pieces := make([]string, len(ids))
	for i, id := range ids {
		pieces[i] = id
		if i < len(ids)-1 {
			pieces[i] += ","
		}
	}
	return pieces
}

// expectations writes what is looked for, known values in one paragraph, then
// what is not known.
func (p *page) expectations(l *commission.Line) {
	var known []string
	for i := range l.Expect {
		switch e := &l.Expect[i]; {
		case !e.Known():
		case l.Kind == commission.Set: // what it is stands above
			known = append(known, expectedValue(e)+bounds(e.Relation))
		default:
			known = append(known, expectedWords(e))
		}
	}
	label := "expect"
	if l.Kind == commission.Set {
		label = "set"
	}
	if len(known) > 0 {
		p.label(label).wrap(strings.Join(known, "; "), plain)
	}
	p.unknowns(l.Expect)
}

// unknowns writes an empty entry for each expected value that nobody knows yet.
func (p *page) unknowns(all []commission.Expected) {
	for i := range all {
		e := &all[i]
		if e.Known() {
			continue
		}
		p.label("expect").put(empty(e.Unit), inkSupply).to(p.values()+11).wrap(e.Name+bounds(e.Relation), plain)
		if e.ID == "" { // an entry for the hand, which no file can fill
			continue
		}
		for _, words := range unknownSupplies(e) {
			p.label("supply").wrap(words, inkSupply)
		}
		if e.Says != "" { // why it is unknown although nothing is missing
			p.label("because").wrap(e.Says, plain)
		}
	}
}

func unknownSupplies(e *commission.Expected) []string {
	if e.Supply != "" {
		return []string{e.Supply}
	}
	return meterWords(e.Missing)
}

func bounds(relation string) string {
	switch relation {
	case commission.AtMost:
		return ", or less"
	case commission.AtLeast:
		return ", or more"
	}
	return ""
}

// expectedValue writes a known expected value.
func expectedValue(e *commission.Expected) string {
	switch {
	case e.Word != "":
		return e.Word
	case e.Yes != nil:
		return yesNo(*e.Yes)
	case e.Value != nil && e.Unit == "ohm" && *e.Value >= 1e5:
		return showSI(*e.Value, "Mohm")
	case e.Value != nil:
		return show(*e.Value, e.Unit)
	}
	return empty(e.Unit)
}

// expectedWords writes a known expected value in a list of them.
func expectedWords(e *commission.Expected) string {
	text := e.Name + " " + expectedValue(e)
	switch e.Relation {
	case commission.AtMost:
		text += " or less"
	case commission.AtLeast:
		text += " or more"
	}
	if strings.HasPrefix(e.Source, "NEC ") { // a label's clause
		text += " (" + e.Source + ")"
	}
	return text
}

// measured writes what a meter should show, then its boxes: those that are
// filled, and those that are not.
func (p *page) measured(l *commission.Line) {
	width := 0
	for i := range l.Expect {
		width = max(width, columns(Escape(expectedValue(&l.Expect[i]))))
	}
	for i := range l.Readings {
		width = max(width, columns(readingValue(&l.Readings[i])))
	}
	if l.Found != nil {
		width = max(width, columns(show(*l.Found, l.Unit)))
	}
	for i := range l.Expect {
		e := &l.Expect[i]
		label := "due"
		switch e.Relation {
		case commission.AtMost:
			label = "at most"
		case commission.AtLeast:
			label = "at least"
		case commission.Equals:
			label = "with"
		}
		if !e.Known() {
			note := e.Name
			if e.Says != "" { // why it is unknown although nothing is missing
				note += "; " + e.Says
			}
			p.entry(label, width, empty(e.Unit), inkSupply, note)
			for _, words := range unknownSupplies(e) {
				p.label("supply").wrap(words, inkSupply)
			}
			continue
		}
		p.entry(label, width, expectedValue(e), plain, dueNote(e))
	}
	if l.Found != nil {
		with := plain
		if l.State == commission.OutOfBand {
			with = inkFix
		}
		p.entry("found", width, show(*l.Found, l.Unit), with, stateWords(l.State))
	}
	for i := range l.Readings {
		r := &l.Readings[i]
		with := plain
		switch r.State {
		case commission.OutOfBand:
			with = inkFix
		case commission.Unproven:
			with = inkSupply
		}
		p.entry("reading", width, readingValue(r), with, readingNote(r))
	}
	switch {
	case l.Remains == 1:
		p.label("reading").put("not measured", inkSupply).end()
	case l.Remains > 1:
		p.label("reading").put(fmt.Sprintf("not measured, %d due", l.Remains), inkSupply).end()
	case l.Due == 0 && l.Found == nil && len(l.Readings) == 0:
		p.label("reading").put("not measured", inkSupply).end()
	}
}

// entry writes a labelled value with a note beside it, or below where there is
// no room.
func (p *page) entry(label string, width int, value string, with ink, note string) {
	l := p.label(label)
	l.right(p.values()+width, value, with)
	if note == "" {
		l.end()
		return
	}
	l.to(p.values() + width + 3)
	if p.width-l.at < 20 {
		l.end()
		l = p.line().to(p.values())
	}
	l.wrap(note, plain)
}

func dueNote(e *commission.Expected) string {
	var parts []string
	if e.Low != nil && e.High != nil {
		band := show(*e.Low, e.Unit) + " to " + show(*e.High, e.Unit)
		if e.Tolerance != nil {
			band += ", " + percentShort(*e.Tolerance) + " either way"
		}
		parts = append(parts, band)
	}
	if e.Relation != commission.Between {
		parts = append(parts, e.Name)
	}
	if e.Says != "" && bare(e.Says) != bare(expectedValue(e)) {
		parts = append(parts, e.Says)
	}
	return strings.Join(parts, "; ")
}

// bare takes the trailing zeros off a single value, so that two ways of writing
// one are alike.
func bare(text string) string {
	number, unit, one := strings.Cut(text, " ")
	if !one || !strings.Contains(number, ".") || strings.Contains(unit, " ") {
		return text
	}
	return strings.TrimRight(strings.TrimRight(number, "0"), ".") + " " + unit
}

// percentShort writes a tolerance, which is a round figure, without a decimal
// where it needs none.
func percentShort(share float64) string {
	return strings.Replace(percent(share), ".0 %", " %", 1)
}

func readingValue(r *commission.Reading) string {
	if r.Value == nil {
		return empty(r.Unit)
	}
	return show(*r.Value, r.Unit)
}

func stateWords(state string) string {
	switch state {
	case commission.InBand:
		return "in its band"
	case commission.OutOfBand:
		return "outside its band"
	case commission.Waived:
		return "outside its band, and waived"
	case commission.Unproven:
		return "unproven"
	}
	return "not all measured"
}

// readingNote says how a recorded reading was judged.
func readingNote(r *commission.Reading) string {
	var parts []string
	if r.Taken != "" {
		parts = append(parts, r.Taken)
	}
	if r.Title != "" {
		parts = append(parts, r.Title)
	}
	var at []string
	if r.CellTemperature != nil {
		at = append(at, show(*r.CellTemperature, "degC"))
	}
	if r.Irradiance != nil {
		at = append(at, show(*r.Irradiance, "W/m2"))
	}
	if len(at) > 0 {
		parts = append(parts, "at "+strings.Join(at, " and "))
	}
	text := strings.Join(parts, ", ")
	if text != "" {
		text += ": "
	}
	text += stateWords(r.State)
	if r.Expected != nil && r.Difference != nil {
		text += fmt.Sprintf(", %s was due (%s)", show(*r.Expected, r.Unit), signed(*r.Difference))
	}
	if r.AtCold != nil && r.Limit != nil {
		text += fmt.Sprintf("; %s on the coldest morning, of %s", show(*r.AtCold, "V"), show(*r.Limit, "V"))
	}
	if r.Because != "" && r.State != commission.InBand {
		text += "; " + r.Because
	}
	return text
}

// signed writes a share with its sign.
func signed(share float64) string {
	text := percent(share)
	if share > 0 && !strings.HasPrefix(text, "0.0 ") {
		return "+" + text
	}
	return text
}
