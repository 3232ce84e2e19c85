package battery

import (
	"stringline/lint/physics"
)

func energyInput(name string, joules float64) physics.Input {
	return physics.Input{Name: name, Value: joules, Min: 0, Max: 1e18, Unit: "J"}
}

// UsableEnergy gives the energy in J that a bank may give: nominal voltage in V
// times capacity in A s times the usable share (0 to 1). Nominal voltage serves
// energy (25.6 V of iron phosphate), not the system voltage.
func UsableEnergy(nominal, capacity, usable float64) (float64, error) {
	if err := physics.Check("usable energy of a bank",
		physics.Input{Name: "nominal voltage", Value: nominal, Min: 0, Max: 1e4, Unit: "V"},
		physics.Input{Name: "capacity", Value: capacity, Min: 0, Max: 1e13, Unit: "A s"},
		physics.Input{Name: "usable share", Value: usable, Min: 0, Max: 1}); err != nil {
		return 0, err
	}
	return nominal * capacity * usable, nil
}

// Autonomy gives for how many days a full bank carries the loads without any
// charging: usable energy in J over the loads' energy of a day in J. It refuses
// loads of zero: they have no autonomy.
func Autonomy(usable, dailyLoad float64) (float64, error) {
	const doing = "days of autonomy"
	if err := physics.Check(doing, energyInput("usable energy", usable), energyInput("load of a day", dailyLoad)); err != nil {
		return 0, err
	}
	if dailyLoad < 1e-3 {
		return 0, physics.Refuse(doing, "the loads take nothing")
	}
	return usable / dailyLoad, nil
}

// DaysToRefill gives how many days an empty bank takes to be full again while
// the loads go on: usable / (yield round_trip - load), with the energy of a day
// in J into the bank's terminals and out to the loads. Like the monthly balance
// it is coarse: round trip (0 to 1) is charged on all of the yield, and slower
// acceptance toward full is left to [Charge]. It refuses a day that leaves
// nothing over: the bank never fills.
func DaysToRefill(usable, dailyYield, dailyLoad, roundTrip float64) (float64, error) {
	const doing = "days to refill"
	if err := physics.Check(doing, energyInput("usable energy", usable), energyInput("yield of a day", dailyYield),
		energyInput("load of a day", dailyLoad),
		physics.Input{Name: "round trip", Value: roundTrip, Min: 0, Max: 1}); err != nil {
		return 0, err
	}
	over := dailyYield*roundTrip - dailyLoad
	// A surplus within rounding of nothing is nothing.
	if over <= slack*max(dailyLoad, 1e-3) {
		return 0, physics.Refuse(doing, "a day leaves nothing over for the bank: it never fills")
	}
	return usable / over, nil
}
