package starter

import (
	"fmt"
	"math"
	"slices"
)

// The invented panel, by the parts file.
const (
	panelPower        = 410.0 // W
	panelShortCircuit = 13.95 // A
	panelBest         = 31.4  // V, at best power
	panelBestCurrent  = 13.06 // A
)

// The factors of the trade: for currents that flow three hours and more, and for
// panels, which give a quarter more than their rating under bright cloud edges
// (NEC 690.8, common practice elsewhere).
const (
	longFactor  = 1.25
	panelFactor = 1.25 * 1.25
)

// deviceSizes are usual ratings of fuses and breakers, in A.
var deviceSizes = []int{10, 15, 20, 25, 30, 40, 50, 60, 80, 100, 125, 150, 175, 200, 250, 300}

// conductor is one size of cable and the largest device that may protect it here: a
// choice well inside the tables of every code that comes with the program.
type conductor struct {
	metric, gauge string
	area          float64 // mm2
	device        int     // A
	ampacity      int     // A, of the invented part
	ground        string  // grounding conductor that goes along, AWG
}

var conductors = []conductor{
	{"4 mm2", "12 AWG", 3.3, 20, 38, "12 AWG"},
	{"6 mm2", "10 AWG", 5.3, 30, 49, "10 AWG"},
	{"10 mm2", "8 AWG", 8.4, 40, 68, "10 AWG"},
	{"16 mm2", "6 AWG", 13.3, 60, 91, "8 AWG"},
	{"25 mm2", "4 AWG", 21.1, 80, 121, "8 AWG"},
	{"35 mm2", "2 AWG", 33.6, 100, 149, "8 AWG"},
	{"50 mm2", "1/0 AWG", 50, 125, 181, "6 AWG"},
	{"70 mm2", "2/0 AWG", 67.4, 150, 230, "6 AWG"},
	{"95 mm2", "4/0 AWG", 95, 200, 280, "6 AWG"},
	{"120 mm2", "250 kcmil", 120, 250, 325, "4 AWG"},
	{"185 mm2", "400 kcmil", 185, 300, 420, "4 AWG"},
}

const copper = 0.0225 // ohm mm2/m at the temperature of a loaded cable, for choosing sizes

// deviceFor gives the next usual rating from a current up.
func deviceFor(amperes float64) (int, error) {
	for _, size := range deviceSizes {
		if float64(size) >= amperes-1e-9 {
			return size, nil
		}
	}
	return 0, fmt.Errorf("%.0f A is more than one device here carries; choose a higher bank voltage, or less power", amperes)
}

// conductorFor gives the first size that a device may protect, and that loses no
// more than a share of the volts over the way there and back.
func conductorFor(device int, amperes, volts, meters, share float64) (conductor, error) {
	for _, c := range conductors {
		if c.device >= device && 2*copper*meters*amperes/c.area <= share*volts {
			return c, nil
		}
	}
	return conductor{}, fmt.Errorf("no cable here carries %.0f A over %.3g m at %.3g V; choose a higher bank voltage, a shorter way, or less power", amperes, meters, volts)
}

// ratingFor gives the next size from a value up.
func ratingFor(value float64, sizes ...int) (int, bool) {
	i := slices.IndexFunc(sizes, func(s int) bool { return float64(s) >= value-1e-9 })
	if i < 0 {
		return 0, false
	}
	return sizes[i], true
}

func roundUp(x, step float64) float64 { return math.Ceil(x/step-1e-9) * step }
