package facts

import (
	"slices"

	"stringline/lint/physics/battery"
	"stringline/lint/physics/energy"
)

// The year's account: what the sun gives a bank and what its loads take, month
// by month and hour by hour. Other charge sources are not counted: a design does
// not say when they run.

const balanceMethod = "conservation of energy; mean day of each month"

var (
	loadRuns = declare(Entry{Collection: "loads", Name: "runs",
		Means: "when in the day it runs", Formula: "between, else evenly through the day (assumed)", Source: "the design"},
		func(l *Load, w *Work) string {
			if !loadBetween.Given(l) {
				w.assume()
				return "evenly through the day"
			}
			loadBetween.Of(w, l)
			return "between its clock hours"
		})

	loadSeason = declare(Entry{Collection: "loads", Name: "season",
		Means: "when in the year it runs", Formula: "months, else alike all year (assumed)", Source: "the design"},
		func(l *Load, w *Work) string {
			if !loadMonths.Given(l) {
				w.assume()
				return "alike all year"
			}
			loadMonths.Of(w, l)
			return "by its months"
		})

	bankYieldMonths = overMonths(Entry{Collection: "banks", Name: "yield_by_month", Unit: "Wh", Means: "energy that the sun gives into the bank's terminals on a mean day of each month", Formula: "sum of its chargers' yield_by_month", Source: balanceMethod},
		func(b *Bank, w *Work) (all [12]float64) {
			chargers, _ := b.charging(w)
			for _, c := range chargers {
				addMonths(&all, chargerYieldMonths.Of(w, c))
			}
			return all
		})

	bankLoadMonths = overMonths(Entry{Collection: "banks", Name: "load_by_month", Unit: "Wh", Means: "energy that is taken from it on a day of each month", Formula: "as daily_load, each load times its factor of the month", Source: balanceMethod},
		func(b *Bank, w *Work) (all [12]float64) {
			loads := b.everything(w)
			if !w.Known() {
				return all
			}
			all, err := energy.LoadPerDay(loads)
			w.physics(0, err)
			return all
		})

	_ = declare(Entry{Collection: "banks", Name: "autonomy_heaviest", Unit: "d",
		Means: "how long a full bank carries the loads without any charging, in the month that takes most", Formula: "usable_energy / the largest of load_by_month", Source: commonPractice},
		func(b *Bank, w *Work) float64 {
			usable, load := bankUsable.Of(w, b), bankLoadMonths.Of(w, b)
			if !w.Known() {
				return 0
			}
			most := slices.Max(load.Values)
			w.Say("%s / %s a day", say(usable, "Wh"), say(most, "Wh"))
			return day * w.physics(battery.Autonomy(usable, most))
		})

	bankBalanceMonths = overMonths(Entry{Collection: "banks", Name: "balance_by_month", Unit: "Wh", Means: "what a mean day of each month leaves over, by the sun alone; below 0 what it lacks", Formula: "yield_by_month x the battery's round_trip - load_by_month", Source: balanceMethod},
		func(b *Bank, w *Work) [12]float64 {
			yield, load, trip := bankYieldMonths.Of(w, b), bankLoadMonths.Of(w, b), batteryRoundTrip.Of(w, b.battery)
			if !w.Known() {
				return [12]float64{}
			}
			found, err := energy.MonthlyBalance(twelve(yield), twelve(load), trip)
			w.physics(0, err)
			return found.Months
		})

	bankUnserved = declare(Entry{Collection: "banks", Name: "unserved_hours", Unit: "h",
		Means:   "hours of a year in which the sun and the bank do not cover its loads",
		Formula: "account of every hour: sun first to the loads, the rest into store times round_trip and no faster than charge_current_accepted, what is missing out of usable_energy; second of two passes that start full",
		Source:  "conservation of energy; taper toward full by chemistry (" + commonPractice + ", from memory)"},
		func(b *Bank, w *Work) float64 {
			chargers, _ := b.charging(w)
			for _, c := range chargers {
				chargerYield.Of(w, c)
			}
			account := energy.Bank{Loads: b.everything(w)}
			account.Store.Usable, account.Store.RoundTrip = bankUsable.Of(w, b), batteryRoundTrip.Of(w, b.battery)
			account.Store.Acceptance = b.acceptance(w)
			year := b.site.sky(w)
			if !w.Known() {
				return 0
			}
			account.Calendar = calendar(w, year)
			for _, c := range chargers {
				account.Chargers = append(account.Chargers, *c.made)
			}
			found, err := account.Year(nil)
			if w.physics(0, err); err != nil {
				return 0
			}
			b.year = found
			w.Say("%s of %s lack %s", b.site.under(w), say(found.Total.Load, "Wh"), say(found.Total.Unserved, "Wh"))
			return found.Total.UnservedTime
		})

	_ = overMonths(Entry{Collection: "banks", Name: "unserved_by_month", Unit: "Wh", Means: "energy that its loads lack on a mean day of each month, sun and bank together", Formula: "as unserved_hours, month by month", Source: balanceMethod},
		func(b *Bank, w *Work) [12]float64 {
			bankUnserved.Of(w, b)
			if !w.Known() {
				return [12]float64{}
			}
			var lack [12]float64
			for m := range lack {
				lack[m] = b.year.Months[m].Unserved
			}
			return b.year.Calendar.PerDay(lack, b.year.Steps)
		})

	_ = declare(Entry{Collection: "banks", Name: "refill_time", Unit: "d",
		Means:   "days of its worst month that it takes from empty to full while the loads go on; unknown where it never fills",
		Formula: "usable_energy / the balance of its worst month", Source: balanceMethod},
		func(b *Bank, w *Work) float64 {
			balance, usable := bankBalanceMonths.Of(w, b), bankUsable.Of(w, b)
			yield, load, trip := bankYieldMonths.Of(w, b), bankLoadMonths.Of(w, b), batteryRoundTrip.Of(w, b.battery)
			if !w.Known() {
				return 0
			}
			worst := worstOf(balance)
			days, err := battery.DaysToRefill(usable, yield.Values[worst], load.Values[worst], trip)
			w.Say("%s / %s a day", say(usable, "Wh"), say(balance.Values[worst], "Wh"))
			return day * w.physics(days, err)
		})

	systemYield = declare(Entry{Collection: "system", Name: "yearly_yield", Unit: "Wh",
		Means: "energy that the sun gives into the banks' terminals in a year, after losses and clipping", Formula: "sum of its chargers' yearly_yield", Source: clippingMethod},
		func(s *Whole, w *Work) float64 {
			total := 0.0
			for _, b := range s.allBanks(w) {
				chargers, _ := b.charging(w)
				for _, c := range chargers {
					total += chargerYield.Of(w, c)
					w.Say("%s", c.site.under(w))
				}
			}
			return total
		})

	systemBalanceMonths = overMonths(Entry{Collection: "system", Name: "balance_by_month", Unit: "Wh", Means: "what a mean day of each month leaves over, by the sun alone; below 0 what it lacks", Formula: "sum of its banks' balance_by_month", Source: balanceMethod},
		func(s *Whole, w *Work) (all [12]float64) {
			for _, b := range s.allBanks(w) {
				addMonths(&all, bankBalanceMonths.Of(w, b))
			}
			return all
		})

	_ = declare(Entry{Collection: "system", Name: "backed",
		Means: "another source than the sun charges a bank", Formula: "a bank has a charge_source", Source: "the design"},
		func(s *Whole, w *Work) bool {
			backed := false
			for _, b := range s.allBanks(w) {
				_, others := b.charging(w)
				backed = backed || len(others) > 0
			}
			return backed
		})

	systemWorst = declare(Entry{Collection: "system", Name: "worst_month", Unit: "",
		Means: "the month that leaves least over, 1 to 12", Formula: "month of the least of balance_by_month", Source: balanceMethod},
		func(s *Whole, w *Work) float64 {
			balance := systemBalanceMonths.Of(w, s)
			if !w.Known() {
				return 0
			}
			return float64(worstOf(balance) + 1)
		})

	systemWorstBalance = declare(Entry{Collection: "system", Name: "worst_month_balance", Unit: "Wh",
		Means: "what a mean day of the worst month leaves over, by the sun alone; below 0 what it lacks", Formula: "least of balance_by_month", Source: balanceMethod},
		func(s *Whole, w *Work) float64 {
			balance := systemBalanceMonths.Of(w, s)
			if !w.Known() {
				return 0
			}
			w.Say("in month %g, %s", systemWorst.Of(w, s), s.site.under(w))
			return balance.Values[worstOf(balance)]
		})

	systemCover = declare(Entry{Collection: "system", Name: "worst_month_cover", Unit: "%",
		Means:   "what the sun gives as a share of what the loads take, in the month where it is least; under a clear sky a most, never a promise",
		Formula: "least over the months with loads, and over the banks, of yield_by_month x round_trip / load_by_month", Source: balanceMethod},
		func(s *Whole, w *Work) float64 { return s.cover(w) })

	_ = declare(Entry{Collection: "system", Name: "unserved_hours", Unit: "h",
		Means: "hours of a year in which any load lacks energy, by the sun and the banks alone", Formula: "steps of the year in which any bank leaves a load unserved", Source: "as bank.unserved_hours"},
		func(s *Whole, w *Work) float64 {
			banks := s.allBanks(w)
			for _, b := range banks {
				bankUnserved.Of(w, b)
			}
			if !w.Known() {
				return 0
			}
			years := make([]*energy.Year, len(banks))
			for n, b := range banks {
				years[n] = b.year
			}
			seconds, err := energy.UnservedTogether(years...)
			w.Say("%s", s.site.under(w))
			return w.physics(seconds, err)
		})
)

// cover gives the least over banks and months of what the sun gives over what
// the loads take.
func (s *Whole) cover(w *Work) float64 {
	least, month, of := -1.0, 0, ""
	for _, b := range s.allBanks(w) {
		yield, load, trip := bankYieldMonths.Of(w, b), bankLoadMonths.Of(w, b), batteryRoundTrip.Of(w, b.battery)
		if !w.Known() {
			continue
		}
		for m, take := range load.Values {
			if give := yield.Values[m] * trip; take > 0 && (least < 0 || give < least*take) {
				least, month, of = give/take, m, b.id
			}
		}
	}
	if !w.Known() {
		return 0
	}
	if of == "" {
		w.fail("nothing takes energy from the banks")
		return 0
	}
	w.Say("%s in month %d, %s", of, month+1, s.site.under(w))
	return least
}

// overMonths declares a series of twelve months.
func overMonths[S subject](e Entry, of func(S, *Work) [12]float64) Key[S, Curve] {
	return declare(e, func(s S, w *Work) Curve {
		values := of(s, w)
		return Curve{Over: months(), Values: values[:]}
	})
}

// months gives the axis of a series of months.
func months() []float64 {
	all := make([]float64, 12)
	for m := range all {
		all[m] = float64(m + 1)
	}
	return all
}

func addMonths(all *[12]float64, one Curve) {
	for m, v := range one.Values {
		all[m] += v
	}
}

func twelve(c Curve) (all [12]float64) {
	copy(all[:], c.Values)
	return all
}

// worstOf gives which value of a series is least; the first of equals.
func worstOf(c Curve) int {
	worst := 0
	for n, v := range c.Values {
		if v < c.Values[worst] {
			worst = n
		}
	}
	return worst
}

// everything lists what takes energy from the bank, as the year sees it: its
// loads, those behind converters and inverters, and what these and the chargers
// take themselves.
func (b *Bank) everything(w *Work) []energy.Load {
	outputs, supplies, loads := b.feeding(w)
	chargers, _ := b.charging(w)
	var all []energy.Load
	add := func(loads []*Load, efficiency float64) {
		for _, l := range loads {
			all = append(all, l.asEnergy(w, efficiency))
		}
	}
	idle := func(power, hours float64) { all = append(all, energy.Idle(power, hours)) }
	add(loads, 1)
	for _, p := range supplies {
		add(p.all(w), converterEfficiency.Of(w, p.converter))
		idle(converterIdle.Of(w, p.converter), 24)
	}
	for _, o := range outputs {
		add(o.all(w), inverterEfficiency.Of(w, o.inverter))
		idle(inverterIdle.Of(w, o.inverter), outputHours.Of(w, o))
	}
	for _, c := range chargers {
		add(c.allLoads(w), 1)
		idle(controllerIdle.Of(w, c.controller), 24)
	}
	return all
}

func (l *Load) asEnergy(w *Work, efficiency float64) energy.Load {
	made := energy.Load{Energy: loadEnergy.Of(w, l), Efficiency: efficiency}
	loadSeason.Of(w, l)
	if loadRuns.Of(w, l); loadBetween.Given(l) {
		if hours := loadBetween.Of(w, l); len(hours) == 2 {
			made.Windows = []energy.Window{{From: hours[0], To: hours[1]}}
		}
		if loadPower.Given(l) {
			made.Power = loadPower.Of(w, l)
		}
	}
	if loadMonths.Given(l) {
		var factors [12]float64
		copy(factors[:], loadMonths.Of(w, l))
		made.Months = &factors
	}
	if w.Known() {
		if err := made.Check(); err != nil {
			w.fail(l.id + ": " + err.Error())
		}
	}
	return made
}

// acceptance gives how fast the bank takes charge; nil where that is unknown.
func (b *Bank) acceptance(w *Work) *battery.Acceptance {
	most, volts, whole := bankChargeAccepted.Of(w, b), bankBulk.Of(w, b), bankEnergy.Of(w, b)
	chemistry, usable := batteryChemistry.Of(w, b.battery), bankUsable.Of(w, b)
	if !w.Known() {
		return nil
	}
	from, err := battery.TaperFrom(chemistry)
	if w.physics(0, err); err != nil {
		return nil
	}
	return &battery.Acceptance{Most: most * volts, Band: min(usable, (1-from)*whole)}
}
