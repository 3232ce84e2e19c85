package energy

import (
	"fmt"

	"stringline/lint/physics"
)

// Balance is the coarse account of a mean day of each month.
type Balance struct {
	Months [12]float64 // J a day, January first: yield round_trip - load
	Worst  int         // the month, 1 to 12, with the least; the first of equals
}

// MonthlyBalance gives yield round_trip - load for a mean day of each month.
// yield is what reaches the bank's terminals after clipping and losses, load what
// leaves them, both in J a day; roundTrip is energy out over energy in, above 0
// and at most 1. Being coarse, it charges the round trip on all of the yield,
// also on what loads would use straight from the sun: the account of [Bank.Year]
// does not. A month without figures counts as one of zeros: give it whole years.
func MonthlyBalance(yield, load [12]float64, roundTrip float64) (Balance, error) {
	const doing = "monthly balance"
	b := Balance{Worst: 1}
	if err := physics.Check(doing, physics.Input{Name: "round trip", Value: roundTrip, Min: 0.001, Max: 1}); err != nil {
		return Balance{}, err
	}
	for m := range b.Months {
		if err := physics.Check(doing,
			physics.Input{Name: fmt.Sprintf("yield of month %d", m+1), Value: yield[m], Min: 0, Max: 1e18, Unit: "J"},
			physics.Input{Name: fmt.Sprintf("load of month %d", m+1), Value: load[m], Min: 0, Max: 1e18, Unit: "J"}); err != nil {
			return Balance{}, err
		}
		b.Months[m] = yield[m]*roundTrip - load[m]
		if b.Months[m] < b.Months[b.Worst-1] {
			b.Worst = m + 1
		}
	}
	return b, nil
}
