package panel

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"stringline/lint/physics"
)

// sheets are plausible data sheets. All but the first are invented: they span the
// usual kinds, from a 12 V module of 36 cells to half-cut modules of 144 cells,
// wired as 72 in series.
var sheets = map[string]DataSheet{
	// M. G. Villalva et al., IEEE Trans. Power Electron. 24(5) (2009): -0.123 V/K,
	// 0.0032 A/K, read.
	"multicrystalline, 54 cells": {Voc: 32.9, Isc: 8.21, Vmp: 26.3, Imp: 7.61, Pmax: 200.143, VoltageCoefficient: -0.123 / 32.9, CurrentCoefficient: 0.0032 / 8.21, Cells: 54},
	"410 W, 54 cells":            {Voc: 37.4, Isc: 13.95, Vmp: 31.4, Imp: 13.06, Pmax: 410, VoltageCoefficient: -0.0026, CurrentCoefficient: 0.00045, Cells: 54},
	"335 W, 54 cells":            {Voc: 36.9, Isc: 11.5, Vmp: 30.9, Imp: 10.85, Pmax: 335, VoltageCoefficient: -0.0027, CurrentCoefficient: 0.00048, Cells: 54},
	"100 W, 36 cells":            {Voc: 22.6, Isc: 5.72, Vmp: 18.6, Imp: 5.38, Pmax: 100, VoltageCoefficient: -0.0030, CurrentCoefficient: 0.0005, Cells: 36},
	"300 W, 60 cells":            {Voc: 39.9, Isc: 9.75, Vmp: 32.6, Imp: 9.21, Pmax: 300, VoltageCoefficient: -0.0029, CurrentCoefficient: 0.0005, Cells: 60},
	"540 W, 72 cells":            {Voc: 49.5, Isc: 13.85, Vmp: 41.65, Imp: 12.97, Pmax: 540, VoltageCoefficient: -0.0027, CurrentCoefficient: 0.00048, Cells: 72},
}

func TestFitGivesThePointsBack(t *testing.T) {
	for name, s := range sheets {
		fit, err := FitDataSheet(s)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		c, err := fit.At(fullSun, StandardCell)
		if err != nil {
			t.Fatal(err)
		}
		best := c.Maximum()
		for what, pair := range map[string][2]float64{
			"Voc": {c.OpenCircuit(), s.Voc}, "Isc": {c.ShortCircuit(), s.Isc}, "Vmp": {best.Voltage, s.Vmp}, "Imp": {best.Current, s.Imp},
		} {
			if math.Abs(pair[0]/pair[1]-1) > FitTolerance {
				t.Errorf("%s: %s is %v, the sheet has %v", name, what, pair[0], pair[1])
			}
		}
		warm, err := fit.At(fullSun, StandardCell+1)
		if err != nil {
			t.Fatal(err)
		}
		if got := warm.OpenCircuit()/s.Voc - 1; math.Abs(got-s.VoltageCoefficient) > 2e-5 {
			t.Errorf("%s: Voc changes by %v a kelvin, the sheet has %v", name, got, s.VoltageCoefficient)
		}
		if fit.PowerCoefficient > -0.002 || fit.PowerCoefficient < -0.006 {
			t.Errorf("%s: the power changes by %v a kelvin", name, fit.PowerCoefficient)
		}
	}
}

// A sheet that no physical curve meets is refused, and the refusal tells by how
// much it misses; nothing is bent to fit.
func TestFitRefuses(t *testing.T) {
	good := sheets["410 W, 54 cells"]
	for name, c := range map[string]struct {
		change func(*DataSheet)
		misfit bool
	}{
		"Vmp above Voc":                      {func(s *DataSheet) { s.Vmp = 38 }, true},
		"Imp above Isc":                      {func(s *DataSheet) { s.Imp = 14 }, true},
		"Vmp below half of Voc":              {func(s *DataSheet) { s.Vmp = 17; s.Pmax = 0 }, true},
		"Pmax of another panel":              {func(s *DataSheet) { s.Pmax = 430 }, true},
		"a fill factor beyond silicon":       {func(s *DataSheet) { s.Vmp, s.Imp, s.Pmax = 36, 13.8, 0 }, true},
		"half-cut cells counted double":      {func(s *DataSheet) { s.Cells = 108 }, true},
		"a coefficient with a zero too many": {func(s *DataSheet) { s.VoltageCoefficient = -0.00026 }, true},
		"a coefficient without its sign":     {func(s *DataSheet) { s.VoltageCoefficient = 0.0026 }, false},
		"thin film":                          {func(s *DataSheet) { s.ThinFilm = true }, false},
		"no number":                          {func(s *DataSheet) { s.Isc = math.NaN() }, false},
	} {
		s := good
		c.change(&s)
		_, err := FitDataSheet(s)
		if err == nil {
			t.Errorf("%s is fitted", name)
			continue
		}
		var m *Misfit
		if errors.As(err, &m) != c.misfit || c.misfit && !(math.Abs(m.Residual) > FitTolerance) {
			t.Errorf("%s: %v (%+v)", name, err, m)
		}
		var r *physics.Refusal
		if !errors.As(err, &r) {
			t.Errorf("%s: %v is no refusal", name, err)
		}
	}
}

// Colder cells give more open-circuit voltage, hotter ones less voltage at
// maximum power; more light gives more current; nothing is ever NaN.
func TestDirections(t *testing.T) {
	var fits []Fit
	for _, name := range []string{"multicrystalline, 54 cells", "410 W, 54 cells", "335 W, 54 cells", "100 W, 36 cells", "300 W, 60 cells", "540 W, 72 cells"} {
		fit, err := FitDataSheet(sheets[name])
		if err != nil {
			t.Fatal(err)
		}
		fits = append(fits, fit)
	}
	rapid.Check(t, func(t *rapid.T) {
		fit := rapid.SampledFrom(fits).Draw(t, "panel")
		light := rapid.Float64Range(50, 1400).Draw(t, "irradiance")
		cell := rapid.Float64Range(223, 363).Draw(t, "cell temperature")
		cold, err := fit.At(light, cell)
		if err != nil {
			t.Fatal(err)
		}
		hot, err := fit.At(light, cell+5)
		if err != nil {
			t.Fatal(err)
		}
		brighter, err := fit.At(light*1.1, cell)
		if err != nil {
			t.Fatal(err)
		}
		if cold.OpenCircuit() <= hot.OpenCircuit() || cold.Maximum().Voltage <= hot.Maximum().Voltage {
			t.Fatalf("at %v K Voc %v and Vmp %v, 5 K hotter %v and %v", cell, cold.OpenCircuit(), cold.Maximum().Voltage, hot.OpenCircuit(), hot.Maximum().Voltage)
		}
		if brighter.ShortCircuit() <= cold.ShortCircuit() || brighter.Maximum().Power() <= cold.Maximum().Power() {
			t.Fatalf("a tenth more light gives %v A and %v W, before %v A and %v W", brighter.ShortCircuit(), brighter.Maximum().Power(), cold.ShortCircuit(), cold.Maximum().Power())
		}
	})
}

// FuzzFit: whatever a sheet says, a fit is right or refused; no panic, no NaN.
func FuzzFit(f *testing.F) {
	for _, s := range sheets {
		f.Add(s.Voc, s.Isc, s.Vmp, s.Imp, s.VoltageCoefficient, s.CurrentCoefficient, s.Cells)
	}
	f.Fuzz(func(t *testing.T, voc, isc, vmp, imp, voltage, current float64, cells int) {
		s := DataSheet{Voc: voc, Isc: isc, Vmp: vmp, Imp: imp, VoltageCoefficient: voltage, CurrentCoefficient: current, Cells: cells}
		fit, err := FitDataSheet(s)
		if err != nil {
			return
		}
		if !(fit.Residual.Worst() <= FitTolerance) || math.IsNaN(fit.PowerCoefficient) {
			t.Fatalf("%+v gives %+v", s, fit)
		}
		c, err := fit.At(800, StandardCell+20)
		if err != nil {
			t.Fatal(err)
		}
		if p := c.Maximum().Power(); math.IsNaN(p) || p <= 0 {
			t.Fatalf("%+v gives %v W", s, p)
		}
	})
}
