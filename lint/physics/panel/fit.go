package panel

import (
	"fmt"
	"math"

	"stringline/lint/physics"
	"stringline/lint/physics/numeric"
)

// FitTolerance is the share within which a fitted curve gives the data sheet's
// three points back; a sheet that cannot be met that closely is refused.
const FitTolerance = 1e-3

// Limits of a data sheet of crystalline silicon. Within them the fit decides;
// outside, the sheet contradicts itself or the method does not hold.
const (
	lowestCellVoltage   = 0.40 // V a cell, open circuit at 25 degC
	highestCellVoltage  = 0.80
	smallestIdealFactor = 0.75 // n of one cell
	largestIdealFactor  = 1.5
	bandGapLeeway       = 0.10 // share by which the band gap may leave silicon's
	powerLeeway         = 0.02 // share between Pmax and Vmp Imp that rounding explains
)

// DataSheet holds what a panel's data sheet states at standard test conditions.
type DataSheet struct {
	Voc, Isc float64 // V, A
	Vmp, Imp float64 // V, A
	Pmax     float64 // W; 0 where not stated

	VoltageCoefficient float64 // of Voc, share per K, negative
	CurrentCoefficient float64 // of Isc, share per K

	Cells    int  // in series; half-cut cells as they are wired
	ThinFilm bool // not crystalline silicon: refused
}

// Residual tells how far a curve is from the data sheet, as shares (0.001: 0.1 %).
type Residual struct {
	Voc, Isc, Vmp, Imp, Pmax float64 // Pmax against Vmp Imp
	VoltageCoefficient       float64
}

// Worst gives the largest of the three points' residuals in size; the
// coefficient's is not among them.
func (r Residual) Worst() float64 {
	worst := 0.0
	for _, share := range []float64{r.Voc, r.Isc, r.Vmp, r.Imp, r.Pmax} {
		worst = math.Max(worst, math.Abs(share))
	}
	return worst
}

// Fit is a model found from a data sheet.
type Fit struct {
	Model
	// FiveEquations tells that all five equations hold with silicon's band gap.
	// Where they do not, the nearest curve without shunt (or without series
	// resistance) goes through the three points, and Model.BandGap is fitted so
	// that the coefficient of Voc still holds.
	FiveEquations bool
	// IdealityFactor is n of one cell.
	IdealityFactor float64
	// PowerCoefficient is the model's own of maximum power, a share per K, to be
	// held against the data sheet's. It is no input of the five equations.
	PowerCoefficient float64
	Residual         Residual
}

// Misfit is the refusal of a data sheet that no physical curve meets. It unwraps
// to a *physics.Refusal.
type Misfit struct {
	Refusal  *physics.Refusal
	Residual float64 // share by which the nearest physical curve, or the sheet's own second figure, misses it
}

// Error gives the refusal's text, which ends with the residual.
func (m *Misfit) Error() string { return m.Refusal.Error() }

// Unwrap gives the refusal.
func (m *Misfit) Unwrap() error { return m.Refusal }

const fitting = "single-diode model of a data sheet"

func misfit(residual float64, cause string, args ...any) error {
	return &Misfit{Residual: residual, Refusal: &physics.Refusal{Doing: fitting,
		Cause: fmt.Sprintf(cause, args...) + fmt.Sprintf(" (residual %.3g %%)", 100*residual)}}
}

// FitDataSheet finds the single-diode model of a crystalline silicon panel.
//
// Source: the five equations of De Soto, Klein & Beckman, Solar Energy 80 (2006)
// 78-88: open circuit, short circuit, maximum power point, its slope dP/dV = 0,
// and the temperature coefficient of Voc (here the derivative itself, not a
// finite step). Method of our own: with the ideality and the series resistance
// held, open circuit, short circuit and maximum power point are linear in
// saturation current and shunt conductance; the slope then brackets the series
// resistance and the coefficient the ideality. Both are monotonic, so the search
// cannot diverge.
//
// Refuses thin film (the constants are crystalline silicon's, and a thin film's
// collection of carriers falls with voltage, which one diode does not give),
// values out of range, and, with a *[Misfit] that tells the residual, a sheet
// that contradicts itself: points no concave curve joins, Pmax that is not Vmp
// Imp (2 %), a coefficient of Voc that would need an ideality factor outside
// 0.75 to 1.5, a negative resistance, or the three points not within 0.1 %.
func FitDataSheet(s DataSheet) (Fit, error) {
	if err := s.check(); err != nil {
		return Fit{}, err
	}
	scale := float64(s.Cells) * ThermalVoltage(StandardCell)
	lowest, highest := smallestIdealFactor*scale, largestIdealFactor*scale

	first := s.through(lowest)
	if !first.physical {
		worst := s.nearest(lowest).Worst()
		return Fit{}, misfit(worst, "no curve with resistances of zero or more goes through the three points, the fill factor %.3f is too high or too low for them", s.Vmp*s.Imp/(s.Voc*s.Isc))
	}
	// A larger ideality rounds the knee, which lower resistances make up for,
	// until one of them reaches zero.
	limit, last := highest, s.through(highest)
	bounded := !last.physical
	if bounded {
		good, bad := lowest, highest
		for range 60 {
			middle := good + 0.5*(bad-good)
			if t := s.through(middle); t.physical {
				good, last = middle, t
			} else {
				bad = middle
			}
		}
		limit = good
		if limit == lowest {
			last = first
		}
	}

	coefficient := s.VoltageCoefficient * s.Voc // V/K
	falls := func(t trial) float64 { return t.openCircuitSlope(s.Voc) - coefficient }
	fit := Fit{FiveEquations: true}
	switch {
	case falls(first) < 0:
		return Fit{}, s.misfitCoefficient(first, "would need an ideality factor below", smallestIdealFactor)
	case falls(last) <= 0:
		a, err := numeric.Root(func(a float64) float64 { return falls(s.through(a)) }, lowest, limit, 0)
		if err != nil {
			return Fit{}, physics.Refuse(fitting, "%v", err)
		}
		last = s.through(a)
	case bounded:
		// The slope is linear in the band gap.
		wider := last
		wider.bandGap *= 1 + bandGapLeeway
		share := -falls(last) / (falls(wider) - falls(last))
		if !(math.Abs(share) <= 1) {
			return Fit{}, s.misfitCoefficient(last, "would need a resistance below zero or a band gap off by more than a share of", bandGapLeeway)
		}
		last.bandGap *= 1 + bandGapLeeway*share
		fit.FiveEquations = false
	default:
		return Fit{}, s.misfitCoefficient(last, "would need an ideality factor above", largestIdealFactor)
	}
	return s.finish(fit, last)
}

func (s DataSheet) misfitCoefficient(t trial, needs string, limit float64) error {
	nearest := t.openCircuitSlope(s.Voc) / s.Voc
	return misfit(nearest/s.VoltageCoefficient-1, "the coefficient of Voc, %.4g %%/K, %s %g with %d cells in series; the nearest curve has %.4g %%/K",
		100*s.VoltageCoefficient, needs, limit, s.Cells, 100*nearest)
}

func (s DataSheet) check() error {
	if s.ThinFilm {
		return physics.Refuse(fitting, "the method holds for crystalline silicon, not for thin film")
	}
	if err := physics.Check(fitting,
		physics.Input{Name: "Voc", Value: s.Voc, Min: 0.1, Max: 1000, Unit: "V"},
		physics.Input{Name: "Isc", Value: s.Isc, Min: 0.001, Max: 1000, Unit: "A"},
		physics.Input{Name: "Vmp", Value: s.Vmp, Min: 0.01, Max: 1000, Unit: "V"},
		physics.Input{Name: "Imp", Value: s.Imp, Min: 0.0001, Max: 1000, Unit: "A"},
		physics.Input{Name: "Pmax", Value: s.Pmax, Min: 0, Max: 1e6, Unit: "W"},
		physics.Input{Name: "coefficient of Voc", Value: s.VoltageCoefficient, Min: -0.02, Max: -1e-5, Unit: "per K"},
		physics.Input{Name: "coefficient of Isc", Value: s.CurrentCoefficient, Min: -0.01, Max: 0.01, Unit: "per K"},
		physics.Input{Name: "cells in series", Value: float64(s.Cells), Min: 1, Max: 1000}); err != nil {
		return err
	}
	for _, pair := range []struct {
		at, of     string
		part, full float64
	}{{"Vmp", "Voc", s.Vmp, s.Voc}, {"Imp", "Isc", s.Imp, s.Isc}} {
		if pair.part >= pair.full {
			return misfit(pair.part/pair.full-1, "%s is not below %s", pair.at, pair.of)
		}
		// The power has its maximum there and the curve is concave: its chord to
		// the axis is steeper than the slope that the maximum asks for.
		if pair.part <= pair.full/2 {
			return misfit(0.5-pair.part/pair.full, "%s is not above half of %s: no concave curve has its maximum there", pair.at, pair.of)
		}
	}
	if s.Pmax > 0 {
		if off := s.Vmp*s.Imp/s.Pmax - 1; math.Abs(off) > powerLeeway {
			return misfit(off, "Vmp x Imp is %.4g W, Pmax %.4g W", s.Vmp*s.Imp, s.Pmax)
		}
	}
	if each := s.Voc / float64(s.Cells); each < lowestCellVoltage || each > highestCellVoltage {
		nearest := math.Min(math.Max(each, lowestCellVoltage), highestCellVoltage)
		return misfit(each/nearest-1, "Voc over %d cells in series is %.3g V a cell; crystalline silicon has %.2g to %.2g V", s.Cells, each, lowestCellVoltage, highestCellVoltage)
	}
	return nil
}

// trial is the curve through the three points with one ideality.
type trial struct {
	translation
	physical bool // both resistances are zero or more
}

// through solves the first four equations for an ideality. Exponentials are
// taken relative to exp(Voc/a), so none overflows.
func (s DataSheet) through(a float64) trial {
	linear := func(series float64) (atOpen, shunt, atMaximum float64) {
		short := math.Exp((s.Isc*series - s.Voc) / a)
		atMaximum = math.Exp((s.Vmp + s.Imp*series - s.Voc) / a)
		// Open circuit less short circuit, open circuit less maximum power:
		//   Isc = K (1 - short)     + G (Voc - Isc Rs)
		//   Imp = K (1 - atMaximum) + G (Voc - Vmp - Imp Rs),  K = I0 exp(Voc/a)
		k1, g1 := 1-short, s.Voc-s.Isc*series
		k2, g2 := 1-atMaximum, s.Voc-s.Vmp-s.Imp*series
		determinant := k1*g2 - k2*g1
		return (s.Isc*g2 - s.Imp*g1) / determinant, (k1*s.Imp - k2*s.Isc) / determinant, atMaximum
	}
	// dP/dV = 0 at the maximum power point: Imp = h (Vmp - Imp Rs) with the
	// conductance h of diode and shunt.
	slope := func(series float64) float64 {
		atOpen, shunt, atMaximum := linear(series)
		return (atOpen/a*atMaximum+shunt)*(s.Vmp-s.Imp*series) - s.Imp
	}
	most := (s.Voc - s.Vmp) / s.Imp * (1 - 1e-7)
	series, err := numeric.Root(slope, 0, most, 0)
	if err != nil {
		return trial{}
	}
	atOpen, shunt, _ := linear(series)
	if !(atOpen > 0 && shunt >= 0) || math.IsInf(atOpen, 1) {
		return trial{}
	}
	logSaturation := math.Log(atOpen) - s.Voc/a
	return trial{physical: true, translation: translation{
		photo:     atOpen - math.Exp(logSaturation) + shunt*s.Voc,
		perKelvin: s.CurrentCoefficient * s.Isc, logSaturation: logSaturation,
		series: series, shunt: shunt, ideality: a,
		bandGap: SiliconBandGap}}
}

// nearest gives the residual of the curve without resistances, or with the
// series resistance alone that gives the power, for the message of a refusal.
func (s DataSheet) nearest(a float64) Residual {
	best := Residual{Imp: math.Inf(1)}
	for step := range 41 {
		series := (s.Voc - s.Vmp) / s.Imp * float64(step) / 40
		c := newCurve(s.Isc, math.Log(s.Isc)-s.Voc/a, series, 0, a)
		if r := s.residual(c); r.Worst() < best.Worst() {
			best = r
		}
	}
	return best
}

func (s DataSheet) residual(c Curve) Residual {
	maximum := c.Maximum()
	return Residual{
		Voc: c.OpenCircuit()/s.Voc - 1, Isc: c.ShortCircuit()/s.Isc - 1,
		Vmp: maximum.Voltage/s.Vmp - 1, Imp: maximum.Current/s.Imp - 1,
		Pmax: maximum.Power()/(s.Vmp*s.Imp) - 1,
	}
}

// finish makes the model and holds its curve against the sheet, the three points
// by the bracketing solver: a second way beside the one that found it.
func (s DataSheet) finish(fit Fit, t trial) (Fit, error) {
	curve := newCurve(t.photo, t.logSaturation, t.series, t.shunt, t.ideality)
	fit.Model = Model{Reference: curve.Five(), CurrentCoefficient: t.perKelvin, BandGap: t.bandGap}
	fit.IdealityFactor = t.ideality / (float64(s.Cells) * ThermalVoltage(StandardCell))
	fit.Residual = s.residual(curve)
	fit.Residual.VoltageCoefficient = t.openCircuitSlope(s.Voc)/(s.VoltageCoefficient*s.Voc) - 1

	short, err := curve.CurrentBracketed(0)
	if err != nil {
		return Fit{}, err
	}
	open, err := curve.VoltageBracketed(0)
	if err != nil {
		return Fit{}, err
	}
	at, err := curve.CurrentBracketed(s.Vmp)
	if err != nil {
		return Fit{}, err
	}
	worst := fit.Residual.Worst()
	for _, share := range []float64{short/s.Isc - 1, open/s.Voc - 1, at/s.Imp - 1} {
		worst = math.Max(worst, math.Abs(share))
	}
	if !(worst <= FitTolerance) {
		return Fit{}, misfit(worst, "the nearest curve misses the three points")
	}
	warm, err := fit.At(fullSun, StandardCell+1)
	if err != nil {
		return Fit{}, err
	}
	cool, err := fit.At(fullSun, StandardCell-1)
	if err != nil {
		return Fit{}, err
	}
	fit.PowerCoefficient = (warm.Maximum().Power() - cool.Maximum().Power()) / (2 * s.Vmp * s.Imp)
	return fit, nil
}
