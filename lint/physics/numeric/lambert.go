package numeric

import "math"

// LambertExp gives w and ln w for the positive w with w e^w = e^x, which is the
// principal branch of the Lambert W function at e^x. Taking x, the logarithm,
// keeps arguments far beyond the largest float64. x is any finite number; for
// x below about -745 w is 0 and ln w is x. The relative error of w is below
// 1e-15 plus that of x itself (w follows x by dw/w = dx/(1+w)); the absolute
// error of ln w is likewise small where w is large, which x - w would lose.
//
// Method: R. M. Corless, G. H. Gonnet, D. E. G. Hare, D. J. Jeffrey & D. E.
// Knuth, On the Lambert W function, Advances in Computational Mathematics 5
// (1996) 329-359, for the start (its asymptotic series) and the identity w + ln
// w = x; F. N. Fritsch, R. E. Shafer & W. P. Crowley, Algorithm 443,
// Communications of the ACM 16 (1973) 123-124, for the fourth-order step.
func LambertExp(x float64) (w, logarithm float64) {
	switch {
	case x > 2:
		l := math.Log(x)
		w = x - l + l/x
		// The next term of the series keeps one step enough for large x.
		w += l * (l - 2) / (2 * x * x)
		logarithm = math.Log(w)
	case x > -20:
		// w = e^x (1 - e^x + ...) for small e^x; the form below is within 6 %
		// over the whole span (e^x/(1+e^x) bent up by a logarithm).
		l := math.Log1p(math.Exp(x))
		w = l * (1 - math.Log1p(l)/(2+l))
		logarithm = math.Log(w)
	default:
		// e^x < 3e-9: two terms of the series leave 1e-17 of w.
		e := math.Exp(x)
		w = e * (1 - e)
		return w, x - w
	}
	for range 8 {
		z := x - logarithm - w
		u := 1 + w
		q := 2 * u * (u + z*(2.0/3))
		d := z / u * (q - z) / (q - 2*z)
		w += w * d
		if math.Abs(d) < 1e-4 {
			// ln(1+d) by its series: cheaper than a logarithm, exact to 1e-17.
			logarithm += d * (1 - d*(0.5-d*(1.0/3-d*0.25)))
			return w, logarithm
		}
		logarithm = math.Log(w)
	}
	return w, logarithm
}
