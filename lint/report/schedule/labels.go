package schedule

import (
	"fmt"
	"slices"
	"strings"

	"stringline/lint"
	"stringline/lint/facts"
	"stringline/lint/report"
)

// Label is one row of the label schedule: a label, where it goes, and what it says
// here.
type Label struct {
	About  string   // id of the subject that it belongs to
	Place  string   // where it goes, in words
	Lines  []string // what it says, with this design's values; an empty entry where one is unknown
	Values []Entry  // the values in it
	Book   string   // the codebook whose code asks for it; "" for common practice
	Source string   // article and edition
	Read   string   // how the source was read
	If     string   // what the design does not say and the label hangs on; "" where it is due
}

// LabelColumns heads the columns of [Label.Cells].
func LabelColumns() []Column {
	return []Column{{"about", "Belongs to", ""}, {"place", "Place", ""}, {"says", "Says", ""}, {"source", "Source", ""}, {"read", "How the source was read", ""}, {"if", "Due if", ""}}
}

// Cells gives the row by columns.
func (l Label) Cells() []Entry {
	says := Entry{Text: strings.Join(l.Lines, " / "), Known: true}
	for _, v := range l.Values {
		says.Facts = append(says.Facts, v.Facts...)
		says.Missing = append(says.Missing, v.Missing...)
	}
	return []Entry{words(l.About), words(l.Place), says, words(l.Source), words(l.Read), words(l.If)}
}

// How sources were read; the notes of the codebooks say more.
const (
	memory      = "from memory"
	summary2023 = "read in summaries of the 2023 edition"
	copy2020    = "read in a public copy of the 2020 edition; remembered as unchanged in 2023"
)

// Labels lists the labels that the codes in force ask for, then those of common
// practice that no code in force has asked for yet. A code that does not apply
// where the system stands asks for none. The wording is that of the code where it
// sets one, from memory; the code in force, local amendments and the inspector
// decide.
func Labels(d *lint.DesignResult) []Label {
	b := &labeler{reader: reader{d.System}}
	place, known := b.word("site.place")
	for _, book := range d.Books {
		b.book, b.due = book, ""
		if !known {
			b.due = "the system stands where this code applies (site.place is not given)"
		}
		switch {
		case book == "us_2023" && place != "boat":
			b.unitedStates()
		case book == "iec" && place != "boat" && place != "vehicle":
			b.international()
		case book == "marine" && (place == "boat" || !known):
			b.marine()
		case book == "vehicle" && (place == "vehicle" || !known):
			b.vehicle()
		}
	}
	b.book, b.due = "", ""
	b.practice()
	return b.labels
}

type labeler struct {
	reader
	labels []Label
	book   string
	due    string
	asked  []string // kinds of label that a code has asked for, so that practice need not
}

// add adds a label of the book at work. Values are facts that its lines hold.
func (b *labeler) add(l Label, values ...Entry) {
	l.Book, l.Values = b.book, values
	if l.If == "" {
		l.If = b.due
	} else if b.due != "" {
		l.If += "; " + b.due
	}
	b.labels = append(b.labels, l)
}

// ask notes that a code has asked for a kind of label without a condition.
func (b *labeler) ask(kind string) {
	if b.due == "" {
		b.asked = append(b.asked, kind)
	}
}

func (b *labeler) each(collection string) []*facts.Subject { return b.system.Subjects(collection) }

// switchOf gives where a circuit is switched off: its disconnect, else its
// protection, else itself.
func (b *labeler) switchOf(s *facts.Subject) string {
	for _, link := range []string{"disconnects", "protections"} {
		for _, d := range s.Linked(link) {
			if !strings.HasSuffix(d.ID(), ".each") {
				return d.ID()
			}
		}
	}
	return s.ID()
}

// where says in words where a circuit is switched off.
func (b *labeler) where(s *facts.Subject) string {
	if at := b.switchOf(s); at != s.ID() {
		return "at " + at
	}
	return "where " + s.ID() + " is switched off: _____"
}

// arraysOf gives the arrays on a controller input.
func (b *labeler) arraysOf(input *facts.Subject) []*facts.Subject {
	var all []*facts.Subject
	for _, a := range b.each("arrays") {
		if slices.Contains(a.Linked("pv_input"), input) {
			all = append(all, a)
		}
	}
	return all
}

// practice adds the labels that common practice asks for: highest PV voltage, what
// the bank can give in a short circuit, the order of shutting down (item 10 of the
// commissioning sheet); and what each device and conductor is.
func (b *labeler) practice() {
	const source, read = "common practice", memory
	if !slices.Contains(b.asked, "pv voltage") {
		for _, input := range b.each("pv_inputs") {
			for _, a := range b.arraysOf(input) {
				volts, amps := b.fact(input.ID()+".voc_cold"), b.fact(input.ID()+".isc_max")
				b.add(Label{About: a.ID(), Place: b.where(a), Source: source, Read: read, Lines: []string{
					"PV, live in daylight", "highest voltage " + volts.Text + " DC", "highest short-circuit current " + amps.Text}}, volts, amps)
			}
		}
	}
	if !slices.Contains(b.asked, "bank") {
		for _, bank := range b.each("banks") {
			b.addBank(bank, Label{Source: source, Read: read}, "a bank cannot be switched off: its terminals stay live")
		}
	}
	if order := b.shutDown(); len(order) > 0 && !slices.Contains(b.asked, "shut down") {
		b.add(Label{About: "system", Place: "beside the main switch, with the one-line diagram", Source: source, Read: read,
			Lines: append([]string{"To shut down, in this order:"}, order...)})
	}
	if !slices.Contains(b.asked, "purpose") {
		b.purposes(source, read)
	}
	for _, p := range b.each("protections") {
		if kind := b.text(p.ID() + ".kind"); kind == "fuse" {
			b.replacement(p, source, read)
		}
	}
	if len(b.each("cable_runs")) > 0 {
		b.add(Label{About: "system", Place: "both ends of every conductor of the wire schedule", Source: source, Read: read,
			Lines: []string{"the run's name in the wire schedule", "its polarity: + or -"}})
	}
}

// addBank adds a bank's label: what it is and what it can give.
func (b *labeler) addBank(bank *facts.Subject, l Label, more ...string) {
	id, battery := bank.ID(), bank.Linked("battery")[0].ID()
	nominal, highest, short, kind := b.fact(id+".nominal"), b.fact(id+".voltage_max"), b.fact(id+".short_circuit_current"), b.fact(battery+".chemistry")
	l.About, l.Place = id, b.where(bank)+", and at the batteries"
	l.Lines = append([]string{"nominal voltage " + nominal.Text + " DC, highest " + highest.Text, "short-circuit current " + short.Text, "chemistry " + kind.Text}, more...)
	b.add(l, nominal, highest, short, kind)
}

// purposes adds what each switch and breaker isolates, and its rating.
func (b *labeler) purposes(source, read string) {
	purpose := func(s *facts.Subject, what string) {
		rating, volts := b.fact(s.ID()+".rating"), b.fact(s.ID()+".voltage")
		b.add(Label{About: s.ID(), Place: "at it", Source: source, Read: read,
			Lines: []string{what + " of " + name(s.ID()), rating.Text + ", " + volts.Text + current(s)}}, rating, volts)
	}
	for _, s := range b.each("disconnects") {
		purpose(s, "switch")
	}
	for _, s := range b.each("protections") {
		if b.text(s.ID()+".kind") == "breaker" {
			purpose(s, "breaker")
		}
	}
}

// behindInverter tells whether a device stands in a circuit of alternating current.
func behindInverter(device *facts.Subject) bool {
	for _, load := range device.Linked("loads") {
		if len(load.Linked("ac_outputs")) > 0 {
			return true
		}
	}
	return false
}

// current says what a device's voltage is of.
func current(device *facts.Subject) string {
	if behindInverter(device) {
		return " AC"
	}
	return " DC"
}

func (b *labeler) replacement(p *facts.Subject, source, read string) {
	rating, volts, breaks := b.fact(p.ID()+".rating"), b.fact(p.ID()+".voltage"), b.fact(p.ID()+".interrupts")
	class := b.fact(p.ID() + ".class")
	kind := "class " + class.Text
	if class.Text == "other" {
		kind = "the class that is fitted"
	}
	b.add(Label{About: p.ID(), Place: "at the fuse holder", Source: source, Read: read, Lines: []string{
		"fuse of " + name(p.ID()), fmt.Sprintf("replace with %s, %s, %s, interrupting %s alone", kind, rating.Text, volts.Text+current(p), breaks.Text)}}, rating, volts, breaks, class)
}

// shutDown gives the order of shutting down: loads, then the sources, the bank
// last.
func (b *labeler) shutDown() []string {
	var order []string
	step := func(what string, of []*facts.Subject) {
		var where []string
		for _, s := range of {
			where = append(where, b.switchOf(s))
		}
		if len(where) > 0 {
			order = append(order, fmt.Sprintf("%d. %s: %s", len(order)+1, what, strings.Join(where, ", ")))
		}
	}
	var loads []*facts.Subject
	for _, l := range b.each("loads") {
		if len(l.Linked("banks"))+len(l.Linked("chargers")) > 0 {
			loads = append(loads, l)
		}
	}
	step("loads and inverters off", slices.Concat(b.each("ac_outputs"), b.each("supplies"), loads))
	step("arrays off", b.each("arrays"))
	step("other sources off", b.each("charge_sources"))
	step("bank off, last", b.each("banks"))
	if len(order) > 0 {
		order = append(order, "Arrays stay live in light, batteries always.")
	}
	return order
}

// designName is what people call the design.
func (b *labeler) designName() string { return report.Escape(b.system.Design().Name) }
