package battery

import (
	"encoding/json"
	"errors"
	"math"
	"os"
	"testing"

	"pgregory.net/rapid"

	"stringline/lint/physics"
	"stringline/schema/quantity"
)

type publishedTable struct {
	Compensated []struct {
		Source, Setting, Coefficient, Temperature string
		Cells                                     int
		Volts                                     float64
	}
	ShortCircuit []struct {
		Source, Battery, Voltage, Resistance string
		Parallel                             int
		Amps                                 float64
	} `json:"short_circuit"`
	ChargeRate []struct {
		Source, Current, Capacity string
		Percent                   float64
	} `json:"charge_rate"`
}

func published(t *testing.T) publishedTable {
	t.Helper()
	text, err := os.ReadFile("../../../testdata/published/battery.json")
	if err != nil {
		t.Fatal(err)
	}
	var table publishedTable
	if err := json.Unmarshal(text, &table); err != nil {
		t.Fatal(err)
	}
	if len(table.Compensated) != 1 || len(table.ShortCircuit) != 2 || len(table.ChargeRate) != 2 {
		t.Fatal("rows are missing")
	}
	return table
}

func si(t *testing.T, text string) float64 {
	t.Helper()
	q, err := quantity.Parse(text)
	if err != nil {
		t.Fatal(err)
	}
	return q.SI
}

func refused(t *testing.T, what string, err error) {
	t.Helper()
	var refusal *physics.Refusal
	if !errors.As(err, &refusal) {
		t.Errorf("%s: got %v, want a refusal", what, err)
	}
}

// Source: check value F1 (common practice): 24 cells at 2.40 V, 5 degC, -5 mV/K
// a cell make 60.00 V.
func TestCompensatedVoltage(t *testing.T) {
	for _, row := range published(t).Compensated {
		got, err := CompensatedVoltage(si(t, row.Setting), row.Cells, si(t, row.Coefficient), si(t, row.Temperature))
		if err != nil || math.Abs(got-row.Volts) > 1e-9 {
			t.Errorf("%s: %v V, %v; published %v V", row.Source, got, err, row.Volts)
		}
	}
	at25, err := CompensatedVoltage(28.8, 12, -0.005, CompensationReference)
	if err != nil || at25 != 28.8 {
		t.Errorf("at 25 degC nothing moves: %v, %v", at25, err)
	}
	_, err = CompensatedVoltage(28.8, 0, -0.005, 298.15)
	refused(t, "no cells", err)
	_, err = CompensatedVoltage(28.8, 12, -0.005, 5) // a temperature in degC by mistake
	refused(t, "5 K", err)
	_, err = CompensatedVoltage(math.NaN(), 12, -0.005, 298.15)
	refused(t, "no number", err)
}

// Source: check value H and the project's notes on batteries of boats.
func TestShortCircuit(t *testing.T) {
	for _, row := range published(t).ShortCircuit {
		one := 0.0
		if row.Battery != "" {
			one = si(t, row.Battery)
		} else {
			var err error
			if one, err = ShortCircuitOfResistance(si(t, row.Voltage), si(t, row.Resistance)); err != nil {
				t.Fatal(err)
			}
		}
		got, err := ShortCircuit(row.Parallel, one)
		if err != nil || math.Abs(got-row.Amps) > 1e-5*row.Amps {
			t.Errorf("%s: %v A, %v; published %v A", row.Source, got, err, row.Amps)
		}
	}
	_, err := ShortCircuit(0, 1000)
	refused(t, "no string", err)
	_, err = ShortCircuitOfResistance(12.8, 0)
	refused(t, "no resistance", err)
	_, err = ShortCircuitOfResistance(0, 0)
	refused(t, "nothing", err)
}

// Source: common practice.
func TestChargeRate(t *testing.T) {
	for _, row := range published(t).ChargeRate {
		got, err := ChargeRate(si(t, row.Current), si(t, row.Capacity))
		if err != nil || math.Abs(100*got-row.Percent) > 1e-9 {
			t.Errorf("%s: %v %%, %v; published %v %%", row.Source, 100*got, err, row.Percent)
		}
	}
	_, err := ChargeRate(20, 0)
	refused(t, "no capacity", err)
	_, err = ChargeRate(-1, 720000)
	refused(t, "negative current", err)
}

// Classes of the specification: within -8 to +10 %, both ends included.
func TestSystemVoltage(t *testing.T) {
	for _, c := range []struct{ nominal, want float64 }{
		{12, 12}, {12.8, 12}, {24, 24}, {25.6, 24}, {25.9, 24}, {36, 36}, {38.4, 36}, {48, 48}, {51.2, 48}, {51.8, 48},
		// Both ends of every class.
		{12 * 0.92, 12}, {12 * 1.10, 12}, {24 * 0.92, 24}, {24 * 1.10, 24}, {36 * 0.92, 36}, {36 * 1.10, 36}, {48 * 0.92, 48}, {48 * 1.10, 48},
		{11.1, 12},  // three cells of nickel manganese cobalt
		{44.4, 48},  // twelve of them
		{22.2, 24},  // six
		{13.2, 12},  // at the upper end, as decimal text gives it
		{11.04, 12}, // at the lower end
	} {
		if got, err := SystemVoltage(c.nominal); err != nil || got != c.want {
			t.Errorf("%v V: %v, %v; want %v", c.nominal, got, err, c.want)
		}
	}
	for _, nominal := range []float64{0, 6, 11.03, 13.21, 22.07, 26.41, 33.11, 39.61, 44.15, 52.81, 96, -24, math.NaN(), math.Inf(1)} {
		_, err := SystemVoltage(nominal)
		refused(t, "no class", err)
	}
	// The classes do not overlap: nothing has two.
	for i := 1; i < len(classes); i++ {
		if classes[i-1]*(1+classAbove) >= classes[i]*(1-classBelow) {
			t.Errorf("classes %v and %v V overlap", classes[i-1], classes[i])
		}
	}
}

// The assumed bulk voltage lies between empty and full of each chemistry
// (common practice, from memory): never at a limit of the cell.
func TestBulkVoltagePerCell(t *testing.T) {
	for chemistry, window := range map[string][2]float64{
		"flooded": {1.95, 2.40}, "agm": {1.95, 2.40}, "gel": {1.95, 2.35}, "lifepo4": {3.2, 3.65}, "nmc": {3.4, 4.2}, "sodium_ion": {2.5, 4.0},
	} {
		got, err := BulkVoltagePerCell(chemistry)
		if err != nil || got <= window[0] || got >= window[1] {
			t.Errorf("%s: %v V, %v; want between %v and %v V", chemistry, got, err, window[0], window[1])
		}
		if lead := IsLead(chemistry); lead != (got == 2.15) {
			t.Errorf("%s: lead %v at %v V", chemistry, lead, got)
		}
	}
	for _, chemistry := range []string{"", "lead", "LiFePO4"} {
		_, err := BulkVoltagePerCell(chemistry)
		refused(t, chemistry, err)
	}
}

// Compensation is odd about 25 degC and moves a bank by its number of cells.
func TestCompensationProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		setting := rapid.Float64Range(10, 70).Draw(t, "setting")
		cells := rapid.IntRange(1, 30).Draw(t, "cells")
		coefficient := rapid.Float64Range(-0.006, 0).Draw(t, "coefficient")
		away := rapid.Float64Range(0, 60).Draw(t, "away")
		cold, err := CompensatedVoltage(setting, cells, coefficient, CompensationReference-away)
		if err != nil {
			t.Fatal(err)
		}
		hot, err := CompensatedVoltage(setting, cells, coefficient, CompensationReference+away)
		if err != nil {
			t.Fatal(err)
		}
		if cold < setting || math.Abs(cold+hot-2*setting) > 1e-9 {
			t.Fatalf("cold %v, setting %v, hot %v", cold, setting, hot)
		}
	})
}
