package converter

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

// Source: check values B3 (recomputed) and B2 (from memory): what an inverter
// draws at its lowest voltage, and 1.25 of it for continuous duty.
func TestInputCurrent(t *testing.T) {
	text, err := os.ReadFile("../../../testdata/published/inverter-input.json")
	if err != nil {
		t.Fatal(err)
	}
	var table struct {
		Rows []struct {
			Source, Power, Voltage, Efficiency string
			Amps                               float64
			ContinuousDuty                     float64 `json:"continuous_duty_amps"`
		} `json:"input_current"`
	}
	if err := json.Unmarshal(text, &table); err != nil || len(table.Rows) != 2 {
		t.Fatalf("%d rows, %v", len(table.Rows), err)
	}
	for _, row := range table.Rows {
		got, err := InputCurrent(si(t, row.Power), si(t, row.Voltage), si(t, row.Efficiency))
		// The published figures have three or four digits.
		if err != nil || math.Abs(got-row.Amps) > 0.05 || math.Abs(1.25*got-row.ContinuousDuty) > 0.05 {
			t.Errorf("%s: %v A, %v; published %v A", row.Source, got, err, row.Amps)
		}
	}
	_, err = InputCurrent(100, 0, 0.9)
	refused(t, "no voltage", err)
	_, err = InputCurrent(100, 24, 0)
	refused(t, "no efficiency", err)
	_, err = InputCurrent(math.Inf(1), 24, 0.9)
	refused(t, "no end of power", err)
}

func TestInputPower(t *testing.T) {
	for _, c := range []struct{ output, efficiency, idle, want float64 }{
		{0, 0.9, 12, 12}, {900, 0.9, 12, 1012}, {100, 1, 0, 100},
	} {
		if got, err := InputPower(c.output, c.efficiency, c.idle); err != nil || math.Abs(got-c.want) > 1e-9 {
			t.Errorf("%+v: %v, %v", c, got, err)
		}
	}
	for _, c := range [][3]float64{{-1, 0.9, 0}, {1, 0, 0}, {1, 1.01, 0}, {1, 90, 0}, {1, 0.9, -1}, {math.NaN(), 0.9, 0}} {
		_, err := InputPower(c[0], c[1], c[2])
		refused(t, "bad input", err)
	}
}

func TestChain(t *testing.T) {
	if got, err := Chain(); err != nil || got != 1 {
		t.Errorf("no converter: %v, %v", got, err)
	}
	if got, err := Chain(0.9, 0.8); err != nil || math.Abs(got-0.72) > 1e-15 {
		t.Errorf("two: %v, %v", got, err)
	}
	_, err := Chain(0.9, 1.1)
	refused(t, "more out than in", err)
}

// The limit by hand: 60 A to 40 degC, 2 % of it lost with each kelvin above.
func TestLimit(t *testing.T) {
	degC := func(c float64) float64 { return c + 273.15 }
	limit := Limit{Setting: 50, Rating: 60, Derate: 0.02, FullPowerTo: degC(40)}
	for _, c := range []struct{ celsius, want float64 }{
		{-30, 50}, {40, 50}, {45, 50}, // 54 A at 45 degC, the setting is lower
		{50, 48}, {65, 30}, {89, 1.2}, {90, 0}, {120, 0},
	} {
		if got, err := limit.Current(degC(c.celsius)); err != nil || math.Abs(got-c.want) > 1e-9 {
			t.Errorf("%v degC: %v A, %v; want %v A", c.celsius, got, err, c.want)
		}
	}
	// The corner itself, on both sides.
	limit.Setting = 60
	for _, c := range []struct{ celsius, want float64 }{{40, 60}, {40 - 1e-6, 60}, {40 + 1e-6, 60 - 1.2e-6}} {
		if got, err := limit.Current(degC(c.celsius)); err != nil || math.Abs(got-c.want) > 1e-9 {
			t.Errorf("%v degC: %v A, %v; want %v A", c.celsius, got, err, c.want)
		}
	}
	// Without derating no temperature is needed.
	if got, err := (Limit{Setting: 50, Rating: 60}).Current(math.NaN()); err != nil || got != 50 {
		t.Errorf("no derating: %v, %v", got, err)
	}
	for name, bad := range map[string]Limit{
		"setting":        {Setting: -1, Rating: 60},
		"rating":         {Setting: 50, Rating: math.NaN()},
		"derate":         {Setting: 50, Rating: 60, Derate: -0.01, FullPowerTo: 313.15},
		"degC as kelvin": {Setting: 50, Rating: 60, Derate: 0.01, FullPowerTo: 40},
	} {
		_, err := bad.Current(300)
		refused(t, name, err)
	}
	_, err := limit.Current(45) // a temperature in degC by mistake
	refused(t, "45 K", err)
}

// Hotter never gives more, and nothing gives less than zero or more than either
// setting or rating.
func TestLimitProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		limit := Limit{
			Setting:     rapid.Float64Range(0, 200).Draw(t, "setting"),
			Rating:      rapid.Float64Range(0, 200).Draw(t, "rating"),
			Derate:      rapid.Float64Range(0, 1).Draw(t, "derate"),
			FullPowerTo: rapid.Float64Range(coldest, hottest).Draw(t, "full power to"),
		}
		cool := rapid.Float64Range(coldest, hottest).Draw(t, "cool")
		warm := rapid.Float64Range(cool, hottest).Draw(t, "warm")
		a, err := limit.Current(cool)
		if err != nil {
			t.Fatal(err)
		}
		b, err := limit.Current(warm)
		if err != nil {
			t.Fatal(err)
		}
		if b > a || b < 0 || a > limit.Setting || a > limit.Rating {
			t.Fatalf("%v A cool, %v A warm", a, b)
		}
	})
}

func TestAirRise(t *testing.T) {
	for _, c := range []struct{ controller, site, want float64 }{{318.15, 302.15, 16}, {302.15, 302.15, 0}, {298.15, 302.15, 0}} {
		if got, err := AirRise(c.controller, c.site); err != nil || math.Abs(got-c.want) > 1e-9 {
			t.Errorf("%+v: %v, %v", c, got, err)
		}
	}
	_, err := AirRise(45, 29)
	refused(t, "degC as kelvin", err)
}
