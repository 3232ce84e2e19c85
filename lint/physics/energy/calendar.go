// Package energy follows power through a year: what a charge controller clips,
// what the loads take hour by hour, what the bank stores and what stays unserved.
//
// It knows no weather and no panel. Callers hand it series: power in W and
// temperature in K, one value a step, the mean over the step, first step at 0:00
// of 1 January in local standard time (clock hours of loads are in that time
// too: summer time is not followed). [Clip] answers for one charger, with the
// bank always accepting. [Bank.Year] keeps the account of one bank with all its
// chargers, other sources and loads. [MonthlyBalance] is the coarse sum that
// needs no bank. Energies are in J, times in s.
//
// Within a step all powers are steady. Longer steps therefore hide some
// clipping and some use of the store, never the other way round.
package energy

import (
	"math"

	"stringline/lint/physics"
)

const (
	day             = 86400.0 // s
	mostStepsPerDay = 8640    // ten seconds
	slack           = 1e-9    // relative, as in every comparison of the program
	coldest         = 173.15  // K
	hottest         = 423.15  // K
	mostPower       = 1e9     // W
)

var daysOfMonths = [12]int{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31}

// Calendar says how a series runs: equal steps from 0:00 of 1 January. A series
// may end early (a single day, part of a year), and is never longer than a year.
type Calendar struct {
	StepsPerDay int  // 24 for hours; 1 to 8640
	Leap        bool // February has 29 days; most typical years leave it out
}

// NewCalendar makes the calendar of a step length in s, of which a day holds a
// whole number: 3600, 1800, 900, 600, 300, 60, down to 10.
func NewCalendar(step float64, leap bool) (Calendar, error) {
	const doing = "calendar of a year"
	if err := physics.Check(doing, physics.Input{Name: "step", Value: step, Min: day / mostStepsPerDay, Max: day, Unit: "s"}); err != nil {
		return Calendar{}, err
	}
	perDay := math.Round(day / step)
	if math.Abs(perDay*step-day) > slack*day {
		return Calendar{}, physics.Refuse(doing, "a day does not hold a whole number of steps of %.6g s", step)
	}
	return Calendar{StepsPerDay: int(perDay), Leap: leap}, nil
}

func (c Calendar) check(doing string) error {
	return physics.Check(doing, physics.Input{Name: "steps a day", Value: float64(c.StepsPerDay), Min: 1, Max: mostStepsPerDay})
}

// Step gives the length of a step in s.
func (c Calendar) Step() float64 { return day / float64(c.StepsPerDay) }

// DaysIn gives the days of a month, 1 to 12; 0 for any other number.
func (c Calendar) DaysIn(month int) int {
	if month < 1 || month > 12 {
		return 0
	}
	if month == 2 && c.Leap {
		return 29
	}
	return daysOfMonths[month-1]
}

// Days gives the days of the year.
func (c Calendar) Days() int {
	if c.Leap {
		return 366
	}
	return 365
}

// Steps gives the steps of a whole year: 8,760 hours.
func (c Calendar) Steps() int { return c.Days() * c.StepsPerDay }

// Month gives the month, 1 to 12, of step i; steps count from 0. It gives 0 for
// a step outside the year.
func (c Calendar) Month(i int) int {
	if i < 0 || i >= c.Steps() {
		return 0
	}
	d := i / c.StepsPerDay
	for month := 1; ; month++ {
		if d -= c.DaysIn(month); d < 0 {
			return month
		}
	}
}

// daysCovered gives for each month how many days n steps from the start of the
// year fill, parts of a day included.
func (c Calendar) daysCovered(n int) (days [12]float64) {
	for m := range days {
		steps := min(n, c.DaysIn(m+1)*c.StepsPerDay)
		days[m] = float64(steps) / float64(c.StepsPerDay)
		n -= steps
	}
	return days
}

// checkSteps refuses a series that is empty or longer than a year.
func (c Calendar) checkSteps(doing string, n int) error {
	if err := c.check(doing); err != nil {
		return err
	}
	if n < 1 {
		return physics.Refuse(doing, "the series are empty")
	}
	if n > c.Steps() {
		return physics.Refuse(doing, "%d steps are more than the %d of a year", n, c.Steps())
	}
	return nil
}

// checkSeries refuses a series of another length, or with a value that is not
// finite or not between low and high; it names the first.
func checkSeries(doing, name string, series []float64, n int, low, high float64, unit string) error {
	if len(series) != n {
		return physics.Refuse(doing, "%s has %d values for %d steps", name, len(series), n)
	}
	for i, v := range series {
		// The comparison is false for what is no number.
		if !(v >= low && v <= high) {
			if math.IsNaN(v) || math.IsInf(v, 0) {
				return physics.Refuse(doing, "%s at step %d is not a finite number", name, i)
			}
			return physics.Refuse(doing, "%s at step %d is %.6g %s, outside %.6g to %.6g %s", name, i, v, unit, low, high, unit)
		}
	}
	return nil
}

// PerDay turns the energies of months into those of a mean day of each, over the
// days that a series of n steps covers; 0 for a month that it does not reach.
func (c Calendar) PerDay(months [12]float64, n int) (perDay [12]float64) {
	if c.StepsPerDay < 1 {
		return perDay
	}
	for m, days := range c.daysCovered(n) {
		if days > 0 {
			perDay[m] = months[m] / days
		}
	}
	return perDay
}
