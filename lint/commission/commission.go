package commission

import (
	"fmt"
	"slices"
	"strings"

	"stringline/lint"
	"stringline/lint/facts"
	"stringline/lint/verdict"
	"stringline/schema/quantity"
)

// Conditions are what a plan is made for besides the design itself.
type Conditions struct {
	CellTemperature *float64 // in K, of the cells; nil: not measured
	Irradiance      *float64 // in W/m2, in the plane of the array; nil, or below 50: not measured
	Date            string   // yyyy-mm-dd, the day of the run that judged the design
	// Books are the codebooks of that run: their versions stand in the head, and
	// practice's parameters say how wide the bands are. Without them the bands are
	// those of IEC 62446-1.
	Books []lint.BookInUse
}

// Bands of readings on the PV side where no codebook sets others: IEC 62446-1,
// from memory.
const (
	toleranceLit   = 0.05 // the irradiance measured in the plane of the array
	toleranceUnlit = 0.10 // without
	likeStrings    = 0.05 // of like strings among each other
)

// faint is the light in W/m2 below which currents tell little. From memory, IEC
// 62446-1 asks for steady light of 400 W/m2 or more for curves.
const faint = 400

// dusk is the light in W/m2 below which nothing can be told by it, and no figure
// may suggest that an array is dead: it counts as not measured. Common practice.
const dusk = 50

// slack is the relative slack of comparisons, that of verdicts: exactly at the
// limit meets it.
const slack = 1e-9

// Of lays out the commissioning of a judged design. A design that could not be
// read at all gives a plan that says so and has empty sections. The same input
// gives the same plan. Not safe for use beside other uses of d.System.
func Of(d *lint.DesignResult, c Conditions) *Plan {
	p := &planner{d: d, s: d.System, c: c, plan: &Plan{}, lit: toleranceLit, unlit: toleranceUnlit}
	for _, b := range p.books() {
		for _, set := range b.Parameters {
			if b.Name != "practice" || set.Value == nil {
				continue
			}
			switch set.Name {
			case "reading_tolerance":
				p.lit = *set.Value / 100
			case "reading_tolerance_unlit":
				p.unlit = *set.Value / 100
			}
		}
	}
	p.now()
	p.standing()
	if p.s != nil {
		p.readings = p.recorded()
	}
	for _, part := range []struct {
		key, title string
		fill       func(*Section)
	}{
		{Dead, "Before anything is energized", p.dead},
		{Battery, "Batteries, before they are joined", p.batteries},
		{Strings, "Strings of panels, PV switch open", p.strings},
		{Order, "Order of connection", p.order},
		{Settings, "Settings, programmed and read back", p.settings},
		{Live, "While it works", p.live},
		{Functional, "What must switch is made to switch", p.functional},
		{Labels, "Labels, and what stays on site", p.labels},
	} {
		section := Section{Key: part.key, Title: part.title, Cautions: []string{}, Lines: []Line{}}
		if p.s != nil {
			part.fill(&section)
		}
		p.plan.Sections = append(p.plan.Sections, section)
	}
	p.head()
	if p.s != nil {
		p.hazards()
		p.leftovers()
		p.tables()
	}
	p.finish()
	return p.plan
}

// planner fills a plan.
type planner struct {
	d          *lint.DesignResult
	s          *facts.System
	c          Conditions
	plan       *Plan
	lit, unlit float64 // shares
	readings   map[string][]*facts.Subject
	used       map[string]bool // readings that a line has taken
}

// books are the codebooks that judged the design, each name once.
func (p *planner) books() []lint.BookInUse {
	var all []lint.BookInUse
	for _, name := range p.d.Books {
		if i := slices.IndexFunc(p.c.Books, func(b lint.BookInUse) bool { return b.Name == name }); i >= 0 {
			all = append(all, p.c.Books[i])
		}
	}
	return all
}

// inForce tells whether a codebook judged the design.
func (p *planner) inForce(book string) bool { return slices.Contains(p.d.Books, book) }

func (p *planner) now() {
	n := &p.plan.Now
	if t := p.c.CellTemperature; t != nil {
		n.CellTemperature = inUnit(*t, "degC")
	} else {
		n.Missing = append(n.Missing, facts.NowCell)
	}
	if g := p.c.Irradiance; g != nil && *g < dusk {
		n.Note = show(*g, "W/m2") + " is too faint to tell anything by, and counts as not measured. No light is so faint that an array is dead."
		n.Missing = append(n.Missing, facts.NowIrradiance)
		p.c.Irradiance = nil
	} else if g != nil {
		n.Irradiance = inUnit(*g, "W/m2")
		if *g < faint {
			n.Note = fmt.Sprintf("Below %d W/m2 currents tell little, and voltages less the fainter it is: wait for steady light.", faint)
		}
	} else {
		n.Missing = append(n.Missing, facts.NowIrradiance)
	}
	if p.s != nil && p.facesDiffer() {
		n.Note = strings.TrimSpace(n.Note + " The arrays face differently: measure the light in the plane of each, and lay out the plan for each.")
	}
}

// facesDiffer tells whether arrays are known to lie in different planes, so that
// one irradiance is not that of all.
func (p *planner) facesDiffer() bool {
	arrays := p.s.Subjects("arrays")
	for _, a := range arrays[min(1, len(arrays)):] {
		for _, name := range []string{".tilt", ".azimuth"} {
			one, known := p.fact(arrays[0].ID() + name)
			other, too := p.fact(a.ID() + name)
			if known && too && one.SI != other.SI {
				return true
			}
		}
	}
	return false
}

// moment gives the conditions as facts take them.
func (p *planner) moment() facts.Now {
	return facts.Now{Cell: p.c.CellTemperature, Irradiance: p.c.Irradiance}
}

// tolerance gives the half width of a band on the PV side.
func (p *planner) tolerance(lit bool) float64 {
	if lit {
		return p.lit
	}
	return p.unlit
}

// standing says what the verdicts make of energizing.
func (p *planner) standing() {
	st := &p.plan.Standing
	st.Problems = p.d.Problems
	stops, void, judged := 0, 0, 0
	for i := range p.d.Verdicts {
		v := &p.d.Verdicts[i]
		if v.Outcome != verdict.DoesNotApply {
			judged++
		}
		if !v.Finding() {
			continue
		}
		says := v.Message
		if says == "" {
			says = v.Title
		}
		st.Findings = append(st.Findings, Finding{Grade: string(v.Grade), Verdict: string(v.Outcome), Rule: v.Rule, About: v.About, Which: v.Which, Says: says, Missing: v.Missing})
		switch {
		case v.Outcome == verdict.Void:
			void++
		case v.Grade == verdict.Stop:
			stops++
		}
	}
	slices.SortStableFunc(st.Findings, func(a, b Finding) int { return verdict.Grade(a.Grade).Rank() - verdict.Grade(b.Grade).Rank() })
	var why []string
	for _, w := range []struct {
		n         int
		one, many string
	}{
		{stops, "stop found or unproven", "stops found or unproven"}, {void, "judgement void", "judgements void"},
		{len(p.d.Problems), "error in what was read", "errors in what was read"},
	} {
		if w.n == 1 {
			why = append(why, "1 "+w.one)
		} else if w.n > 1 {
			why = append(why, fmt.Sprintf("%d %s", w.n, w.many))
		}
	}
	if judged == 0 {
		why = append(why, "nothing of it was judged")
	}
	switch open := len(st.Findings); {
	case len(why) > 0:
		st.Says = "Not to be energized: " + strings.Join(why, ", ") + "."
	case open == 1:
		st.Energize, st.Says = true, "No stop stands against it; 1 finding is open, to be put right before sign-off or known."
	case open > 1:
		st.Energize, st.Says = true, fmt.Sprintf("No stop stands against it; %d findings are open, to be put right before sign-off or known.", open)
	default:
		st.Energize, st.Says = true, "No finding of the check stands against it."
	}
}

// head says what is commissioned, and what is noted by hand.
func (p *planner) head() {
	h := &p.plan.Head
	h.Design, h.Revision, h.File, h.Workshop, h.Digest, h.Date = p.d.Name, p.d.Revision, p.d.File, p.d.Workshop, p.d.Digest, p.c.Date
	for _, name := range p.d.Books {
		book := Codebook{Name: name}
		for _, b := range p.books() {
			if b.Name == name {
				book.Version, book.Edition, book.Digest = b.Version, b.Edition, b.Digest
			}
		}
		h.Codebooks = append(h.Codebooks, book)
	}
	for i := range p.d.Verdicts {
		if v := &p.d.Verdicts[i]; v.Outcome == verdict.Waived && v.Waiver != nil {
			h.Waivers = append(h.Waivers, Waiver{v.Rule, v.About, v.Waiver.Reason, v.Waiver.ApprovedBy, v.Waiver.Expires})
		}
	}
	h.Blanks = []Blank{
		{What: "date and time of the tests", Count: 1}, {What: "weather, and whether the light was steady", Count: 1}, {What: "air temperature", Count: 1},
		{What: "multimeter: number, rated voltage and category, calibrated until", Count: 1},
		{What: "clamp meter for direct current: number, calibrated until", Count: 1},
		{What: "irradiance and cell-temperature meter: number, calibrated until", Count: 1},
		{What: "insulation tester: number, calibrated until", Count: 1},
		{What: "torque wrench: number, calibrated until", Count: 1},
	}
	p.plan.Signatures = []Blank{
		{What: "built by: name, date, signature", Count: 1}, {What: "tested by: name, license, date, signature", Count: 1},
		{What: "inspected by the authority or its agent: name, date, signature", Count: 1},
		{What: "handed over to, and shown how to shut down: name, date, signature", Count: 1},
		{What: "terminals to be torqued again: date", Count: 1}, {What: "seasonal check: date", Count: 1},
	}
	if p.s == nil {
		return
	}
	for _, d := range []struct{ collection, part, what string }{
		{"chargers", "controller", "charge controller"}, {"ac_outputs", "inverter", "inverter"}, {"supplies", "converter", "converter"},
		{"charge_sources", "", "charging source"}, {"banks", "battery", "batteries"}, {"strings", "panels", "panels"},
	} {
		for _, s := range p.s.Subjects(d.collection) {
			what, count := d.what, 1
			if parts := names(s.Linked(d.part)); len(parts) > 0 {
				what += " " + strings.Join(parts, ", ")
			}
			switch d.collection {
			case "banks":
				count = p.count(s.ID()+".series") * p.count(s.ID()+".parallel")
			case "strings":
				count = p.count(s.ID()+".panel_count") * p.count(s.ID()+".parallel")
				what += ": serial numbers"
			}
			if d.collection != "strings" {
				what += ": serial number, firmware"
			}
			h.Serials = append(h.Serials, Blank{About: s.ID(), What: what, Count: max(1, count)})
		}
	}
}

// inUnit gives an SI value in a document's unit, unrounded.
func inUnit(si float64, unit string) *float64 {
	if u, ok := quantity.Lookup(unit); ok {
		si = u.FromSI(si)
	}
	return &si
}

// names gives the names of parts, as blocks have them.
func names(subjects []*facts.Subject) []string {
	var all []string
	for _, s := range subjects {
		_, name, _ := strings.Cut(s.ID(), ".")
		all = append(all, name)
	}
	return all
}

// ids gives the ids of subjects.
func ids(groups ...[]*facts.Subject) []string {
	var all []string
	for _, g := range groups {
		for _, s := range g {
			if !slices.Contains(all, s.ID()) {
				all = append(all, s.ID())
			}
		}
	}
	return all
}
