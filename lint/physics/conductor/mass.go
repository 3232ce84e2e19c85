package conductor

import "stringline/lint/physics"

// Densities at 20 degC in kg/m3: copper after IEC 60028, aluminum after IEC 60889;
// both from memory.
const (
	CopperDensity   = 8890.0
	AluminumDensity = 2703.0
)

// Mass gives the mass in kg of the conductors of a pair: area of one in m2, length
// one way in m, perPole in parallel in each pole (at least 1), "Cu" or "Al". The lay
// of strands and the insulation do not count.
func Mass(area, length float64, perPole int, material string) (float64, error) {
	const doing = "mass of conductors"
	if err := physics.Check(doing,
		physics.Input{Name: "area", Value: area, Min: 0, Max: 1, Unit: "m2"},
		physics.Input{Name: "length", Value: length, Min: 0, Max: 1e6, Unit: "m"},
		physics.Input{Name: "conductors per pole", Value: float64(perPole), Min: 1, Max: 1000}); err != nil {
		return 0, err
	}
	density := CopperDensity
	switch material {
	case "Cu":
	case "Al":
		density = AluminumDensity
	default:
		return 0, physics.Refuse(doing, "no conductor of %q; Cu or Al", material)
	}
	return 2 * area * length * float64(perPole) * density, nil
}
