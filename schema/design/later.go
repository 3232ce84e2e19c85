package design

import (
	"slices"
	"strings"
)

// later lists what the language leaves for later, by the names that people
// try. It is refused by name: taking it for a misspelling would hide that the
// system has something that nothing here judges.
var later = []struct {
	words []string
	what  string
}{
	{[]string{"wind", "wind_turbine", "turbine", "windmill"}, "wind turbines are"},
	{[]string{"hydro", "hydro_turbine", "micro_hydro", "water_turbine"}, "hydro turbines are"},
	{[]string{"three_phase", "phases", "phase", "l1", "l2", "l3"}, "three-phase AC is"},
	{[]string{"optimizer", "optimizers", "microinverter", "microinverters", "micro_inverter", "module_level_electronics", "mlpe", "rapid_shutdown_device"},
		"module-level electronics are"},
	{[]string{"ac_coupling", "ac_coupled", "ac_couple", "grid_inverter"}, "AC coupling is"},
	{[]string{"seasonal_tilt", "tilt_summer", "tilt_winter", "summer_tilt", "winter_tilt", "tracker", "tracking"}, "tilt that changes with the season is"},
	{[]string{"horizon", "horizon_line", "shading", "shade"}, "the horizon line is"},
}

// notYet says in words what a refused name stands for; ok is false for names
// that are not of the later language.
func notYet(name string) (message string, ok bool) {
	name = strings.ReplaceAll(strings.ToLower(name), "-", "_")
	for _, l := range later {
		if slices.Contains(l.words, name) {
			return l.what + " not part of the language yet", true
		}
	}
	return "", false
}
