package energy

import (
	"math"
	"testing"
)

// By hand: 10 J a day all year against 8 J, round trip 0.9: 1 over; December
// yields 4: 4.4 under; in June loads double: 7 under, the worst.
func TestMonthlyBalance(t *testing.T) {
	var yield, load [12]float64
	for m := range yield {
		yield[m], load[m] = 10, 8
	}
	yield[11] = 4
	b, err := MonthlyBalance(yield, load, 0.9)
	if err != nil || b.Worst != 12 || math.Abs(b.Months[b.Worst-1]+4.4) > 1e-12 || math.Abs(b.Months[3]-1) > 1e-12 {
		t.Errorf("%+v, %v", b, err)
	}
	load[5] = 16
	b, err = MonthlyBalance(yield, load, 0.9)
	if err != nil || b.Worst != 6 || math.Abs(b.Months[b.Worst-1]+7) > 1e-12 {
		t.Errorf("%+v, %v", b, err)
	}
	_, err = MonthlyBalance(yield, load, 0)
	refused(t, "no round trip", err)
	yield[2] = math.NaN()
	_, err = MonthlyBalance(yield, load, 0.9)
	refused(t, "NaN", err)
}
