// Package starter writes a first workshop: a design, a parts file, workshop.hcl and
// a git hook, from a few answers.
//
// Use [Questions] for what to ask, [Question.Check] for what was answered, and
// [Write] for the files. Nothing here touches a disk, and nothing here judges: the
// command puts what is to be written through the pipeline before it is written.
//
// What the person answered goes into the files as it was given. What was not
// answered is left out, so that a check calls it unproven: no value that can burn
// somebody is taken for granted. Sizes of fuses and cables follow from the parts,
// which are invented and say so, by the trade's factors (1.25 for what flows for
// hours, 1.56 for panels under bright cloud edges); a check judges them like any
// other design's.
package starter

import (
	"fmt"
	"regexp"
	"strings"

	"stringline/schema/design"
	"stringline/schema/hcltext"
	"stringline/schema/quantity"
	"stringline/schema/source"
)

// Question is one thing to ask.
type Question struct {
	Option string // of the command line: "bank-voltage"
	Ask    string // the question
	Why    string // why it matters, a line
	Such   string // an example of an answer
	// Kind and Attribute name what of the language the answer is; its own reader
	// checks it. Empty where Words or a whole number is due.
	Kind, Attribute string
	Words           []string // the answers that there are
	Default         string   // taken for an empty answer, where that is safe; "" for none
	// Needed: without it nothing can be drawn. The others may stay unknown.
	Needed bool
	// None: an empty answer, or none, means that there is no such thing. Whether
	// there is one cannot stay unknown.
	None bool
	// Only tells whether the question makes sense after the answers so far.
	Only func(Answers) bool
}

// Answers holds answers by option. One that is not known is absent.
type Answers map[string]string

// Unknown is the answer of somebody who does not know.
const Unknown = "unknown"

// Questions lists what is asked, in order.
func Questions() []Question {
	ac := func(a Answers) bool { return a["ac-power"] != "" }
	dc := func(a Answers) bool { return a["dc-power"] != "" }
	return []Question{
		{Option: "title", Ask: "What is the system called?", Why: "It heads every page.", Such: "Larch Col hut", Kind: "reading", Attribute: "title", Default: "First system"},
		{Option: "place", Ask: "What does it stand in or on?", Why: "Codes differ between houses, vehicles and boats.", Such: "building", Words: []string{"building", "ground", "vehicle", "boat"}},
		{Option: "code", Ask: "Which code is in force there?", Why: "It judges conductors, devices and how things are built. none: physics, makers and good practice alone.", Such: "iec", Words: []string{"us_2023", "iec", "marine", "vehicle", "none"}, Needed: true},
		{Option: "standard", Ask: "By which standard is the vehicle built?", Why: "Each has tables of its own.", Such: "en_1648", Words: []string{"en_1648", "as_nzs_3001", "nec_552", "rvia_lv"}, Only: func(a Answers) bool { return a["code"] == "vehicle" }},
		{Option: "latitude", Ask: "Latitude, north positive?", Why: "Sun and seasons follow it.", Such: "46.5 deg", Kind: "site", Attribute: "latitude"},
		{Option: "longitude", Ask: "Longitude, east positive?", Why: "With the latitude it gives the hours of sun.", Such: "9.9 deg", Kind: "site", Attribute: "longitude"},
		{Option: "elevation", Ask: "Height above sea level?", Why: "Thin air cools and insulates less; makers state how high a device may stand.", Such: "1840 m", Kind: "site", Attribute: "elevation"},
		{Option: "coldest", Ask: "Coldest air of an ordinary year?", Why: "Panels give the most voltage on the coldest morning. Too much destroys the controller.", Such: "-27 degC", Kind: "site", Attribute: "coldest"},
		{Option: "hottest", Ask: "Hottest air of an ordinary year?", Why: "Hot panels give the least voltage, and hot cables carry less.", Such: "29 degC", Kind: "site", Attribute: "hottest"},
		{Option: "tilt", Ask: "Tilt of the panels, from flat?", Why: "It decides how much sun they get in winter.", Such: "45 deg", Kind: "array", Attribute: "tilt"},
		{Option: "azimuth", Ask: "Direction that they face, clockwise from north?", Why: "180 deg is south.", Such: "180 deg", Kind: "array", Attribute: "azimuth"},
		{Option: "run", Ask: "Length of the cable from the panels to the controller, one way?", Why: "Voltage is lost on the way, and the cable's size follows.", Such: "12 m", Kind: "cable_run", Attribute: "length"},
		{Option: "bank-voltage", Ask: "Voltage of the battery bank?", Why: "A higher one needs thinner cables and smaller fuses.", Such: "24 V", Words: []string{"12 V", "24 V", "48 V"}, Needed: true},
		{Option: "chemistry", Ask: "Kind of battery?", Why: "Lithium must never be charged below freezing; lead must not be emptied.", Such: "lifepo4", Words: []string{"lifepo4", "agm"}, Needed: true},
		{Option: "batteries", Ask: "How many strings of batteries of 200 Ah side by side?", Why: "They share what charges and discharges them.", Such: "2", Kind: "bank", Attribute: "parallel", Needed: true},
		{Option: "bank-coldest", Ask: "Coldest air where the bank stands?", Why: "It decides whether it may be charged in winter.", Such: "5 degC", Kind: "bank", Attribute: "coldest"},
		{Option: "bank-hottest", Ask: "Hottest air where bank and controller stand?", Why: "Heat ages batteries, and devices give less.", Such: "30 degC", Kind: "bank", Attribute: "hottest"},
		{Option: "panels", Ask: "How many panels of 410 W?", Why: "At 12 V they stand side by side, at 24 V in strings of 2, at 48 V of 3.", Such: "4", Kind: "string", Attribute: "parallel", Needed: true},
		{Option: "dc-power", Ask: "Power of the lights on the bank itself? (or none)", Why: "They work without the inverter.", Such: "60 W", Kind: "load", Attribute: "power", None: true},
		{Option: "dc-hours", Ask: "Hours a day that they are on?", Why: "Power times hours is what the sun must bring.", Such: "5", Kind: "load", Attribute: "hours_per_day", Only: dc},
		{Option: "ac-power", Ask: "Power of everything on the inverter that runs at once? (or none)", Why: "The inverter and its cables follow from it.", Such: "700 W", Kind: "load", Attribute: "power", None: true},
		{Option: "ac-hours", Ask: "Hours a day that it runs?", Why: "Power times hours is what the sun must bring.", Such: "1", Kind: "load", Attribute: "hours_per_day", Only: ac},
		{Option: "ac-surge", Ask: "Power at the moment of starting?", Why: "Motors draw several times their power; the inverter and the bank must bear it.", Such: "1.4 kW", Kind: "load", Attribute: "surge", Only: ac},
		{Option: "plan", Ask: "Write what a build must keep as planned?", Why: "Lengths, distances, what is bonded, labeled, listed: yes writes them as your plan, to be looked at one by one. no writes them as comments, and check calls them unproven.", Such: "yes", Words: []string{"yes", "no"}, Default: "no"},
	}
}

// Check reads an answer by the rules of the language and gives it without blanks
// around it. An empty one is not known: it gives "" or the default. The error says
// what was expected, in the language's own words.
func (q *Question) Check(answer string) (string, error) {
	answer = strings.TrimSpace(answer)
	switch {
	case answer == "" && q.Default != "":
		return q.Default, nil
	case q.None && (answer == "" || answer == "none"):
		return "", nil
	case q.None && answer == Unknown:
		return "", fmt.Errorf("%s: nothing can be drawn of a power that is not known; none leaves it out, and an example is %q", q.Option, q.Such)
	case (answer == "" || answer == Unknown) && q.Needed:
		return "", fmt.Errorf("%s: nothing can be drawn without it; an example is %q", q.Option, q.Such)
	case answer == "" || answer == Unknown:
		return "", nil
	case len(q.Words) > 0:
		spaceless := strings.ReplaceAll(answer, " ", "")
		for _, w := range q.Words {
			// Of a few voltages "24" can mean one alone; elsewhere a unit is owed.
			if strings.ReplaceAll(w, " ", "") == spaceless || strings.TrimSuffix(w, " V") == answer {
				return w, nil
			}
		}
		return "", fmt.Errorf("%s: expected %s, found %q", q.Option, strings.Join(q.Words, ", "), hcltext.Shorten(answer))
	}
	v, err := q.read(answer)
	if err != nil {
		return "", err
	}
	if v.Attribute.Form == design.Quantity {
		return spaced.ReplaceAllString(answer, "$1 $2"), nil
	}
	return answer, nil
}

// spaced parts number and unit, which an option may have run together.
var spaced = regexp.MustCompile(`^([-+\x{2212}]?[0-9.]+)[ \t\x{a0}\x{202f}]*(.+)$`)

// read puts an answer through the reader of designs.
func (q *Question) read(answer string) (*design.Value, error) {
	kind := design.KindOf(q.Kind)
	a, ok := kind.Attribute(q.Attribute)
	if !ok {
		return nil, fmt.Errorf("%s: the language has no %s.%s", q.Option, q.Kind, q.Attribute)
	}
	written := answer
	if a.Form != design.Number && a.Form != design.Count {
		written = quoted(answer)
	} else if _, err := quantity.ParseNumber(answer); err != nil {
		return nil, fmt.Errorf("%s: expected %s, found %q; an example is %q", q.Option, map[bool]string{true: "a whole number", false: "a number without a unit"}[a.Form == design.Count], hcltext.Shorten(answer), q.Such)
	}
	file := source.NewFile("answer", []byte(q.Attribute+" = "+written+"\n"))
	body, problems, broken := hcltext.Parse(file)
	collected := hcltext.NewCollector()
	var v *design.Value
	if len(problems) == 0 && len(body.Attributes) == 1 {
		v = design.Fields(&design.Kind{Name: q.Kind, Attributes: []design.Attribute{*a}}, "", body.Attributes, file.Range(0, 0), broken, collected)[q.Attribute]
		problems = collected.List()
	}
	if len(problems) > 0 {
		return nil, fmt.Errorf("%s: %s; an example is %q", q.Option, strings.TrimPrefix(problems[0].Message, q.Attribute+": "), q.Such)
	}
	if v == nil || v.Bad {
		return nil, fmt.Errorf("%s: %q cannot be read; an example is %q", q.Option, hcltext.Shorten(answer), q.Such)
	}
	return v, nil
}

// quoted writes a text as the language does. What no text may hold is refused by
// the reader.
func quoted(text string) string {
	return `"` + strings.NewReplacer(`\`, `\\`, `"`, `\"`, "\n", `\n`, "\r", `\r`, "\t", `\t`).Replace(text) + `"`
}

// Set notes an answer; an empty one is not known, and stays absent.
func (a Answers) Set(option, answer string) {
	if answer != "" {
		a[option] = answer
	}
}
