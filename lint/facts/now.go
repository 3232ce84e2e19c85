package facts

import (
	"math"
	"slices"

	"stringline/schema/design"
)

// What a meter shows at the light and warmth of a moment. A moment is no part of
// a design, so what holds at one is derived on demand and stands in no document.

// Now is the light and the warmth at the moment of a measurement. What is nil was
// not measured, and stays unknown.
type Now struct {
	Cell       *float64 // cell temperature in K
	Irradiance *float64 // in the plane of the array, in W/m2
}

// The conditions of a moment, as they are named among what is missing.
const (
	NowCell       = "now.cell_temperature"
	NowIrradiance = "now.irradiance"
)

// moment gives the conditions of a measurement to formulas: each reads what it
// needs, so that it is noted as an input, and what was not measured is missed.
type moment struct {
	cell, light func(*Work) float64
	lit         bool // the light was measured
}

// moment makes works of the conditions.
func (n Now) moment() moment {
	made := func(id, name, unit, means string, v *float64) func(*Work) float64 {
		in := &Work{Entry: &Entry{Collection: "now", Name: name, Unit: unit, Attribute: true, Means: means, Source: "measured on site"}}
		in.Fact.ID, in.Fact.Unit = id, unit
		if v == nil || !finite(*v) {
			in.lack(id)
			in.finish(value{})
		} else {
			in.finish(value{number: *v})
		}
		return func(w *Work) float64 {
			w.read(in)
			return in.value.number
		}
	}
	return moment{
		cell:  made(NowCell, "cell_temperature", "degC", "temperature of the cells at that moment", n.Cell),
		light: made(NowIrradiance, "irradiance", "W/m2", "irradiance in the plane of the array at that moment", n.Irradiance),
		lit:   n.Irradiance != nil,
	}
}

// shown declares what can be asked of a kind of subject at a moment.
type shown struct {
	collection, name, unit, means, formula, source string
	derive                                         func(of subject, at moment, w *Work) float64
}

const (
	shownVoltage = "the curve of its strings at that irradiance and cell temperature; of a voltage without irradiance the middle of what it is at 200 and at 1000 W/m2"
	chargeNow    = "smaller of charge_current_set and efficiency x the sum of its inputs' power at that moment / the bank's bulk_voltage; of a PWM controller the array's current at bulk_voltage and the drop of the PV runs"
	leastNow     = "as current, with the losses of its arrays off and at most charge_current_limit"
)

// shownAtMoment lists all that [System.Shows] can tell. It is never changed.
var shownAtMoment = slices.Concat(
	ofCurve("strings", "one of its parallel strings"),
	ofCurve("arrays", "all on its controller input"),
	ofCurve("pv_inputs", "its strings together"),
	[]shown{
		{"pv_inputs", "voc_limit", "V", "open-circuit voltage of this moment that comes to the controller's limit on the coldest morning",
			"the controller's pv_voltage_max x voc at that moment / voc_cold", "a share of the voltage is a share of it in the cold: common practice, after IEC 60891",
			func(of subject, at moment, w *Work) float64 { return of.(*Input).limitNow(w, at) }},
		{"chargers", "current", "A", "charge current into a bank that takes all that there is", chargeNow, fiveParameters + "; conservation of energy",
			func(of subject, at moment, w *Work) float64 { return of.(*Charger).currentNow(w, at, false) }},
		{"chargers", "current_least", "A", "the same with the losses that the design allows for", leastNow, fiveParameters + "; conservation of energy",
			func(of subject, at moment, w *Work) float64 { return of.(*Charger).currentNow(w, at, true) }},
		{"chargers", "power", "W", "power into a bank that takes all that there is", "current at that moment x the bank's bulk_voltage", fiveParameters + "; conservation of energy",
			func(of subject, at moment, w *Work) float64 {
				c := of.(*Charger)
				return c.currentNow(w, at, false) * bankBulk.Of(w, c.bank)
			}},
		{"chargers", "power_least", "W", "the same with the losses that the design allows for", "current_least at that moment x the bank's bulk_voltage", fiveParameters + "; conservation of energy",
			func(of subject, at moment, w *Work) float64 {
				c := of.(*Charger)
				return c.currentNow(w, at, true) * bankBulk.Of(w, c.bank)
			}},
	},
)

func ofCurve(collection, whose string) []shown {
	var all []shown
	for _, q := range []struct{ name, unit, means string }{
		{"voc", "V", "open-circuit voltage"}, {"isc", "A", "short-circuit current"}, {"vmp", "V", "voltage at maximum power"},
		{"imp", "A", "current at maximum power"}, {"power", "W", "maximum power"},
	} {
		all = append(all, shown{collection, q.name, q.unit, q.means + " of " + whose, shownVoltage, fiveParameters,
			func(of subject, at moment, w *Work) float64 { return w.due(of, q.name, at) }})
	}
	return all
}

// Shows derives what a meter should show on a subject at a moment, with its
// workings: voc, isc, vmp, imp and power of a string (one of its parallel
// strings), an array or a controller input; voc_limit of an input; current and
// power of a charger, and current_least and power_least. ok is false where there
// is no such subject or it shows no such thing. A condition that was not measured
// and is needed is missed as [NowCell] or [NowIrradiance]; no default takes its
// place. The fact's id is the subject's and the name's, behind "now.": no fact of
// the design has it.
func (s *System) Shows(about, name string, now Now) (*Work, bool) {
	of, ok := s.byID[about]
	if !ok {
		return nil, false
	}
	i := slices.IndexFunc(shownAtMoment, func(x shown) bool { return x.collection == of.collection.Name && x.name == name })
	if i < 0 {
		return nil, false
	}
	x := &shownAtMoment[i]
	w := &Work{subject: of, Entry: &Entry{Collection: x.collection, Name: "now." + x.name, Unit: x.unit, Means: x.means, Formula: x.formula, Source: x.source}}
	w.Fact.ID, w.Fact.Unit = "now."+of.id+"."+x.name, x.unit
	w.finish(value{number: x.derive(of.typed, now.moment(), w)})
	return w, true
}

// stringsOf gives the strings that a meter on a subject sees, and how many like
// ones a reading is one of: a string block's reading is of one of its parallel
// strings. nil where no curve tells anything.
func stringsOf(of subject, w *Work) (all []*String, alone bool) {
	switch of := of.(type) {
	case *String:
		return []*String{of}, true
	case *Array:
		return of.input.all(w), false
	case *Input:
		return of.all(w), false
	}
	return nil, false
}

// due gives what a meter on strings should show at a moment: voc, isc, vmp, imp
// or power. A voltage moves little with the light: where that was not measured
// the middle of what it is at faint and full sun is due. All else hangs on it.
func (w *Work) due(of subject, what string, at moment) float64 {
	strings, alone := stringsOf(of, w)
	if strings == nil {
		w.fail("no curve tells what this should be")
		return 0
	}
	shows := func(light float64) float64 {
		cell := at.cell(w)
		if !w.Known() {
			return 0
		}
		in := wired(w, strings, light, func(*String) float64 { return cell })
		if in == nil {
			return 0
		}
		parallel := 1.0
		if alone {
			parallel = stringParallel.Of(w, strings[0])
		}
		return w.meter(in, what, parallel)
	}
	if at.lit || what != "voc" && what != "vmp" {
		light := at.light(w)
		w.Say("%s and cells at %s", say(light, "W/m2"), say(at.cell(w), "degC"))
		return shows(light)
	}
	low, high := shows(faintSun), shows(fullSun)
	w.Say("middle of %s to %s, at %g to %g W/m2 and cells at %s", say(low, "V"), say(high, "V"), faintSun, fullSun, say(at.cell(w), "degC"))
	return (low + high) / 2
}

// limitNow carries the controller's limit on the coldest morning to a moment.
func (i *Input) limitNow(w *Work, at moment) float64 {
	now := w.due(i, "voc", at)
	limit, cold := controllerPVMax.Of(w, i.charger.controller), inputVocCold.Of(w, i)
	w.Say("%s x %s / %s", say(limit, "V"), say(now, "V"), say(cold, "V"))
	if !w.Known() || cold <= 0 {
		return 0
	}
	return limit * now / cold
}

// currentNow gives the charge current that a moment's light is good for, with
// the losses that the design allows for, where least is set. What a controller
// loses in hot air counts there alone: nobody measured the air around it.
func (c *Charger) currentNow(w *Work, at moment, least bool) float64 {
	bulk, limit := bankBulk.Of(w, c.bank), 0.0
	if least {
		limit = chargerLimit.Of(w, c)
	} else {
		limit = chargerSet.Of(w, c)
	}
	kind := controllerKind.Of(w, c.controller)
	efficiency := 1.0
	if kind != "pwm" {
		efficiency = controllerEfficiency.Of(w, c.controller)
	}
	light, cell, total := at.light(w), at.cell(w), 0.0
	for _, i := range c.allInputs(w) {
		kept := 1.0
		if least {
			kept -= i.losses(w)
		}
		drop := 0.0
		if kind == "pwm" {
			drop = inputDrop.Of(w, i)
		}
		in := wired(w, i.all(w), light, func(*String) float64 { return cell })
		if in == nil {
			continue
		}
		if kind == "pwm" {
			current, err := in.Current(bulk + drop)
			total += kept * math.Max(0, w.physics(current, err))
			continue
		}
		best, err := in.Maximum()
		w.physics(0, err)
		total += kept * best.Power()
	}
	if !w.Known() || bulk <= 0 {
		return 0
	}
	free := total
	if kind != "pwm" {
		free = efficiency * total / bulk
		w.Say("%s x %s / %s", say(efficiency, "%"), say(total, "W"), say(bulk, "V"))
	} else {
		w.Say("%s at %s", say(total, "A"), say(bulk, "V"))
	}
	if free > limit {
		w.Say("limited to %s; the light is good for %s", say(limit, "A"), say(free, "A"))
		return limit
	}
	return free
}

// momentOf is the moment that a reading was taken at.
func momentOf(r *Reading) moment {
	return moment{
		cell:  func(w *Work) float64 { return readingCell.Of(w, r) },
		light: func(w *Work) float64 { return readingIrradiance.Of(w, r) },
		lit:   readingIrradiance.Given(r),
	}
}

// what is the text of what a reading is of.
func (r *Reading) what() string {
	if v, ok := r.block.Value("of"); ok {
		return v.Text
	}
	return ""
}

// quantity is what was measured: voc, isc, vmp, imp, power, voltage or current.
func (r *Reading) quantity() (name, unit string) {
	_, name, unit, _ = design.ReadingOf(r.what())
	return name, unit
}
