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
	withSun := math.Inf(1)
	for i, v := range y.Air {
		if y.Global[i] > 0 {
			withSun = min(withSun, v)
		}
	}
	if math.Abs(withSun-kelvin+21.7) > 1e-9 {
		t.Errorf("coldest hour with sun: %v degC, want -21.7", withSun-kelvin)
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

// lit is the invented stations' radiation of an hour, Wh/m2.
func lit(hour int) string {
	if hour >= 9 && hour <= 16 {
		return "100"
	}
	return "0"
}

// usual is an hour of the invented stations.
func usual(month, day, hour int) string {
	return line(month, day, hour, 0, fmt.Sprint(10-day%7), lit(hour))
}

// whole writes a year of hours.
func whole(head string) string {
	var b strings.Builder
	b.WriteString(head)
	for month := 1; month <= 12; month++ {
		for day := 1; day <= before[month]-before[month-1]; day++ {
			for hour := 1; hour <= 24; hour++ {
				b.WriteString(usual(month, day, hour))
			}
		}
	}
	return b.String()
}
