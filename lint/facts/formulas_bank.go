package facts

import (
	"fmt"
	"math"

	"stringline/lint/physics/battery"
)

// Banks: voltages, capacity, what charges them, what they feed.

const batterySheet = "the battery's data sheet"

var (
	bankNominal = declare(Entry{Collection: "banks", Name: "nominal", Unit: "V",
		Means: "nominal voltage, which energy goes by", Formula: "series x the battery's nominal", Source: batterySheet},
		func(b *Bank, w *Work) float64 {
			n, v := bankSeries.Of(w, b), batteryNominal.Of(w, b.battery)
			w.Say("%s", times(n, say(v, "V")))
			return n * v
		})

	bankSystemVoltage = declare(Entry{Collection: "banks", Name: "system_voltage", Unit: "V",
		Means:   "system voltage (12, 24, 36 or 48 V), which settings and shares of drop go by",
		Formula: "the one that nominal lies within -8 and +10 % of", Source: commonPractice},
		func(b *Bank, w *Work) float64 {
			nominal := bankNominal.Of(w, b)
			if !w.Known() {
				return 0
			}
			return w.physics(battery.SystemVoltage(nominal))
		})

	bankCells = declare(Entry{Collection: "banks", Name: "cells_in_series", Unit: "",
		Means: "cells in series", Formula: "series x the battery's cells", Source: batterySheet},
		func(b *Bank, w *Work) float64 { return bankSeries.Of(w, b) * batteryCells.Of(w, b.battery) })

	bankVoltageMax = declare(Entry{Collection: "banks", Name: "voltage_max", Unit: "V", Bound: true,
		Means:   "highest voltage on its bus: every device there is judged against it",
		Formula: "largest of its chargers' voltage_max, its charge sources' charge_voltage and its own nominal", Source: commonPractice},
		func(b *Bank, w *Work) float64 {
			chargers, sources := b.charging(w)
			if len(chargers)+len(sources) == 0 {
				if w.Known() {
					w.fail("nothing charges this bank")
				}
				return 0
			}
			v := largest(w, chargerVoltageMax, chargers)
			// A setting that is left at another system's voltage does not lower
			// what stands on the bus.
			if own := bankNominal.Of(w, b); own > v {
				v = own
				w.lead(bankNominal.input(b))
				w.Say("nominal %s", say(v, "V"))
			}
			for _, s := range sources {
				if one := sourceVoltage.Of(w, s); one > v {
					v = one
					w.lead(sourceVoltage.input(s))
					w.Say("%s charges at %s", s.id, say(one, "V"))
				}
			}
			return v
		})

	bankCapacity = declare(Entry{Collection: "banks", Name: "capacity", Unit: "Ah",
		Means: "capacity", Formula: "parallel x the battery's capacity", Source: batterySheet},
		func(b *Bank, w *Work) float64 {
			n, c := bankParallel.Of(w, b), batteryCapacity.Of(w, b.battery)
			w.Say("%s", times(n, say(c, "Ah")))
			return n * c
		})

	bankEnergy = declare(Entry{Collection: "banks", Name: "energy", Unit: "Wh",
		Means: "energy when full", Formula: "nominal x capacity", Source: batterySheet},
		func(b *Bank, w *Work) float64 {
			v, c := bankNominal.Of(w, b), bankCapacity.Of(w, b)
			w.Say("%s x %s", say(v, "V"), say(c, "Ah"))
			return v * c
		})

	bankBulkPerCell = declare(Entry{Collection: "banks", Name: "bulk_voltage_per_cell", Unit: "V",
		Means:   "voltage of a cell while it takes most of its charge",
		Formula: "lead 2.15, lifepo4 3.35, nmc 3.75, sodium_ion 3.15 V", Source: commonPractice, Assumes: "a figure for each chemistry"},
		func(b *Bank, w *Work) float64 {
			chemistry := batteryChemistry.Of(w, b.battery)
			if !w.Known() {
				return 0
			}
			return w.physics(battery.BulkVoltagePerCell(chemistry))
		})

	bankBulk = declare(Entry{Collection: "banks", Name: "bulk_voltage", Unit: "V",
		Means: "voltage while it takes most of its charge", Formula: "cells_in_series x bulk_voltage_per_cell", Source: commonPractice},
		func(b *Bank, w *Work) float64 {
			n, v := bankCells.Of(w, b), bankBulkPerCell.Of(w, b)
			w.Say("%g x %s", n, say(v, "V"))
			return n * v
		})

	bankChargeTotal = declare(Entry{Collection: "banks", Name: "charge_current_total", Unit: "A", Bound: true,
		Means:   "charge current of all sources that may run together, as they are set",
		Formula: "sum of its chargers' charge_current_set and of the sources with together, or one source alone if that is larger", Source: "currents add"},
		func(b *Bank, w *Work) float64 { return b.chargeCurrent(w, chargerSet) })

	bankChargeRated = declare(Entry{Collection: "banks", Name: "charge_current_rated", Unit: "A", Bound: true,
		Means:   "charge current of all sources that may run together, with the controllers at their ratings",
		Formula: "as charge_current_total, with the controllers' charge_current_max", Source: "a setting can be lost"},
		func(b *Bank, w *Work) float64 { return b.chargeCurrent(w, chargerRated) })

	bankBMSCharge = declare(Entry{Collection: "banks", Name: "bms_charge_cutoff", Unit: "A",
		Means: "charge current at which its batteries' management opens", Formula: "parallel x the battery's bms.charge_cutoff", Source: batterySheet},
		func(b *Bank, w *Work) float64 { return b.ofEach(w, bmsChargeCutoff, 0) })

	bankBMSDischarge = declare(Entry{Collection: "banks", Name: "bms_discharge_cutoff", Unit: "A",
		Means: "discharge current at which its batteries' management opens", Formula: "parallel x the battery's bms.discharge_cutoff", Source: batterySheet},
		func(b *Bank, w *Work) float64 { return b.ofEach(w, bmsDischargeCutoff, 0) })

	bankChargeAccepted = declare(Entry{Collection: "banks", Name: "charge_current_accepted", Unit: "A",
		Means:   "charge current that it accepts",
		Formula: "smaller of parallel x the battery's charge_current_max and bms_charge_cutoff; the first alone for lead", Source: batterySheet},
		func(b *Bank, w *Work) float64 { return b.accepted(w, batteryCharge, bmsChargeCutoff, 0) })

	bankChargeAcceptedLost = declare(Entry{Collection: "banks", Name: "charge_current_accepted_one_lost", Unit: "A",
		Means:   "charge current that it accepts with one parallel string lost; 0 where it has one only",
		Formula: "as charge_current_accepted, with parallel - 1", Source: batterySheet},
		func(b *Bank, w *Work) float64 { return b.accepted(w, batteryCharge, bmsChargeCutoff, 1) })

	bankDischargeAccepted = declare(Entry{Collection: "banks", Name: "discharge_current_accepted", Unit: "A",
		Means:   "discharge current that it may give",
		Formula: "smaller of parallel x the battery's discharge_current_max and bms_discharge_cutoff; the first alone for lead", Source: batterySheet},
		func(b *Bank, w *Work) float64 { return b.accepted(w, batteryDischarge, bmsDischargeCutoff, 0) })

	bankChargeRate = declare(Entry{Collection: "banks", Name: "charge_rate", Unit: "%", Bound: true,
		Means: "charge current an hour as a share of the capacity", Formula: "charge_current_total / capacity", Source: commonPractice},
		func(b *Bank, w *Work) float64 {
			i, c := bankChargeTotal.Of(w, b), bankCapacity.Of(w, b)
			w.Say("%s / %s", say(i, "A"), say(c, "Ah"))
			if c <= 0 {
				return 0
			}
			return w.physics(battery.ChargeRate(i, c))
		})

	batteryShortCircuit = declare(Entry{Collection: "batteries", Name: "short_circuit", Unit: "A",
		Means: "prospective short-circuit current of one battery", Formula: "short_circuit_current, else nominal / internal_resistance", Source: batterySheet},
		func(b *Battery, w *Work) float64 {
			if batteryShort.Given(b) || !batteryResistance.Given(b) {
				return batteryShort.Of(w, b)
			}
			v, r := batteryNominal.Of(w, b), batteryResistance.Of(w, b)
			w.Say("%s / %s", say(v, "V"), say(r, "ohm"))
			if !w.Known() {
				return 0
			}
			return w.physics(battery.ShortCircuitOfResistance(v, r))
		})

	bankShortCircuit = declare(Entry{Collection: "banks", Name: "short_circuit_current", Unit: "A",
		Means:   "prospective short-circuit current; its batteries' management is not credited with breaking it",
		Formula: "parallel x the battery's short_circuit; series adds none", Source: batterySheet},
		func(b *Bank, w *Work) float64 {
			n, i := bankParallel.Of(w, b), batteryShortCircuit.Of(w, b.battery)
			w.Say("%s", times(n, say(i, "A")))
			if !w.Known() {
				return 0
			}
			return w.physics(battery.ShortCircuit(int(n), i))
		})

	bankDischarge = declare(Entry{Collection: "banks", Name: "discharge_current_continuous", Unit: "A", Bound: true,
		Means:   "current that it gives when all that it feeds runs",
		Formula: "sum of current of its AC outputs, supplies and loads, those on chargers' load terminals included", Source: "currents add"},
		func(b *Bank, w *Work) float64 {
			outputs, supplies, loads := b.feeding(w)
			t := terms{w: w}
			addAll(&t, outputCurrent, outputs)
			addAll(&t, supplyCurrent, supplies)
			addAll(&t, loadCurrent, loads)
			for _, c := range b.chargers {
				addAll(&t, loadCurrent, c.allLoads(w))
			}
			return t.sum()
		})

	bankDischargePeak = declare(Entry{Collection: "banks", Name: "discharge_current_peak", Unit: "A", Bound: true,
		Means:   "current that it gives when all that it feeds runs and the heaviest load starts",
		Formula: "discharge_current_continuous + the most that one load's surge adds to its own power", Source: "one motor starts at a time: " + commonPractice},
		func(b *Bank, w *Work) float64 {
			running := bankDischarge.Of(w, b)
			most, who := 0.0, ""
			add := func(l *Load, at func() float64) {
				extra := w.part(func() float64 {
					surge, power := loadSurge.Of(w, l), loadPower.Of(w, l)
					return max(0, surge-power) / at()
				})
				if extra > most && !math.IsInf(extra, 0) {
					most, who = extra, l.id
				}
			}
			for _, o := range b.outputs {
				for _, l := range o.all(w) {
					add(l, func() float64 { return outputLowest.Of(w, o) * inverterEfficiency.Of(w, o.inverter) })
				}
			}
			for _, l := range b.direct() {
				add(l, func() float64 { return loadVoltage.Of(w, l) })
			}
			w.Say("%s", say(running, "A"))
			if who != "" {
				w.Say("%s + %s as %s starts", say(running, "A"), say(most, "A"), who)
			}
			return running + most
		})
)

// What a controller loses in the hottest air protects no battery: on a cool noon it
// gives all that it is set to.
var chargerSet = declare(Entry{Collection: "chargers", Name: "charge_current_set", Unit: "A",
	Means: "charge current that it gives at most in cool air, as it is set", Formula: "smaller of settings.charge_current and the controller's charge_current_max", Source: controllerSheet},
	func(c *Charger, w *Work) float64 {
		set, rated := settingCurrent.Of(w, c), controllerCharge.Of(w, c.controller)
		if set <= rated {
			w.Say("set to %s", say(set, "A"))
			return set
		}
		w.lead(controllerCharge.input(c.controller))
		w.Say("rated %s", say(rated, "A"))
		return rated
	})

var chargerRated = declare(Entry{Collection: "chargers", Name: "charge_current_rated", Unit: "A",
	Means: "charge current that the controller can give if its setting is lost", Formula: "the controller's charge_current_max", Source: controllerSheet},
	func(c *Charger, w *Work) float64 { return controllerCharge.Of(w, c.controller) })

// direct gives the loads that take their current from the bank's own bus.
func (b *Bank) direct() []*Load {
	all := b.loads[:len(b.loads):len(b.loads)]
	for _, c := range b.chargers {
		all = append(all, c.loads...)
	}
	return all
}

// chargeCurrent adds what the chargers give and the sources that may run beside
// them, and compares it with each source alone.
func (b *Bank) chargeCurrent(w *Work, limit Key[*Charger, float64]) float64 {
	chargers, sources := b.charging(w)
	t := terms{w: w}
	addAll(&t, limit, chargers)
	alone, who := 0.0, ""
	for _, s := range sources {
		current := sourceCurrent.Of(w, s)
		if sourceShares.Of(w, s) {
			t.add(s.id, current)
		}
		if current > alone {
			alone, who = current, s.id
		}
	}
	total := t.sum()
	if alone > total {
		w.Say("%s %s, alone", who, say(alone, "A"))
		return alone
	}
	return total
}

// ofEach gives what the parallel strings of batteries, fewer by lost, stand
// together.
func (b *Bank) ofEach(w *Work, key Key[*Battery, float64], lost float64) float64 {
	n, each := bankParallel.Of(w, b)-lost, key.Of(w, b.battery)
	w.Say("%s", fmt.Sprintf("%g x %s", max(0, n), say(each, "A")))
	return max(0, n) * each
}

// accepted gives the current that the batteries stand, or that their management
// passes where that is less. Lead has no management, unless its data sheet
// describes one.
func (b *Bank) accepted(w *Work, stands, cutoff Key[*Battery, float64], lost float64) float64 {
	limit := b.ofEach(w, stands, lost)
	chemistry := batteryChemistry.Of(w, b.battery)
	if w.Known() && battery.IsLead(chemistry) && !b.battery.managed() {
		return limit
	}
	said := w.Fact.Says
	if opens := b.ofEach(w, cutoff, lost); opens < limit {
		w.Say("%s, management opens", w.Fact.Says)
		w.lead(cutoff.input(b.battery))
		return opens
	}
	w.Say("%s", said)
	return limit
}
