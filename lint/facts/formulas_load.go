package facts

// What a bank feeds: AC outputs, supplies and loads.

var (
	outputLowest = declare(Entry{Collection: "ac_outputs", Name: "voltage_lowest", Unit: "V",
		Means:   "lowest bank voltage that the inverter works at; its data sheet's where no cut-off is programmed (assumed)",
		Formula: "low_cutoff, else the inverter's dc_min", Source: "the inverter's data sheet"},
		func(o *Output, w *Work) float64 {
			if outputCutoff.Given(o) {
				return outputCutoff.Of(w, o)
			}
			w.assume()
			return inverterMin.Of(w, o.inverter)
		})

	outputCurrent = declare(Entry{Collection: "ac_outputs", Name: "current", Unit: "A",
		Means: "current that the inverter takes at full power and lowest voltage", Formula: "the inverter's continuous / (voltage_lowest x efficiency)", Source: "conservation of energy"},
		func(o *Output, w *Work) float64 { return o.current(w, outputLowest.Of(w, o)) })

	outputOperating = declare(Entry{Collection: "ac_outputs", Name: "current_operating", Unit: "A",
		Means: "current that the inverter takes at full power and system voltage", Formula: "the inverter's continuous / (the bank's system_voltage x efficiency)", Source: "conservation of energy"},
		func(o *Output, w *Work) float64 { return o.current(w, bankSystemVoltage.Of(w, o.bank)) })

	outputLoadPower = declare(Entry{Collection: "ac_outputs", Name: "load_power", Unit: "W", Bound: true,
		Means: "power of all its loads together", Formula: "sum of power of the loads on it", Source: "powers add"},
		func(o *Output, w *Work) float64 { return sum(w, loadPower, o.all(w), nil) })

	outputLoadPeak = declare(Entry{Collection: "ac_outputs", Name: "load_peak", Unit: "W", Bound: true,
		Means: "power of all its loads together as the heaviest starts", Formula: "load_power + the most that one load's surge adds to its own power", Source: "one motor starts at a time: " + commonPractice},
		func(o *Output, w *Work) float64 {
			running := outputLoadPower.Of(w, o)
			most, who := 0.0, ""
			for _, l := range o.all(w) {
				extra := w.part(func() float64 { return max(0, loadSurge.Of(w, l)-loadPower.Of(w, l)) })
				if extra > most {
					most, who = extra, l.id
				}
			}
			w.Say("%s", say(running, "W"))
			if who != "" {
				w.Say("%s + %s as %s starts", say(running, "W"), say(most, "W"), who)
			}
			return running + most
		})

	supplyCurrent = declare(Entry{Collection: "supplies", Name: "current", Unit: "A",
		Means: "current that the converter takes at full output and lowest input voltage", Formula: "output x current of the converter / (input_min x efficiency)", Source: "conservation of energy"},
		func(p *Supply, w *Work) float64 { return p.current(w, converterMin.Of(w, p.converter)) })

	supplyOperating = declare(Entry{Collection: "supplies", Name: "current_operating", Unit: "A",
		Means: "current that the converter takes at full output and system voltage", Formula: "output x current of the converter / (the bank's system_voltage x efficiency)", Source: "conservation of energy"},
		func(p *Supply, w *Work) float64 { return p.current(w, bankSystemVoltage.Of(w, p.bank)) })

	supplyLoadCurrent = declare(Entry{Collection: "supplies", Name: "load_current", Unit: "A", Bound: true,
		Means: "current of all its loads together", Formula: "sum of current of the loads on it", Source: "currents add"},
		func(p *Supply, w *Work) float64 { return sum(w, loadCurrent, p.all(w), nil) })

	loadVoltage = declare(Entry{Collection: "loads", Name: "voltage_lowest", Unit: "V",
		Means:   "lowest voltage that it runs at; that of its source where it does not say (assumed)",
		Formula: "voltage_min, else the bank's low_voltage_disconnect; on a supply the converter's output, on an AC output ac_voltage", Source: "the design"},
		func(l *Load, w *Work) float64 {
			if loadLowest.Given(l) {
				return loadLowest.Of(w, l)
			}
			switch {
			case l.output != nil:
				return inverterACVoltage.Of(w, l.output.inverter)
			case l.supply != nil:
				return converterOutput.Of(w, l.supply.converter)
			}
			w.assume()
			return bankDisconnect.Of(w, l.bank)
		})

	loadSourceVoltage = declare(Entry{Collection: "loads", Name: "source_voltage", Unit: "V",
		Means:   "nominal voltage of its source",
		Formula: "the bank's system_voltage, the converter's output, or ac_voltage", Source: "the design"},
		func(l *Load, w *Work) float64 {
			switch {
			case l.output != nil:
				return inverterACVoltage.Of(w, l.output.inverter)
			case l.supply != nil:
				return converterOutput.Of(w, l.supply.converter)
			}
			return bankSystemVoltage.Of(w, l.bank)
		})

	loadSourceMax = declare(Entry{Collection: "loads", Name: "source_voltage_max", Unit: "V", Bound: true,
		Means:   "highest voltage of its source",
		Formula: "the bank's voltage_max, the converter's output, or ac_voltage", Source: "the design"},
		func(l *Load, w *Work) float64 {
			switch {
			case l.output != nil:
				return inverterACVoltage.Of(w, l.output.inverter)
			case l.supply != nil:
				return converterOutput.Of(w, l.supply.converter)
			}
			return bankVoltageMax.Of(w, l.bank)
		})

	loadSourceMin = declare(Entry{Collection: "loads", Name: "source_voltage_min", Unit: "V",
		Means:   "lowest voltage of its source",
		Formula: "the bank's low_voltage_disconnect, the converter's output, or ac_voltage", Source: "the design"},
		func(l *Load, w *Work) float64 {
			switch {
			case l.output != nil:
				return inverterACVoltage.Of(w, l.output.inverter)
			case l.supply != nil:
				return converterOutput.Of(w, l.supply.converter)
			}
			return bankDisconnect.Of(w, l.bank)
		})

	loadCurrent = declare(Entry{Collection: "loads", Name: "current", Unit: "A",
		Means: "current at its lowest voltage", Formula: "power / voltage_lowest", Source: "conservation of energy"},
		func(l *Load, w *Work) float64 {
			return quotient(w, loadPower.Of(w, l), "W", loadVoltage.Of(w, l), "V")
		})

	loadOperating = declare(Entry{Collection: "loads", Name: "current_operating", Unit: "A",
		Means: "current at its source's nominal voltage", Formula: "power / source_voltage", Source: "conservation of energy"},
		func(l *Load, w *Work) float64 {
			return quotient(w, loadPower.Of(w, l), "W", loadSourceVoltage.Of(w, l), "V")
		})

	loadSurgeCurrent = declare(Entry{Collection: "loads", Name: "surge_current", Unit: "A",
		Means: "current as it starts, at its lowest voltage", Formula: "surge / voltage_lowest", Source: "conservation of energy"},
		func(l *Load, w *Work) float64 {
			return quotient(w, loadSurge.Of(w, l), "W", loadVoltage.Of(w, l), "V")
		})
)

// quotient divides and says so.
func quotient(w *Work, a float64, unitA string, b float64, unitB string) float64 {
	w.Say("%s / %s", say(a, unitA), say(b, unitB))
	return a / b
}

func (o *Output) current(w *Work, at float64) float64 {
	power, efficiency := inverterContinuous.Of(w, o.inverter), inverterEfficiency.Of(w, o.inverter)
	w.Say("%s / (%s x %s)", say(power, "W"), say(at, "V"), say(efficiency, "%"))
	return power / (at * efficiency)
}

func (p *Supply) current(w *Work, at float64) float64 {
	v, i, efficiency := converterOutput.Of(w, p.converter), converterCurrent.Of(w, p.converter), converterEfficiency.Of(w, p.converter)
	w.Say("%s x %s / (%s x %s)", say(v, "V"), say(i, "A"), say(at, "V"), say(efficiency, "%"))
	return v * i / (at * efficiency)
}
