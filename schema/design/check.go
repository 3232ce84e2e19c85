package design

import (
	"fmt"
	"slices"

	"stringline/schema/quantity"
	"stringline/schema/source"
)

// check looks at what one design can be checked for across blocks without
// computing facts. A value that contradicts another is Bad with it: which of
// the two is wrong is not known.
func (l *loader) check() {
	for _, b := range l.design.Blocks {
		l.checkBlock(b)
	}
}

func (l *loader) checkBlock(b *Block) {
	l.oneProtection(b)
	switch b.Kind.Name {
	case "array":
		l.inputOf(b)
		if b.Child("string") == nil && !l.broken && !l.refusedKind("string") {
			l.say(b, source.Problem{Kind: "structure", Message: "an array without a string", Expected: "a string block", Found: "none", At: b.Header})
		}
	case "load":
		l.energyOf(b)
	case "site":
		l.weatherOf(b)
	}
	for _, inner := range b.Blocks {
		l.checkBlock(inner)
	}
}

// pairs are attributes of which the first may not exceed the second.
var pairs = []struct{ kind, low, high string }{
	{"site", "coldest", "hottest"},
	{"bank", "coldest", "hottest"},
	{"load", "voltage_min", "voltage_max"},
	{"controller", "mppt_voltage_min", "mppt_voltage_max"},
	{"controller", "compensation_min", "compensation_max"},
	{"battery", "absorption_min", "absorption_max"},
	{"battery", "float_min", "float_max"},
	{"battery", "charge_above", "charge_below"},
	{"bms", "under_voltage", "over_voltage"},
	{"inverter", "dc_min", "dc_max"},
	{"converter", "input_min", "input_max"},
}

func (d *decoder) ordered(b *Block) {
	for _, p := range pairs {
		if p.kind != b.Kind.Name {
			continue
		}
		low, high := b.known(p.low), b.known(p.high)
		if low == nil || high == nil || low.SI <= high.SI {
			continue
		}
		low.Bad, high.Bad = true, true
		d.say(b, source.Problem{
			Kind:     "range",
			Message:  fmt.Sprintf("%s, %s, is above %s, %s", p.low, low.Text, p.high, high.Text),
			Expected: fmt.Sprintf("at most %s (%s)", p.high, high.Text),
			Found:    low.Text,
			At:       low.At,
		})
	}
}

// known gives a value that was written in the block itself and could be read.
func (b *Block) known(name string) *Value {
	if v, ok := b.Values[name]; ok && !v.Bad {
		return v
	}
	return nil
}

// coefficients holds those that are written per volt, ampere or watt against
// the range in %/K: divided by the panel's own value at standard conditions.
func (d *decoder) coefficients(b *Block) {
	for _, c := range []struct{ coefficient, of string }{{"temp_voc", "voc"}, {"temp_isc", "isc"}, {"temp_pmax", "pmax"}} {
		v, of := b.known(c.coefficient), b.known(c.of)
		if v == nil || of == nil || of.SI == 0 || quantity.Fits(v.Written, quantity.MustLookup("%/K")) {
			continue
		}
		share := 100 * v.SI / of.SI
		if v.Attribute.holds(share) {
			continue
		}
		v.Bad = true
		expected := v.Attribute.rangeText()
		found := fmt.Sprintf("%s, which is %s", v.Text, quantity.Format(share/100, "%/K"))
		d.say(b, source.Problem{Kind: "range", Message: fmt.Sprintf("%s: expected %s, found %s", c.coefficient, expected, found), Expected: expected, Found: found, At: v.At})
	}
}

// oneProtection: a run has one protection, a fuse or a breaker.
func (l *loader) oneProtection(b *Block) {
	fuse, breaker := b.Child("fuse"), b.Child("breaker")
	if fuse == nil || breaker == nil {
		return
	}
	second, first := breaker, fuse
	if fuse.Header.Start.Byte > breaker.Header.Start.Byte {
		second, first = fuse, breaker
	}
	l.say(b, source.Problem{
		Kind:     "structure",
		Message:  fmt.Sprintf("a %s beside a %s: a run has one protection, the first is at %s", second.Kind.Name, first.Kind.Name, first.Header),
		Expected: "a fuse or a breaker",
		Found:    "both",
		At:       second.Header,
	})
	// One of the two stays, so that ids are unique; the file is in error anyway.
	b.Blocks = slices.DeleteFunc(b.Blocks, func(x *Block) bool { return x == second })
}

// inputOf checks that the controller has the input that an array names.
func (l *loader) inputOf(array *Block) {
	input := array.known("pv_input")
	charger := l.refers(array, "charger")
	if input == nil || charger == nil {
		return
	}
	controller := l.refers(charger, "controller")
	if controller == nil {
		return
	}
	inputs, at := 1.0, "none given, so 1"
	if v, given := controller.Values["pv_inputs"]; given {
		if v.Bad {
			return
		}
		inputs, at = v.SI, v.At.String()
	}
	if input.SI <= inputs {
		return
	}
	input.Bad = true
	l.say(array, source.Problem{
		Kind:     "structure",
		Message:  fmt.Sprintf("pv_input: controller %q has no input %g; its pv_inputs is %g (%s)", controller.Name, input.SI, inputs, at),
		Expected: fmt.Sprintf("1 to %g", inputs),
		Found:    fmt.Sprintf("%g", input.SI),
		At:       input.At,
	})
}

// energyOf: a load gives power and hours, or its energy a day.
func (l *loader) energyOf(load *Block) {
	energy, given := load.Values["daily_energy"]
	hours, both := load.Values["hours_per_day"]
	if !given || !both {
		return
	}
	energy.Bad, hours.Bad = true, true
	l.say(load, source.Problem{
		Kind:     "structure",
		Message:  fmt.Sprintf("hours_per_day beside daily_energy (at %s): a load gives its hours or its energy, not both", energy.NameAt),
		Expected: "one of the two",
		Found:    "both",
		At:       hours.NameAt,
	})
}

// weatherOf reads the weather file that a site names. A name that leads nowhere
// must not pass as "no weather given". What stands in the file is for others to
// read.
func (l *loader) weatherOf(site *Block) {
	v := site.known("weather")
	if v == nil {
		return
	}
	name, err := Resolve(l.folder(), v.Text)
	var text []byte
	if err == nil {
		text, err = l.Cache.weather(l.Files, name)
	}
	if err == nil && len(text) > maxWeatherBytes {
		err = fmt.Errorf("it is larger than %d MiB", maxWeatherBytes>>20)
	}
	if err != nil {
		v.Bad = true
		l.say(site, source.Problem{Kind: "file", Message: fmt.Sprintf("weather: reading %q: %v", v.Text, err), Expected: "an EPW file", Found: v.Text, At: v.At})
		return
	}
	l.design.Weather = &Weather{File: l.shown(name), Text: text}
}
