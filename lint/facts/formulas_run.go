package facts

import (
	"stringline/lint/physics/conductor"
)

// Runs, and the protections and disconnects beside them.

// conductorHot is the conductor temperature that resistances are given at, 75
// degC in K: that of NEC chapter 9 table 8.
const conductorHot = 348.15

var (
	runCurrent = declare(Entry{Collection: "cable_runs", Name: "current", Unit: "A", Bound: true,
		Means:   "current that it must carry, for ampacity and protection; no code factor inside",
		Formula: currentFormula, Source: "the run carries what the block it stands in gives or takes"},
		func(r *Run, w *Work) float64 { return circuitCurrent(w, r.circuit) })

	runOperating = declare(Entry{Collection: "cable_runs", Name: "current_operating", Unit: "A", Bound: true,
		Means: "current that it carries in operation, for drop and loss",
		Formula: "of a string imp_stc; of an array the sum of its strings' imp_stc; of a charger charge_current_limit; of an AC output, supply or load its current_operating; " +
			"of a charge source charge_current; of a bank's main as current", Source: "as current"},
		func(r *Run, w *Work) float64 { return operatingCurrent(w, r.circuit) })

	runArea = declare(Entry{Collection: "cable_runs", Name: "area", Unit: "mm2",
		Means: "cross-section of one conductor", Formula: "size", Source: "ASTM B258 for AWG"},
		func(r *Run, w *Work) float64 { return runSize.Of(w, r) })

	runPerMeter = declare(Entry{Collection: "cable_runs", Name: "resistance_per_length", Unit: "ohm/m",
		Means:   "resistance of one conductor at 75 degC",
		Formula: "the maker's figure, else by size, material, strand and coating; carried from 20 to 75 degC",
		Source:  "IEC 60228 and IEC 60028 for metric sizes, ASTM B258 and IEC 60028 for AWG"},
		func(r *Run, w *Work) float64 {
			material := runMaterial.Of(w, r)
			if runMakers.Given(r) {
				own := runMakers.Of(w, r)
				coefficient := conductor.CopperCoefficient
				if material == "Al" {
					coefficient = conductor.AluminumCoefficient
				}
				if !w.Known() {
					return 0
				}
				return w.physics(conductor.AtTemperature(own, coefficient, conductorHot))
			}
			c := conductor.Conductor{Area: runSize.Of(w, r), Material: material, Strand: runStrand.Of(w, r), Tinned: runTinned.Of(w, r), Gauge: r.gauge()}
			if !w.Known() {
				return 0
			}
			v := w.physics(c.Resistance(conductorHot))
			if method := c.Method(); method != "" {
				w.Note = method
			}
			return v
		})

	runResistance = declare(Entry{Collection: "cable_runs", Name: "resistance", Unit: "ohm",
		Means: "resistance of both its conductors at 75 degC", Formula: "2 x length x resistance_per_length / per_pole", Source: "Ohm's law"},
		func(r *Run, w *Work) float64 {
			length, each, n := runLength.Of(w, r), runPerMeter.Of(w, r), runPerPole.Of(w, r)
			w.Say("2 x %s x %s", say(length, "m"), say(each, "ohm/m"))
			if n != 1 {
				w.Say("2 x %s x %s / %g", say(length, "m"), say(each, "ohm/m"), n)
			}
			if !w.Known() {
				return 0
			}
			return w.physics(conductor.LoopResistance(each, length, int(n)))
		})

	runDrop = declare(Entry{Collection: "cable_runs", Name: "voltage_drop", Unit: "V", Bound: true,
		Means: "voltage that it loses in operation", Formula: "current_operating x resistance", Source: "Ohm's law"},
		func(r *Run, w *Work) float64 {
			i, ohms := runOperating.Of(w, r), runResistance.Of(w, r)
			w.Say("%s x %s", say(i, "A"), say(ohms, "ohm"))
			return i * ohms
		})

	runBase = declare(Entry{Collection: "cable_runs", Name: "voltage_base", Unit: "V",
		Means:   "voltage that its drop is a share of",
		Formula: "vmp_stc of the controller input on the PV side, system_voltage of the bank on its side, the source's voltage behind a converter or inverter", Source: commonPractice},
		func(r *Run, w *Work) float64 { return baseVoltage(w, r.circuit) })

	runShare = declare(Entry{Collection: "cable_runs", Name: "voltage_drop_share", Unit: "%", Bound: true,
		Means: "share of the voltage that it loses in operation", Formula: "voltage_drop / voltage_base", Source: commonPractice},
		func(r *Run, w *Work) float64 {
			drop, base := runDrop.Of(w, r), runBase.Of(w, r)
			w.Say("%s / %s", say(drop, "V"), say(base, "V"))
			if base <= 0 {
				return 0
			}
			return drop / base
		})

	runPath = declare(Entry{Collection: "cable_runs", Name: "path_drop", Unit: "%", Bound: true,
		Means:   "share of the voltage lost along its path: string and array, or branch and main",
		Formula: "sum of voltage_drop_share of the runs of its path; of several strings the worst", Source: commonPractice},
		func(r *Run, w *Work) float64 { return pathDrop(w, r) })

	runLoss = declare(Entry{Collection: "cable_runs", Name: "loss", Unit: "W", Bound: true,
		Means: "power that it loses in operation", Formula: "current_operating squared x resistance", Source: "Ohm's law"},
		func(r *Run, w *Work) float64 {
			i, ohms := runOperating.Of(w, r), runResistance.Of(w, r)
			w.Say("(%s)^2 x %s", say(i, "A"), say(ohms, "ohm"))
			return i * i * ohms
		})

	runFaultNear = declare(Entry{Collection: "cable_runs", Name: "fault_current_near", Unit: "A", Bound: true,
		Means:   "prospective fault current at its end toward the bank; no resistance counted",
		Formula: faultFormula, Source: "sources in parallel add"},
		func(r *Run, w *Work) float64 { return faultNear(w, r.circuit) })

	runFaultFar = declare(Entry{Collection: "cable_runs", Name: "fault_current_far", Unit: "A",
		Means:   "prospective fault current at its other end, its own resistance counted",
		Formula: "1 / (1/fault_current_near + resistance/nominal of the bank); on the PV side and behind a converter or inverter, which limit the current themselves, fault_current_near", Source: "Ohm's law"},
		func(r *Run, w *Work) float64 {
			near := runFaultNear.Of(w, r)
			bank := busOf(r.circuit)
			if bank == nil {
				return near
			}
			ohms, volts := runResistance.Of(w, r), bankNominal.Of(w, bank)
			w.Say("1 / (1/(%s) + %s/(%s))", say(near, "A"), say(ohms, "ohm"), say(volts, "V"))
			return 1 / (1/near + ohms/volts)
		})

	runBus = declare(Entry{Collection: "cable_runs", Name: "bus_voltage", Unit: "V", Bound: true,
		Means: "highest voltage on it", Formula: busFormula, Source: busSource},
		func(r *Run, w *Work) float64 { return busVoltage(w, r.circuit) })
)

// gauge tells whether the size is an AWG or kcmil size, not a metric one.
func (r *Run) gauge() bool {
	size, ok := r.block.Value("size")
	return ok && (size.Written.Symbol == "AWG" || size.Written.Symbol == "kcmil")
}

// pathDrop adds the shares of a path: on the PV side the array and the worst of
// its strings (of a string's own run: itself and the array), elsewhere branch
// and main. Behind a converter or inverter, which holds its output, a path
// begins anew.
func pathDrop(w *Work, r *Run) float64 {
	own := runShare.Of(w, r)
	var rest float64
	switch c := r.circuit.(type) {
	case *String:
		rest = overRuns(w, c.array.runs, runShare)
	case *Array:
		rest = worstOfStrings(w, c, runShare)
	case *Load:
		switch {
		case c.output != nil || c.supply != nil:
		case c.charger != nil:
			rest = overRuns(w, c.charger.runs, runShare) + overRuns(w, c.bank.runs, runShare)
		default:
			rest = overRuns(w, c.bank.runs, runShare)
		}
	case *Bank:
	default:
		if bank := busOf(r.circuit); bank != nil {
			rest = overRuns(w, bank.runs, runShare)
		}
	}
	w.Say("%s", say(own, "%"))
	if rest > 0 {
		w.Say("%s + %s", say(own, "%"), say(rest, "%"))
	}
	return own + rest
}
