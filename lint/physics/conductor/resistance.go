package conductor

import (
	"math"

	"stringline/lint/physics"
)

// row is one size of IEC 60228 with the largest resistance that the standard
// allows at 20 degC, in ohm/km. The makers' cables lie at or a little below it,
// so a drop computed from it errs on the safe side.
type row struct {
	mm2                           float64
	class2, class5, class5Tinned  float64
	tinnedFromMemory, class1Holds bool
}

// sizes is IEC 60228 from 1.5 to 120 mm2, copper, classes 2 and 5, and class 5
// tinned, read in public transcriptions; of the tinned column 1.5, 2.5 and 50
// to 120 mm2 are from memory. Of solid (class 1) conductors it is remembered
// that their maxima equal those of class 2 to 16 mm2.
var sizes = []row{
	{1.5, 12.1, 13.3, 13.7, true, true},
	{2.5, 7.41, 7.98, 8.21, true, true},
	{4, 4.61, 4.95, 5.09, false, true},
	{6, 3.08, 3.30, 3.39, false, true},
	{10, 1.83, 1.91, 1.95, false, true},
	{16, 1.15, 1.21, 1.24, false, true},
	{25, 0.727, 0.780, 0.795, false, false},
	{35, 0.524, 0.554, 0.565, false, false},
	{50, 0.387, 0.386, 0.393, true, false},
	{70, 0.268, 0.272, 0.277, true, false},
	{95, 0.193, 0.206, 0.210, true, false},
	{120, 0.153, 0.161, 0.164, true, false},
}

// coated is NEC (NFPA 70) chapter 9 table 8, coated (tinned) stranded copper,
// ohm/kft at 75 degC, by gauge number. 18 to 12 AWG read in transcription, the
// rest from memory. 250 kcmil stands apart, it has no gauge number.
var coated = map[int]float64{
	18: 8.45, 16: 5.29, 14: 3.26, 12: 2.05, 10: 1.29, 8: 0.809, 6: 0.510, 4: 0.321, 3: 0.254, 2: 0.201, 1: 0.160,
	0: 0.127, -1: 0.101, -2: 0.0797, -3: 0.0626,
}

const (
	doing     = "resistance of a conductor"
	table8    = 348.15         // K, the temperature of that table, 75 degC
	perKft    = 1 / 304.8      // ohm/kft in ohm/m
	sameArea  = 1e-6           // relative: areas that are one size
	kcmil250  = 126.676869e-6  // m2
	kcmil2000 = 1013.414949e-6 // m2, the largest size of that table
)

// Resistance gives the resistance in ohm/m of one conductor at a conductor
// temperature in K (-60 to 200 degC).
//
// Metric sizes take the maximum of IEC 60228 for the class, 1.5 to 120 mm2,
// and the temperature coefficient of IEC 60028. AWG and kcmil sizes take area
// and resistivity with 2 % for stranding of either class, none for solid wire;
// tinned ones take NEC chapter 9 table 8. Aluminum is copper's figure times the ratio of the
// resistivities. A size, class or coating without a figure is refused: supply
// the maker's.
func (c Conductor) Resistance(temperature float64) (float64, error) {
	r20, _, err := c.at20()
	if err != nil {
		return 0, err
	}
	coefficient := CopperCoefficient
	if c.Material == "Al" {
		coefficient = AluminumCoefficient
	}
	return AtTemperature(r20, coefficient, temperature)
}

// Method says where Resistance has its figure from, for the workings of a
// fact. It is empty where Resistance refuses.
func (c Conductor) Method() string {
	_, method, err := c.at20()
	if err != nil {
		return ""
	}
	return method
}

// at20 gives the resistance in ohm/m at 20 degC and its source.
func (c Conductor) at20() (float64, string, error) {
	if c.Material != "Cu" && c.Material != "Al" {
		return 0, "", physics.Refuse(doing, "material %q; known are Cu and Al", c.Material)
	}
	if c.Strand != "solid" && c.Strand != "class_2" && c.Strand != "class_5" {
		return 0, "", physics.Refuse(doing, "strand %q; known are solid, class_2 and class_5", c.Strand)
	}
	if c.Material == "Al" && c.Tinned {
		return 0, "", physics.Refuse(doing, "no figure for tinned aluminum")
	}
	if math.IsNaN(c.Area) || math.IsInf(c.Area, 0) || c.Area <= 0 {
		return 0, "", physics.Refuse(doing, "area is not a positive number")
	}
	if c.Gauge {
		return c.gauge20()
	}
	return c.metric20()
}

func (c Conductor) metric20() (float64, string, error) {
	for _, r := range sizes {
		if math.Abs(c.Area*1e6-r.mm2) > sameArea*r.mm2 {
			continue
		}
		figure, source := r.class5, "IEC 60228 class 5, maximum"
		switch {
		case c.Tinned && c.Strand != "class_5":
			return 0, "", physics.Refuse(doing, "no figure for tinned conductors other than class_5")
		case c.Tinned:
			figure, source = r.class5Tinned, "IEC 60228 class 5 tinned, maximum"
			if r.tinnedFromMemory {
				source += " (from memory)"
			}
		case c.Strand == "class_2":
			figure, source = r.class2, "IEC 60228 class 2, maximum"
		case c.Strand == "solid" && !r.class1Holds:
			return 0, "", physics.Refuse(doing, "no figure for solid conductors above 16 mm2")
		case c.Strand == "solid":
			figure, source = r.class2, "IEC 60228 class 1, maximum (from memory equal to class 2)"
		}
		if c.Material == "Al" {
			figure *= AluminumResistivity / CopperResistivity
			source += ", copper's figure times the ratio of resistivities (aluminum's from memory)"
		}
		return figure * 1e-3, source + "; temperature after IEC 60028", nil
	}
	return 0, "", physics.Refuse(doing, "%.6g mm2 is not a size of IEC 60228 between 1.5 and 120 mm2", c.Area*1e6)
}

func (c Conductor) gauge20() (float64, string, error) {
	thinnest, err := GaugeArea(18)
	if err != nil {
		return 0, "", err
	}
	if c.Area < thinnest*(1-sameArea) || c.Area > kcmil2000*(1+sameArea) {
		return 0, "", physics.Refuse(doing, "%.6g mm2 is outside 18 AWG to 2000 kcmil", c.Area*1e6)
	}
	if c.Tinned {
		return c.coated20()
	}
	resistivity, source := CopperResistivity, "area by ASTM B258, resistivity and temperature by IEC 60028"
	if c.Material == "Al" {
		resistivity, source = AluminumResistivity, "area by ASTM B258, resistivity of aluminum (from memory)"
	}
	r, err := OfResistivity(resistivity, c.Area)
	if err != nil {
		return 0, "", err
	}
	if c.Strand == "solid" {
		return r, source, nil
	}
	return r * stranding, source + ", 2 % for stranding", nil
}

func (c Conductor) coated20() (float64, string, error) {
	if c.Strand == "solid" {
		return 0, "", physics.Refuse(doing, "no figure for tinned solid wire")
	}
	figure, source := 0.0, "NEC chapter 9 table 8, coated"
	if math.Abs(c.Area-kcmil250) <= sameArea*kcmil250 {
		figure, source = 0.0535, source+" (from memory)"
	}
	for n := 18; n >= -3; n-- {
		if area, err := GaugeArea(n); err == nil && math.Abs(c.Area-area) <= sameArea*area {
			figure = coated[n] // 0 where the table leaves an odd gauge out
			if n < 12 {
				source += " (from memory)"
			}
		}
	}
	if figure == 0 {
		return 0, "", physics.Refuse(doing, "NEC chapter 9 table 8 has no coated row for %.6g mm2", c.Area*1e6)
	}
	// The table stands at 75 degC; carried back by the same coefficient that
	// Resistance carries it forward with.
	return figure * perKft / (1 + CopperCoefficient*(table8-ReferenceTemperature)), source, nil
}
