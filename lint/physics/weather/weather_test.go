package weather

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"stringline/lint/physics/sun"
)

// reference finds the folder with public reference data: where the environment
// says, or beside the repository; the test skips where it is absent.
func reference(t *testing.T, name string) []byte {
	t.Helper()
	folders := []string{os.Getenv("STRINGLINE_REFERENCE")}
	if dir, err := os.Getwd(); err == nil && folders[0] == "" {
		for range 8 {
			dir = filepath.Dir(dir)
			folders = append(folders, filepath.Join(dir, "shared", "reference"))
		}
	}
	for _, f := range folders {
		if f == "" {
			continue
		}
		if text, err := os.ReadFile(filepath.Join(f, "weather", name)); err == nil {
			return text
		}
	}
	t.Skip("no reference data: set STRINGLINE_REFERENCE")
	return nil
}

// A public typical year of NREL (725300, TMY3), its header in the 2009 layout. The
// values are the header's own and the file's own, read.
func TestPublicYear(t *testing.T) {
	y, problems := Read(reference(t, "chicago-ohare-tmy3.epw"))
	for _, p := range problems {
		t.Error(p)
	}
	if y.Leap || y.Step != time.Hour || len(y.Air) != 8760 {
		t.Fatalf("%d steps of %v", len(y.Air), y.Step)
	}
	e := y.Extremes
	for what, pair := range map[string][2]float64{
		"mean minimum": {e.MeanMin, -23.7}, "mean maximum": {e.MeanMax, 35.9},
		"5 years": {e.ReturnMin[0], -27}, "10 years": {e.ReturnMin[1], -29.6}, "20 years": {e.ReturnMin[2], -32.2}, "50 years": {e.ReturnMin[3], -35.5},
		"the file's own minimum, which under-states the cold": {y.Coldest, -22.8},
	} {
		if math.Abs(pair[0]-kelvin-pair[1]) > 1e-9 {
			t.Errorf("%s: %v degC, want %v", what, pair[0]-kelvin, pair[1])
		}
	}
	if y.Latitude != 41.98 || y.Longitude != -87.92 || y.Zone != -6 || y.Elevation != 201 {
		t.Errorf("%v %v %v %v", y.Latitude, y.Longitude, y.Zone, y.Elevation)
	}
	// A second way: beam and diffuse make up the global radiation once the sun is
	// taken in the middle of the hour. Over the year within 2 %, hour by hour too
	// where it is well up; with the sun at the hour's end they do not.
	closes := func(shift time.Duration) (whole, worst float64) {
		var made, measured float64
		bad, all := 0, 0
		for i := range y.Global {
			p := sun.At(y.Middle(i, 2001).Add(shift), sun.Site{Latitude: y.Latitude, Longitude: y.Longitude, Elevation: y.Elevation})
			if p.Zenith > 75 || y.Global[i] < 100 {
				continue
			}
			one := y.Beam[i]*math.Cos(p.Zenith*math.Pi/180) + y.Diffuse[i]
			made, measured = made+one, measured+y.Global[i]
			if all++; math.Abs(one-y.Global[i]) > 0.1*y.Global[i] {
				bad++
			}
		}
		return made/measured - 1, float64(bad) / float64(all)
	}
	whole, bad := closes(0)
	if math.Abs(whole) > 0.02 || bad > 0.02 {
		t.Errorf("beam and diffuse make %.2f %% more than the global; %.1f %% of the hours are a tenth off", 100*whole, 100*bad)
	}
	if _, late := closes(30 * time.Minute); late < 2*bad {
		t.Errorf("the sun at the hour's end fits as well (%v, %v): this test proves nothing", late, bad)
	}
}

const (
	location = "LOCATION,Upper Terrace,-,ZZZ,invented,999999,46.5,9.87,1.0,1840.0\n"
	// Layouts of the extremes of invented stations, degC.
	layout2009 = "Extremes,11.1,9.4,8.6,28.5,-23.7,35.9,4.5,1.9,-27,37.3,-29.6,38.4,-32.2,39.5,-35.5,40.9"
	layout2017 = "Extremes,10.2,8.9,7.9,-18.1,34.2,3.1,1.4,-20.4,35.2,-22.2,36,-24,36.8,-26.3,37.8"
)

func header(extremes string) string {
	return location + "DESIGN CONDITIONS,1,Invented,,Heating,1,-20,Cooling,7," + extremes + "\nTYPICAL/EXTREME PERIODS,0\nGROUND TEMPERATURES,0\nHOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0\nCOMMENTS 1\nCOMMENTS 2\nDATA PERIODS,1,1,Data,Sunday,1/1,12/31\n"
}

func line(month, day, hour, minute int, air, global string) string {
	f := make([]string, fields)
	for i := range f {
		f[i] = "0"
	}
	f[0], f[1], f[2], f[3], f[4] = "2001", fmt.Sprint(month), fmt.Sprint(day), fmt.Sprint(hour), fmt.Sprint(minute)
	f[6], f[13] = air, global
	return strings.Join(f, ",") + "\n"
}

// whole writes a year of hours.
func whole(head string) string {
	var b strings.Builder
	b.WriteString(head)
	for month := 1; month <= 12; month++ {
		for day := 1; day <= before[month]-before[month-1]; day++ {
			for hour := 1; hour <= 24; hour++ {
				b.WriteString(line(month, day, hour, 0, fmt.Sprint(10-day%7), "100"))
			}
		}
	}
	return b.String()
}

// The place of the extremes: each layout is found, what fits neither or both is
// unknown. Read by the wrong rule a coldest morning of +28 or +34 degC comes out.
func TestExtremesLayouts(t *testing.T) {
	for name, c := range map[string]struct {
		extremes string
		min      float64
		known    bool
	}{
		"with a wet bulb before it":       {layout2009, -23.7, true},
		"without":                         {layout2017, -18.1, true},
		"none":                            {"Nothing", 0, false},
		"cut short":                       {layout2017[:60], 0, false},
		"a word among them":               {strings.Replace(layout2009, "-29.6", "N/A", 1), 0, false},
		"years that do not grow colder":   {strings.Replace(layout2009, "-32.2", "-28", 1), 0, false},
		"a five-year cold above the mean": {"Extremes,1,1,1,-9,-8,9,9,-8.5,9.5,-9,10,-9.5,10.5,-10,11,-11", 0, false},
	} {
		y, problems := Read([]byte(whole(header(c.extremes))))
		if len(problems) > 0 {
			t.Errorf("%s: %v", name, problems)
		}
		if y.Extremes.Known != c.known || c.known && math.Abs(y.Extremes.MeanMin-kelvin-c.min) > 1e-9 || !c.known && y.Extremes.Why == "" {
			t.Errorf("%s: %+v", name, y.Extremes)
		}
	}
}

// What is wrong is told with its line; the rest is used.
func TestBadFiles(t *testing.T) {
	good := whole(header(layout2017))
	at := func(month, day, hour int) string { return line(month, day, hour, 0, fmt.Sprint(10-day%7), "100") }
	for name, c := range map[string]struct{ text, want string }{
		"empty":               {"", "line 1: not an EPW"},
		"another format":      {"date,temperature\n2001-01-01,3\n", "line 1: not an EPW"},
		"cut short":           {good[:len(good)-2000], "of its 8760 steps are missing"},
		"text in a number":    {strings.Replace(good, at(1, 1, 3), line(1, 1, 3, 0, "cold", "100"), 1), `line 11, field 7: dry bulb temperature: expected a number, found "cold"`},
		"an exponent":         {strings.Replace(good, at(1, 1, 3), line(1, 1, 3, 0, "1e1", "100"), 1), "line 11, field 7"},
		"a month of 13":       {strings.Replace(good, at(1, 1, 3), line(13, 1, 3, 0, "1", "100"), 1), "line 11, field 2: month: expected a whole number from 1 to 12"},
		"an hour twice":       {strings.Replace(good, at(1, 1, 3), at(1, 1, 2), 1), "line 11: this hour stands twice"},
		"out of order":        {strings.Replace(good, at(1, 1, 2)+at(1, 1, 3), at(1, 1, 3)+at(1, 1, 2), 1), "line 11: out of order"},
		"a day that is not":   {strings.Replace(good, at(2, 28, 24), line(2, 30, 24, 0, "1", "1"), 1), "month 2 has no day 30"},
		"an impossible light": {strings.Replace(good, at(1, 1, 3), line(1, 1, 3, 0, "1", "5000"), 1), "line 11, field 14: global horizontal radiation: 5000 is outside"},
		"a latitude of words": {strings.Replace(good, "46.5", "north", 1), `line 1, field 7: latitude: expected a number from -90 to 90, found "north"`},
		"steps of 7 minutes":  {strings.Replace(good, "DATA PERIODS,1,1,", "DATA PERIODS,1,7,", 1), "line 8, field 3: records an hour"},
		"a week without air":  {missingWeek(good), "air temperature is missing for 168 hours"},
	} {
		y, problems := Read([]byte(c.text))
		found := false
		for _, p := range problems {
			found = found || strings.Contains(p.Error(), c.want)
		}
		if !found {
			t.Errorf("%s: want %q, got %v", name, c.want, problems)
		}
		if y != nil {
			for i, v := range y.Air {
				if v > 0 && v < 400 && y.Global[i] >= 0 {
					continue
				}
				if name != "a latitude of words" && !math.IsNaN(v) {
					t.Errorf("%s: step %d has %v K and %v W/m2", name, i, v, y.Global[i])
				}
			}
		}
	}
}

func missingWeek(text string) string {
	for day := 8; day <= 14; day++ {
		for hour := 1; hour <= 24; hour++ {
			text = strings.Replace(text, line(1, day, hour, 0, fmt.Sprint(10-day%7), "100"), line(1, day, hour, 0, "99.9", "100"), 1)
		}
	}
	return text
}

// Missing codes of single hours are filled along a line; leap years and steps
// within an hour have their places.
func TestGapsLeapYearsAndSteps(t *testing.T) {
	good := whole(header(layout2017))
	gap := strings.Replace(good, line(1, 1, 3, 0, "9", "100"), line(1, 1, 3, 0, "99.9", "9999"), 1)
	y, problems := Read([]byte(gap))
	if len(problems) > 0 || y.MissingAir != 1 || y.MissingSun != 1 || math.Abs(y.Air[2]-kelvin-9) > 1e-9 || y.Global[2] != 100 {
		t.Errorf("a gap of an hour: %v, %v K, %v W/m2, %d and %d missing", problems, y.Air[2], y.Global[2], y.MissingAir, y.MissingSun)
	}
	var day strings.Builder
	for hour := 1; hour <= 24; hour++ {
		day.WriteString(line(2, 29, hour, 0, "-5", "50"))
	}
	leap := strings.Replace(good, line(3, 1, 1, 0, "9", "100"), day.String()+line(3, 1, 1, 0, "9", "100"), 1)
	y, problems = Read([]byte(leap))
	if len(problems) > 0 || !y.Leap || len(y.Air) != 8784 || math.Abs(y.Air[(31+28)*24]-kelvin+5) > 1e-9 {
		t.Errorf("a leap year: %v, %d steps", problems, len(y.Air))
	}
	halves := strings.Builder{}
	halves.WriteString(strings.Replace(header(layout2017), "DATA PERIODS,1,1,", "DATA PERIODS,1,2,", 1))
	for month := 1; month <= 12; month++ {
		for day := 1; day <= before[month]-before[month-1]; day++ {
			for hour := 1; hour <= 24; hour++ {
				halves.WriteString(line(month, day, hour, 30, "1", "40") + line(month, day, hour, 60, "2", "60"))
			}
		}
	}
	y, problems = Read([]byte(halves.String()))
	if len(problems) > 0 || len(y.Air) != 17520 || y.Global[0] != 80 || y.Global[1] != 120 || y.Step != 30*time.Minute {
		t.Errorf("half hours: %v, %d steps, %v and %v W/m2", problems, len(y.Air), y.Global[:1], y.Step)
	}
	if got := y.Middle(0, 2001); !got.Equal(time.Date(2000, 12, 31, 23, 15, 0, 0, time.UTC)) {
		t.Errorf("the first half hour has its middle at %v", got)
	}
}

// FuzzRead: whatever stands in a file, nothing panics, every problem has a line,
// and no value leaves its range.
func FuzzRead(f *testing.F) {
	f.Add([]byte(header(layout2009) + line(1, 1, 1, 0, "1", "2")))
	f.Add([]byte(header(layout2017) + line(2, 29, 24, 60, "99.9", "9999")))
	f.Add([]byte("LOCATION,\n\n\n\n\n\n\n\n\n"))
	f.Fuzz(func(t *testing.T, text []byte) {
		y, problems := Read(text)
		for _, p := range problems {
			if p.Line < 1 || p.Message == "" {
				t.Fatalf("%+v", p)
			}
		}
		if y == nil {
			if len(problems) == 0 {
				t.Fatal("no year and no problem")
			}
			return
		}
		for i := range y.Global {
			if !(y.Global[i] >= 0 && y.Global[i] <= 1801) || y.Air[i] < 180 || y.Air[i] > 340 {
				t.Fatalf("step %d: %v W/m2, %v K", i, y.Global[i], y.Air[i])
			}
		}
	})
}
