package diagram

import (
	"fmt"
	"strconv"
	"strings"

	"stringline/lint/facts"
	"stringline/lint/report"
	"stringline/schema/quantity"
)

// text gives a fact as people read it: its value, the least that it can be, or
// an empty entry. A fact that does not exist is "".
func (r *reader) text(id string) string {
	f, ok := r.system.Fact(id)
	switch {
	case !ok:
		return ""
	case f.Known && f.Kind == facts.Word:
		return report.Escape(f.Word)
	case f.Known && f.Kind == facts.YesNo:
		return map[bool]string{true: "yes", false: "no"}[f.Yes]
	case f.Known && f.Kind == facts.Quantity:
		return tied(quantity.Format(f.SI, f.Unit))
	case f.Known:
		texts := make([]string, len(f.List))
		for i, v := range f.List {
			texts[i] = tied(quantity.Format(v, f.Unit))
		}
		return strings.Join(texts, ", ")
	case f.AtLeast != nil:
		return "at least " + tied(quantity.Format(*f.AtLeast, f.Unit))
	case f.Unit == "word" || f.Unit == "yes_no" || f.Unit == "":
		return "_____"
	}
	return tied("_____ " + f.Unit)
}

// strong gives a current that may be large: in kA from 1000 A up.
func (r *reader) strong(id string) string {
	f, ok := r.system.Fact(id)
	switch {
	case ok && f.Known && f.SI >= 1000:
		return tied(quantity.Format(f.SI, "kA"))
	case ok && f.AtLeast != nil && *f.AtLeast >= 1000:
		return "at least " + tied(quantity.Format(*f.AtLeast, "kA"))
	}
	return r.text(id)
}

// many gives a count with its word.
func many(count, word string) string {
	if count == "1" {
		return count + " " + word
	}
	return count + " " + word + "s"
}

// number gives a known quantity in SI.
func (r *reader) number(id string) (si float64, known bool) {
	f, ok := r.system.Fact(id)
	return f.SI, ok && f.Known
}

// yes tells whether a yes/no fact is known, and what it is.
func (r *reader) yes(id string) (yes, known bool) {
	f, ok := r.system.Fact(id)
	return f.Yes, ok && f.Known
}

// size gives a conductor's size as it was written, in AWG, kcmil or mm2.
func (r *reader) size(s *facts.Subject, name string) string {
	f, ok := r.system.Fact(s.ID() + "." + name)
	if !ok || !f.Known || s.Block() == nil {
		return r.text(s.ID() + "." + name)
	}
	if v, ok := s.Block().Value(name); ok && !v.Bad && (v.Written.Symbol == "AWG" || v.Written.Symbol == "kcmil") {
		return tied(quantity.Format(f.SI, v.Written.Symbol))
	}
	return tied(quantity.Format(f.SI, f.Unit))
}

// data gives a known quantity as an attribute, in SI.
func (r *reader) data(name, id string) []attribute {
	si, known := r.number(id)
	if !known {
		return nil
	}
	return []attribute{{name, strconv.FormatFloat(quantity.Round(si), 'g', -1, 64)}}
}

// name is an id without its kind: what it is called in the design.
func name(id string) string {
	_, rest, _ := strings.Cut(id, ".")
	return rest
}

func (r *reader) stringItem(s *facts.Subject) *item {
	id := s.ID()
	parallel := r.text(id + ".parallel")
	var panels []string
	also := []string{}
	if v, ok := s.Block().Value("panels"); ok {
		for _, p := range v.Panels {
			panels = append(panels, fmt.Sprintf("%d x %s", p.Count, p.Panel))
			also = append(also, "panel."+p.Panel)
		}
	}
	series := strings.Join(panels, " + ") + " in series"
	each := ""
	if parallel != "1" {
		series += ", " + parallel + " in parallel"
		each = "each "
	}
	lines := []string{series,
		each + "Voc " + r.text(id+".voc_cold") + " coldest, Isc " + r.text(id+".isc_stc"),
		each + r.text(id+".pmax_stc") + ", series fuse at most " + r.text(id+".series_fuse_max")}
	return &item{id: id, kind: "string", symbol: photovoltaic, heading: id, lines: lines, also: also, count: beside(parallel),
		says: fmt.Sprintf("%s (%s)", id, series)}
}

// beside is the number beside a symbol that stands for several.
func beside(count string) string {
	if count == "1" {
		return ""
	}
	return count + "x"
}

func (r *reader) arrayItem(s *facts.Subject) *item {
	id := s.ID()
	return &item{id: id, kind: "array", symbol: node, heading: id, says: id,
		lines: []string{"tilt " + r.text(id+".tilt") + ", faces " + r.text(id+".azimuth") + ", " + r.text(id+".mounting")}}
}

func (r *reader) inputItem(s *facts.Subject) *item {
	id := s.ID()
	controller := s.Linked("controller")[0].ID()
	return &item{id: id, kind: "pv_input", symbol: node, heading: id, says: id, lines: []string{
		many(r.text(id+".parallel_strings"), "parallel string") + ", " + r.text(id+".pmax_stc"),
		"Voc " + r.text(id+".voc_cold") + " coldest, allowed " + r.text(controller+".pv_voltage_max"),
		"Isc " + r.text(id+".isc_stc") + ", most " + r.text(id+".isc_max") + ", allowed " + r.text(controller+".pv_short_circuit_max"),
	}}
}

func (r *reader) chargerItem(s *facts.Subject) *item {
	id, controller := s.ID(), s.Linked("controller")[0].ID()
	return &item{id: id, kind: "charger", symbol: convert(direct, direct), heading: id, also: []string{controller},
		says: id + " (" + name(controller) + ")",
		lines: []string{name(controller) + ", " + r.text(controller+".kind"),
			"charges at most " + r.text(controller+".charge_current_max") + ", set to " + r.text(id+".settings.charge_current"),
			"absorption " + r.text(id+".settings.absorption") + ", float " + r.text(id+".settings.float")}}
}

func (r *reader) chargeSourceItem(s *facts.Subject) *item {
	id := s.ID()
	return &item{id: id, kind: "charge_source", symbol: sourceOf(direct), heading: id, says: id,
		lines: []string{"charges with " + r.text(id+".charge_current") + " at " + r.text(id+".charge_voltage")}}
}

func (r *reader) managed(bank *facts.Subject) bool {
	block := bank.Linked("battery")[0].Block()
	return block != nil && block.Child("bms") != nil
}

func (r *reader) managementItem(bank *facts.Subject) *item {
	battery := bank.Linked("battery")[0].ID()
	return &item{of: bank.ID(), kind: "bms", symbol: management, heading: "management system of each " + name(battery), says: "the batteries' management",
		lines: []string{"opens at " + r.text(battery+".bms.charge_cutoff") + " charge, " + r.text(battery+".bms.discharge_cutoff") + " discharge",
			"and at " + r.text(battery+".bms.over_voltage") + ", " + r.text(battery+".bms.under_voltage")}}
}

func (r *reader) bankItem(s *facts.Subject) *item {
	id, sheet := s.ID(), s.Linked("battery")[0].ID()
	return &item{id: id, kind: "bank", symbol: battery, heading: id, also: []string{sheet}, says: "the batteries of " + id,
		count: beside(r.text(id + ".parallel")),
		lines: []string{
			r.text(id+".series") + " in series x " + r.text(id+".parallel") + " in parallel of " + name(sheet) + ", " + r.text(sheet+".chemistry"),
			r.text(id+".nominal") + ", " + r.text(id+".capacity") + ", " + r.text(id+".energy"),
			"short circuit " + r.strong(id+".short_circuit_current"),
		}}
}

func (r *reader) outputItem(s *facts.Subject) *item {
	id, inverter := s.ID(), s.Linked("inverter")[0].ID()
	it := &item{id: id, kind: "ac_output", symbol: convert(direct, alternating), heading: id, also: []string{inverter}, says: id + " (" + name(inverter) + ")",
		lines: []string{name(inverter) + ", " + r.text(inverter+".ac_voltage") + " AC, " + r.text(inverter+".continuous") + ", surge " + r.text(inverter+".surge"),
			"takes " + r.text(id+".current") + " at most, off below " + r.text(id+".voltage_lowest")}}
	if amps, known := r.number(inverter + ".charge_current_max"); known && amps > 0 {
		it.lines = append(it.lines, "charges with up to "+r.text(inverter+".charge_current_max"))
	}
	return it
}

func (r *reader) supplyItem(s *facts.Subject) *item {
	id, converter := s.ID(), s.Linked("converter")[0].ID()
	return &item{id: id, kind: "supply", symbol: convert(direct, direct), heading: id, also: []string{converter}, says: id + " (" + name(converter) + ")",
		lines: []string{name(converter) + ", gives " + r.text(converter+".current") + " at " + r.text(converter+".output"),
			"takes " + r.text(id+".current") + " at most"}}
}

func (r *reader) loadItem(s *facts.Subject, c current) *item {
	id := s.ID()
	return &item{id: id, kind: "load", symbol: consumer(c), heading: id, says: id,
		lines: []string{r.text(id+".power") + ", surge " + r.text(id+".surge"),
			r.text(id+".current") + " at " + r.text(id+".voltage_lowest") + ", " + r.text(id+".energy_per_day") + " a day"}}
}

func (r *reader) runItem(s *facts.Subject) *item {
	id := s.ID()
	size := r.size(s, "size")
	per := r.text(id + ".per_pole")
	first := "2 x " + size
	if per != "1" {
		first = "2 poles, each " + per + " x " + size
	}
	method := r.text(id + ".method")
	if method == "_____" {
		method = "laid in _____"
	}
	lines := []string{
		first + " " + r.text(id+".material") + ", " + r.text(id+".insulation") + ", " + r.text(id+".voltage"),
		r.text(id+".length") + " one way, " + method + ", drop " + r.text(id+".voltage_drop") + ", " + r.text(id+".voltage_drop_share"),
		"carries " + r.text(id+".current") + ", " + r.ampacity(id, per),
	}
	if _, known := r.number(id + ".grounding_size"); known {
		lines = append(lines, "grounding conductor "+r.size(s, "grounding_size"))
	}
	return &item{id: id, kind: "cable_run", symbol: conductor, heading: id, lines: lines, count: conductors(per),
		says: r.text(id+".length") + " of " + size,
		data: append(r.data("data-length", id+".length"), r.data("data-area", id+".size")...)}
}

// ampacity tells what a run may carry as it is laid, where a code in force says so.
// A maker's figure is for one conductor in the maker's own conditions, and is named
// as such: a reader must not take it for what the run may carry here.
func (r *reader) ampacity(id, per string) string {
	if laid := report.AmpacityAsLaid(r.design, id); laid.Asked {
		return "may carry " + laid.Text() + " as laid"
	}
	text := "maker's ampacity " + r.text(id+".ampacity")
	if per != "1" {
		text += " each"
	}
	return text
}

// conductors counts those of both poles.
func conductors(perPole string) string {
	if n, err := strconv.Atoi(perPole); err == nil {
		return strconv.Itoa(2 * n)
	}
	return ""
}

// volts gives a device's rated voltage, and whether it is made for direct current:
// behind an inverter that does not matter.
func (r *reader) volts(id string, owner *facts.Subject) string {
	volts := r.text(id + ".voltage")
	if len(owner.Linked("ac_outputs")) > 0 {
		return volts
	}
	switch yes, known := r.yes(id + ".dc_rated"); {
	case !known:
		return volts + " for DC: _____"
	case yes:
		return volts + " DC"
	}
	return volts + " NOT for DC"
}

func (r *reader) protectionItem(s, owner *facts.Subject) *item {
	id := s.ID()
	kind := r.text(id + ".kind")
	what := kind
	if class, ok := r.system.Fact(id + ".class"); ok && class.Known && class.Word != "other" {
		what += " " + report.Escape(class.Word)
	}
	draw := symbol(fuse)
	if kind == "breaker" {
		draw = breaker
	}
	first := what + " " + r.text(id+".rating") + ", " + r.volts(id, owner)
	var last []string
	if _, known := r.number(id + ".distance"); known {
		last = append(last, r.text(id+".distance")+" unprotected before it")
	}
	if kind == "breaker" {
		first += ", " + many(r.text(id+".poles"), "pole")
		last = append(last, "polarized: "+r.text(id+".polarized"))
	}
	lines := []string{first, "interrupts " + r.strong(id+".interrupts") + ", fault " + r.strong(id+".fault_current")}
	if len(last) > 0 {
		lines = append(lines, strings.Join(last, ", "))
	}
	it := &item{id: id, kind: kind, symbol: draw, heading: id, says: kind + " " + r.text(id+".rating"), data: r.data("data-rating", id+".rating")}
	it.lines, it.count = alike(lines, r.alike(s, owner)), beside(r.alike(s, owner))
	return it
}

func (r *reader) disconnectItem(s, owner *facts.Subject) *item {
	id := s.ID()
	draw, load := symbol(contact), "under load: _____"
	if breaks, known := r.yes(id + ".load_break"); known && breaks {
		draw, load = switchDisconnector, "opens under load"
	} else if known {
		draw, load = disconnector, "NOT to be opened under load"
	}
	it := &item{id: id, kind: "disconnect", symbol: draw, heading: id, says: "switch " + r.text(id+".rating"), data: r.data("data-rating", id+".rating")}
	lines := []string{"switch " + r.text(id+".rating") + ", " + r.volts(id, owner) + ", " + many(r.text(id+".poles"), "pole"), load}
	it.lines, it.count = alike(lines, r.alike(s, owner)), beside(r.alike(s, owner))
	return it
}

// alike tells how many of a device there are: one for each parallel string.
func (r *reader) alike(s, owner *facts.Subject) string {
	switch {
	case owner.Collection().Name == "strings", strings.HasSuffix(s.ID(), ".each"):
		return r.text(owner.ID() + ".parallel")
	}
	return "1"
}

func alike(lines []string, count string) []string {
	if count == "1" {
		return lines
	}
	return append(lines, "one in each of "+count+" parallel strings")
}
