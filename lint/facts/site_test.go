package facts_test

import (
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"stringline/lint/facts"
	"stringline/schema/design"
)

// The head of an invented station's weather file, in the layout with a wet bulb
// before the extremes, and one hour.
const station = "LOCATION,Upper Terrace,-,ZZZ,invented,999999,46.5,9.87,1.0,1840.0\n" +
	"DESIGN CONDITIONS,1,Invented,,Heating,1,-20,Cooling,7,Extremes,11.1,9.4,8.6,28.5,-23.7,35.9,4.5,1.9,-27,37.3,-29.6,38.4,-32.2,39.5,-35.5,40.9\n" +
	"TYPICAL/EXTREME PERIODS,0\nGROUND TEMPERATURES,0\nHOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0\nCOMMENTS 1\nCOMMENTS 2\nDATA PERIODS,1,1,Data,Sunday,1/1,12/31\n" +
	"2001,1,1,1,0,x,-5,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0\n"

func withWeather(t *testing.T, site, file string) *facts.System {
	t.Helper()
	d := design.Load(design.Options{Files: fstest.MapFS{"w/terrace.epw": {Data: []byte(file)}}, Path: "w/hut.design.hcl", Text: []byte("design \"Hut\" {\n}\n\nsite {\n" + site + "}\n")})
	if len(d.Problems) > 0 {
		t.Fatal(d.Problems)
	}
	return facts.New(d)
}

func TestSiteFromWeatherFile(t *testing.T) {
	const named = "  weather = \"terrace.epw\"\n"
	s := withWeather(t, named, station)
	for id, want := range map[string]float64{
		"site.coldest": -23.7, "site.hottest": 35.9, "site.latitude": 46.5, "site.longitude": 9.87, "site.elevation": 1840,
		"site.coldest_5_years": -27, "site.coldest_50_years": -35.5, "site.hottest_20_years": 39.5,
	} {
		if got := number(t, s, id); !near(got, want, 1e-9) {
			t.Errorf("%s is %v, want %v", id, got, want)
		}
	}
	// What the design says wins.
	if got := number(t, withWeather(t, named+"  coldest = \"-31 degC\"\n", station), "site.coldest"); got != -31 {
		t.Errorf("a written coldest of -31 degC reads %v", got)
	}
	// The place leads to the file's name in the design.
	if at := s.At("site.coldest"); len(at) == 0 || at[0].Start.Line != 5 {
		t.Errorf("places %v", at)
	}
}

// Extremes that the header does not tell for certain stay unknown, and say why.
// The file's own minimum is never taken for the coldest.
func TestSiteFromDoubtfulWeatherFile(t *testing.T) {
	const named = "  weather = \"terrace.epw\"\n"
	for name, file := range map[string]string{
		"none in the header": strings.Replace(station, "DESIGN CONDITIONS,1,", "DESIGN CONDITIONS,0\nX,", 1),
		"a word":             strings.Replace(station, "-29.6", "cold", 1),
		"no EPW file":        "date,temperature\n",
	} {
		f := get(t, withWeather(t, named, file), "site.coldest")
		if f.Known || !slices.Contains(f.Missing, "site.coldest") || f.Says == "" {
			t.Errorf("%s: %+v", name, f)
		}
	}
	if f := get(t, withWeather(t, "", station), "site.coldest"); f.Known || !slices.Equal(f.Missing, []string{"site.coldest"}) {
		t.Errorf("no weather named: %+v", f)
	}
	if f := get(t, withWeather(t, "", station), "site.coldest_50_years"); f.Known || !slices.Equal(f.Missing, []string{"site.weather"}) {
		t.Errorf("no weather named: %+v", f)
	}
}

// A weather file of another place is a problem where the site names it: a station
// 250 km and more away, one a kilometre higher or lower, and a coldest that is
// written far above the file's own extreme. 1 degree of longitude at 46.5 degrees
// is 76.5 km (any table).
func TestWeatherOfAnotherPlace(t *testing.T) {
	const named = "  weather = \"terrace.epw\"\n"
	for _, c := range []struct{ site, want string }{
		{named, ""},
		{named + "  latitude = \"46.5 deg\"\n  longitude = \"13.13 deg\"\n", ""},
		{named + "  latitude = \"46.5 deg\"\n  longitude = \"13.15 deg\"\n", "the file is of a place 251 km from the site"},
		{named + "  latitude = \"-46.5 deg\"\n  longitude = \"9.87 deg\"\n", "the file is of a place 10341 km from the site"},
		{named + "  elevation = \"840 m\"\n", ""},
		{named + "  elevation = \"839 m\"\n", "the file is of a place at 1840 m, the site is at 839 m"},
		{named + "  coldest = \"-13.7 degC\"\n", ""},
		{named + "  coldest = \"-13.6 degC\"\n", "coldest is written as -13.6 degC; the file's extreme annual mean minimum is -23.7 degC"},
	} {
		var found []string
		for _, p := range withWeather(t, c.site, station).Problems() {
			if p.At.File == "w/hut.design.hcl" {
				found = append(found, p.Error())
			}
		}
		if c.want == "" && len(found) > 0 || c.want != "" && (len(found) != 1 || !strings.Contains(found[0], "5:13: weather: "+c.want)) {
			t.Errorf("%s: found %v, want %q", c.site, found, c.want)
		}
	}
}
