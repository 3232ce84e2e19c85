package fit

import (
	"cmp"
	"fmt"
	"maps"
	"math"
	"slices"
	"strconv"
	"strings"

	"stringline/schema/design"
	"stringline/schema/source"
)

// What there is to string: panels, arrays and free inputs, batteries.

// kind is one kind of panel in hand. Figures that the data sheet lacks are 0: what
// is sensible is then not asked by them.
type kind struct {
	name                     string
	count                    int
	vmp, imp, voc, isc, pmax float64 // SI
}

// mostPanels bounds the panels of one kind, as a string is bounded in the language.
const mostPanels = 200

// takeStock settles which panels are in hand.
func (f *finder) takeStock() error {
	d := f.bench.Design()
	f.hand = slices.Clone(f.options.Panels)
	if f.hand == nil {
		f.hand = panelsOf(d)
	}
	if len(f.hand) == 0 {
		return fmt.Errorf("%s has no panels; name those in hand", d.File)
	}
	shelf := d.Shelf["panel"]
	for i, p := range f.hand {
		sheet := shelf[p.Name]
		switch {
		case sheet == nil:
			near := "the parts files have " + strings.Join(slices.Sorted(maps.Keys(shelf)), ", ")
			if n := source.Nearest(p.Name, slices.Sorted(maps.Keys(shelf))); n != "" {
				near = fmt.Sprintf("did you mean %q?", n)
			}
			return fmt.Errorf("there is no panel %q; %s", p.Name, near)
		case p.Count < 1 || p.Count > mostPanels:
			return fmt.Errorf("panels %s: expected 1 to %d of them, found %d", p.Name, mostPanels, p.Count)
		case slices.ContainsFunc(f.hand[:i], func(o Panels) bool { return o.Name == p.Name }):
			return fmt.Errorf("panels %s are named twice", p.Name)
		}
		f.kinds = append(f.kinds, kind{p.Name, p.Count, figure(sheet, "vmp"), figure(sheet, "imp"), figure(sheet, "voc"), figure(sheet, "isc"), figure(sheet, "pmax")})
	}
	return nil
}

// figure reads a quantity of a block, 0 where it is not known.
func figure(b *design.Block, name string) float64 {
	if v, ok := b.Value(name); ok && !v.Bad {
		return v.SI
	}
	return 0
}

// panelsOf counts the panels of a design, in the order in which they are named.
func panelsOf(d *design.Design) []Panels {
	var all []Panels
	for _, a := range d.Blocks {
		for _, s := range a.Blocks {
			if a.Kind.Name != "array" || s.Kind.Name != "string" {
				continue
			}
			for _, p := range s.Values["panels"].Panels {
				i := slices.IndexFunc(all, func(o Panels) bool { return o.Name == p.Panel })
				if i < 0 {
					all, i = append(all, Panels{Name: p.Panel}), len(all)
				}
				all[i].Count += p.Count * parallelOf(s)
			}
		}
	}
	return all
}

func parallelOf(s *design.Block) int {
	if v, ok := s.Values["parallel"]; ok {
		return int(v.SI)
	}
	return 1
}

// place is where strings may stand: an array of the design, or a new one on a free
// input, copied from another.
type place struct {
	array   *design.Block // the array itself, or the one that is copied
	name    string
	copied  bool
	charger string
	bank    string
	input   int
	// class is the same for places that are alike, so that mirror images are
	// tried once.
	class int
	// The controller's limits of PV voltage (V) and short-circuit current (A), its
	// rated charge current (A) and what share of the power that it can use its
	// maker allows; 0 where unknown. tracks tells one that finds the best power.
	highest, survives, rated, overpanel float64
	tracks                              bool
	asIs                                []group // as the design has it
}

// placesOf lists the arrays, then the free inputs of chargers in use.
func (f *finder) placesOf() {
	d := f.bench.Design()
	used := map[string]bool{}
	names := map[string]bool{}
	first := map[string]*place{}
	for _, b := range d.Blocks {
		if b.Kind.Name != "array" {
			continue
		}
		p := f.placeOf(b, len(f.places))
		f.places = append(f.places, p)
		names[b.Name] = true
		used[inputKey(p.charger, p.input)] = true
		if first[p.charger] == nil {
			first[p.charger] = &p
		}
	}
	arrays := len(f.places)
	for _, c := range d.Blocks {
		if c.Kind.Name != "charger" {
			continue
		}
		from := first[c.Name]
		if from == nil && arrays > 0 {
			from = &f.places[0]
		}
		inputs := 1
		if controller := d.Refers(c, "controller"); controller != nil {
			inputs = max(1, int(figure(controller, "pv_inputs")))
		}
		for n := 1; n <= inputs && from != nil; n++ {
			if used[inputKey(c.Name, n)] {
				continue
			}
			p := f.placeOf(from.array, from.class)
			p.copied, p.charger, p.input, p.asIs = true, c.Name, n, nil
			p.aim(d, c)
			if c.Name != from.charger {
				p.class = len(names) + len(f.places) // of another controller: not alike
			}
			for i := n; ; i++ {
				if p.name = from.name + "-" + strconv.Itoa(i); !names[p.name] {
					break
				}
			}
			names[p.name] = true
			f.places = append(f.places, p)
		}
	}
}

func inputKey(charger string, input int) string { return charger + "." + strconv.Itoa(input) }

func (f *finder) placeOf(array *design.Block, class int) place {
	d := f.bench.Design()
	p := place{array: array, name: array.Name, input: 1, class: class}
	if v, ok := array.Values["pv_input"]; ok {
		p.input = int(v.SI)
	}
	if c := d.Refers(array, "charger"); c != nil {
		p.charger = c.Name
		p.aim(d, c)
	}
	for _, s := range array.Blocks {
		if s.Kind.Name != "string" {
			continue
		}
		g := group{series: make([]int, len(f.kinds)), parallel: parallelOf(s)}
		for _, n := range s.Values["panels"].Panels {
			if i := slices.IndexFunc(f.kinds, func(k kind) bool { return k.name == n.Panel }); i >= 0 {
				g.series[i] += n.Count
			} else {
				g.foreign = true
			}
		}
		p.asIs = append(p.asIs, g)
	}
	return p
}

// aim takes over what of a charger decides which strings may do.
func (p *place) aim(d *design.Design, charger *design.Block) {
	p.bank = charger.Values["bank"].Text
	if controller := d.Refers(charger, "controller"); controller != nil {
		p.highest, p.survives = figure(controller, "pv_voltage_max"), figure(controller, "pv_short_circuit_max")
		p.rated, p.overpanel = figure(controller, "charge_current_max"), figure(controller, "overpanel_max")
		v, ok := controller.Value("kind")
		p.tracks = !ok || v.Text != "pwm"
	}
}

// mostWirings bounds the ways of wiring all banks together.
const mostWirings = 64

// wiringsOf lists the ways in which the banks can be wired, that of the design
// first.
func (f *finder) wiringsOf() {
	f.wirings = [][]BankWiring{nil}
	for _, b := range f.bench.Design().Blocks {
		if b.Kind.Name != "bank" {
			continue
		}
		own := f.ofBank(b)
		var all [][]BankWiring
		for _, before := range f.wirings {
			for _, w := range own {
				if len(all) < mostWirings {
					all = append(all, append(slices.Clone(before), w))
				}
			}
		}
		f.wirings = all
	}
}

// ofBank lists how one bank can be wired with the batteries that it has.
func (f *finder) ofBank(b *design.Block) []BankWiring {
	d := f.bench.Design()
	battery := d.Refers(b, "battery")
	series, parallel := int(b.Values["series"].SI), int(b.Values["parallel"].SI)
	present, known := f.base.System.Fact("bank." + b.Name + ".system_voltage")
	own := BankWiring{Bank: b.Name, Series: series, Parallel: parallel, AsIs: true}
	if known && present.Known {
		own.Voltage = present.SI
	}
	all := []BankWiring{own}
	nominal := figure(battery, "nominal")
	refuse := func(volts float64, format string, args ...any) {
		f.noBanks = append(f.noBanks, NoBank{Bank: b.Name, Voltage: volts, Why: fmt.Sprintf(format, args...)})
	}
	for _, volts := range f.voltages(b.Name) {
		if math.Abs(volts-own.Voltage) < 0.5 {
			continue
		}
		n := inSeries(volts, nominal, own)
		most, limit := int(figure(battery, "series_max")), int(figure(battery, "parallel_max"))
		switch {
		case nominal == 0:
			refuse(volts, "the nominal voltage of %s is not given", battery.Name)
		case n == 0:
			refuse(volts, "no number of %s in series comes to it", battery.Name)
		case n > series*parallel:
			refuse(volts, "it takes %d of %s in series, and %d are there", n, battery.Name, series*parallel)
		case most > 0 && n > most:
			refuse(volts, "it takes %d of %s in series, and its maker allows %d", n, battery.Name, most)
		default:
			w := BankWiring{Bank: b.Name, Voltage: volts, Series: n, Parallel: series * parallel / n}
			if limit > 0 {
				w.Parallel = min(w.Parallel, limit)
			}
			w.LeftOver = series*parallel - w.Series*w.Parallel
			w.Settings = f.settings(b.Name, volts, float64(n)/float64(series))
			all = append(all, w)
		}
	}
	return all
}

// voltages lists the bank voltages that all controllers on a bank work with,
// ascending.
func (f *finder) voltages(bank string) []float64 {
	d := f.bench.Design()
	var common []float64
	first := true
	for _, c := range d.Blocks {
		if c.Kind.Name != "charger" || c.Values["bank"].Text != bank {
			continue
		}
		controller := d.Refers(c, "controller")
		v, ok := controller.Value("bank_voltages")
		if !ok || v.Bad {
			return nil // it does not say: only the voltage that is there is tried
		}
		if first {
			common, first = slices.Clone(v.List), false
			continue
		}
		common = slices.DeleteFunc(common, func(x float64) bool {
			return !slices.ContainsFunc(v.List, func(y float64) bool { return math.Abs(x-y) < 0.5 })
		})
	}
	slices.Sort(common)
	return slices.Compact(common)
}

// inSeries gives how many batteries in series come to a system voltage: in
// proportion to how they stand where that is whole, else the number whose nominal
// voltage lies nearest within -8 and +10 % of it (part 2 of the specification); 0
// where none does.
func inSeries(volts, nominal float64, own BankWiring) int {
	if nominal <= 0 {
		return 0
	}
	fits := func(n int) bool {
		share := float64(n)*nominal/volts - 1
		return n >= 1 && share >= -0.08-1e-9 && share <= 0.10+1e-9
	}
	if own.Voltage > 0 {
		exact := float64(own.Series) * volts / own.Voltage
		if n := int(math.Round(exact)); math.Abs(exact-float64(n)) < 1e-9 && fits(n) {
			return n
		}
	}
	best, distance := 0, math.Inf(1)
	for n := 1; float64(n)*nominal <= volts*1.2; n++ {
		if away := math.Abs(float64(n)*nominal - volts); fits(n) && away <= distance+1e-9 {
			best, distance = n, away
		}
	}
	return best
}

// settings lists the set-points of a bank and its chargers and inverters that go
// with its voltage, each battery keeping its own volts.
func (f *finder) settings(bank string, volts, ratio float64) []Setting {
	var all []Setting
	add := func(id string, v *design.Value, now string) {
		if v != nil && !v.Bad {
			all = append(all, Setting{ID: id, Was: v.Text, Now: now})
		}
	}
	scaled := func(b *design.Block, id string, names ...string) {
		for _, name := range names {
			if v := b.Values[name]; v != nil && !v.Bad {
				add(id+"."+name, v, inUnit(v, v.SI*ratio))
			}
		}
	}
	for _, b := range f.bench.Design().Blocks {
		on := b.Name
		if b.Kind.Name != "bank" {
			v, ok := b.Values["bank"]
			if !ok {
				continue
			}
			on = v.Text
		}
		if on != bank {
			continue
		}
		switch b.Kind.Name {
		case "bank":
			scaled(b, b.ID(), "low_voltage_disconnect")
		case "charger":
			if s := b.Child("settings"); s != nil {
				if v := s.Values["bank_voltage"]; v != nil {
					add(s.ID()+".bank_voltage", v, inUnit(v, volts))
				}
				scaled(s, s.ID(), "absorption", "float", "equalize_voltage")
			}
		case "ac_output":
			scaled(b, b.ID(), "low_cutoff")
		}
	}
	slices.SortStableFunc(all, func(a, b Setting) int { return cmp.Compare(a.ID, b.ID) })
	return all
}

// inUnit writes an SI value as a file has it, in the unit of another value, to a
// thousandth.
func inUnit(like *design.Value, si float64) string {
	number := strconv.FormatFloat(math.Round(like.Written.FromSI(si)*1000)/1000, 'f', -1, 64)
	if _, digits, found := strings.Cut(like.Text, "."); found && !strings.Contains(number, ".") {
		number += "." + strings.Repeat("0", len(digits)-len(strings.TrimLeft(digits, "0123456789")))
	}
	if like.Written.Symbol == "" {
		return number
	}
	return number + " " + like.Written.Symbol
}
