package facts

import "stringline/lint/physics/battery"

// The bank over hours: how long a full one lasts at full load, and how long an
// empty one takes to be full again.

var (
	bankExponent = declare(Entry{Collection: "banks", Name: "peukert_exponent", Unit: "",
		Means:   "how its capacity shrinks as the current grows; of a battery that is not of lead 1 where its data sheet is silent (assumed)",
		Formula: "the battery's peukert, else 1 where it is not of lead", Source: batterySheet + "; " + commonPractice},
		func(b *Bank, w *Work) float64 {
			if batteryPeukert.Given(b.battery) {
				return batteryPeukert.Of(w, b.battery)
			}
			chemistry := batteryChemistry.Of(w, b.battery)
			if w.Known() && !battery.IsLead(chemistry) {
				w.assume()
				return 1
			}
			return batteryPeukert.Of(w, b.battery)
		})

	bankRunTime = declare(Entry{Collection: "banks", Name: "run_time", Unit: "h",
		Means:   "how long a full bank feeds everything that hangs on it at once",
		Formula: "usable x H x (capacity / (discharge_current_continuous x H))^peukert_exponent, H the capacity_rate, and never more than capacity / current", Source: "Peukert (1897), in the hour-rate form"},
		func(b *Bank, w *Work) float64 {
			rated := battery.Rated{Capacity: bankCapacity.Of(w, b), Time: 20 * 3600}
			k, current, usable := bankExponent.Of(w, b), bankDischarge.Of(w, b), batteryUsable.Of(w, b.battery)
			if w.Known() && k != 1 { // at 1 the rate drops out
				rated.Time = batteryRate.Of(w, b.battery)
			}
			w.Say("%s at %s", say(rated.Capacity, "Ah"), say(current, "A"))
			if !w.Known() {
				return 0
			}
			capacity, err := rated.CapacityAt(current, k)
			if w.physics(0, err); err != nil {
				return 0
			}
			return usable * capacity / current
		})

	_ = declare(Entry{Collection: "banks", Name: "full_charge_time", Unit: "h",
		Means:   "about how long it takes from empty to full at charge_current_total, no load and no cloud: an estimate, never a limit",
		Formula: "usable x capacity at the smaller of charge_current_total and charge_current_accepted until the taper of its chemistry, then an exponential approach to its tail current; efficiency of charge round_trip",
		Source:  commonPractice + ", from memory: taper from 80 % and tail 2 % of capacity an hour for lead, 90 to 95 % and 5 % for others"},
		func(b *Bank, w *Work) float64 {
			current := min(bankChargeTotal.Of(w, b), bankChargeAccepted.Of(w, b))
			capacity, usable := bankCapacity.Of(w, b), batteryUsable.Of(w, b.battery)
			chemistry, trip := batteryChemistry.Of(w, b.battery), batteryRoundTrip.Of(w, b.battery)
			if !w.Known() {
				return 0
			}
			taper, err := battery.TaperFrom(chemistry)
			w.physics(0, err)
			tail, err := battery.TailRate(chemistry)
			w.physics(0, err)
			w.Say("%s into %s", say(current, "A"), say(usable*capacity, "Ah"))
			charge := battery.Charge{Current: current, Capacity: capacity, From: 1 - usable, TaperFrom: max(taper, 1-usable), Tail: tail * capacity / 3600, Efficiency: trip}
			return w.physics(charge.Time())
		})
)
