package sun

import (
	"encoding/json"
	"math"
	"os"
	"testing"
	"time"
)

func within(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: %.8g, want %.8g within %g", what, got, want, tolerance)
	}
}

// The worked example of I. Reda & A. Andreas, NREL/TP-560-34302 (read): their
// algorithm is good to 0.0003 degrees, this one to 0.01.
func TestWorkedExample(t *testing.T) {
	when := time.Date(2003, 10, 17, 12, 30, 30, 0, time.FixedZone("", -7*3600))
	p := At(when, Site{Latitude: 39.742476, Longitude: -105.1786, Elevation: 1830.14, Pressure: 82000, Air: 284.15})
	within(t, "apparent zenith", p.Apparent, 50.11162, 0.003)
	within(t, "azimuth", p.Azimuth, 194.34024, 0.003)
	within(t, "distance", p.Distance, 0.9965422974, 1e-4)
}

// Positions from a general-purpose astronomy library; its name, version and
// options stand in the file.
func TestAgainstLibrary(t *testing.T) {
	text, err := os.ReadFile("../../../testdata/published/sun-positions.json")
	if err != nil {
		t.Fatal(err)
	}
	var pinned struct {
		Positions []struct {
			Time                string
			Latitude, Longitude float64
			Elevation, Azimuth  float64 // degrees, without refraction
		}
	}
	if err := json.Unmarshal(text, &pinned); err != nil {
		t.Fatal(err)
	}
	if len(pinned.Positions) < 30 {
		t.Fatalf("%d positions pinned", len(pinned.Positions))
	}
	for _, p := range pinned.Positions {
		when, err := time.Parse(time.RFC3339, p.Time)
		if err != nil {
			t.Fatal(err)
		}
		got := At(when, Site{Latitude: p.Latitude, Longitude: p.Longitude})
		within(t, p.Time+" elevation", 90-got.Zenith, p.Elevation, 0.01)
		// Near the zenith an azimuth means little: compare the arc on the sky.
		off := math.Mod(got.Azimuth-p.Azimuth+540, 360) - 180
		within(t, p.Time+" azimuth, as an arc", off*math.Cos(p.Elevation*degree), 0, 0.01)
	}
}

// J. A. Duffie & W. A. Beckman, Solar Engineering of Thermal Processes, example
// 1.6.1 (recomputed): latitude 43 degrees, 13 February 10:30 solar time, slope 45
// degrees, 15 degrees west of south: 35 degrees.
func TestIncidence(t *testing.T) {
	latitude, hour := 43*degree, -22.5*degree
	declination := 23.45 * math.Sin(360*(284+44)/365.0*degree) * degree
	cosZenith := math.Sin(latitude)*math.Sin(declination) + math.Cos(latitude)*math.Cos(declination)*math.Cos(hour)
	zenith := math.Acos(cosZenith)
	azimuth := math.Atan2(-math.Cos(declination)*math.Sin(hour), math.Sin(declination)*math.Cos(latitude)-math.Cos(declination)*math.Sin(latitude)*math.Cos(hour))
	got := math.Acos(Plane{Tilt: 45, Azimuth: 195}.Incidence(zenith/degree, azimuth/degree)) / degree
	within(t, "incidence", got, 35, 0.5)
}

// The same book, example 1.10.1 (from memory, recomputed): a horizontal plane
// above the air at 43 degrees north on 15 April receives 33.8 MJ/m2 with a solar
// constant of 1367 W/m2. Summed here over the day by the minute.
func TestDayAboveTheAir(t *testing.T) {
	sum := 0.0
	for minute := range 24 * 60 {
		p := At(time.Date(2015, 4, 15, 0, minute, 30, 0, time.UTC), Site{Latitude: 43})
		sum += 60 * 1367 / solarConstant * Extraterrestrial(p.Distance) * math.Max(0, math.Cos(p.Zenith*degree))
	}
	// The book's declination is a sine, 0.3 degrees below the sun's on that day.
	within(t, "MJ/m2", sum/1e6, 33.8, 0.3)
}
