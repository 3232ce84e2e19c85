package facts

import (
	"strings"

	"stringline/lint/physics/battery"
)

// What the loads take from a bank in a day, and how long a full one lasts.

const day = 24 * 3600.0 // s

var (
	loadEnergy = declare(Entry{Collection: "loads", Name: "energy_per_day", Unit: "Wh", Bound: true,
		Means: "energy that it uses in a day", Formula: "daily_energy, else power x hours_per_day", Source: "the design"},
		func(l *Load, w *Work) float64 {
			if loadDaily.Given(l) {
				return loadDaily.Of(w, l)
			}
			power, hours := loadPower.Of(w, l), loadHours.Of(w, l)
			w.Say("%s x %g h", say(power, "W"), hours)
			return power * hours * 3600
		})

	bankUsable = declare(Entry{Collection: "banks", Name: "usable_energy", Unit: "Wh",
		Means: "energy that may be taken from it when full", Formula: "nominal x capacity x the battery's usable", Source: batterySheet},
		func(b *Bank, w *Work) float64 {
			nominal, capacity, usable := bankNominal.Of(w, b), bankCapacity.Of(w, b), batteryUsable.Of(w, b.battery)
			w.Say("%s x %s x %s", say(nominal, "V"), say(capacity, "Ah"), say(usable, "%"))
			if !w.Known() {
				return 0
			}
			return w.physics(battery.UsableEnergy(nominal, capacity, usable))
		})

	bankDailyLoad = declare(Entry{Collection: "banks", Name: "daily_load", Unit: "Wh", Bound: true,
		Means: "energy that is taken from it in a day",
		Formula: "its DC loads, those of supplies / the converter's efficiency, those of AC outputs / the inverter's efficiency, the inverters' idle x hours_per_day, " +
			"and 24 h of the controllers' and converters' idle",
		Source: "conservation of energy"},
		func(b *Bank, w *Work) float64 {
			outputs, supplies, loads := b.feeding(w)
			chargers, _ := b.charging(w)
			total := 0.0
			var said []string
			add := func(id string, joules float64) {
				if total += joules; joules > 0 {
					said = append(said, id+" "+say(joules, "Wh"))
				}
			}
			for _, l := range loads {
				add(l.id, loadEnergy.Of(w, l))
			}
			for _, s := range supplies {
				add(s.id, w.part(func() float64 {
					return used(w, s.all(w))/converterEfficiency.Of(w, s.converter) + day*converterIdle.Of(w, s.converter)
				}))
			}
			for _, o := range outputs {
				add(o.id, w.part(func() float64 {
					return used(w, o.all(w))/inverterEfficiency.Of(w, o.inverter) + 3600*outputHours.Of(w, o)*inverterIdle.Of(w, o.inverter)
				}))
			}
			for _, c := range chargers {
				add(c.id, used(w, c.allLoads(w))+day*controllerIdle.Of(w, c.controller))
			}
			w.Say("%s", strings.Join(said, " + "))
			return total
		})

	bankAutonomy = declare(Entry{Collection: "banks", Name: "autonomy", Unit: "d",
		Means: "how long a full bank carries the loads without any charging", Formula: "usable_energy / daily_load", Source: commonPractice},
		func(b *Bank, w *Work) float64 {
			usable, load := bankUsable.Of(w, b), bankDailyLoad.Of(w, b)
			w.Say("%s / %s a day", say(usable, "Wh"), say(load, "Wh"))
			if !w.Known() {
				return 0
			}
			return day * w.physics(battery.Autonomy(usable, load))
		})

	systemDailyLoad = declare(Entry{Collection: "system", Name: "daily_load", Unit: "Wh", Bound: true,
		Means: "energy that is taken from all banks in a day", Formula: "sum of its banks' daily_load", Source: "energies add"},
		func(s *Whole, w *Work) float64 { return sum(w, bankDailyLoad, s.allBanks(w), nil) })
)

// used adds the energy of loads.
func used(w *Work, loads []*Load) float64 {
	total := 0.0
	for _, l := range loads {
		total += loadEnergy.Of(w, l)
	}
	return total
}
