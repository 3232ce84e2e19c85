package battery

import "stringline/lint/physics"

// JoiningSpread gives the voltage in V by which strings of batteries may differ
// before they are joined in parallel: 0.05 V for 12.8 V, in proportion to their
// nominal voltage in V. Beyond it the fuller one drives a current through the
// other that only the links between them limit.
//
// Common practice for lithium, where a small voltage is a large difference in
// charge. Lead bears more; the same figure is on its safe side. A maker's own
// figure wins.
func JoiningSpread(nominal float64) (float64, error) {
	if err := physics.Check("spread of voltage before joining",
		physics.Input{Name: "nominal voltage", Value: nominal, Min: 0, Max: 1e5, Unit: "V"}); err != nil {
		return 0, err
	}
	return 0.05 * nominal / 12.8, nil
}
