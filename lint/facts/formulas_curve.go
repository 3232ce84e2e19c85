package facts

import (
	"math"

	"stringline/lint/physics/panel"
)

// What single-diode curves tell: the maximum power of a controller input with
// unlike panels on it, what they lose to each other, and what a meter should show.

const (
	fiveParameters = "De Soto, Klein & Beckman, Solar Energy 80 (2006), five parameters from the data sheet"
	fullSun        = 1000.0 // W/m2
	faintSun       = 200.0  // W/m2, least that a reading is worth taking in
)

// panelModel keeps a panel's fitted model as plain numbers, so that each panel is
// fitted once a design and the fit stands in the workings.
var panelModel = declare(Entry{Collection: "panels", Name: "model",
	Means: "its single-diode model at 1000 W/m2 and 25 degC: photocurrent (A), saturation current (A), series resistance (ohm), shunt conductance (S), " +
		"modified ideality (V), change of the photocurrent (A/K), band gap (eV)",
	Formula: "five parameters that give voc, isc, vmp, imp and temp_voc back within 0.1 %; unknown where no physical curve does", Source: fiveParameters},
	func(p *Panel, w *Work) []float64 {
		sheet := panel.DataSheet{
			Voc: panelVoc.Of(w, p), Isc: panelIsc.Of(w, p), Vmp: panelVmp.Of(w, p), Imp: panelImp.Of(w, p), Pmax: panelPmax.Of(w, p),
			VoltageCoefficient: panelTempVoc.Of(w, p), CurrentCoefficient: panelTempIsc.Of(w, p),
			Cells: int(panelCells.Of(w, p)), ThinFilm: panelTechnology.Of(w, p) == "thin_film",
		}
		if !w.Known() {
			return nil
		}
		fit, err := panel.FitDataSheet(sheet)
		if err != nil {
			w.fail(err.Error())
			return nil
		}
		if !fit.FiveEquations {
			w.Say("no curve meets all five equations: the nearest one without a shunt or without series resistance, with its band gap moved to %.4g eV so that temp_voc holds", fit.BandGap)
		}
		five := fit.Reference
		return []float64{five.Photocurrent, five.Saturation, five.Series, 1 / five.Shunt, five.Ideality, fit.CurrentCoefficient, fit.BandGap}
	})

// modelOf turns the numbers back.
func modelOf(of []float64) panel.Model {
	return panel.Model{
		Reference:          panel.Five{Photocurrent: of[0], Saturation: of[1], Series: of[2], Shunt: 1 / of[3], Ideality: of[4]},
		CurrentCoefficient: of[5], BandGap: of[6],
	}
}

// wired gives strings as the curves see them, at an irradiance in W/m2 and the
// cell temperature of each in K; nil where anything is unknown. Bypass diodes
// matter where unlike panels share a string; they are asked for there alone.
func wired(w *Work, strings []*String, irradiance float64, cell func(*String) float64) *panel.Input {
	var all []panel.String
	for _, s := range strings {
		one := panel.String{Count: int(stringParallel.Of(w, s))}
		at := cell(s)
		for _, p := range s.panels {
			model := panelModel.Of(w, p.panel)
			diodes := 1.0
			if len(s.panels) > 1 {
				diodes = panelDiodes.Of(w, p.panel)
			}
			if !w.Known() {
				continue
			}
			curve, err := modelOf(model).At(irradiance, at)
			if err != nil {
				w.fail(err.Error())
				continue
			}
			one.Modules = append(one.Modules, panel.Module{Curve: curve, Count: int(p.count), Diodes: int(diodes)})
		}
		all = append(all, one)
	}
	if !w.Known() {
		return nil
	}
	in, err := panel.NewInput(all)
	if err != nil {
		w.fail(err.Error())
		return nil
	}
	return in
}

// maximum gives the maximum power point of strings at full sun, the zero Point
// where it is unknown.
func (i *Input) maximum(w *Work, cell func(*String) float64) panel.Point {
	return maximum(w, i.all(w), cell)
}

func (s *String) maximum(w *Work, cell func(*String) float64) panel.Point {
	return maximum(w, []*String{s}, cell)
}

func maximum(w *Work, strings []*String, cell func(*String) float64) panel.Point {
	if p := alike(strings); p != nil && panelTechnology.Of(w, p) == "thin_film" {
		return byCoefficients(w, p, strings, cell)
	}
	in := wired(w, strings, fullSun, cell)
	if in == nil {
		return panel.Point{}
	}
	best, err := in.Maximum()
	w.physics(0, err)
	return best
}

// alike gives the panel of strings that are all of one kind and length and stand
// in one array, so that their cells are equally warm: they share current and
// voltage without losing any, whatever their curve. nil of others.
func alike(strings []*String) *Panel {
	first := strings[0].panels
	for _, s := range strings {
		if s.array != strings[0].array || len(s.panels) != 1 || s.panels[0] != first[0] {
			return nil
		}
	}
	return first[0].panel
}

// byCoefficients gives the maximum of like strings of thin film, which has no
// single-diode curve: voltage by Vmp (1 + (temp_pmax - temp_isc) dT), a lower
// bound with heat, and power by temp_pmax. Common practice.
func byCoefficients(w *Work, p *Panel, strings []*String, cell func(*String) float64) panel.Point {
	vmp, imp, power, current := panelVmp.Of(w, p), panelImp.Of(w, p), panelTempPmax.Of(w, p), panelTempIsc.Of(w, p)
	warmer, count := cell(strings[0])-panel.StandardCell, 0.0
	for _, s := range strings {
		count += stringParallel.Of(w, s)
	}
	if !w.Known() {
		return panel.Point{}
	}
	volts := strings[0].panels[0].count * vmp * (1 + (power-current)*warmer)
	watts := strings[0].panels[0].count * count * vmp * imp * (1 + power*warmer)
	if volts <= 0 || watts <= 0 {
		w.fail("its coefficients leave nothing at this temperature")
		return panel.Point{}
	}
	w.Say("thin film, by its coefficients: a lower bound of the voltage with heat")
	return panel.Point{Voltage: volts, Current: watts / volts}
}

func standardCell(*String) float64 { return panel.StandardCell }

func (i *Input) hot(w *Work) func(*String) float64 {
	return func(s *String) float64 { return stringCellHot.Of(w, s) }
}

func (i *Input) cold(w *Work) func(*String) float64 {
	return func(*String) float64 { return inputCellCold.Of(w, i) }
}

const combinedCurve = "maximum of its strings' combined curve at 1000 W/m2 and "

var (
	inputMppSTC = declare(Entry{Collection: "pv_inputs", Name: "mpp_stc", Unit: "W",
		Means: "power that its strings give together, at 25 degC", Formula: combinedCurve + "25 degC", Source: fiveParameters},
		func(i *Input, w *Work) float64 { return i.maximum(w, standardCell).Power() })

	inputMppHot = declare(Entry{Collection: "pv_inputs", Name: "mpp_hot", Unit: "W",
		Means: "power that its strings give together with hot cells", Formula: combinedCurve + "cell_hot of each", Source: fiveParameters},
		func(i *Input, w *Work) float64 { return i.maximum(w, i.hot(w)).Power() })

	_ = declare(Entry{Collection: "pv_inputs", Name: "mpp_cold", Unit: "W",
		Means: "power that its strings give together with cold cells", Formula: combinedCurve + "cell_cold", Source: fiveParameters},
		func(i *Input, w *Work) float64 { return i.maximum(w, i.cold(w)).Power() })

	inputVmpCold = declare(Entry{Collection: "pv_inputs", Name: "vmp_cold", Unit: "V",
		Means: "voltage at maximum power of cold cells", Formula: combinedCurve + "cell_cold", Source: fiveParameters},
		func(i *Input, w *Work) float64 { return i.maximum(w, i.cold(w)).Voltage })

	inputMismatch = declare(Entry{Collection: "pv_inputs", Name: "mismatch_loss", Unit: "%",
		Means:   "share of its panels' own maximum power that is lost by tying unlike ones together, at 25 degC",
		Formula: "1 - mpp_stc / the sum of its panels' own maxima", Source: fiveParameters + "; bypass diodes without a drop of their own"},
		func(i *Input, w *Work) float64 {
			if alike(i.all(w)) != nil {
				w.Say("all strings are alike")
				return 0
			}
			in := wired(w, i.all(w), fullSun, standardCell)
			if in == nil {
				return 0
			}
			lost, err := in.Mismatch()
			w.Say("1 - %s / %s", say(in.OwnMaxima()*(1-lost), "W"), say(in.OwnMaxima(), "W"))
			return w.physics(lost, err)
		})

	inputReverse = declare(Entry{Collection: "pv_inputs", Name: "reverse_current", Unit: "A",
		Means:   "largest current that the other strings drive into any one string, without a fault, while the input is open",
		Formula: "largest at 1000 W/m2 with cells at cell_cold, 25 degC and cell_hot", Source: fiveParameters},
		func(i *Input, w *Work) float64 {
			if alike(i.all(w)) != nil {
				w.Say("all strings are alike")
				return 0
			}
			most := 0.0
			for _, cell := range []func(*String) float64{i.cold(w), standardCell, i.hot(w)} {
				in := wired(w, i.all(w), fullSun, cell)
				if in == nil {
					continue
				}
				back, err := in.ReverseCurrent()
				most = max(most, w.physics(back, err))
			}
			return most
		})
)

var (
	chargerExpected = declare(Entry{Collection: "chargers", Name: "charge_current_expected", Unit: "A",
		Means:   "charge current at full sun and cells of 25 degC",
		Formula: "smaller of charge_current_limit and efficiency x the sum of its inputs' mpp_stc / the bank's bulk_voltage; of a PWM controller the array's current at bulk_voltage and the drop of the PV runs",
		Source:  fiveParameters + "; conservation of energy"},
		func(c *Charger, w *Work) float64 {
			return c.expected(w, inputMppSTC, func(*Input) func(*String) float64 { return standardCell })
		})

	chargerExpectedHot = declare(Entry{Collection: "chargers", Name: "charge_current_expected_hot", Unit: "A",
		Means: "charge current at full sun and hot cells", Formula: "as charge_current_expected, with mpp_hot", Source: fiveParameters + "; conservation of energy"},
		func(c *Charger, w *Work) float64 {
			return c.expected(w, inputMppHot, func(i *Input) func(*String) float64 { return i.hot(w) })
		})
)

func (c *Charger) expected(w *Work, power Key[*Input, float64], cell func(*Input) func(*String) float64) float64 {
	bulk := bankBulk.Of(w, c.bank)
	switch controllerKind.Of(w, c.controller) {
	case "pwm":
		total := 0.0
		for _, i := range c.allInputs(w) {
			in := wired(w, i.all(w), fullSun, cell(i))
			at := bulk + inputDrop.Of(w, i)
			if in == nil || !w.Known() {
				continue
			}
			current, err := in.Current(at)
			total += max(0, w.physics(current, err))
		}
		w.Say("%s at %s", say(total, "A"), say(bulk, "V"))
		return total
	case "mppt":
		limit, efficiency := chargerLimit.Of(w, c), controllerEfficiency.Of(w, c.controller)
		sum := 0.0
		for _, i := range c.allInputs(w) {
			sum += power.Of(w, i)
		}
		if !w.Known() {
			return 0
		}
		if free := efficiency * sum / bulk; free < limit {
			w.Say("%s x %s / %s", say(efficiency, "%"), say(sum, "W"), say(bulk, "V"))
			return free
		}
		w.lead(chargerLimit.input(c))
		w.Say("limited: %s", chargerLimit.input(c).Fact.Says)
		return limit
	}
	return 0
}

// meter reads one quantity off a curve of so many like strings.
func (w *Work) meter(in *panel.Input, what string, parallel float64) float64 {
	switch what {
	case "voc":
		return w.physics(in.OpenCircuit())
	case "isc":
		return in.ShortCircuit() / parallel
	case "vmp", "imp", "power":
		best, err := in.Maximum()
		if w.physics(0, err); what == "vmp" {
			return best.Voltage
		}
		if what == "imp" {
			return best.Current / parallel
		}
		return best.Power() / parallel
	}
	w.fail("no curve tells what this should be")
	return math.NaN()
}
