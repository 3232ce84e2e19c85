package panel

import (
	"encoding/json"
	"errors"
	"math"
	"os"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"stringline/lint/physics"
	"stringline/schema/quantity"
)

func published(t *testing.T, name string, table any) {
	t.Helper()
	text, err := os.ReadFile("../../../testdata/published/" + name)
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(text, table); err != nil {
		t.Fatalf("reading %s: %v", name, err)
	}
}

func parse(t *testing.T, text string) quantity.Quantity {
	t.Helper()
	q, err := quantity.Parse(text)
	if err != nil {
		t.Fatal(err)
	}
	return q
}

func refused(t *testing.T, what string, err error) {
	t.Helper()
	var refusal *physics.Refusal
	if !errors.As(err, &refusal) {
		t.Errorf("%s: got %v, want a refusal", what, err)
	}
}

// Source: check values A2 and A3 (data-sheet coefficient, NEC 690.7 method 1),
// E5 (NOCT).
func TestPublishedTemperatures(t *testing.T) {
	var table struct {
		OpenCircuit []struct {
			Voc, Coefficient, Cell string
			Volts, Tolerance       float64
		} `json:"open_circuit"`
		Cell []struct{ NOCT, Air, Irradiance, Cell string }
	}
	published(t, "panel-temperature.json", &table)
	if len(table.OpenCircuit) != 3 || len(table.Cell) != 1 {
		t.Fatal("rows are missing")
	}
	for _, row := range table.OpenCircuit {
		voc, coefficient := parse(t, row.Voc).SI, parse(t, row.Coefficient)
		share := coefficient.SI
		if coefficient.Unit.Symbol == "V/K" {
			var err error
			if share, err = PerKelvin(coefficient.SI, voc); err != nil {
				t.Fatal(err)
			}
		}
		got, err := OpenCircuit(voc, share, parse(t, row.Cell).SI)
		if err != nil {
			t.Fatal(err)
		}
		if math.Abs(got-row.Volts) > row.Tolerance {
			t.Errorf("%s, %s at %s: %.6f V, published %.6f V", row.Voc, row.Coefficient, row.Cell, got, row.Volts)
		}
	}
	for _, row := range table.Cell {
		noct, air, cell := parse(t, row.NOCT).SI, parse(t, row.Air).SI, parse(t, row.Cell).SI
		got, err := Cell(air, noct, 0, parse(t, row.Irradiance).SI)
		if err != nil {
			t.Fatal(err)
		}
		hot, err := CellHot(air, noct, 0)
		if err != nil {
			t.Fatal(err)
		}
		if math.Abs(got-cell) > 1e-9 || math.Abs(hot-cell) > 1e-9 {
			t.Errorf("NOCT %s, air %s: %v K and %v K, published %v K", row.NOCT, row.Air, got, hot, cell)
		}
	}
}

// At 800 W/m2 and 20 degC a panel in free air has its nominal operating cell
// temperature: the definition (IEC 61215). In the dark it has the air's.
func TestCellByDefinition(t *testing.T) {
	const noct = 318.15
	for _, c := range []struct{ air, irradiance, want float64 }{{293.15, 800, noct}, {293.15, 0, 293.15}, {263.15, 800, noct - 30}} {
		got, err := Cell(c.air, noct, 0, c.irradiance)
		if err != nil || math.Abs(got-c.want) > 1e-9 {
			t.Errorf("air %v, %v W/m2: %v, %v; want %v", c.air, c.irradiance, got, err, c.want)
		}
	}
}

// Common practice, from memory: what roofs add.
func TestMountings(t *testing.T) {
	got := map[string]float64{}
	for _, mounting := range []string{"open_rack", "portable", "roof_standoff", "roof_flush"} {
		rise, err := MountingRise(mounting)
		if err != nil {
			t.Fatal(err)
		}
		got[mounting] = rise
	}
	if diff := cmp.Diff(map[string]float64{"open_rack": 0, "portable": 0, "roof_standoff": 6, "roof_flush": 18}, got); diff != "" {
		t.Error(diff)
	}
	_, err := MountingRise("tracker")
	refused(t, "tracker", err)
	// Trade practice (common practice): cell = air + 25 K on a rack, + 30 to 35 K
	// on a roof in ordinary sun. At 800 W/m2 and NOCT 45 degC the rack is 25 K.
	rack, err := Cell(303.15, 318.15, got["open_rack"], 800)
	if err != nil || math.Abs(rack-303.15-25) > 1e-9 {
		t.Errorf("rack: %v K over air, %v", rack-303.15, err)
	}
	roof, err := Cell(303.15, 318.15, got["roof_standoff"], 800)
	if err != nil || roof-303.15 < 30 || roof-303.15 > 35 {
		t.Errorf("roof: %v K over air, %v; trade practice 30 to 35 K", roof-303.15, err)
	}
}

func TestShortCircuitMax(t *testing.T) {
	const isc, alpha = 13.9, 0.0005
	for _, c := range []struct {
		name       string
		cell, want float64
	}{
		{"standard", StandardCell, 17.375}, // 1.25 x 13.9 A, check value B1
		{"cold is not credited", StandardCell - 40, 17.375},
		{"hot", StandardCell + 40, 17.375 * 1.02},
	} {
		got, err := ShortCircuitMax(isc, alpha, c.cell, CloudEdge)
		if err != nil || math.Abs(got-c.want) > 1e-9 {
			t.Errorf("%s: %v A, %v; want %v A", c.name, got, err, c.want)
		}
	}
	_, err := ShortCircuitMax(isc, alpha, StandardCell, 0.9)
	refused(t, "a factor below 1", err)
	_, err = ShortCircuitMax(math.NaN(), alpha, StandardCell, CloudEdge)
	refused(t, "no number", err)
}

// A coefficient in V/K and one in %/K of the same panel give the same voltage.
func TestBothFormsOfCoefficient(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		voc := rapid.Float64Range(1, 200).Draw(t, "voc")
		volts := rapid.Float64Range(-0.006, 0).Draw(t, "share") * voc
		cell := rapid.Float64Range(220, 370).Draw(t, "cell")
		share, err := PerKelvin(volts, voc)
		if err != nil {
			t.Fatal(err)
		}
		got, err := OpenCircuit(voc, share, cell)
		if err != nil {
			t.Fatal(err)
		}
		if want := voc + volts*(cell-StandardCell); math.Abs(got-want) > 1e-9*voc {
			t.Fatalf("%v V by share, %v V by volts", got, want)
		}
	})
	_, err := PerKelvin(-0.1, 0)
	refused(t, "a panel without voltage", err)
}

// Source: check value B8 and the project's notes on the IEC and the US code.
func TestStringFuses(t *testing.T) {
	var table struct {
		Values []struct {
			Source        string
			Strings       []string
			Of            int
			Factor, Fed   float64
			SeriesFuseMax string `json:"series_fuse_max"`
			Needed        bool
		}
	}
	published(t, "string-fuse.json", &table)
	if len(table.Values) != 6 {
		t.Fatalf("%d rows", len(table.Values))
	}
	for _, row := range table.Values {
		var strings []float64
		for _, s := range row.Strings {
			strings = append(strings, parse(t, s).SI)
		}
		faults, err := FaultCurrents(strings, 0)
		if err != nil {
			t.Fatal(err)
		}
		if fed := faults[row.Of] * row.Factor; math.Abs(fed-row.Fed) > 1e-9 {
			t.Errorf("%s: %v A fed, published %v A", row.Source, fed, row.Fed)
		}
		needed, err := FuseNeeded(faults[row.Of], row.Factor, parse(t, row.SeriesFuseMax).SI)
		if err != nil || needed != row.Needed {
			t.Errorf("%s: needed %v, %v; published %v", row.Source, needed, err, row.Needed)
		}
	}
}

func TestFuseNeededAtTheLimit(t *testing.T) {
	for _, c := range []struct {
		fault float64
		want  bool
	}{{15 - 1e-6, false}, {15, false}, {15 + 1e-9, false}, {15 + 1e-6, true}, {0, false}} {
		got, err := FuseNeeded(c.fault, 1, 15)
		if err != nil || got != c.want {
			t.Errorf("%v A against 15 A: %v, %v; want %v", c.fault, got, err, c.want)
		}
	}
	_, err := FuseNeeded(math.Inf(1), 1, 15)
	refused(t, "infinite", err)
}

// The controller's backfeed reaches every string; a string alone on an input
// is fed by nothing else.
func TestFaultCurrents(t *testing.T) {
	got, err := FaultCurrents([]float64{9, 4, 4}, 2)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff([]float64{10, 15, 15}, got); diff != "" {
		t.Error(diff)
	}
	alone, err := FaultCurrents([]float64{9}, 0)
	if err != nil || alone[0] != 0 {
		t.Errorf("alone: %v, %v", alone, err)
	}
	_, err = FaultCurrents([]float64{9, math.NaN()}, 0)
	refused(t, "no number", err)
	_, err = FaultCurrents([]float64{9}, -1)
	refused(t, "negative backfeed", err)
}

func TestRanges(t *testing.T) {
	_, err := OpenCircuit(40, -0.0027, 0)
	refused(t, "absolute zero", err)
	_, err = OpenCircuit(40, -0.02, StandardCell+60)
	refused(t, "nothing left", err)
	_, err = OpenCircuit(-1, -0.0027, StandardCell)
	refused(t, "negative voltage", err)
	_, err = Cell(300, 280, 0, 1000)
	refused(t, "NOCT below the air at which it is stated", err)
	_, err = Cell(300, 318, 0, -1)
	refused(t, "negative irradiance", err)
	zero, err := OpenCircuit(40, -0.02, StandardCell+50)
	if err != nil || math.Abs(zero) > 1e-9 {
		t.Errorf("exactly nothing left: %v, %v", zero, err)
	}
}
