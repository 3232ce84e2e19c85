package facts

import (
	"stringline/lint/physics/energy"
	"stringline/lint/physics/weather"
	"stringline/schema/design"
)

// What formulas see: each kind of subject with the subjects that it hangs
// together with, in Go types.
//
// A block that names something which is not there is left out. What is summed or
// compared over its kind must not look better for that, so whoever may have
// owned it keeps the id of what was wrong as lost, and reads its members through
// a method that makes the fact at hand miss that.

// Site is where the system stands.
type Site struct {
	*Subject
	file    *design.Weather // the weather file that it names, nil for none
	weather *weatherFile    // what it holds
	clear   *weather.Year   // under a clear sky; made by [Site.sky]
	shared  *Weathers       // with the workshop's other designs
	// withheld leaves the sky unknown, see [System.WithholdYear].
	withheld bool
}

// Grounding is the bonds to ground.
type Grounding struct{ *Subject }

// Whole is the system as a whole.
type Whole struct {
	*Subject
	inputs    []*Input
	banks     []*Bank
	lost      []string // arrays
	lostBanks []string
	site      *Site
}

func (s *Whole) allInputs(w *Work) []*Input { w.lost(s.lost); return s.inputs }
func (s *Whole) allBanks(w *Work) []*Bank   { w.lost(s.lostBanks); return s.banks }

// Panel is a panel's data sheet.
type Panel struct {
	*Subject
	strings []*String // that it stands in
	lost    []string  // of the design's arrays
}

// Controller is a charge controller's data sheet.
type Controller struct {
	*Subject
	chargers []*Charger
	lost     []string
}

// Battery is a battery's data sheet.
type Battery struct {
	*Subject
	banks []*Bank
	lost  []string
}

// managed tells whether the data sheet describes a battery management system.
func (b *Battery) managed() bool { return b.block.Child("bms") != nil }

// Inverter is an inverter's data sheet.
type Inverter struct {
	*Subject
	outputs []*Output
	lost    []string
}

// Converter is the data sheet of a converter from DC to DC.
type Converter struct {
	*Subject
	supplies []*Supply
	lost     []string
}

// String is a string block: strings of panels in series, all alike.
type String struct {
	*Subject
	owner
	array  *Array
	input  *Input
	panels []panelsOf // as the design lists them, each panel once
}

// panelsOf is how many of a panel stand in series.
type panelsOf struct {
	panel *Panel
	count float64
}

// Array is panels of one orientation.
type Array struct {
	*Subject
	owner
	charger *Charger
	input   *Input
	strings []*String
	lost    []string // of its strings
	site    *Site
}

func (a *Array) all(w *Work) []*String { w.lost(a.lost); return a.strings }

// Input is one controller input in use. It has at least one array and string.
type Input struct {
	*Subject
	charger *Charger
	arrays  []*Array
	strings []*String
	lost    []string // of its arrays and strings
	site    *Site

	power []float64 // W of each step of the year, losses not off; made by inputEnergy
}

func (i *Input) all(w *Work) []*String      { w.lost(i.lost); return i.strings }
func (i *Input) allArrays(w *Work) []*Array { w.lost(i.lost); return i.arrays }

// Charger is a charge controller at work on a bank.
type Charger struct {
	*Subject
	owner
	controller *Controller
	bank       *Bank
	inputs     []*Input
	loads      []*Load  // on its load terminals
	lost       []string // of its inputs' arrays
	lostLoads  []string
	site       *Site

	made     *energy.Charger  // with its year of power; made by chargerYield
	clipping *energy.Clipping // made by chargerYield
}

func (c *Charger) allInputs(w *Work) []*Input { w.lost(c.lost); return c.inputs }
func (c *Charger) allLoads(w *Work) []*Load   { w.lost(c.lostLoads); return c.loads }

// Bank is batteries in series and parallel with all that hangs on them.
type Bank struct {
	*Subject
	owner    // what stands in main, and the bank's own disconnect
	battery  *Battery
	chargers []*Charger
	sources  []*ChargeSource
	outputs  []*Output
	supplies []*Supply
	loads    []*Load  // on the bank itself
	lost     []string // of its chargers and charge sources
	lostFed  []string // of what it feeds
	site     *Site

	year *energy.Year // made by bankUnserved
}

// charging gives what charges the bank, feeding what it feeds but for the loads
// on chargers' terminals.
func (b *Bank) charging(w *Work) ([]*Charger, []*ChargeSource) {
	w.lost(b.lost)
	return b.chargers, b.sources
}

func (b *Bank) feeding(w *Work) ([]*Output, []*Supply, []*Load) {
	w.lost(b.lostFed)
	return b.outputs, b.supplies, b.loads
}

// Output is an inverter at work on a bank.
type Output struct {
	*Subject
	owner
	inverter *Inverter
	bank     *Bank
	loads    []*Load
	lost     []string
}

func (o *Output) all(w *Work) []*Load { w.lost(o.lost); return o.loads }

// Load is something that uses energy. Exactly one of the places that it can hang
// on is set; bank is set always: the bank that feeds it in the end.
type Load struct {
	*Subject
	owner
	bank    *Bank
	output  *Output
	supply  *Supply
	charger *Charger
}

// Supply is a lower-voltage circuit through a converter.
type Supply struct {
	*Subject
	owner
	converter *Converter
	bank      *Bank
	loads     []*Load
	lost      []string
}

func (p *Supply) all(w *Work) []*Load { w.lost(p.lost); return p.loads }

// ChargeSource is another source that charges the bank.
type ChargeSource struct {
	*Subject
	owner
	bank *Bank
}

// Run is a pair of conductors.
type Run struct {
	*Subject
	circuit subject // what it stands in
}

// Protection is a fuse or breaker in its place.
type Protection struct {
	*Subject
	circuit subject
	each    bool // of each parallel string of batteries, not of the whole bank
}

// Disconnect is a switch in its place.
type Disconnect struct {
	*Subject
	circuit subject
}

// Reading is a measurement made on site.
type Reading struct {
	*Subject
	of subject
}

// owner is what a block that conductors leave may hold.
type owner struct {
	runs        []*Run
	protections []*Protection
	disconnects []*Disconnect
}

func (o *owner) owned() *owner { return o }

// circuits are subjects that own a run.
type circuits interface {
	subject
	owned() *owner
}
