package schedule

import (
	"slices"
	"strings"

	"stringline/lint"
	"stringline/lint/facts"
	"stringline/lint/report"
	"stringline/schema/quantity"
)

// Conductor is one row of the wire schedule: a run of conductors.
type Conductor struct {
	ID         string // of the run
	From, To   string // ids of what it joins
	Count      Entry  // conductors in parallel for each pole
	Alike      Entry  // how many such runs: one for each parallel string
	Size       Entry
	Material   Entry
	Insulation Entry // temperature that it bears
	Rated      Entry // voltage that it bears
	Length     Entry // one way
	Bought     Entry // single conductor, both ways, of all alike
	Method     Entry // how it is laid: conduit, surface, …
	Cores      Entry
	Ambient    Entry
	Grouped    Entry
	Terminals  Entry // temperature marked on them
	Current    Entry // that it must carry; no code factor inside
	Operating  Entry // that it carries in operation
	Ampacity   Entry // the maker's, of one conductor
	Allowed    Entry // by the codes in force, as it lies, of all of a pole; Text names the rule
	Device     string
	Protection Entry // rating of its fuse or breaker
	Drop       Entry // V
	Share      Entry // % of the voltage there
	Path       Entry // % along its whole path
	Loss       Entry
	FaultNear  Entry // at its end toward the bank
	FaultFar   Entry
	Voltage    Entry // highest voltage on it
	Grounding  Entry // size of the grounding conductor that goes along
}

// ConductorColumns heads the columns of [Conductor.Cells].
func ConductorColumns() []Column {
	return []Column{
		{"id", "Run", ""}, {"from", "From", ""}, {"to", "To", ""},
		{"conductors_per_pole", "Conductors per pole", ""}, {"runs_alike", "Runs alike", ""}, {"size_mm2", "Size", "mm2"}, {"material", "Material", ""},
		{"insulation_degC", "Insulation", "degC"}, {"rated_voltage_V", "Rated voltage", "V"}, {"length_m", "Length one way", "m"}, {"conductor_length_m", "Conductor, both ways", "m"},
		{"method", "Laid in", ""}, {"cores", "Cores", ""}, {"ambient_degC", "Air around", "degC"}, {"grouped", "Conductors together", ""}, {"terminals_degC", "Terminals", "degC"},
		{"current_A", "Current to carry", "A"}, {"operating_current_A", "Current in operation", "A"}, {"ampacity_A", "Maker's ampacity", "A"}, {"allowed_A", "Ampacity by the code", "A"},
		{"device", "Protected by", ""}, {"device_rating_A", "Its rating", "A"},
		{"drop_V", "Voltage drop", "V"}, {"drop_percent", "Share", "%"}, {"path_drop_percent", "Share along its path", "%"}, {"loss_W", "Loss", "W"},
		{"fault_current_near_A", "Fault current, bank end", "A"}, {"fault_current_far_A", "Fault current, far end", "A"},
		{"highest_voltage_V", "Highest voltage", "V"}, {"grounding_mm2", "Grounding conductor", "mm2"},
	}
}

// Cells gives the row by columns.
func (c Conductor) Cells() []Entry {
	return []Entry{words(c.ID), words(c.From), words(c.To), c.Count, c.Alike, c.Size, c.Material, c.Insulation, c.Rated, c.Length, c.Bought,
		c.Method, c.Cores, c.Ambient, c.Grouped, c.Terminals, c.Current, c.Operating, c.Ampacity, c.Allowed, words(c.Device), c.Protection,
		c.Drop, c.Share, c.Path, c.Loss, c.FaultNear, c.FaultFar, c.Voltage, c.Grounding}
}

// Conductors lists every run of the design, in the order of the facts document.
func Conductors(d *lint.DesignResult) []Conductor {
	r := reader{d.System}
	var rows []Conductor
	for _, run := range d.System.Subjects("cable_runs") {
		id := run.ID()
		at := func(fact string) Entry { return r.fact(id + "." + fact) }
		from, to := r.ends(run)
		c := Conductor{ID: id, From: from, To: to, Count: at("per_pole"), Alike: one(), Size: r.size(run, "size"), Material: at("material"),
			Insulation: at("insulation"), Rated: at("voltage"), Length: at("length"), Bought: at("conductor_total"), Method: at("method"), Cores: at("cores"),
			Ambient: at("ambient"), Grouped: at("grouped"), Terminals: at("terminal_temperature"), Current: at("current"), Operating: at("current_operating"),
			Ampacity: at("ampacity"), Allowed: allowed(d, id), Drop: at("voltage_drop"), Share: at("voltage_drop_share"), Path: at("path_drop"), Loss: at("loss"),
			FaultNear: at("fault_current_near"), FaultFar: at("fault_current_far"), Voltage: at("bus_voltage"), Grounding: r.size(run, "grounding_size")}
		if owner := run.Linked("strings"); len(owner) == 1 {
			c.Alike = r.fact(owner[0].ID() + ".parallel")
		}
		for _, p := range run.Linked("protections") {
			c.Device, c.Protection = p.ID(), r.fact(p.ID()+".rating")
		}
		rows = append(rows, c)
	}
	return rows
}

// owners are the links from a run to the block that it stands in.
var owners = []string{"strings", "arrays", "chargers", "banks", "ac_outputs", "supplies", "charge_sources", "loads"}

// ends gives what a run joins: the block that it stands in, and what that block
// names.
func (r reader) ends(run *facts.Subject) (from, to string) {
	for _, link := range owners {
		for _, owner := range run.Linked(link) {
			return owner.ID(), toward(owner)
		}
	}
	return "", ""
}

func toward(owner *facts.Subject) string {
	if owner.Collection().Name == "banks" {
		return "busbar of " + owner.ID()
	}
	for _, link := range []string{"array", "pv_input", "ac_outputs", "supplies", "chargers", "bank"} {
		if to := owner.Linked(link); len(to) > 0 {
			if link == "chargers" && owner.Collection().Name == "loads" {
				return to[0].ID() + ".load_terminals"
			}
			return to[0].ID()
		}
	}
	return ""
}

// allowed gives the ampacity by the codes in force as an entry.
func allowed(d *lint.DesignResult, run string) Entry {
	found := report.AmpacityAsLaid(d, run)
	switch {
	case found.Known:
		return Entry{Text: found.Text() + ", " + found.Rule, Known: true, Measured: true, Number: quantity.Round(found.Value), Unit: found.Unit, Missing: found.Missing}
	case found.Asked:
		return Entry{Text: found.Text(), Missing: found.Missing}
	case !slices.ContainsFunc(d.Books, isCode):
		return Entry{Text: "no code in force"}
	}
	return Entry{}
}

// codes are the codebooks that hold a code; the others hold data sheets' limits
// and common practice.
var codes = []string{"us_2023", "iec", "marine", "vehicle"}

func isCode(book string) bool { return slices.Contains(codes, strings.ToLower(book)) }
