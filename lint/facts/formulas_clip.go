package facts

import (
	"stringline/lint/physics/converter"
	"stringline/lint/physics/energy"
)

// What a charge controller makes of its arrays through a year, the bank always
// accepting: yield, what is clipped, and what a larger array gains.

const clippingMethod = "hour by hour: losses off the arrays' power, times efficiency, at most the controller's limit in that hour's air x bulk_voltage; the bank always accepting"

var (
	chargerYield = declare(Entry{Collection: "chargers", Name: "yearly_yield", Unit: "Wh",
		Means:   "energy that it gives into the bank's terminals in a year, after losses and clipping, the bank always accepting",
		Formula: "sum over the steps of the year of the smaller of efficiency x power of its inputs less losses, and its limit x bulk_voltage; its limit in air as much above the site's as hottest is above the site's hottest", Source: clippingMethod},
		func(c *Charger, w *Work) float64 {
			made := c.prepare(w)
			if made == nil {
				return 0
			}
			year := c.site.sky(w)
			pv, full := chargerPVPower.Of(w, c), chargerFullNominal.Of(w, c)
			if !w.Known() {
				return 0
			}
			found, err := energy.Clip(calendar(w, year), *made, pv, full)
			if w.physics(0, err); err != nil {
				return 0
			}
			c.made, c.clipping = made, &found
			w.Say("%s could give %s %s", c.id, say(found.Year.Potential, "Wh"), c.site.under(w))
			return found.Year.Out
		})

	chargerClipped = declare(Entry{Collection: "chargers", Name: "clipped_energy", Unit: "%",
		Means: "share of a year's energy that its current limit keeps out", Formula: "1 - yearly_yield / the same without a limit", Source: clippingMethod},
		func(c *Charger, w *Work) float64 {
			return c.ofYear(w, func(y *energy.Clipping) float64 { return y.Year.Share() })
		})

	chargerClippedHours = declare(Entry{Collection: "chargers", Name: "clipped_hours", Unit: "h",
		Means: "hours of a year in which it clips", Formula: "steps of the year in which efficiency x power less losses is above its limit x bulk_voltage", Source: clippingMethod},
		func(c *Charger, w *Work) float64 {
			return c.ofYear(w, func(y *energy.Clipping) float64 { return y.Year.Time })
		})

	chargerGain = declare(Entry{Collection: "chargers", Name: "overpanel_gain", Unit: "%",
		Means: "what an array larger than full power yields more in a year than one of exactly full power", Formula: "yearly_yield / that of the same array scaled to full_power_nominal - 1; 0 for smaller arrays", Source: clippingMethod},
		func(c *Charger, w *Work) float64 {
			return c.ofYear(w, func(y *energy.Clipping) float64 { return y.Year.Gain() })
		})

	chargerYieldMonths = chargerMonths("yield_by_month", "Wh", "energy of a mean day of each month into the bank's terminals", func(w *Work, c *Charger, months *[12]float64) {
		*months = calendar(w, c.site.sky(w)).PerDay(c.clipping.Yields(), c.clipping.Steps)
	})
	_ = chargerMonths("clipped_energy_by_month", "%", "share of each month's energy that its limit keeps out", func(_ *Work, c *Charger, months *[12]float64) {
		for m := range months {
			months[m] = c.clipping.Months[m].Share()
		}
	})
	_ = chargerMonths("clipped_hours_by_month", "h", "hours of each month in which it clips", func(_ *Work, c *Charger, months *[12]float64) {
		for m := range months {
			months[m] = c.clipping.Months[m].Time
		}
	})

	_ = byVoltage("clipped_energy_by_bank_voltage", "%", "clipped_energy with the same array and a bank of each voltage that the controller supports", func(y *energy.Clipping) float64 { return y.Year.Share() })
	_ = byVoltage("overpanel_gain_by_bank_voltage", "%", "overpanel_gain with the same array and a bank of each voltage that the controller supports", func(y *energy.Clipping) float64 { return y.Year.Gain() })
	_ = byVoltage("yearly_yield_by_bank_voltage", "Wh", "yearly_yield with the same array and a bank of each voltage that the controller supports", func(y *energy.Clipping) float64 { return y.Year.Out })

	_ = declare(Entry{Collection: "chargers", Name: "full_power_by_bank_voltage", Unit: "W", Over: "V",
		Means: "array power that it can use at each bank voltage that the controller supports", Formula: "each of bank_voltages x charge_current_max", Source: commonPractice},
		func(c *Charger, w *Work) Curve {
			volts, most := controllerVoltages.Of(w, c.controller), controllerCharge.Of(w, c.controller)
			full := make([]float64, len(volts))
			for n, v := range volts {
				full[n] = v * most
			}
			return Curve{Over: volts, Values: full}
		})
)

// ofYear reads a figure off the charger's year, and says what sky it is of.
func (c *Charger) ofYear(w *Work, of func(*energy.Clipping) float64) float64 {
	chargerYield.Of(w, c)
	if !w.Known() {
		return 0
	}
	w.Say("%s", c.site.under(w))
	return of(c.clipping)
}

// chargerMonths declares a series of twelve months read off a charger's year.
func chargerMonths(name, unit, means string, fill func(*Work, *Charger, *[12]float64)) Key[*Charger, Curve] {
	return overMonths(Entry{Collection: "chargers", Name: name, Unit: unit, Means: means, Formula: "as for the year, month by month", Source: clippingMethod},
		func(c *Charger, w *Work) (all [12]float64) {
			chargerYield.Of(w, c)
			if w.Known() {
				w.Say("%s", c.site.under(w))
				fill(w, c, &all)
			}
			return all
		})
}

// byVoltage declares a figure of the year for every bank voltage that the
// controller supports: the array and the controller stay, the bank changes.
func byVoltage(name, unit, means string, of func(*energy.Clipping) float64) Key[*Charger, Curve] {
	return declare(Entry{Collection: "chargers", Name: name, Unit: unit, Over: "V", Means: means,
		Formula: "as for the bank at hand, with bulk_voltage and full_power_nominal in proportion to the bank's voltage", Source: clippingMethod},
		func(c *Charger, w *Work) Curve {
			chargerYield.Of(w, c)
			kind := controllerKind.Of(w, c.controller)
			volts, most := controllerVoltages.Of(w, c.controller), controllerCharge.Of(w, c.controller)
			own, pv := bankSystemVoltage.Of(w, c.bank), chargerPVPower.Of(w, c)
			year := c.site.sky(w)
			if w.Known() && kind == "pwm" {
				w.fail("a PWM controller holds the array at the bank's voltage: at another one it is another array's")
			}
			if !w.Known() {
				return Curve{}
			}
			w.Say("%s", c.site.under(w))
			values := make([]float64, len(volts))
			for n, v := range volts {
				at := *c.made
				at.BulkVoltage *= v / own
				found, err := energy.Clip(calendar(w, year), at, pv, v*most)
				w.physics(0, err)
				values[n] = of(&found)
			}
			return Curve{Over: volts, Values: values}
		})
}

// asEnergy gives the charger as the year sees it, without its arrays and air.
func (c *Charger) asEnergy(w *Work) *energy.Charger {
	made := &energy.Charger{Efficiency: 1, PWM: controllerKind.Of(w, c.controller) == "pwm", BulkVoltage: bankBulk.Of(w, c.bank)}
	if !made.PWM {
		made.Efficiency = controllerEfficiency.Of(w, c.controller)
		made.Limit, made.AirRise = c.limits(w)
	}
	return made
}

// prepare gives the charger with its year of power; nil where anything is unknown.
func (c *Charger) prepare(w *Work) *energy.Charger {
	made := c.asEnergy(w)
	inputs := c.allInputs(w)
	if len(inputs) == 0 {
		w.fail("no array feeds it")
	}
	year := c.site.sky(w)
	for _, i := range inputs {
		inputEnergy.Of(w, i)
		made.Arrays = append(made.Arrays, energy.Array{Power: i.power, Losses: i.losses(w)})
	}
	if !w.Known() {
		return nil
	}
	made.Air = year.Air
	return made
}

// limits gives what bounds the output, and by how much the air around the
// controller is warmer than outside. What is lost above full_power_to does not
// matter, and is not asked for, where its air never gets that hot.
func (c *Charger) limits(w *Work) (converter.Limit, float64) {
	l := converter.Limit{Setting: settingCurrent.Of(w, c), Rating: controllerCharge.Of(w, c.controller)}
	around, full := chargerHottest.Of(w, c), controllerFullTo.Of(w, c.controller)
	outside := siteHottest.Of(w, c.site)
	if !w.Known() {
		return l, 0
	}
	if around > full {
		l.Derate, l.FullPowerTo = controllerDerate.Of(w, c.controller), full
	}
	if !w.Known() {
		return l, 0
	}
	rise, err := converter.AirRise(around, outside)
	return l, w.physics(rise, err)
}

// losses gives what soiling, wiring and aging take of an input's power: of
// several arrays the mean by nameplate.
func (i *Input) losses(w *Work) float64 {
	lost, all := 0.0, 0.0
	for _, a := range i.allArrays(w) {
		watts := overStrings(w, stringPmaxSTC, a.all(w))
		lost += arrayLosses.Of(w, a) * watts
		all += watts
	}
	if !w.Known() || all <= 0 {
		return 0
	}
	return lost / all
}
