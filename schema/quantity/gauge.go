package quantity

import (
	"math"
	"strconv"
	"strings"
)

// gaugeSymbol is the unit of the American wire gauge. Its numbers are names of
// sizes; the area follows from ASTM B258.
const gaugeSymbol = "AWG"

// The gauges that exist here: 18 … 1 and 1/0 … 4/0 (numbers 0 … -3).
const (
	thinnestGauge = 18
	thickestGauge = -3
)

// gaugeArea gives the conductor's area in m2 of gauge number n, where 1/0 is 0
// and 4/0 is -3. ASTM B258: d = 0.005 in x 92^((36-n)/39).
func gaugeArea(n float64) float64 {
	d := 0.005 * inch * math.Pow(92, (36-n)/39)
	return math.Pi / 4 * d * d
}

// gaugeNumber is the inverse of gaugeArea: NaN for an area that is not positive.
func gaugeNumber(area float64) float64 {
	if !(area > 0) {
		return math.NaN()
	}
	d := math.Sqrt(area * 4 / math.Pi)
	return 36 - 39*math.Log(d/(0.005*inch))/math.Log(92)
}

// gaugeName writes a gauge number as the trade does: "10", "4/0". ok is false
// where the number is no whole gauge of the table.
func gaugeName(n float64) (name string, ok bool) {
	whole := math.Round(n)
	if !(math.Abs(n-whole) < 1e-3) || whole < thickestGauge || whole > thinnestGauge {
		return "", false
	}
	if whole < 1 {
		return strconv.Itoa(1-int(whole)) + "/0", true
	}
	return strconv.Itoa(int(whole)), true
}

// parseGauge reads the part before "AWG": "10" or "4/0".
func parseGauge(text, number string) (Quantity, error) {
	refuse := func(hint string) (Quantity, error) {
		return Quantity{}, &Error{Kind: "number", Expected: "a wire gauge from 18 to 1, or 1/0 to 4/0", Found: show(text), Hint: hint}
	}
	if zeros, found := strings.CutSuffix(number, "/0"); found {
		if len(zeros) == 1 && zeros[0] >= '1' && zeros[0] <= '4' {
			return gauge(text, 1-float64(zeros[0]-'0')), nil
		}
		return refuse("")
	}
	if number != "" && len(number) <= 4 && strings.Trim(number, "0") == "" {
		return refuse("write \"" + strconv.Itoa(len(number)) + "/0 AWG\"")
	}
	n, err := strconv.Atoi(number)
	if err != nil || n < 1 || n > thinnestGauge || strconv.Itoa(n) != number {
		if err == nil && n >= 250 && n <= 2000 {
			return refuse("sizes above 4/0 are written in kcmil")
		}
		return refuse("")
	}
	return gauge(text, float64(n)), nil
}

func gauge(text string, n float64) Quantity {
	u := MustLookup(gaugeSymbol)
	return Quantity{SI: u.ToSI(n), Unit: u, Text: text}
}
