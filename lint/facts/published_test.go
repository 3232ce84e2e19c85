package facts_test

import (
	"strings"
	"testing"
)

// small is the least design that has an array; published examples change what
// they are about.
const small = `
design "Example" {}
site {
  coldest = "COLDEST"
  hottest = "30 degC"
}
panel "p" {
  pmax            = "400 W"
  voc             = "VOC"
  isc             = "ISC"
  vmp             = "30 V"
  imp             = "3 A"
  temp_voc        = "TEMP"
  temp_isc        = "0 %/K"
  temp_pmax       = "-0.4 %/K"
  noct            = "50 degC"
  max_series_fuse = "20 A"
}
controller "c" {
  charge_current_max = "100 A"
  full_power_to      = "40 degC"
  pv_backfeed_max    = "0 A"
}
battery "b" {
  chemistry             = "CHEMISTRY"
  nominal               = "NOMINAL"
  capacity              = "400 Ah"
  cells                 = CELLS
  short_circuit_current = "2.4 kA"
}
bank "k" {
  battery                = "b"
  series                 = SERIES
  parallel               = 3
  coldest                = "5 degC"
  low_voltage_disconnect = "10.75 V"
}
charger "m" {
  controller = "c"
  bank       = "k"
  hottest    = "30 degC"
  settings {
    bank_voltage             = "24 V"
    charge_current           = "100 A"
    absorption               = "ABSORPTION"
    equalize                 = false
    temperature_compensation = "COMPENSATION"
  }
}
array "r" {
  charger  = "m"
  mounting = "open_rack"
  string "s" {
    panels   = { "p" = COUNT }
    parallel = PARALLEL
  }
}
`

// example fills in the small design; what is not named keeps a common value.
func example(t *testing.T, more string, pairs ...string) string {
	t.Helper()
	pairs = append(pairs, "COLDEST", "-10 degC", "VOC", "40 V", "ISC", "3.25 A", "TEMP", "-0.3 %/K", "CHEMISTRY", "flooded",
		"NOMINAL", "12 V", "CELLS", "6", "SERIES", "1", "ABSORPTION", "14.4 V", "COMPENSATION", "0 mV/K", "COUNT", "1", "PARALLEL", "1")
	return strings.NewReplacer(pairs...).Replace(small) + more
}

// A published value and the fact that must agree with it. factor is what a code
// multiplies the fact by, 1 where it does not.
type published struct {
	source, id   string
	factor, want float64
	tolerance    float64
	design       []string
	more         string
}

func TestPublishedVoltages(t *testing.T) {
	const own = "data-sheet coefficient, recomputed from the stated inputs"
	check(t, []published{
		{source: own, id: "string.r.s.voc_cold", want: 54.1778, tolerance: 1e-5, design: []string{"VOC", "49.5 V", "TEMP", "-0.27 %/K", "COLDEST", "-10 degC"}},
		{source: own, id: "pv_input.m.1.voc_cold", want: 51.1965, tolerance: 1e-5, design: []string{"VOC", "45.0 V", "TEMP", "-0.27 %/degC", "COLDEST", "-26 degC"}},
		{source: own + ", coefficient in V/K", id: "array.r.voc_cold", want: 39.05, tolerance: 1e-5, design: []string{"VOC", "32.9 V", "TEMP", "-0.123 V/K", "COLDEST", "-25 degC"}},
		{source: own + ", coefficient in mV/K", id: "array.r.voc_cold", want: 39.05, tolerance: 1e-5, design: []string{"VOC", "32.9 V", "TEMP", "-123 mV/K", "COLDEST", "-25 degC"}},
		{source: "definition of NOCT, IEC 61215: NOCT 50 degC, air 30 degC, full sun", id: "pv_input.m.1.cell_hot", want: 67.5, tolerance: 1e-12},
	})
}

// Wiles, Photovoltaic Power Systems and the National Electrical Code: Suggested
// Practices, Sandia National Laboratories, design examples: ten modules of Isc
// 3.25 A in two sub-arrays of five; a 500 W inverter at 10.75 V and 90 %. The
// code's own factors stand in factor: here the facts are free of them.
func TestPublishedCurrents(t *testing.T) {
	const wiles = "Wiles, Suggested Practices, recomputed"
	const inverter = `
inverter "i" {
  dc_min     = "10.75 V"
  continuous = "CONTINUOUS"
  efficiency = "EFFICIENCY"
}
ac_output "o" {
  inverter   = "i"
  bank       = "k"
  low_cutoff = "CUTOFF"
}
`
	const load = `
load "l" {
  from        = "bank.k"
  power       = "50 W"
  voltage_min = "10 V"
}
`
	wilesInverter := strings.NewReplacer("CONTINUOUS", "500 W", "EFFICIENCY", "90 %", "CUTOFF", "10.75 V").Replace(inverter)
	notes := strings.NewReplacer("CONTINUOUS", "2500 W", "EFFICIENCY", "85 %", "CUTOFF", "22 V").Replace(inverter)
	check(t, []published{
		{source: wiles, id: "string.r.s.isc_max", want: 4.06, tolerance: 1e-3},
		{source: wiles, id: "string.r.s.isc_max", factor: 1.25, want: 5.08, tolerance: 1e-3},
		{source: wiles, id: "pv_input.m.1.isc_max", want: 20.3, tolerance: 1e-3, design: []string{"PARALLEL", "5"}},
		{source: wiles + " (40.6 A from memory)", id: "array.r.isc_max", want: 40.6, tolerance: 1e-3, design: []string{"PARALLEL", "10"}},
		{source: wiles + " (50.7 A from memory)", id: "array.r.isc_max", factor: 1.25, want: 50.7, tolerance: 2e-3, design: []string{"PARALLEL", "10"}},
		{source: wiles + " (64.6 A from memory)", id: "ac_output.o.current", factor: 1.25, want: 64.6, tolerance: 1e-3, more: wilesInverter},
		{source: wiles + " (71 A from memory)", id: "bank.k.discharge_current_continuous", factor: 1.25, want: 71, tolerance: 3e-3, more: wilesInverter + load},
		{source: "study notes on inverter input: 2500 W, 22 V, 0.85", id: "ac_output.o.current", want: 133.7, tolerance: 1e-3, more: notes},
		{source: "study notes on inverter input, x 1.25", id: "ac_output.o.current", factor: 1.25, want: 167.1, tolerance: 1e-3, more: notes},
		{source: "study notes: string of Isc 11.2 A", id: "string.r.s.isc_max", want: 14.0, tolerance: 1e-9, design: []string{"ISC", "11.2 A"}},
		{source: "study notes: string of Isc 11.2 A", id: "string.r.s.isc_max", factor: 1.25, want: 17.5, tolerance: 1e-9, design: []string{"ISC", "11.2 A"}},
	})
}

func TestPublishedFaultCurrents(t *testing.T) {
	const second = `
panel "old" {
  isc             = "4 A"
  max_series_fuse = "10 A"
}
array "r2" {
  charger = "m"
  string "s" {
    panels   = { "old" = 1 }
  }
}
`
	check(t, []published{
		{source: "IEC 62548 example: four strings of 12.28 A", id: "string.r.s.fault_current", want: 36.84, tolerance: 1e-9, design: []string{"ISC", "12.28 A", "PARALLEL", "4"}},
		{source: "unlike strings one by one, recomputed: 13.9 A beside an old panel", id: "string.r2.s.fault_current", factor: 1.25, want: 17.375, tolerance: 1e-9, design: []string{"ISC", "13.9 A"}, more: second},
		{source: "the same, the other way", id: "string.r.s.fault_current", want: 4, tolerance: 1e-9, design: []string{"ISC", "13.9 A"}, more: second},
		{source: "short circuit of a bank: three strings of 2.4 kA, series adds none", id: "bank.k.short_circuit_current", want: 7200, tolerance: 1e-9, design: []string{"SERIES", "2"}},
	})
}

func TestPublishedBankValues(t *testing.T) {
	check(t, []published{
		{source: "common practice: 24 cells at 2.40 V and 5 degC, -5 mV/K, recomputed", id: "bank.k.voltage_max", want: 60.00, tolerance: 1e-9,
			design: []string{"SERIES", "4", "ABSORPTION", "57.6 V", "COMPENSATION", "-5 mV/K"}},
		{source: "the same for each cell", id: "charger.m.absorption_per_cell", want: 2.40, tolerance: 1e-9, design: []string{"SERIES", "4", "ABSORPTION", "57.6 V"}},
		{source: "common practice: 100 A is 1200 W at 12 V", id: "charger.m.full_power_nominal", want: 1200, tolerance: 1e-9},
		{source: "common practice: twice the voltage, twice the power", id: "charger.m.full_power_nominal", want: 4800, tolerance: 1e-9, design: []string{"SERIES", "4"}},
		{source: "16 iron-phosphate cells at 3.65 V", id: "bank.k.voltage_max", want: 58.4, tolerance: 1e-9,
			design: []string{"CHEMISTRY", "lifepo4", "NOMINAL", "51.2 V", "CELLS", "16", "ABSORPTION", "58.4 V"}},
		{source: "25.6 V is a 24 V system", id: "bank.k.system_voltage", want: 24, tolerance: 1e-12, design: []string{"NOMINAL", "25.6 V", "CELLS", "8"}},
	})
}

// Resistances and drops: NEC chapter 9 table 8 (stranded, uncoated copper, 75
// degC, ohm/kft) and IEC 60228 class 5 (20 degC, ohm/km, carried to 75 degC by
// IEC 60028), both transcribed; the drop of 16 AWG recomputed from table 8.
func TestPublishedRuns(t *testing.T) {
	run := func(size string) string {
		return `
load "l" {
  from        = "bank.k"
  power       = "48 W"
  voltage_min = "12 V"
  cable_run {
    size   = "` + size + `"
    length = "100 ft"
  }
}
`
	}
	const kft = 2 * 100 / 1000.0 // ohm/kft into ohm of both conductors of 100 ft
	const km = 2 * 100 * 0.3048 / 1000 * (1 + 0.00393*55)
	cases := []published{
		{source: "drop of 16 AWG stranded, 100 ft one way, 4 A", id: "cable_run.load.l.voltage_drop", want: 3.992, tolerance: 5e-3, more: run("16 AWG")},
	}
	for size, ohms := range map[string]float64{"14 AWG": 3.14, "10 AWG": 1.24, "4 AWG": 0.308, "1/0 AWG": 0.122, "4/0 AWG": 0.0608, "250 kcmil": 0.0515} {
		cases = append(cases, published{source: "NEC chapter 9 table 8, " + size, id: "cable_run.load.l.resistance", want: ohms * kft, tolerance: 5e-3, more: run(size)})
	}
	for size, ohms := range map[string]float64{"1.5 mm2": 13.3, "4 mm2": 4.95, "16 mm2": 1.21, "70 mm2": 0.272} {
		cases = append(cases, published{source: "IEC 60228 class 5, " + size, id: "cable_run.load.l.resistance", want: ohms * km, tolerance: 1e-9, more: run(size)})
	}
	check(t, cases)
}

func check(t *testing.T, cases []published) {
	t.Helper()
	for _, c := range cases {
		t.Run(c.id+"/"+c.source, func(t *testing.T) {
			s := load(t, example(t, c.more, c.design...))
			factor := c.factor
			if factor == 0 {
				factor = 1
			}
			if got := number(t, s, c.id) * factor; !near(got, c.want, c.tolerance) {
				t.Errorf("%s: %v x %s = %v, want %v within %g", c.source, factor, c.id, got, c.want, c.tolerance)
			}
		})
	}
}
