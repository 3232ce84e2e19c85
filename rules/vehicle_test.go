package rules_test

import (
	"fmt"
	"math"
	"testing"
)

func TestVehicleCommon(t *testing.T) { holdOwnCommon(t, "vehicle", 12) }

// TestVehicleDevices holds the devices that NEC 552.10(E)(1) allows (from memory)
// within the currents of 33 CFR 183.425 Table 5 for insulation of 60 degC (read), but at
// 12 AWG and above no lower than half of them: a slip of a row would leave the band.
func TestVehicleDevices(t *testing.T) {
	device, boat := codeTableOf(t, "vehicle", "device_by_size"), codeTableOf(t, "marine", "conductor_cfr")
	if device.Status != "from memory" || len(device.Rows) != 5 {
		t.Errorf("status %q, %d rows", device.Status, len(device.Rows))
	}
	for _, size := range []string{"18 AWG", "16 AWG", "14 AWG", "12 AWG", "10 AWG"} {
		got, most := device.at(t, size), boat.at(t, 60, size)
		if got > most || got < 0.5*most {
			t.Errorf("%s: %g A, where a conductor of 60 degC bears %g A on a boat", size, got, most)
		}
	}
	// 240.4(D) of the same code (transcribed) has 15, 20 and 30 A for the larger three.
	for size, want := range map[string]float64{"14 AWG": 15, "12 AWG": 20, "10 AWG": 30} {
		holdWithin(t, size, device.at(t, size), want, 1e-9)
	}
}

// TestVehicleGas holds the gassing currents to those of the book iec at 2.40 V a cell,
// and the one constant of the rule to its two: 28 cm2 for each m3/h of which an ampere
// needs 0.05.
func TestVehicleGas(t *testing.T) {
	here, there := codeTableOf(t, "vehicle", "gas_current"), codeTableOf(t, "iec", "gas_current")
	for _, chemistry := range []string{"flooded", "agm", "gel"} {
		holdWithin(t, chemistry, here.at(t, chemistry), there.at(t, chemistry, 2.4), 1e-9)
	}
	holdWithin(t, "opening for each ampere that makes gas, cm2", 1.4, 28*0.05, 1e-9)
}

// TestVehicleResistivity holds EN 1648's 0.01989 ohm mm2/m to copper of 0.0178 at 20 degC
// warmed to 50 degC by IEC 60028's 0.00393 for each kelvin, and the published worked
// examples (a forum, 2007) to the formula: 24 A on 6 mm2 over 5 m each way, 60 mm2 for 60 A
// over 5 m each way with 0.2 V.
func TestVehicleResistivity(t *testing.T) {
	const warm = 0.01989
	holdWithin(t, "copper at 50 degC", warm, 0.0178*(1+0.00393*30), 0.001)
	for _, c := range []struct {
		what              string
		each, amps, volts float64
		published, spread float64
	}{
		{"6 mm2 at 24 A", 5, 24, 0.8, 6, 0.01},
		{"60 A charging line", 5, 60, 0.2, 60, 0.01},
		{"2.5 mm2, a loop of 15 m, 6.5 A", 7.5, 6.5, 0.8, 2.5, 0.04},
	} {
		got := warm * 2 * c.each * c.amps / c.volts
		if math.Abs(got-c.published) > c.spread*c.published {
			t.Errorf("%s: %s mm2, published %g mm2", c.what, fmt.Sprintf("%.3f", got), c.published)
		}
	}
}
