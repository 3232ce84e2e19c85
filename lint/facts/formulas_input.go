package facts

import "stringline/schema/quantity"

// Controller inputs, and what an array carries of them.

var perKelvin = quantity.MustLookup("%/K").Dimension

var (
	inputParallelStrings = declare(Entry{Collection: "pv_inputs", Name: "parallel_strings", Unit: "", Bound: true,
		Means: "strings in parallel", Formula: "sum of parallel of its strings", Source: "the design"},
		func(i *Input, w *Work) float64 {
			n := 0.0
			for _, s := range i.all(w) {
				n += stringParallel.Of(w, s)
			}
			return n
		})

	inputCellCold = declare(Entry{Collection: "pv_inputs", Name: "cell_cold", Unit: "degC",
		Means: "coldest cell temperature, at first light", Formula: "site.coldest", Source: "cells before sunrise are as cold as the air"},
		func(i *Input, w *Work) float64 { return siteColdest.Of(w, i.site) })

	inputCellHot = declare(Entry{Collection: "pv_inputs", Name: "cell_hot", Unit: "degC",
		Means: "hottest cell temperature, of the string that gets hottest", Formula: "largest cell_hot of its strings", Source: "definition of NOCT in IEC 61215"},
		func(i *Input, w *Work) float64 { return largest(w, stringCellHot, i.all(w)) })

	inputVocSTC = declare(Entry{Collection: "pv_inputs", Name: "voc_stc", Unit: "V", Bound: true,
		Means: "open-circuit voltage at 25 degC", Formula: "largest voc_stc of its strings", Source: "strings in parallel"},
		func(i *Input, w *Work) float64 { return largest(w, stringVocSTC, i.all(w)) })

	inputVocCold = declare(Entry{Collection: "pv_inputs", Name: "voc_cold", Unit: "V", Bound: true,
		Means: "open-circuit voltage on the coldest morning", Formula: "largest voc_cold of its strings", Source: "strings in parallel"},
		func(i *Input, w *Work) float64 { return largest(w, stringVocCold, i.all(w)) })

	inputVocHot = declare(Entry{Collection: "pv_inputs", Name: "voc_hot", Unit: "V",
		Means: "open-circuit voltage of hot cells", Formula: "smallest voc_hot of its strings", Source: "strings in parallel, the safe side"},
		func(i *Input, w *Work) float64 { return smallest(w, stringVocHot, i.all(w)) })

	inputVmpSTC = declare(Entry{Collection: "pv_inputs", Name: "vmp_stc", Unit: "V",
		Means: "voltage at maximum power, at 25 degC", Formula: combinedCurve + "25 degC", Source: fiveParameters},
		func(i *Input, w *Work) float64 { return i.maximum(w, standardCell).Voltage })

	inputVmpHot = declare(Entry{Collection: "pv_inputs", Name: "vmp_hot", Unit: "V",
		Means: "voltage at maximum power of hot cells", Formula: combinedCurve + "cell_hot of each", Source: fiveParameters},
		func(i *Input, w *Work) float64 { return i.maximum(w, i.hot(w)).Voltage })

	inputIscSTC = declare(Entry{Collection: "pv_inputs", Name: "isc_stc", Unit: "A", Bound: true,
		Means: "short-circuit current at 25 degC", Formula: "sum of isc_stc of its strings", Source: parallel},
		func(i *Input, w *Work) float64 { return overStrings(w, stringIscSTC, i.all(w)) })

	inputIscMax = declare(Entry{Collection: "pv_inputs", Name: "isc_max", Unit: "A", Bound: true,
		Means:   "largest short-circuit current, under bright cloud edges and with hot cells",
		Formula: "sum of isc_max of its strings", Source: parallel},
		func(i *Input, w *Work) float64 { return overStrings(w, stringIscMax, i.all(w)) })

	inputImpSTC = declare(Entry{Collection: "pv_inputs", Name: "imp_stc", Unit: "A",
		Means: "current at maximum power, at 25 degC", Formula: "sum of imp_stc of its strings", Source: parallel},
		func(i *Input, w *Work) float64 { return overStrings(w, stringImpSTC, i.all(w)) })

	inputPmaxSTC = declare(Entry{Collection: "pv_inputs", Name: "pmax_stc", Unit: "W", Bound: true,
		Means: "power of its nameplates", Formula: "sum of pmax_stc of its strings", Source: dataSheet},
		func(i *Input, w *Work) float64 { return overStrings(w, stringPmaxSTC, i.all(w)) })

	inputFault = declare(Entry{Collection: "pv_inputs", Name: "fault_current", Unit: "A", Bound: true,
		Means:   "the most that can be fed into any one of its strings in a fault; no code factor inside",
		Formula: "largest fault_current of its strings", Source: "IEC 62548-1"},
		func(i *Input, w *Work) float64 { return largest(w, stringFault, i.all(w)) })

	inputVocHeadroom = declare(Entry{Collection: "pv_inputs", Name: "voc_headroom", Unit: "V",
		Means: "voltage left on the coldest morning", Formula: "the controller's pv_voltage_max - voc_cold", Source: "the controller's data sheet"},
		func(i *Input, w *Work) float64 {
			limit, is := controllerPVMax.Of(w, i.charger.controller), inputVocCold.Of(w, i)
			w.Say("%s - %s", say(limit, "V"), say(is, "V"))
			return limit - is
		})

	inputStartHeadroom = declare(Entry{Collection: "pv_inputs", Name: "start_headroom", Unit: "V",
		Means:   "voltage of hot cells above what the controller needs to start",
		Formula: "voc_hot - (setting_max of the charger, at least the bank's nominal, + start_above_bank)", Source: "the controller's data sheet"},
		func(i *Input, w *Work) float64 {
			is, bank, above := inputVocHot.Of(w, i), i.charger.against(w), controllerStartAbove.Of(w, i.charger.controller)
			w.Say("%s - (%s + %s)", say(is, "V"), say(bank, "V"), say(above, "V"))
			return is - (bank + above)
		})

	inputRunHeadroom = declare(Entry{Collection: "pv_inputs", Name: "run_headroom", Unit: "V",
		Means:   "voltage at maximum power of hot cells above what the controller needs to go on",
		Formula: "vmp_hot - drop of the PV runs - (setting_max of the charger, at least the bank's nominal, + run_above_bank)", Source: "the controller's data sheet"},
		func(i *Input, w *Work) float64 {
			is, drop := inputVmpHot.Of(w, i), inputDrop.Of(w, i)
			bank, above := i.charger.against(w), controllerRunAbove.Of(w, i.charger.controller)
			w.Say("%s - %s drop - (%s + %s)", say(is, "V"), say(drop, "V"), say(bank, "V"), say(above, "V"))
			return is - drop - (bank + above)
		})

	inputDrop = declare(Entry{Collection: "pv_inputs", Name: "drop", Unit: "V", Bound: true,
		Means:   "voltage lost in the runs of its strings and arrays",
		Formula: "largest over its arrays of the array's voltage_drop + the largest of its strings'", Source: "Ohm's law"},
		func(i *Input, w *Work) float64 {
			most := 0.0
			for _, a := range i.allArrays(w) {
				most = max(most, largestDrop(w, a.runs)+worstOfStrings(w, a, runDrop))
			}
			return most
		})
)

// overStrings adds a fact over strings, each as often as it stands in parallel.
func overStrings(w *Work, key Key[*String, float64], of []*String) float64 {
	return sum(w, key, of, func(s *String) float64 { return stringParallel.Of(w, s) })
}

func largestDrop(w *Work, runs []*Run) float64 { return overRuns(w, runs, runDrop) }

// overRuns adds a fact over the runs of one circuit, none or one.
func overRuns(w *Work, runs []*Run, key Key[*Run, float64]) float64 {
	total := 0.0
	for _, r := range runs {
		total += key.Of(w, r)
	}
	return total
}

// worstOfStrings gives the largest of a fact over the runs of an array's strings.
func worstOfStrings(w *Work, a *Array, key Key[*Run, float64]) float64 {
	most := 0.0
	for _, s := range a.all(w) {
		most = max(most, overRuns(w, s.runs, key))
	}
	return most
}

// ofInput declares an array's copy of a fact of its controller input.
func ofInput(name, unit, means string, key Key[*Input, float64]) Key[*Array, float64] {
	return declare(Entry{Collection: "arrays", Name: name, Unit: unit, Bound: true,
		Means: means + ", of all on its controller input", Formula: "that of its pv_input", Source: "arrays on one input are tied to one voltage"},
		func(a *Array, w *Work) float64 {
			v := key.Of(w, a.input)
			w.Say("%s", key.input(a.input).Fact.Says)
			return v
		})
}

var arrayOfInput = []Key[*Array, float64]{
	ofInput("voc_stc", "V", "open-circuit voltage at 25 degC", inputVocSTC),
	ofInput("voc_cold", "V", "open-circuit voltage on the coldest morning", inputVocCold),
	ofInput("voc_hot", "V", "open-circuit voltage of hot cells", inputVocHot),
	ofInput("vmp_stc", "V", "voltage at maximum power, at 25 degC", inputVmpSTC),
	ofInput("vmp_hot", "V", "voltage at maximum power of hot cells", inputVmpHot),
	ofInput("vmp_cold", "V", "voltage at maximum power of cold cells", inputVmpCold),
	ofInput("mpp_stc", "W", "power together, at 25 degC", inputMppSTC),
	ofInput("mpp_hot", "W", "power together with hot cells", inputMppHot),
	ofInput("mismatch_loss", "%", "share of the panels' own power lost by tying unlike ones together", inputMismatch),
	ofInput("reverse_current", "A", "largest current driven into any one string while the input is open", inputReverse),
	ofInput("voc_headroom", "V", "voltage left on the coldest morning", inputVocHeadroom),
	ofInput("start_headroom", "V", "voltage of hot cells above what the controller needs to start", inputStartHeadroom),
	ofInput("run_headroom", "V", "voltage of hot cells above what the controller needs to go on", inputRunHeadroom),
	ofInput("isc_stc", "A", "short-circuit current at 25 degC", inputIscSTC),
	ofInput("isc_max", "A", "largest short-circuit current", inputIscMax),
	ofInput("imp_stc", "A", "current at maximum power, at 25 degC", inputImpSTC),
	ofInput("pmax_stc", "W", "power of the nameplates", inputPmaxSTC),
	ofInput("fault_current", "A", "the most that can be fed into any one string in a fault", inputFault),
	ofInput("parallel_strings", "", "strings in parallel", inputParallelStrings),
	ofInput("cell_hot", "degC", "hottest cell temperature", inputCellHot),
	ofInput("cell_cold", "degC", "coldest cell temperature", inputCellCold),
}
