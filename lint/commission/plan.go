// Package commission lays out how a system that is built is tested and brought
// into use: what to look at while it is dead, what each meter should show, in
// which order things are connected, what is programmed, which labels are owed.
//
// Use [Of] on a judged design. The [Plan] that it gives is plain data: reports
// show it and compute nothing. What is expected is a fact of the design or, for
// the light and warmth of the moment, one of [facts.Now], with workings. A
// reading is judged only where one was recorded; what nobody measured stays "not
// measured", and never counts as if it met.
//
// Order and bands follow IEC 62446-1 where it speaks (transcribed in part, the
// rest from memory) and common practice elsewhere.
//
// Every text that comes from a design (names, titles, ids, words) is as it was
// written: what shows a plan escapes it.
package commission

import "stringline/schema/source"

// Plan is the commissioning of one design.
type Plan struct {
	Head Head
	// Now is the light and the warmth that expected readings are given for.
	Now Now
	// Standing says whether the system may be energized at all.
	Standing Standing
	// Hazards are the cautions at the head of the plan, one sentence each, in
	// the order in which they are to be read.
	Hazards []string
	// Sections are what to do, in the order in which it is done. All are there;
	// one that the design holds nothing for has no lines.
	Sections []Section
	// Tables are what each string's meter should show over cell temperature and
	// over irradiance, for a sheet that is printed before the light is known.
	Tables []Table
	// Signatures are the signatures and dates that end the sheet.
	Signatures []Blank
	// Summary counts the lines and readings of all sections.
	Summary Summary
}

// Head says what is commissioned.
type Head struct {
	Design, Revision string // as the design says; Revision may be ""
	File             string // as shown to people, "-" for standard input
	Workshop         string // path of its workshop.hcl, "" where there is none
	Digest           string // "sha256:…" over the files that were read
	Date             string // yyyy-mm-dd, decides the ends of waivers
	Codebooks        []Codebook
	Waivers          []Waiver // in force
	// Serials are the devices whose serial number and firmware are noted.
	Serials []Blank
	// Blanks are the rest that is filled in by hand: instruments, weather.
	Blanks []Blank
}

// Codebook is one that judged the design.
type Codebook struct{ Name, Version, Edition, Digest string }

// Waiver is a written permission in force.
type Waiver struct{ Rule, About, Reason, ApprovedBy, Expires string }

// Blank is an entry that is filled in by hand.
type Blank struct {
	About string // id of the block that it is about; "" for the system
	What  string // what to write, in words
	Count int    // how many of it there are: a bank of four batteries has four numbers
}

// Now is the light and the warmth at the moment of the measurements.
type Now struct {
	CellTemperature *float64 // degC; nil where it was not given
	Irradiance      *float64 // W/m2 in the plane of the array; nil where it was not given
	// Missing are facts.NowCell and facts.NowIrradiance, where they were not given.
	Missing []string
	// Note warns where the light is too faint to judge by; "" elsewhere.
	Note string
}

// Standing is what the verdicts on the design make of energizing it.
type Standing struct {
	// Energize is false where a stop was found or is unproven, where a verdict
	// is void, and where something of the design could not be read.
	Energize bool
	Says     string    // that, in one sentence
	Findings []Finding // open ones, worst first: by grade, then as verdicts are ordered
	Problems source.Problems
}

// Finding is an open finding of the check.
type Finding struct {
	Grade   string // stop, fix, advise
	Verdict string // breaks, unproven, void
	Rule    string
	About   string
	Which   string
	Says    string // one sentence
	Missing []string
}

// The sections of a plan, in their order.
const (
	Dead       = "dead"       // looked at and measured before anything is energized
	Battery    = "battery"    // the batteries, one by one, before they are joined
	Strings    = "strings"    // each string of panels, PV switch open
	Order      = "order"      // what is connected after what
	Settings   = "settings"   // what is programmed, and read back
	Live       = "live"       // measured while it works
	Functional = "functional" // what must switch is made to switch
	Labels     = "labels"     // what is fitted and left on site
)

// Section is one part of the plan.
type Section struct {
	Key      string // one of the constants above
	Title    string
	Cautions []string // before anything of this section is done
	Lines    []Line
}

// Kinds of line.
const (
	Check   = "check"   // looked at: seen, initials
	Measure = "measure" // a reading box: what the meter shows
	Set     = "set"     // programmed: the value, read back
	Do      = "do"      // done: a step in the order
)

// States of a line.
const (
	NotMeasured = "not_measured" // an open line: nothing is recorded, or not enough
	InBand      = "in_band"      // every reading that is due is recorded and lies in its band
	OutOfBand   = "out_of_band"  // a reading lies outside its band: a finding
	Waived      = "waived"       // a reading lies outside, and a waiver in force permits it
	Unproven    = "unproven"     // readings are recorded and what was due is unknown
	ByHand      = "by_hand"      // the design has no place for it: it is noted on paper
)

// Line is one entry of a section.
type Line struct {
	Number int    // from 1, through all sections
	Key    string // SECTION|ABOUT|WHAT: the same from run to run
	Kind   string // check, measure, set or do
	About  string // id of the subject: "string.south.a", "protection.bank.house"; "system"
	// With are the ids of further subjects that the line is about, such as the
	// batteries' fuses that are put in with it.
	With []string
	Says string // what to do or look at, one sentence
	// Caution stands before a dangerous step; "" elsewhere.
	Caution string
	// Expect is what is expected. Of a measurement the first is what the meter
	// should show; further ones are limits that it is held against as well.
	Expect []Expected
	// Of is what a reading block of the design says in `of` to record it; "" where
	// the design has no place for it and it is noted on paper.
	Of string
	// Unit is that of its reading boxes.
	Unit string
	// Due is how many readings the line wants: as many as strings of a block stand
	// in parallel. 0 for a line without a box, and for one that is judged on the
	// readings of other lines (how far like strings are apart).
	Due int
	// Found is what the readings of other lines come to, where the line is judged
	// on them; nil where there are too few, and for other lines.
	Found *float64
	// Readings are those that the design records, as it lists them.
	Readings []Reading
	// Remains is how many of those due are not recorded.
	Remains int
	State   string
	// Because says why a line is out of its band or unproven; "" elsewhere.
	Because string
}

// Relations of an expected value to what is found.
const (
	Between = "between"  // from Low to High, ends included; Value is what is due
	AtMost  = "at_most"  // not above Value
	AtLeast = "at_least" // not below Value
	Equals  = "equals"   // just that: a value that is programmed, a rating, a word
)

// Expected is what a line expects: a fact, or a figure that only a maker's sheet
// tells. Exactly one of Value, Word and Yes is set where it is known, none where
// it is not. Numbers are in Unit and unrounded: what shows them rounds.
type Expected struct {
	ID       string // of the fact; one of the moment begins with "now."; "" where nothing in the design tells it
	Name     string // what it is, in words: "rating", "open-circuit voltage"
	Relation string // between, at_most, at_least or equals
	Unit     string // documents' unit: "V", "A", "degC"; "" for a count, "word", "yes_no"
	Value    *float64
	Word     string
	Yes      *bool
	// Low and High are the ends of the band of a "between"; nil where the value is
	// unknown, and for other relations.
	Low, High *float64
	// Tolerance is the band's half width as a share of Value (0.05 is 5 %); nil
	// where the band is not made so.
	Tolerance *float64
	Says      string   // workings in one line
	Missing   []string // ids of what would make it known, among them facts.NowCell and facts.NowIrradiance
	Supply    string   // what to supply where no id names it: "the torque that its maker asks"; else ""
	Assumed   []string // ids of facts that it rests on and that were assumed
	Source    string   // where the figure or the band comes from
}

// Known tells whether the expected value is known.
func (e *Expected) Known() bool { return e.Value != nil || e.Word != "" || e.Yes != nil }

// Reading is a measurement that the design records, judged at its own light and
// warmth, not at those of the plan.
type Reading struct {
	ID    string // "reading.south-a-open"
	Title string // as written; may be ""
	Taken string // yyyy-mm-dd; "" where not given
	Of    string // subject and quantity: "string.south.a.voc"
	Unit  string
	Value *float64 // nil where it was written and could not be read
	// CellTemperature (degC) and Irradiance (W/m2) as recorded; nil where not.
	CellTemperature, Irradiance *float64
	// Expected is what was due at that light and warmth, Low and High the band (one
	// alone for a limit), Tolerance its half width as a share, Difference (value -
	// expected) / expected. They are nil where they are unknown or there is none.
	Expected, Low, High, Tolerance, Difference *float64
	// AtCold is what an open-circuit voltage comes to at the cold design
	// temperature, in V, and Limit what the controller allows there; nil where
	// unknown and for other quantities.
	AtCold, Limit *float64
	State         string // in_band, out_of_band, waived, unproven
	Because       string // why, where it is not in its band
	Missing       []string
	At            source.Range
}

// Table is what one string's meter should show over a condition.
type Table struct {
	ID       string // of the fact: "string.south.a.voc_by_cell_temperature"
	About    string // "string.south.a"
	Name     string // what is shown, in words
	Unit     string
	Over     string // unit of At: "degC", "W/m2"
	At       []float64
	Values   []float64 // as long as At; nil where unknown
	Missing  []string
	Because  string // why there is no answer although all that it rests on is given
	Assumed  []string
	Constant string // what is held: "at 1000 W/m2"
}

// Summary counts what a plan holds.
type Summary struct {
	Lines int
	// Due counts the readings that the design can record, Recorded those that
	// it does, Remain those that it does not yet; ByHand those that go on paper.
	Due, Recorded, Remain, ByHand int
	// InBand, OutOfBand, Waived and Unproven count recorded readings.
	InBand, OutOfBand, Waived, Unproven int
	// Apart counts the lines whose readings should agree and do not.
	Apart int
}
