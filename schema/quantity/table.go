package quantity

import (
	"math"
	"slices"
	"strings"
)

// Exact by definition (international yard and pound agreement, 1959).
const (
	inch  = 0.0254     // m
	foot  = 12 * inch  // m
	pound = 0.45359237 // kg
	hour  = 3600.0     // s
	day   = 24 * hour  // s

	zeroCelsius  = 273.15             // K
	fahrenheit   = 5.0 / 9            // K
	zeroOfDegF   = 459.67 * 5 / 9     // K
	circularMil  = math.Pi / 4 * 1e-6 // square inch
	perCent      = 0.01
	degree       = math.Pi / 180 // rad
	squareMillim = 1e-6          // m2
)

// The dimensions that units here have. Exponents: length, mass, time, current,
// temperature, angle.
var (
	number             = Dimension{}
	length             = Dimension{Length: 1}
	area               = Dimension{Length: 2}
	mass               = Dimension{Mass: 1}
	duration           = Dimension{Time: 1}
	current            = Dimension{Current: 1}
	charge             = Dimension{Time: 1, Current: 1}
	power              = Dimension{Length: 2, Mass: 1, Time: -3}
	energy             = Dimension{Length: 2, Mass: 1, Time: -2}
	voltage            = Dimension{Length: 2, Mass: 1, Time: -3, Current: -1}
	resistance         = Dimension{Length: 2, Mass: 1, Time: -3, Current: -2}
	resistancePerMeter = Dimension{Length: 1, Mass: 1, Time: -3, Current: -2}
	airFlow            = Dimension{Length: 3, Time: -1}
	temperature        = Dimension{Temperature: 1, Point: true}
	difference         = Dimension{Temperature: 1}
	sharePerKelvin     = Dimension{Temperature: -1}
	voltagePerKelvin   = Dimension{Length: 2, Mass: 1, Time: -3, Current: -1, Temperature: -1}
	currentPerKelvin   = Dimension{Current: 1, Temperature: -1}
	powerPerKelvin     = Dimension{Length: 2, Mass: 1, Time: -3, Temperature: -1}
	angle              = Dimension{Angle: 1}
	irradiance         = Dimension{Mass: 1, Time: -3}
	irradiation        = Dimension{Mass: 1, Time: -2}
	torque             = Dimension{Length: 2, Mass: 1, Time: -2, Angle: -1}
)

// nouns names each dimension for people, with its article.
var nouns = []struct {
	of   Dimension
	noun string
}{
	{number, "a number"}, {length, "a length"}, {area, "an area"}, {mass, "a mass"}, {duration, "a time"},
	{current, "a current"}, {charge, "a charge"}, {power, "a power"}, {energy, "an energy"}, {voltage, "a voltage"},
	{resistance, "a resistance"}, {resistancePerMeter, "a resistance per length"}, {airFlow, "an air flow"},
	{temperature, "a temperature"}, {difference, "a temperature difference"}, {sharePerKelvin, "a share per kelvin"},
	{voltagePerKelvin, "a voltage per kelvin"}, {currentPerKelvin, "a current per kelvin"}, {powerPerKelvin, "a power per kelvin"},
	{angle, "an angle"}, {irradiance, "an irradiance"}, {irradiation, "an irradiation"}, {torque, "a torque"},
}

// units is the one table of units, in the order of the language reference.
// Other spellings of the same unit are folded by spelling and aliases.
var units = []Unit{
	{"V", voltage, 1, 0}, {"mV", voltage, 1e-3, 0}, {"kV", voltage, 1e3, 0},
	{"A", current, 1, 0}, {"mA", current, 1e-3, 0}, {"kA", current, 1e3, 0},
	{"W", power, 1, 0}, {"kW", power, 1e3, 0}, {"VA", power, 1, 0},
	{"Wh", energy, hour, 0}, {"kWh", energy, 1e3 * hour, 0},
	{"Ah", charge, hour, 0},
	{"ohm", resistance, 1, 0}, {"mohm", resistance, 1e-3, 0}, {"kohm", resistance, 1e3, 0}, {"Mohm", resistance, 1e6, 0},
	{"ohm/m", resistancePerMeter, 1, 0}, {"ohm/km", resistancePerMeter, 1e-3, 0}, {"mohm/m", resistancePerMeter, 1e-3, 0},
	{"ohm/kft", resistancePerMeter, 1 / (1000 * foot), 0},
	{"m", length, 1, 0}, {"cm", length, 1e-2, 0}, {"mm", length, 1e-3, 0}, {"km", length, 1e3, 0}, {"ft", length, foot, 0}, {"in", length, inch, 0},
	{"m3/h", airFlow, 1 / hour, 0},
	{"mm2", area, squareMillim, 0}, {"cm2", area, 1e-4, 0}, {gaugeSymbol, area, 0, 0}, {"kcmil", area, 1e3 * circularMil * inch * inch, 0},
	{"degC", temperature, 1, zeroCelsius}, {"degF", temperature, fahrenheit, zeroOfDegF}, {"K", difference, 1, 0},
	{"%/K", sharePerKelvin, perCent, 0},
	{"V/K", voltagePerKelvin, 1, 0}, {"mV/K", voltagePerKelvin, 1e-3, 0},
	{"A/K", currentPerKelvin, 1, 0}, {"mA/K", currentPerKelvin, 1e-3, 0},
	{"W/K", powerPerKelvin, 1, 0},
	{"%", number, perCent, 0}, {"", number, 1, 0},
	{"deg", angle, degree, 0},
	{"W/m2", irradiance, 1, 0}, {"kWh/m2", irradiation, 1e3 * hour, 0},
	{"h", duration, hour, 0}, {"min", duration, 60, 0}, {"s", duration, 1, 0}, {"d", duration, day, 0},
	{"kg", mass, 1, 0}, {"lb", mass, pound, 0},
	{"N m", torque, 1, 0},
}

// documentSymbols are the units that documents print (specification, part 2).
// For each dimension the first one stands for it.
var documentSymbols = []string{
	"V", "A", "W", "Wh", "Ah", "degC", "K", "m", "mm2", "ohm", "ohm/m", "", "%", "%/K", "V/K", "deg", "W/m2", "kWh/m2",
	"m3/h", "kg", "N m", "s", "h", "d",
}

// Built once from the table and never written again.
var (
	bySymbol    = indexUnits()
	byDimension = indexDimensions()
)

// indexDimensions picks the unit that stands for each dimension in documents.
func indexDimensions() map[Dimension]Unit {
	index := map[Dimension]Unit{}
	for _, s := range documentSymbols {
		if u := bySymbol[s]; index[u.Dimension] == (Unit{}) {
			index[u.Dimension] = u
		}
	}
	for _, u := range units {
		if index[u.Dimension] == (Unit{}) && u.Scale == 1 && u.Offset == 0 {
			index[u.Dimension] = u
		}
	}
	return index
}

func indexUnits() map[string]Unit {
	index := make(map[string]Unit, len(units)+8)
	for _, u := range units {
		index[u.Symbol] = u
	}
	// A difference of 1 degC is 1 K, so a coefficient may be written either way.
	for _, s := range []string{"%", "V", "mV", "A", "mA", "W"} {
		index[s+"/degC"] = index[s+"/K"]
	}
	for _, s := range []string{"Nm", "N·m", "N\u22c5m"} {
		index[s] = index["N m"]
	}
	return index
}

// folding turns the typographic spellings into the plain ones that the table
// has. Both the Greek omega and the ohm sign stand for ohm.
var folding = strings.NewReplacer("²", "2", "³", "3", "\u03a9", "ohm", "\u2126", "ohm", "°", "deg",
	"\u00a0", " ", "\u202f", " ", "\t", " ")

// plain gives a symbol in the table's own spelling: "mm²" is "mm2", "°C" is
// "degC", "N·m" is "N m".
func plain(symbol string) string {
	if symbol == "" {
		return ""
	}
	s := strings.Trim(folding.Replace(symbol), " ")
	for strings.Contains(s, "  ") {
		s = strings.ReplaceAll(s, "  ", " ")
	}
	return s
}

// Lookup finds a unit by any of its spellings: "degC" and "°C", "ohm" and "Ω",
// "mm2" and "mm²", "%/K" and "%/degC". Case matters. The empty symbol is the
// unit of a bare number.
func Lookup(symbol string) (Unit, bool) {
	if u, ok := bySymbol[symbol]; ok {
		return u, true
	}
	u, ok := bySymbol[plain(symbol)]
	return u, ok
}

// MustLookup is Lookup for symbols that stand in the program's own text. It
// panics where the table has no such unit: a programming error.
func MustLookup(symbol string) Unit {
	u, ok := Lookup(symbol)
	if !ok {
		panic("quantity.MustLookup: no unit " + symbol)
	}
	return u
}

// DocumentUnit finds one of the units that documents print: V A W Wh Ah degC K
// m mm2 ohm ohm/m % %/K V/K deg W/m2 kWh/m2 m3/h kg "N m" s h d and "". The
// kinds "word" and "yes_no" are no units.
func DocumentUnit(symbol string) (Unit, bool) {
	if !slices.Contains(documentSymbols, symbol) {
		return Unit{}, false
	}
	return Lookup(symbol)
}

// Units gives the whole table in the order of the language reference. The
// caller owns the slice.
func Units() []Unit { return slices.Clone(units) }
