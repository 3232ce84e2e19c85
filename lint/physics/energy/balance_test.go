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
	if err != nil || b.Worst != 12 || math.Abs(b.WorstBalance()+4.4) > 1e-12 || math.Abs(b.Months[3]-1) > 1e-12 {
		t.Errorf("%+v, %v", b, err)
	}
	load[5] = 16
	b, err = MonthlyBalance(yield, load, 0.9)
	if err != nil || b.Worst != 6 || math.Abs(b.WorstBalance()+7) > 1e-12 {
		t.Errorf("%+v, %v", b, err)
	}
	// Two banks: the one's June and the other's December.
	other := Balance{Months: [12]float64{11: -5}, Worst: 12}
	if sum := AddBalances(b, other); sum.Worst != 12 || math.Abs(sum.WorstBalance()+9.4) > 1e-12 {
		t.Errorf("%+v", sum)
	}
	if sum := AddBalances(); sum.Worst != 1 || sum.WorstBalance() != 0 {
		t.Errorf("no bank: %+v", sum)
	}
	if (Balance{}).WorstBalance() != 0 {
		t.Error("an empty balance has a worst month")
	}
	_, err = MonthlyBalance(yield, load, 0)
	refused(t, "no round trip", err)
	yield[2] = math.NaN()
	_, err = MonthlyBalance(yield, load, 0.9)
	refused(t, "NaN", err)
}
