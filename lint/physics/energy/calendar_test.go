package energy

import (
	"math"
	"testing"
)

func TestCalendar(t *testing.T) {
	for _, c := range []struct {
		step  float64
		leap  bool
		steps int
	}{{3600, false, 8760}, {3600, true, 8784}, {900, false, 35040}, {60, false, 525600}, {10, false, 3153600}, {86400, true, 366}} {
		cal, err := NewCalendar(c.step, c.leap)
		if err != nil || cal.Steps() != c.steps || math.Abs(cal.Step()-c.step) > 1e-9 {
			t.Errorf("%v s: %d steps of %v s, %v; want %d", c.step, cal.Steps(), cal.Step(), err, c.steps)
		}
	}
	for _, step := range []float64{0, -60, 9.99, 7000, 86401, math.NaN(), math.Inf(1)} {
		_, err := NewCalendar(step, false)
		refused(t, "no step", err)
	}
	hours, leap := Calendar{StepsPerDay: 24}, Calendar{StepsPerDay: 24, Leap: true}
	for _, c := range []struct {
		cal         Calendar
		step, month int
	}{
		{hours, 0, 1}, {hours, 743, 1}, {hours, 744, 2}, {hours, 1415, 2}, {hours, 1416, 3}, {leap, 1416, 2}, {leap, 1440, 3},
		{hours, 8759, 12}, {hours, 8016, 12}, {hours, 8015, 11}, {hours, -1, 0}, {hours, 8760, 0}, {leap, 8783, 12},
	} {
		if got := c.cal.Month(c.step); got != c.month {
			t.Errorf("step %d is in month %d, want %d", c.step, got, c.month)
		}
	}
	sum := 0
	for month := 1; month <= 12; month++ {
		sum += leap.DaysIn(month)
	}
	if sum != 366 || hours.DaysIn(0) != 0 || hours.DaysIn(13) != 0 {
		t.Errorf("%d days in a leap year", sum)
	}
	// January whole, half a day of February, nothing after it.
	perDay := hours.PerDay([12]float64{31, 5, 7}, 744+12)
	if perDay[0] != 1 || perDay[1] != 10 || perDay[2] != 0 {
		t.Errorf("per day %v", perDay)
	}
}
