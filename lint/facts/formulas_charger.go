package facts

import (
	"math"

	"stringline/lint/physics/battery"
)

// Chargers: what is programmed into them against what they and the bank can do.

const (
	controllerSheet = "the controller's data sheet"
	slack           = 1e-9 // relative, in comparisons: exactly at a limit meets it
)

// equal compares with the program's relative slack.
func equal(a, b float64) bool { return math.Abs(a-b) <= slack*max(math.Abs(a), math.Abs(b)) }

// An absolute limit holds at 25 degC too, and most sheets state no other.
var _ = declare(Entry{Collection: "controllers", Name: "pv_voltage_max_25", Unit: "V",
	Formula: "as written, else pv_voltage_max (assumed)", Source: controllerSheet},
	func(c *Controller, w *Work) float64 {
		if _, given := c.written(w.Entry); given {
			return readAttribute(c.Subject, w.Entry, w).number
		}
		w.assume()
		return controllerPVMax.Of(w, c)
	})

var (
	chargerPVPower = declare(Entry{Collection: "chargers", Name: "pv_power", Unit: "W", Bound: true,
		Means: "power of the nameplates of all panels on it", Formula: "sum of pmax_stc of its inputs", Source: dataSheet},
		func(c *Charger, w *Work) float64 { return sum(w, inputPmaxSTC, c.allInputs(w), nil) })

	chargerFullNominal = declare(Entry{Collection: "chargers", Name: "full_power_nominal", Unit: "W",
		Means: "power that it can use, at the bank's nominal voltage", Formula: "the bank's system_voltage x the controller's charge_current_max", Source: commonPractice},
		func(c *Charger, w *Work) float64 {
			v, i := bankSystemVoltage.Of(w, c.bank), controllerCharge.Of(w, c.controller)
			w.Say("%s x %s", say(v, "V"), say(i, "A"))
			return v * i
		})

	chargerFullAbsorption = declare(Entry{Collection: "chargers", Name: "full_power_absorption", Unit: "W",
		Means: "power that it can use, at absorption voltage", Formula: "settings.absorption x charge_current_limit", Source: commonPractice},
		func(c *Charger, w *Work) float64 {
			v, i := settingAbsorption.Of(w, c), chargerLimit.Of(w, c)
			w.Say("%s x %s", say(v, "V"), say(i, "A"))
			return v * i
		})

	chargerOverpanel = declare(Entry{Collection: "chargers", Name: "overpanel", Unit: "%", Bound: true,
		Means: "power of the panels as a share of what it can use; 100 % is matched", Formula: "pv_power / full_power_nominal", Source: commonPractice},
		func(c *Charger, w *Work) float64 {
			pv, full := chargerPVPower.Of(w, c), chargerFullNominal.Of(w, c)
			w.Say("%s / %s", say(pv, "W"), say(full, "W"))
			return pv / full
		})

	// Makers state the largest array as a power or as a share of the output, seldom
	// as both. A sheet with neither leaves both limits unknown, for want of either.
	_ = declare(Entry{Collection: "chargers", Name: "pv_power_limit", Unit: "W",
		Means: "largest array that the maker of its controller allows", Formula: "the controller's pv_power_max, else its overpanel_max x full_power_nominal", Source: controllerSheet},
		func(c *Charger, w *Work) float64 {
			if controllerPVLimit.Given(c.controller) {
				return controllerPVLimit.Of(w, c.controller)
			}
			share := controllerOverpanel.Of(w, c.controller)
			if !controllerOverpanel.Given(c.controller) {
				return controllerPVLimit.Of(w, c.controller)
			}
			full := chargerFullNominal.Of(w, c)
			w.Say("%s x %s", say(share, "%"), say(full, "W"))
			return share * full
		})

	_ = declare(Entry{Collection: "chargers", Name: "overpanel_limit", Unit: "%",
		Means: "the same as a share of what it can use", Formula: "the controller's overpanel_max, else its pv_power_max / full_power_nominal", Source: controllerSheet},
		func(c *Charger, w *Work) float64 {
			if controllerOverpanel.Given(c.controller) {
				return controllerOverpanel.Of(w, c.controller)
			}
			power := controllerPVLimit.Of(w, c.controller)
			if !controllerPVLimit.Given(c.controller) {
				return controllerOverpanel.Of(w, c.controller)
			}
			return quotient(w, power, "W", chargerFullNominal.Of(w, c), "W")
		})

	chargerPowerHeadroom = declare(Entry{Collection: "chargers", Name: "power_headroom", Unit: "W",
		Means: "power that it could still use", Formula: "full_power_nominal - pv_power", Source: commonPractice},
		func(c *Charger, w *Work) float64 {
			full, pv := chargerFullNominal.Of(w, c), chargerPVPower.Of(w, c)
			w.Say("%s - %s", say(full, "W"), say(pv, "W"))
			return full - pv
		})

	chargerVocHeadroom = declare(Entry{Collection: "chargers", Name: "voc_headroom", Unit: "V",
		Means: "voltage left on the coldest morning", Formula: "smallest voc_headroom of its inputs", Source: controllerSheet},
		func(c *Charger, w *Work) float64 { return smallest(w, inputVocHeadroom, c.allInputs(w)) })

	chargerStartHeadroom = declare(Entry{Collection: "chargers", Name: "start_headroom", Unit: "V",
		Means: "voltage of hot cells above what it needs to start", Formula: "smallest start_headroom of its inputs", Source: controllerSheet},
		func(c *Charger, w *Work) float64 { return smallest(w, inputStartHeadroom, c.allInputs(w)) })

	chargerRunHeadroom = declare(Entry{Collection: "chargers", Name: "run_headroom", Unit: "V",
		Means: "voltage at maximum power of hot cells above what it needs to go on", Formula: "smallest run_headroom of its inputs", Source: controllerSheet},
		func(c *Charger, w *Work) float64 { return smallest(w, inputRunHeadroom, c.allInputs(w)) })

	chargerDerated = declare(Entry{Collection: "chargers", Name: "charge_current_derated", Unit: "A",
		Means:   "charge current that the controller can give in the hottest air around it",
		Formula: "charge_current_max x (1 - derate x max(0, hottest - full_power_to)), not below 0", Source: controllerSheet},
		func(c *Charger, w *Work) float64 {
			rating, air, full := controllerCharge.Of(w, c.controller), chargerHottest.Of(w, c), controllerFullTo.Of(w, c.controller)
			w.Say("%s", say(rating, "A"))
			if !w.Known() || air <= full {
				return rating // what is lost above full_power_to does not matter
			}
			derate := controllerDerate.Of(w, c.controller)
			w.Say("%s x (1 - %s x %s)", say(rating, "A"), say(derate, "%/K"), say(air-full, "K"))
			return max(0, rating*(1-derate*(air-full)))
		})

	chargerLimit = declare(Entry{Collection: "chargers", Name: "charge_current_limit", Unit: "A",
		Means:   "charge current that it gives at most, as it is set and in the hottest air around it",
		Formula: "smaller of settings.charge_current and charge_current_derated", Source: controllerSheet},
		func(c *Charger, w *Work) float64 {
			set, derated := settingCurrent.Of(w, c), chargerDerated.Of(w, c)
			if set <= derated {
				w.Say("set to %s", say(set, "A"))
				return set
			}
			w.lead(chargerDerated.input(c))
			w.Say("%s", chargerDerated.input(c).Fact.Says)
			return derated
		})

	chargerSupported = declare(Entry{Collection: "chargers", Name: "bank_voltage_supported",
		Means: "the controller works at the bank's system voltage", Formula: "system_voltage of the bank is one of the controller's bank_voltages", Source: controllerSheet},
		func(c *Charger, w *Work) bool {
			v := bankSystemVoltage.Of(w, c.bank)
			for _, one := range controllerVoltages.Of(w, c.controller) {
				if equal(one, v) {
					return true
				}
			}
			return false
		})

	chargerSettingMax = declare(Entry{Collection: "chargers", Name: "setting_max", Unit: "V", Bound: true,
		Means: "highest voltage that is set, at 25 degC", Formula: "larger of settings.absorption and, if equalizing is on, settings.equalize_voltage", Source: "the design"},
		func(c *Charger, w *Work) float64 {
			v := settingAbsorption.Of(w, c)
			w.Say("absorption %s", say(v, "V"))
			if !settingEqualize.Of(w, c) {
				return v
			}
			if e := settingEqualizeTo.Of(w, c); e > v {
				v = e
				w.lead(settingEqualizeTo.input(c))
				w.Say("equalizing %s", say(v, "V"))
			}
			return v
		})

	chargerVoltageMax = declare(Entry{Collection: "chargers", Name: "voltage_max", Unit: "V", Bound: true,
		Means:   "highest voltage that it charges at, in the coldest air of the bank",
		Formula: "largest of setting_max and that compensated at the bank's coldest", Source: commonPractice},
		func(c *Charger, w *Work) float64 {
			v := chargerSettingMax.Of(w, c)
			w.Say("%s", chargerSettingMax.input(c).Fact.Says)
			cold := w.part(func() float64 { return c.compensated(w, chargerSettingMax, bankColdest) })
			if cold > v {
				v = cold
				w.Say("%s at %s: %s", say(chargerSettingMax.Of(w, c), "V"), say(bankColdest.Of(w, c.bank), "degC"), say(cold, "V"))
			}
			return v
		})

	chargerAbsorptionCell = perCell("absorption", "absorption voltage", settingAbsorption)
	chargerFloatCell      = perCell("float", "float voltage", settingFloat)
	chargerEqualizeCell   = perCell("equalize", "equalizing voltage", settingEqualizeTo)

	chargerAbsorptionBattery = perBattery("absorption", "absorption voltage", settingAbsorption)
	chargerFloatBattery      = perBattery("float", "float voltage", settingFloat)
	chargerEqualizeBattery   = perBattery("equalize", "equalizing voltage", settingEqualizeTo)

	chargerTerminals = declare(Entry{Collection: "chargers", Name: "load_terminals_current", Unit: "A", Bound: true,
		Means: "current of the loads on its load terminals", Formula: "sum of current of the loads on its load terminals", Source: "currents add"},
		func(c *Charger, w *Work) float64 { return sum(w, loadCurrent, c.allLoads(w), nil) })
)

// against is the voltage that the array must work against: what is set, but never
// less than the bank has by itself, whatever another bank's setting says.
func (c *Charger) against(w *Work) float64 {
	return max(chargerSettingMax.Of(w, c), bankNominal.Of(w, c.bank))
}

// compensated gives a set-point at one of the bank's temperatures. Without
// compensation the temperature does not matter and is not asked for.
func (c *Charger) compensated(w *Work, setting Key[*Charger, float64], temperature Key[*Bank, float64]) float64 {
	v, coefficient := setting.Of(w, c), settingCompensation.Of(w, c)
	if w.Known() && coefficient == 0 {
		return v
	}
	cells, t := bankCells.Of(w, c.bank), temperature.Of(w, c.bank)
	if !w.Known() {
		return 0
	}
	return w.physics(battery.CompensatedVoltage(v, int(cells), coefficient, t))
}

// perCell declares a set-point for one cell.
func perCell(name, means string, setting Key[*Charger, float64]) Key[*Charger, float64] {
	return declare(Entry{Collection: "chargers", Name: name + "_per_cell", Unit: "V",
		Means: means + " for each cell, at 25 degC", Formula: setting.name + " / cells_in_series of the bank", Source: "cells in series share the voltage"},
		func(c *Charger, w *Work) float64 {
			v, cells := setting.Of(w, c), bankCells.Of(w, c.bank)
			w.Say("%s / %g cells", say(v, "V"), cells)
			return v / cells
		})
}

// perBattery declares a set-point for one battery, as its data sheet states limits.
func perBattery(name, means string, setting Key[*Charger, float64]) Key[*Charger, float64] {
	return declare(Entry{Collection: "chargers", Name: name + "_per_battery", Unit: "V",
		Means: means + " for each battery, at 25 degC", Formula: setting.name + " / series of the bank", Source: "batteries in series share the voltage"},
		func(c *Charger, w *Work) float64 {
			v, n := setting.Of(w, c), bankSeries.Of(w, c.bank)
			w.Say("%s", say(v, "V"))
			if n != 1 {
				w.Say("%s / %g in series", say(v, "V"), n)
			}
			return v / n
		})
}
