package facts_test

import (
	"slices"
	"strings"
	"testing"
)

// What stands in each kind of circuit meets that circuit's current, voltage and
// fault current. Expected values are worked by hand from the design's numbers by
// the definitions of the specification (part 2, cable runs).
func TestCircuits(t *testing.T) {
	// Every circuit of the hut with a run of its own, 10 mm2 and 1 m.
	const circuit = "\n  cable_run {\n    size = \"10 mm2\"\n    length = \"1 m\"\n  }\n  breaker {\n    rating = \"63 A\"\n  }\n  disconnect {\n    rating = \"63 A\"\n  }\n}\n"
	text := hut
	for _, block := range []string{`ac_output "cabin" {`, `load "pump" {`, `load "lights" {`, `supply "twelve" {`, `load "radio" {`, `load "fan" {`, `charge_source "engine" {`} {
		i := strings.Index(text, "\n"+block) + 1
		end := i + strings.Index(text[i:], "\n}\n") + 1
		text = text[:end] + strings.TrimPrefix(circuit, "\n") + text[end+2:]
	}
	s := load(t, text)

	const meter10 = 2 * 1.91e-3 * (1 + 0.00393*55) // ohm, both conductors of 1 m of 10 mm2, IEC 60228 and 60028
	const short = 6000                             // A, two batteries of 3 kA
	far := func(ohms float64) float64 { return 25.6 / (25.6/short + ohms) }
	for _, c := range []struct {
		id   string
		want float64
	}{
		{"cable_run.string.south.b.current", 13.9},
		{"cable_run.string.south.b.current_operating", 10.9},
		{"cable_run.string.south.b.fault_current_near", 41.7},
		{"cable_run.string.south.b.fault_current_far", 41.7},
		{"cable_run.array.south.current", 41.7},
		{"cable_run.array.south.current_operating", 2*13.06 + 10.9},
		{"cable_run.charger.main.current", 70},
		{"cable_run.charger.main.current_operating", 60},
		{"cable_run.charger.main.voltage_base", 24},
		{"cable_run.ac_output.cabin.current", 2000 / (23 * 0.9)},
		{"cable_run.ac_output.cabin.current_operating", 2000 / (24 * 0.9)},
		{"cable_run.ac_output.cabin.resistance", meter10},
		{"cable_run.ac_output.cabin.voltage_drop", 2000 / (24 * 0.9) * meter10},
		{"cable_run.ac_output.cabin.loss", 2000 / (24 * 0.9) * 2000 / (24 * 0.9) * meter10},
		{"cable_run.ac_output.cabin.fault_current_near", short},
		{"cable_run.ac_output.cabin.fault_current_far", far(meter10)},
		{"cable_run.ac_output.cabin.bus_voltage", 28.6},
		{"cable_run.supply.twelve.current", 12 * 20 / (18 * 0.92)},
		{"cable_run.supply.twelve.current_operating", 12 * 20 / (24 * 0.92)},
		{"cable_run.charge_source.engine.current", 40},
		{"cable_run.charge_source.engine.current_operating", 40},
		{"cable_run.load.lights.current", 60.0 / 21},
		{"cable_run.load.lights.current_operating", 60.0 / 24},
		{"cable_run.load.fan.current", 22.0 / 22},
		{"cable_run.load.radio.current", 24.0 / 12},
		{"cable_run.load.radio.voltage_base", 12},
		{"cable_run.load.radio.fault_current_near", 20},
		{"cable_run.load.radio.bus_voltage", 12},
		{"cable_run.load.pump.current", 700.0 / 230},
		{"cable_run.load.pump.voltage_base", 230},
		{"cable_run.load.pump.fault_current_near", 4000.0 / 230},
		{"cable_run.load.pump.bus_voltage", 230},
		{"protection.load.radio.bus_voltage", 12},
		{"protection.ac_output.cabin.fault_current", short},
		{"protection.string.south.b.fault_current", 27.8},
		{"protection.bank.house.fault_current", short},
		{"protection.bank.house.each.fault_current", 3000},
		{"disconnect.supply.twelve.current", 12 * 20 / (18 * 0.92)},
		{"disconnect.supply.twelve.bus_voltage", 28.6},
		{"disconnect.array.south.bus_voltage", 89.42608},
	} {
		if got := number(t, s, c.id); !near(got, c.want, 1e-7) {
			t.Errorf("%s is %v, want %v", c.id, got, c.want)
		}
	}

	share := func(id string) float64 { return number(t, s, "cable_run."+id+".voltage_drop_share") }
	for id, want := range map[string]float64{
		"string.south.b":       share("string.south.b") + share("array.south"),
		"array.south":          share("string.south.b") + share("array.south"),
		"charger.main":         share("charger.main") + share("bank.house"),
		"ac_output.cabin":      share("ac_output.cabin") + share("bank.house"),
		"supply.twelve":        share("supply.twelve") + share("bank.house"),
		"charge_source.engine": share("charge_source.engine") + share("bank.house"),
		"load.lights":          share("load.lights") + share("bank.house"),
		"load.fan":             share("load.fan") + share("charger.main") + share("bank.house"),
		"load.radio":           share("load.radio"),
		"load.pump":            share("load.pump"),
		"bank.house":           share("bank.house"),
	} {
		if got := number(t, s, "cable_run."+id+".path_drop"); !near(got, want, 1e-7) {
			t.Errorf("path of %s loses %v, want %v", id, got, want)
		}
	}

	for id, want := range map[string]bool{
		"bank.house": true, "bank.house.each": true, "charger.main": true, "charge_source.engine": true, "string.south.b": true,
		"supply.twelve": false, "load.lights": false, "load.radio": false,
	} {
		if f := get(t, s, "protection."+id+".two_way"); !f.Known || f.Yes != want {
			t.Errorf("protection.%s two_way: %+v, want %v", id, f, want)
		}
	}
	if f := get(t, s, "protection.ac_output.cabin.two_way"); f.Known || !slices.Contains(f.Missing, "inverter.moor-2000.charge_current_max") {
		t.Errorf("the inverter does not say whether it charges: %+v", f)
	}
}

// Around the temperature at which a controller begins to give less: below, at and
// above it. 2 %/K above 40 degC of 70 A, with the setting at 80 A out of the way.
func TestDerating(t *testing.T) {
	for hottest, want := range map[string]float64{"39 degC": 70, "40 degC": 70, "41 degC": 68.6, "50 degC": 56, "90 degC": 0} {
		text := strings.Replace(strings.Replace(hut, `charge_current           = "60 A"`, `charge_current           = "80 A"`, 1), `hottest    = "35 degC"`, `hottest    = "`+hottest+`"`, 1)
		if got := number(t, load(t, text), "charger.main.charge_current_limit"); !near(got, want, 1e-9) {
			t.Errorf("at %s the limit is %v A, want %v", hottest, got, want)
		}
	}
}

// One source alone counts where it gives more than all that run together.
func TestSourceAlone(t *testing.T) {
	text := strings.Replace(hut, "together       = true", "together       = false", 1)
	for current, want := range map[string]float64{"40 A": 60, "60 A": 60, "61 A": 61} {
		s := load(t, strings.Replace(text, `charge_current = "40 A"`, `charge_current = "`+current+`"`, 1))
		if got := number(t, s, "bank.house.charge_current_total"); !near(got, want, 1e-9) {
			t.Errorf("with %s alone the total is %v A, want %v", current, got, want)
		}
	}
}

// Lead has no management to open; iron phosphate whose data sheet is silent about
// its own stays unknown. With one parallel string lost nothing is left of one.
func TestChargeAccepted(t *testing.T) {
	bms := "  bms {\n    charge_cutoff    = \"90 A\"\n    discharge_cutoff = \"160 A\"\n  }\n"
	silent := strings.Replace(hut, bms, "", 1)
	if f := get(t, load(t, silent), "bank.house.charge_current_accepted"); f.Known {
		t.Errorf("iron phosphate without a word on its management accepts %v", f.Value())
	}
	lead := strings.Replace(silent, `"lifepo4"`, `"agm"`, 1)
	if got := number(t, load(t, lead), "bank.house.charge_current_accepted"); got != 200 {
		t.Errorf("lead accepts %v A, want 200", got)
	}
	single := strings.Replace(hut, "parallel               = 2", "parallel               = 1", 1)
	if got := number(t, load(t, single), "bank.house.charge_current_accepted_one_lost"); got != 0 {
		t.Errorf("one string, lost, accepts %v A", got)
	}
	if got := number(t, load(t, hut), "bank.house.charge_current_accepted_one_lost"); got != 90 {
		t.Errorf("two strings, one lost, accept %v A, want 90", got)
	}
}

// Equalizing counts when it is on, and not when it is off.
func TestEqualize(t *testing.T) {
	set := func(on string) string {
		return strings.Replace(hut, "equalize                 = false", "equalize                 = "+on+"\n    equalize_voltage         = \"31 V\"", 1)
	}
	for on, want := range map[string]float64{"true": 31, "false": 28.6} {
		if got := number(t, load(t, set(on)), "bank.house.voltage_max"); !near(got, want, 1e-12) {
			t.Errorf("equalize = %s: voltage_max is %v, want %v", on, got, want)
		}
	}
	if got := number(t, load(t, set("true")), "charger.main.equalize_per_cell"); !near(got, 31.0/8, 1e-9) {
		t.Errorf("equalize per cell is %v", got)
	}
}

// A bifacial panel counts with the light from behind where that is more.
func TestBifacial(t *testing.T) {
	for stated, want := range map[string]float64{"15.2 A": 15.2, "13.9 A": 13.9, "13.0 A": 13.9} {
		s := load(t, strings.Replace(hut, `max_series_fuse    = "25 A"`, "max_series_fuse    = \"25 A\"\n  isc_bifacial = \""+stated+"\"", 1))
		f := get(t, s, "string.south.a.isc_stc")
		if !near(f.SI, want, 1e-12) || len(f.Assumed) != 0 {
			t.Errorf("with %s from both sides isc_stc is %v A, want %v; assumed %v", stated, f.SI, want, f.Assumed)
		}
	}
}

// Inputs of one controller are told apart; arrays on one input are not.
func TestInputs(t *testing.T) {
	second := "\narray \"west\" {\n  charger = \"main\"\n  pv_input = %\n  mounting = \"roof_flush\"\n  string \"a\" {\n    panels = { \"slate-410\" = 3 }\n  }\n}\n"
	base := strings.Replace(hut, `kind                 = "mppt"`, "kind                 = \"mppt\"\n  pv_inputs = 2", 1)
	together := load(t, base+strings.Replace(second, "%", "1", 1))
	if got := number(t, together, "array.south.voc_cold"); !near(got, 3*37.4*(1+0.0026*52), 1e-8) {
		t.Errorf("array south carries %v V of its input", got)
	}
	if got := number(t, together, "pv_input.main.1.parallel_strings"); got != 4 {
		t.Errorf("%v strings on the input", got)
	}
	if got := number(t, together, "cable_run.array.south.current"); !near(got, 3*13.9, 1e-9) {
		t.Errorf("the array's own run carries %v A", got)
	}
	apart := load(t, base+strings.Replace(second, "%", "2", 1))
	for id, want := range map[string]float64{
		"pv_input.main.1.isc_stc": 41.7, "pv_input.main.2.isc_stc": 13.9, "string.west.a.fault_current": 0,
		"pv_input.main.2.cell_hot": 29 + (44+18-20)*1.25, "charger.main.pv_power": 2430 + 1230, "system.pv_voltage_max": 3 * 37.4 * (1 + 0.0026*52),
	} {
		if got := number(t, apart, id); !near(got, want, 1e-8) {
			t.Errorf("%s is %v, want %v", id, got, want)
		}
	}
}

// The short-circuit current is the data sheet's, or follows from the internal
// resistance; the stated one wins.
func TestBatteryShortCircuit(t *testing.T) {
	resistance := strings.Replace(hut, `short_circuit_current = "3 kA"`, `internal_resistance = "8 mohm"`, 1)
	if got := number(t, load(t, resistance), "bank.house.short_circuit_current"); !near(got, 2*25.6/0.008, 1e-9) {
		t.Errorf("from 8 mohm: %v A", got)
	}
	both := strings.Replace(hut, `short_circuit_current = "3 kA"`, "short_circuit_current = \"3 kA\"\n  internal_resistance = \"8 mohm\"", 1)
	if got := number(t, load(t, both), "bank.house.short_circuit_current"); got != 6000 {
		t.Errorf("stated: %v A", got)
	}
	neither := load(t, without(t, hut, `short_circuit_current = "3 kA"`))
	if f := get(t, neither, "protection.charger.main.fault_current"); f.Known || f.Missing[0] != "battery.fell-200.short_circuit_current" {
		t.Errorf("with neither: %+v", f)
	}
}

// A controller that is still set to the old bank's voltage lowers neither what its
// devices are judged against nor what the array must overcome.
func TestSettingOfAnotherBank(t *testing.T) {
	old := strings.NewReplacer(`absorption               = "28.4 V"`, `absorption               = "14.2 V"`, `"28.6 V"`, `"14.4 V"`).Replace(hut)
	s := load(t, old)
	if got := number(t, s, "bank.house.voltage_max"); !near(got, 25.6, 1e-12) {
		t.Errorf("voltage_max is %v V", got)
	}
	hot, above := number(t, s, "pv_input.main.1.voc_hot"), number(t, s, "controller.ridge-70.start_above_bank")
	if got := number(t, s, "pv_input.main.1.start_headroom"); !near(got, hot-25.6-above, 1e-9) {
		t.Errorf("start_headroom is %v V", got)
	}
}

// What a controller loses in the hottest air protects no battery: the bank is
// judged by what it gives on a cool noon.
func TestHeatDoesNotProtectTheBank(t *testing.T) {
	hot := strings.Replace(hut, `hottest    = "35 degC"`, `hottest    = "60 degC"`, 1)
	cool, warm := number(t, load(t, hut), "bank.house.charge_current_total"), number(t, load(t, hot), "bank.house.charge_current_total")
	if limit := number(t, load(t, hot), "charger.main.charge_current_limit"); limit >= 60 || cool != warm || cool != 100 {
		t.Errorf("limit %v A in heat, total %v A cool and %v A in heat", limit, cool, warm)
	}
}
