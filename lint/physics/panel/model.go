package panel

import (
	"math"

	"stringline/lint/physics"
)

// Constants of the translation for crystalline silicon after De Soto, Klein &
// Beckman 2006, and of nature (SI, exact since 2019).
const (
	SiliconBandGap  = 1.121                          // eV at 25 degC
	bandGapSlope    = -0.0002677                     // share of the band gap per K
	boltzmann       = 1.380649e-23 / 1.602176634e-19 // eV/K
	darkest         = 1e-6                           // W/m2: fainter light counts as none
	brightest       = 2000.0                         // W/m2
	smallestBandGap = 0.5                            // eV, of any model
	largestBandGap  = 3.0                            // eV
)

// ThermalVoltage gives k T/q in V at a temperature in K.
func ThermalVoltage(temperature float64) float64 { return boltzmann * temperature }

// Model is a panel's single-diode model: the five parameters at standard test
// conditions (1000 W/m2, 25 degC) and what carries them to others. Models are
// values and equal if their parameters are.
type Model struct {
	Reference          Five    // at standard test conditions
	CurrentCoefficient float64 // A/K of the short-circuit current, taken for the photocurrent
	BandGap            float64 // eV at 25 degC; SiliconBandGap unless the fit says otherwise
}

// At gives the curve at an irradiance in the panel's plane (0 to 2000 W/m2) and a
// cell temperature (-100 to 150 degC, in K).
//
// Source: W. De Soto, S. A. Klein & W. A. Beckman, Improvement and validation of
// a model for photovoltaic array performance, Solar Energy 80 (2006) 78-88: the
// ideality grows with T, the photocurrent with the light and its coefficient,
// the saturation current as T^3 exp(-Eg/kT), the shunt conductance with the
// light, the series resistance stays. Light below 1e-6 W/m2 counts as darkness.
func (m Model) At(irradiance, cell float64) (Curve, error) {
	t, err := m.prepare()
	if err != nil {
		return Curve{}, err
	}
	if err := checkConditions(irradiance, cell); err != nil {
		return Curve{}, err
	}
	return t.at(irradiance, cell), nil
}

func checkConditions(irradiance, cell float64) error {
	return physics.Check("single-diode curve at other conditions",
		physics.Input{Name: "irradiance", Value: irradiance, Min: 0, Max: brightest, Unit: "W/m2"},
		physics.Input{Name: "cell temperature", Value: cell, Min: coldestCell, Max: hottestCell, Unit: "K"})
}

// translation is a checked model with its constants worked out.
type translation struct {
	photo, perKelvin, logSaturation, series, shunt, ideality, bandGap float64
	referenceExponent                                                 float64
}

func (m Model) prepare() (translation, error) {
	reference, err := NewCurve(m.Reference)
	if err != nil {
		return translation{}, err
	}
	if err := physics.Check("single-diode model",
		physics.Input{Name: "current coefficient", Value: m.CurrentCoefficient, Min: -100, Max: 100, Unit: "A/K"},
		physics.Input{Name: "band gap", Value: m.BandGap, Min: smallestBandGap, Max: largestBandGap, Unit: "eV"}); err != nil {
		return translation{}, err
	}
	return translation{photo: reference.photo, perKelvin: m.CurrentCoefficient, logSaturation: reference.logSaturation,
		series: reference.series, shunt: reference.shunt, ideality: reference.ideality, bandGap: m.BandGap,
		referenceExponent: m.BandGap / (boltzmann * StandardCell)}, nil
}

func (t *translation) at(irradiance, cell float64) Curve {
	light := irradiance / fullSun
	if irradiance < darkest {
		light = 0
	}
	ratio, rise := cell/StandardCell, cell-StandardCell
	exponent := t.bandGap * (1 + bandGapSlope*rise) / (boltzmann * cell)
	// A coefficient below zero must not turn the photocurrent negative.
	photo := math.Max(0, light*(t.photo+t.perKelvin*rise))
	return newCurve(photo, t.logSaturation+3*math.Log(ratio)+t.referenceExponent-exponent,
		t.series, t.shunt*light, t.ideality*ratio)
}

// slopes gives, at standard conditions, how fast the open-circuit voltage (V/K)
// changes with the cell temperature: the derivative of the model's equation at
// I = 0, so that no finite step is chosen.
func (t *translation) openCircuitSlope(open float64) float64 {
	a := t.ideality
	e := math.Exp(t.logSaturation + open/a)
	saturation := math.Exp(t.logSaturation)
	// d ln(I0)/dT: the exponent's own derivative holds the band gap's slope.
	logSlope := (3 + t.bandGap*(1-bandGapSlope*StandardCell)/(boltzmann*StandardCell)) / StandardCell
	byTemperature := t.perKelvin - logSlope*(e-saturation) + e*open/(a*StandardCell)
	return byTemperature / (e/a + t.shunt)
}
