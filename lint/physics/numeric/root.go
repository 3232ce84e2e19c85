package numeric

import (
	"math"

	"stringline/lint/physics"
)

// rootSteps bounds every root search. Bisection alone halves the widest float64
// bracket to neighbors in under 1100 steps; the methods here need about ten.
const rootSteps = 1200

// longSearch is a count of steps after which Newton's method is helped along.
const longSearch = 12

// checkBracket refuses a bracket that cannot be searched.
func checkBracket(doing string, lo, hi, flo, fhi float64) error {
	if math.IsNaN(lo) || math.IsNaN(hi) || math.IsInf(lo, 0) || math.IsInf(hi, 0) || lo > hi {
		return physics.Refuse(doing, "%v to %v is no bracket", lo, hi)
	}
	if math.IsNaN(flo) || math.IsNaN(fhi) {
		return physics.Refuse(doing, "the function has no value at an end of %v to %v", lo, hi)
	}
	if flo > 0 && fhi > 0 || flo < 0 && fhi < 0 {
		return physics.Refuse(doing, "no sign change between %v (%v) and %v (%v)", lo, flo, hi, fhi)
	}
	return nil
}

// Root gives x in lo to hi with f(x) = 0, where f has a sign change between
// them; infinite values of f are taken by their sign. It stops when the bracket
// is narrower than tolerance + 4e-16 |x|; tolerance 0 means as close as float64
// allows. Refuses a bracket without a sign change and an f that gives a NaN.
//
// Method: inverse quadratic interpolation where it is safe, else bisection. T.
// R. Chandrupatla, A new hybrid quadratic/bisection algorithm for finding the
// zero of a nonlinear function, Advances in Engineering Software 28 (1997)
// 145-149.
func Root(f func(float64) float64, lo, hi, tolerance float64) (float64, error) {
	const doing = "searching a root"
	b, a := lo, hi
	fb, fa := f(b), f(a)
	if err := checkBracket(doing, lo, hi, fb, fa); err != nil {
		return 0, err
	}
	c, fc := a, fa
	t := 0.5
	for range rootSteps {
		x := a + t*(b-a)
		fx := f(x)
		if math.IsNaN(fx) {
			return 0, physics.Refuse(doing, "the function has no value at %v", x)
		}
		if math.Signbit(fx) == math.Signbit(fa) {
			c, fc = a, fa
		} else {
			c, b, fc, fb = b, a, fb, fa
		}
		a, fa = x, fx
		best, fbest := a, fa
		if math.Abs(fb) < math.Abs(fa) {
			best, fbest = b, fb
		}
		// Half the allowed width, as a share of the bracket.
		limit := (2e-16*math.Abs(best) + 0.5*tolerance) / math.Abs(b-c)
		if limit > 0.5 || fbest == 0 || b == c || x == b && x == c {
			return best, nil
		}
		t = 0.5
		xi := (a - b) / (c - b)
		phi := (fa - fb) / (fc - fb)
		if phi*phi < xi && (1-phi)*(1-phi) < 1-xi {
			t = fa/(fb-fa)*fc/(fb-fc) + (c-a)/(b-a)*fa/(fc-fa)*fb/(fc-fb)
		}
		if !(t >= limit) { // also a NaN from infinite values
			t = limit
		}
		t = math.Min(t, 1-limit)
	}
	return a, nil
}

// RootNewton is Root for a function that gives its value and derivative: Newton
// steps from start while they stay within the shrinking bracket and the value
// halves, else bisection, and bisection every second time once the search is
// long. It stops when a step is below tolerance + 4e-16 |x|.
//
// Method: Newton-Raphson safeguarded by bisection, as in W. H. Press et al.,
// Numerical Recipes, 3rd edition, section 9.4; the signs at the ends are given
// (rising: f(lo) <= 0 <= f(hi); else the reverse) so that the ends cost nothing.
func RootNewton(f func(float64) (value, slope float64), lo, hi, start, tolerance float64, rising bool) (float64, error) {
	const doing = "searching a root by Newton's method"
	if err := checkBracket(doing, lo, hi, -1, 1); err != nil {
		return 0, err
	}
	x := start
	if !(x > lo && x < hi) {
		x = lo + 0.5*(hi-lo)
	}
	last := math.Inf(1)
	for count := range rootSteps {
		value, slope := f(x)
		if math.IsNaN(value) {
			return 0, physics.Refuse(doing, "the function has no value at %v", x)
		}
		if value == 0 {
			return x, nil
		}
		if (value < 0) == rising {
			lo = x
		} else {
			hi = x
		}
		step := value / slope
		next := x - step
		// A slope beyond float64 would make a step of zero: no convergence. Down
		// an exponential Newton's step is of one size however far the root is, so
		// a long search bisects every second time.
		if !(next >= lo && next <= hi) || math.IsInf(slope, 0) || math.Abs(value) > 0.5*last || count >= longSearch && count%2 == 0 {
			next = lo + 0.5*(hi-lo)
			step = x - next
			last = math.Inf(1) // a bisection earns the next Newton step
		} else {
			last = math.Abs(value)
		}
		if math.Abs(step) <= tolerance+4e-16*math.Abs(x) || next == x {
			return next, nil
		}
		x = next
	}
	return x, nil
}
