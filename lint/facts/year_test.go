package facts_test

import (
	"bytes"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"stringline/lint/facts"
	"stringline/lint/physics/sun"
	"stringline/lint/physics/weather"
	"stringline/schema/design"
)

const yearSite = `  longitude = "9.87 deg"
  elevation = "1840 m"`

// yearly gives the hut with all that a year asks for, and changes.
func yearly(edits ...string) string {
	text := sheeted(`  elevation = "1840 m"`, yearSite,
		`  mounting = "open_rack"`, "  mounting = \"open_rack\"\n  tilt     = \"45 deg\"\n  azimuth  = \"180 deg\"",
		`  capacity              = "200 Ah"`, "  capacity              = \"200 Ah\"\n  usable                = \"80 %\"\n  round_trip            = \"95 %\"",
		`  power = "700 W"`, "  power = \"700 W\"\n  hours_per_day = 0.5\n  between = [\"11 h\", \"13 h\"]",
		`  power       = "60 W"`, "  power       = \"60 W\"\n  hours_per_day = 6",
		`  power = "24 W"`, "  power = \"24 W\"\n  hours_per_day = 10",
		`  power = "22 W"`, "  power = \"22 W\"\n  hours_per_day = 2",
		`  ac_voltage = "230 V"`, "  ac_voltage = \"230 V\"\n  idle = \"10 W\"",
		"  current    = \"20 A\"\n", "  current    = \"20 A\"\n  idle = \"1 W\"\n",
		`  charge_current_max   = "70 A"`, "  charge_current_max   = \"70 A\"\n  idle = \"1 W\"",
	)
	for i := 0; i < len(edits); i += 2 {
		if !strings.Contains(text, edits[i]) {
			panic("the hut does not hold " + edits[i])
		}
		text = strings.Replace(text, edits[i], edits[i+1], 1)
	}
	return text
}

func series(t testing.TB, s *facts.System, id string) (over, values []float64) {
	t.Helper()
	f := get(t, s, id)
	if !f.Known || f.Kind != facts.Series || len(f.Over) != len(f.List) {
		t.Fatalf("%s is no known series: %+v", id, f)
	}
	return f.Over, f.List
}

// A second way to a year: hour by hour the nameplates times light and the data
// sheets' power coefficient, without any curve; losses 10 % and 97 % as given. A
// linear sheet over-states dim light a little, so the curve's year is lower, but
// not by much. Source of the linear way: common practice.
func TestYearAgainstNameplates(t *testing.T) {
	s := load(t, yearly(unlikeString, "  string \"b\" {\n    panels = { \"slate-410\" = 2 }\n", `charge_current           = "60 A"`, `charge_current           = "70 A"`))
	seasons := weather.Seasons{Coldest: 273.15 - 27, Hottest: 273.15 + 29, Latitude: 46.52}
	year, err := weather.ClearSky{Latitude: 46.52, Longitude: 9.87, Elevation: 1840, Zone: 1, Turbidity: sun.LinkeTurbidity, Step: 3600e9, Air: seasons.Air}.Year()
	if err != nil {
		t.Fatal(err)
	}
	light, err := year.OnPlanes(sun.Site{Latitude: 46.52, Longitude: 9.87, Elevation: 1840}, 0.2, sun.Plane{Tilt: 45, Azimuth: 180})
	if err != nil {
		t.Fatal(err)
	}
	potential, out := 0.0, 0.0
	for h, g := range light[0] {
		cell := year.Air[h] + 24*g/800
		watts := 0.97 * 0.9 * 6 * 410 * g / 1000 * (1 - 0.0034*(cell-298.15))
		potential += watts
		out += min(watts, 70*8*3.35)
	}
	if got := number(t, s, "charger.main.yearly_yield"); got > out || got < 0.96*out {
		t.Errorf("a year gives %v Wh, by nameplates %v Wh", got, out)
	}
	clipped, byHand := number(t, s, "charger.main.clipped_energy"), 100*(1-out/potential)
	if math.Abs(clipped-byHand) > 1 {
		t.Errorf("clipped %v %%, by nameplates %v %%", clipped, byHand)
	}
	if says := get(t, s, "charger.main.clipped_energy").Says; !strings.Contains(says, "clear sky") {
		t.Errorf("the basis is not told: %q", says)
	}
	if f := get(t, s, "charger.main.clipped_energy"); !slices.Contains(f.Assumed, "site.sky") || !slices.Contains(f.Assumed, "array.south.losses") || !slices.Contains(f.Assumed, "site.albedo") {
		t.Errorf("assumed: %v", f.Assumed)
	}
}

// Sums agree: months make up the year, banks the system, the bank voltage at
// hand is one of those tabulated, and the balance is what its parts give.
func TestYearAddsUp(t *testing.T) {
	s := load(t, yearly())
	days := []float64{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31}
	_, yield := series(t, s, "charger.main.yield_by_month")
	total := 0.0
	for m, joules := range yield {
		total += joules * days[m] / 3600
	}
	if want := number(t, s, "charger.main.yearly_yield"); !near(total, want, 1e-6) || !near(number(t, s, "system.yearly_yield"), want, 1e-9) {
		t.Errorf("months give %v Wh, the year %v Wh", total, want)
	}
	volts, clipped := series(t, s, "charger.main.clipped_energy_by_bank_voltage")
	if n := slices.Index(volts, 24); n < 0 || !near(100*clipped[n], number(t, s, "charger.main.clipped_energy"), 1e-6) {
		t.Errorf("at %v V: %v; at hand %v %%", volts, clipped, number(t, s, "charger.main.clipped_energy"))
	}
	if !slices.IsSortedFunc(clipped, func(a, b float64) int { return int(math.Copysign(1, b-a)) }) || clipped[0] < 0.3 {
		t.Errorf("a bank of half the voltage clips more: %v", clipped)
	}
	_, balance := series(t, s, "bank.house.balance_by_month")
	_, load := series(t, s, "bank.house.load_by_month")
	for m := range balance {
		if want := yield[m]*0.95 - load[m]; math.Abs(balance[m]-want) > 1e-6*yield[m] {
			t.Errorf("month %d: balance %v J, by hand %v J", m+1, balance[m], want)
		}
	}
	if got, want := load[0]/3600, number(t, s, "bank.house.daily_load"); !near(got, want, 1e-8) {
		t.Errorf("January takes %v Wh a day, a day %v Wh", got, want)
	}
	worst := int(number(t, s, "system.worst_month")) - 1
	if balance[worst] != slices.Min(balance) || !near(number(t, s, "system.worst_month_balance"), balance[worst]/3600, 1e-8) {
		t.Errorf("worst month %d of %v", worst+1, balance)
	}
	if got, want := number(t, s, "system.worst_month_cover"), 100*yield[worst]*0.95/load[worst]; !near(got, want, 1e-8) {
		t.Errorf("cover %v %%, by hand %v %%", got, want)
	}
	if got, want := number(t, s, "bank.house.refill_time"), number(t, s, "bank.house.usable_energy")*3600/balance[worst]; !near(got, want, 1e-8) {
		t.Errorf("refill %v d, by hand %v d", got, want)
	}
}

// Winter loads that the sun does not cover leave hours unserved; the month's
// factor alone does it. The account's own closing is held beside the physics.
func TestUnservedHours(t *testing.T) {
	light := number(t, load(t, yearly()), "system.unserved_hours")
	heavy := load(t, yearly(`  hours_per_day = 6`, "  hours_per_day = 24\n  months = [60, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1]"))
	dark := number(t, heavy, "system.unserved_hours")
	if light != 0 || dark < 100 || dark > 744+48 {
		t.Errorf("%v h unserved with light loads, %v h with sixty times the lights in January", light, dark)
	}
	_, lack := series(t, heavy, "bank.house.unserved_by_month")
	if lack[0] <= 0 || lack[5] != 0 {
		t.Errorf("unserved by month %v", lack)
	}
	// Lights of 60 W all day take 59 times that more in January, and all else stays.
	if got, want := number(t, heavy, "bank.house.autonomy_heaviest"), number(t, heavy, "bank.house.usable_energy")/(number(t, heavy, "bank.house.daily_load")+59*60*24); !near(got, want, 1e-8) {
		t.Errorf("autonomy in January %v d, by hand %v d", got, want)
	}
	if number(t, heavy, "system.worst_month") != 1 || number(t, heavy, "system.worst_month_balance") >= 0 {
		t.Error("January is not the worst month, or is covered")
	}
	if f := get(t, heavy, "bank.house.refill_time"); f.Known || !strings.Contains(f.Says, "never fills") {
		t.Errorf("a bank that never fills: %+v", f)
	}
}

// Arrays of different tilt on one input work at one voltage, each in its own
// light: together they give no more than each by itself would, and with tilts
// that hardly differ what one plane gives (a search an hour against a table).
func TestSeveralTiltsOnOneInput(t *testing.T) {
	second := func(tilt, azimuth string) string {
		return yearly(unlikeString, "  string \"b\" {\n    panels = { \"slate-410\" = 2 }\n", "ac_output \"cabin\"",
			"array \"wall\" {\n  charger = \"main\"\n  mounting = \"open_rack\"\n  tilt = \""+tilt+"\"\n  azimuth = \""+azimuth+"\"\n  string \"c\" {\n    panels = { \"slate-410\" = 2 }\n  }\n}\n\nac_output \"cabin\"")
	}
	alone := number(t, load(t, second("45 deg", "180 deg")), "pv_input.main.1.yearly_energy")
	nearly := number(t, load(t, second("45.0001 deg", "180 deg")), "pv_input.main.1.yearly_energy")
	if !near(alone, nearly, 2e-4) {
		t.Errorf("one plane %v Wh, two all but equal ones %v Wh", alone, nearly)
	}
	wall := number(t, load(t, second("90 deg", "90 deg")), "pv_input.main.1.yearly_energy")
	if wall >= alone || wall < 0.8*alone {
		t.Errorf("a quarter of the panels on an east wall: %v Wh, all to the south %v Wh", wall, alone)
	}
}

// A PWM controller holds the array at the bank's voltage: less than a tracker
// makes of it, and nothing is clipped.
func TestYearWithoutTracker(t *testing.T) {
	like := []string{unlikeString, "  string \"b\" {\n    panels = { \"slate-410\" = 2 }\n"}
	tracked := load(t, yearly(like...))
	s := load(t, yearly(append(like, `kind                 = "mppt"`, `kind                 = "pwm"`)...))
	switched, free := number(t, s, "charger.main.yearly_yield"), number(t, tracked, "charger.main.yearly_yield")
	if switched >= 0.6*free || switched < 0.3*free { // 2 x 31.4 V panels at 26.8 V
		t.Errorf("switched %v Wh, tracked %v Wh", switched, free)
	}
	if got := number(t, s, "charger.main.clipped_energy"); got != 0 {
		t.Errorf("clipped %v %%", got)
	}
}

// A clear day: nothing before sunrise, noon highest, clipped flat at the limit
// times the bank's voltage, and the summer day longer than the winter one.
func TestClearDays(t *testing.T) {
	s := load(t, yearly(`charge_current           = "60 A"`, `charge_current           = "30 A"`))
	hours, free := series(t, s, "charger.main.clear_june_potential")
	_, out := series(t, s, "charger.main.clear_june_output")
	most, light := 30*8*3.35, 0
	for n := range hours {
		if free[n] > 0 {
			light++
		}
		if want := math.Min(free[n], most); math.Abs(out[n]-want) > 1e-6 {
			t.Errorf("at %v h: %v W of %v W", hours[n]/3600, out[n], free[n])
		}
	}
	if free[8] != 0 || slices.Max(out) != slices.Max([]float64{most, 0}) {
		t.Errorf("2 h: %v W; largest %v W", free[8], slices.Max(out))
	}
	_, winter := series(t, s, "charger.main.clear_december_potential")
	short := 0
	for _, watts := range winter {
		if watts > 0 {
			short++
		}
	}
	// Its energies are the areas under both, here by the trapezoidal rule.
	area := func(watts []float64) (joules float64) {
		for n := 1; n < len(hours); n++ {
			joules += (watts[n] + watts[n-1]) / 2 * (hours[n] - hours[n-1])
		}
		return joules
	}
	given, kept := number(t, s, "charger.main.clear_june_energy"), number(t, s, "charger.main.clear_june_clipped")
	if !near(given, area(out)/3600, 1e-3) || kept <= 0 || !near(given+kept, area(free)/3600, 1e-3) {
		t.Errorf("June gives %v Wh and clips %v Wh, the curves' areas are %v Wh and %v Wh", given, kept, area(out)/3600, area(free)/3600)
	}
	if kept := number(t, s, "charger.main.clear_december_clipped"); kept < 0 || kept > given {
		t.Errorf("December clips %v Wh", kept)
	}
	// Astronomical days of 46.5 degrees: 15.7 h and 8.5 h (any almanac); a quarter
	// of an hour each way for the steps.
	if math.Abs(float64(light)/4-15.7) > 0.5 || math.Abs(float64(short)/4-8.5) > 0.5 {
		t.Errorf("light for %v h in June, %v h in December", float64(light)/4, float64(short)/4)
	}
}

// Curves go through open circuit, short circuit and the maximum.
func TestCurveSeries(t *testing.T) {
	s := load(t, yearly())
	volts, amperes := series(t, s, "pv_input.main.1.curve_standard")
	best := 0.0
	for n := range volts {
		best = math.Max(best, volts[n]*amperes[n])
	}
	last := len(volts) - 1
	if !near(best, number(t, s, "pv_input.main.1.mpp_stc"), 1e-8) || amperes[last] != 0 || volts[0] != 0 || !slices.IsSorted(volts) {
		t.Errorf("largest product %v W, ends %v V, %v A", best, volts[last], amperes[last])
	}
	// Power is their product; its largest is the maximum, cold, standard and hot.
	for when, most := range map[string]string{"cold": "mpp_cold", "standard": "mpp_stc", "hot": "mpp_hot"} {
		over, current := series(t, s, "pv_input.main.1.curve_"+when)
		at, watts := series(t, s, "pv_input.main.1.power_"+when)
		for n := range at {
			if at[n] != over[n] || !near(watts[n], over[n]*current[n], 1e-12) {
				t.Errorf("%s: %v W at %v V and %v A", when, watts[n], over[n], current[n])
			}
		}
		if want := number(t, s, "pv_input.main.1."+most); !near(slices.Max(watts), want, 1e-8) {
			t.Errorf("%s: largest %v W, %s is %v W", when, slices.Max(watts), most, want)
		}
	}
	// The stronger string feeds the weaker one at open circuit: between the two.
	if lo, hi := number(t, s, "string.south.a.voc_stc"), number(t, s, "string.south.b.voc_stc"); volts[last] < math.Min(lo, hi) || volts[last] > math.Max(lo, hi) {
		t.Errorf("open at %v V, strings at %v and %v V", volts[last], lo, hi)
	}
	if n := number(t, s, "pv_input.main.1.maxima_count"); n < 1 || n > 3 {
		t.Errorf("%v maxima", n)
	}
}

// What is not known keeps the year unknown, by name.
func TestYearUnknown(t *testing.T) {
	for _, c := range []struct{ cut, fact, missing string }{
		{"  longitude = \"9.87 deg\"\n", "charger.main.clipped_energy", "site.longitude"},
		{"  tilt     = \"45 deg\"\n", "system.yearly_yield", "array.south.tilt"},
		{"  azimuth  = \"180 deg\"", "system.unserved_hours", "array.south.azimuth"},
		{"  round_trip            = \"95 %\"\n", "system.worst_month_balance", "battery.fell-200.round_trip"},
		{"  cells              = 54\n", "charger.main.overpanel_gain", "panel.slate-410.cells"},
		{"  hours_per_day = 6", "system.worst_month", "load.lights.hours_per_day"},
		{"  hottest    = \"35 degC\"\n", "charger.main.clipped_hours", "charger.main.hottest"},
	} {
		f := get(t, load(t, yearly(c.cut, "")), c.fact)
		if f.Known || !slices.Contains(f.Missing, c.missing) {
			t.Errorf("without %s %s: %+v", strings.TrimSpace(c.cut), c.fact, f)
		}
	}
	// A clear sky is told and listed beside the figure that rests on it.
	f := get(t, load(t, yearly()), "system.worst_month_cover")
	if !slices.Contains(f.Assumed, "site.sky") || !strings.Contains(f.Says, "clear sky") {
		t.Errorf("a clear sky passes for weather: %+v", f)
	}
}

// publicYear gives a public weather year, or skips the test: see README.
func publicYear(t testing.TB) []byte {
	t.Helper()
	folder := os.Getenv("STRINGLINE_REFERENCE")
	if folder == "" {
		folder = filepath.Join("..", "..", "..", "shared", "reference")
	}
	text, err := os.ReadFile(filepath.Join(folder, "weather", "chicago-ohare-tmy3.epw"))
	if err != nil {
		t.Skip("no reference data: set STRINGLINE_REFERENCE")
	}
	return text
}

func underWeather(text string, epw []byte) *facts.System {
	d := design.Load(design.Options{
		Files: fstest.MapFS{"w/town.epw": {Data: epw}}, Path: "w/hut.design.hcl",
		Text: []byte(strings.NewReplacer("  latitude  = \"46.52 deg\"\n", "  weather = \"town.epw\"\n", yearSite+"\n", "", "  coldest   = \"-27 degC\"\n", "", "  hottest   = \"29 degC\"\n", "").Replace(text)),
	})
	return facts.New(d)
}

// In a public weather year the same system gives less than under a clear sky
// there, and winter much less. Public tables give Chicago 1350 to 1450 kWh a year
// for each kW of panels at a fixed good tilt on the grid side (common practice,
// from memory): before the charger's and the array's losses some 15 % more.
func TestWeatherYear(t *testing.T) {
	s := underWeather(yearly(unlikeString, "  string \"b\" {\n    panels = { \"slate-410\" = 2 }\n"), publicYear(t))
	if p := s.Problems(); len(p) > 0 {
		t.Fatal(p)
	}
	if sky := get(t, s, "site.sky"); sky.Word != "weather year" || len(sky.Assumed) > 0 {
		t.Errorf("%+v", sky)
	}
	perKilowatt := number(t, s, "pv_input.main.1.yearly_energy") / (6 * 410)
	if perKilowatt < 1400 || perKilowatt > 1750 {
		t.Errorf("%v kWh a year for each kW", perKilowatt)
	}
	cover := number(t, s, "system.worst_month_cover")
	clear := load(t, strings.NewReplacer("46.52 deg", "41.98 deg", "9.87 deg", "-87.92 deg", "1840 m", "201 m").Replace(yearly()))
	if under := number(t, clear, "system.worst_month_cover"); cover > 0.6*under || cover < 0.2*under {
		t.Errorf("the worst month covers %v %% in the weather year, %v %% under a clear sky", cover, under)
	}
	if says := get(t, s, "charger.main.overpanel_gain").Says; !strings.Contains(says, "weather year") {
		t.Errorf("the basis is not told: %q", says)
	}
}

// A weather file's lines that cannot be believed are problems at their place;
// too many of them, and the year's sums are unknown while the rest stands.
func TestBrokenWeatherYear(t *testing.T) {
	epw := publicYear(t)
	lines := bytes.Split(epw, []byte("\n"))
	spoil := func(edit func(lines [][]byte) [][]byte) *facts.System {
		return underWeather(yearly(), bytes.Join(edit(slices.Clone(lines)), []byte("\n")))
	}
	word := spoil(func(l [][]byte) [][]byte {
		f := bytes.Split(l[1000], []byte(","))
		f[6] = []byte("warm")
		l[1000] = bytes.Join(f, []byte(","))
		return l
	})
	p := word.Problems()
	if len(p) != 1 || p[0].At.File != "w/town.epw" || p[0].At.Start.Line != 1001 || !strings.Contains(p[0].Message, `"warm"`) {
		t.Fatalf("a word for a temperature: %v", p)
	}
	if at := p[0].At.Start.Column; !strings.HasPrefix(string(bytes.Join(bytes.Split(lines[1000], []byte(","))[6:], []byte(","))), string(lines[1000][at-1:at])) {
		t.Errorf("column %d", at)
	}
	if !get(t, word, "system.yearly_yield").Known {
		t.Error("one value in 8760 costs the year")
	}
	for name, s := range map[string]*facts.System{
		"cut short":    spoil(func(l [][]byte) [][]byte { return l[:5000] }),
		"half missing": spoil(func(l [][]byte) [][]byte { return append(l[:2000], l[6000:]...) }),
		"no header":    spoil(func(l [][]byte) [][]byte { return l[8:] }),
	} {
		f := get(t, s, "system.yearly_yield")
		if len(s.Problems()) == 0 || f.Known || f.Says == "" {
			t.Errorf("%s: %v, %+v", name, s.Problems(), f)
		}
		if !get(t, s, "bank.house.nominal").Known {
			t.Errorf("%s: the rest is lost", name)
		}
	}
}
