package energy

import (
	"fmt"

	"stringline/lint/physics"
)

// Window is a part of the day in s after midnight, 0 to 86400. From after To
// goes over midnight; From equal to To is refused.
type Window struct{ From, To float64 }

// length gives the length in s.
func (w Window) length() float64 {
	if w.From > w.To {
		return day - w.From + w.To
	}
	return w.To - w.From
}

// overlap gives for how many of the seconds from a to b of a day the window is
// open.
func (w Window) overlap(a, b float64) float64 {
	if w.From > w.To {
		return max(0, min(b, w.To)-a) + max(0, b-max(a, w.From))
	}
	return max(0, min(b, w.To)-max(a, w.From))
}

// Load is what takes energy from a bank every day.
type Load struct {
	Energy float64 // J a day, at the load's own terminals, 0 or more
	// Efficiency of what stands between it and the bank, above 0 and at most 1: 1
	// for a load on the bank, the supply's converter's or the inverter's otherwise,
	// their product (converter.Chain) for one behind both.
	Efficiency float64
	// Windows say when it runs, evenly through all of them together; they must not
	// overlap. None: evenly through the day (an assumption that reports list).
	Windows []Window
	// Months are twelve factors on Energy, January first, 0 to 1000; nil: 1 each.
	Months *[12]float64
	// Power in W that it draws while it runs, to hold Energy and Windows together:
	// more energy than it can use in its windows is refused. 0: not known.
	Power float64
}

// Idle is the load of a device that takes power in W for hoursPerDay of the day
// (0 to 24) whatever hangs on it: an inverter's, a converter's or a controller's
// own draw, at the bank. Evenly through the day.
func Idle(power, hoursPerDay float64) Load {
	return Load{Energy: power * hoursPerDay * 3600, Efficiency: 1}
}

// Check refuses a load that is none: values outside their ranges, hours that
// overlap, more energy than its power gives in its hours.
func (l *Load) Check() error { return l.check("energy of a load") }

func (l *Load) check(doing string) error {
	if err := physics.Check(doing,
		physics.Input{Name: "energy of a day", Value: l.Energy, Min: 0, Max: 1e14, Unit: "J"},
		physics.Input{Name: "efficiency", Value: l.Efficiency, Min: 0.001, Max: 1},
		physics.Input{Name: "power", Value: l.Power, Min: 0, Max: mostPower, Unit: "W"}); err != nil {
		return err
	}
	open := 0.0
	for i, w := range l.Windows {
		if err := physics.Check(doing,
			physics.Input{Name: "start of its hours", Value: w.From, Min: 0, Max: day, Unit: "s"},
			physics.Input{Name: "end of its hours", Value: w.To, Min: 0, Max: day, Unit: "s"}); err != nil {
			return err
		}
		if w.length() < 1 {
			return physics.Refuse(doing, "its hours begin and end at the same time")
		}
		for _, other := range l.Windows[:i] {
			both := other.overlap(w.From, w.To)
			if w.From > w.To {
				both = other.overlap(w.From, day) + other.overlap(0, w.To)
			}
			if both > 0 {
				return physics.Refuse(doing, "its hours overlap")
			}
		}
		open += w.length()
	}
	if len(l.Windows) == 0 {
		open = day
	}
	most := 1.0
	if l.Months != nil {
		most = 0
		for m, factor := range l.Months {
			if err := physics.Check(doing, physics.Input{Name: fmt.Sprintf("factor of month %d", m+1), Value: factor, Min: 0, Max: 1000}); err != nil {
				return err
			}
			most = max(most, factor)
		}
	}
	if l.Power > 0 && l.Energy*most > l.Power*open*(1+slack) {
		return physics.Refuse(doing, "%.6g Wh a day at %.6g W take %.4g h, more than the %.4g h in which it runs",
			l.Energy*most/3600, l.Power, l.Energy*most/l.Power/3600, open/3600)
	}
	return nil
}

// factor gives the factor of a month, January 0.
func (l *Load) factor(m int) float64 {
	if l.Months == nil {
		return 1
	}
	return l.Months[m]
}

func checkLoads(doing string, loads []Load) error {
	for i := range loads {
		if err := loads[i].check(fmt.Sprintf("%s: load %d", doing, i+1)); err != nil {
			return err
		}
	}
	return nil
}

// LoadPerDay gives the energy in J that the loads take from the bank on a day of
// each month: the sum of energy factor / efficiency.
func LoadPerDay(loads []Load) (joules [12]float64, err error) {
	if err := checkLoads("load of a day", loads); err != nil {
		return joules, err
	}
	for i := range loads {
		for m := range joules {
			joules[m] += loads[i].Energy * loads[i].factor(m) / loads[i].Efficiency
		}
	}
	return joules, nil
}

// profiles gives the power in W that the loads take from the bank, for each
// month one value a step of the day. A window that ends within a step gives the
// step its share, so that the day's energy is exact whatever the step.
func profiles(cal Calendar, loads []Load) (months [12][]float64) {
	all := make([]float64, 12*cal.StepsPerDay)
	step := cal.Step()
	for m := range months {
		months[m] = all[m*cal.StepsPerDay : (m+1)*cal.StepsPerDay]
	}
	for i := range loads {
		l := &loads[i]
		atBank, open := l.Energy/l.Efficiency, 0.0
		for _, w := range l.Windows {
			open += w.length()
		}
		for k := range cal.StepsPerDay {
			power := atBank / day
			if len(l.Windows) > 0 {
				running := 0.0
				for _, w := range l.Windows {
					running += w.overlap(float64(k)*step, float64(k+1)*step)
				}
				power = atBank * (running / open) / step
			}
			for m := range months {
				months[m][k] += power * l.factor(m)
			}
		}
	}
	return months
}
