package sun

import (
	"encoding/json"
	"math"
	"os"
	"testing"
	"time"

	"pgregory.net/rapid"
)

// Sunrise, noon and sunset from a general-purpose astronomy library; its name and
// version stand in the file.
func TestDaysAgainstLibrary(t *testing.T) {
	text, err := os.ReadFile("../../../testdata/published/sun-days.json")
	if err != nil {
		t.Fatal(err)
	}
	var pinned struct {
		Days []struct {
			Day                 string
			Latitude, Longitude float64
			Rise, Noon, Set     time.Time
		}
	}
	if err := json.Unmarshal(text, &pinned); err != nil {
		t.Fatal(err)
	}
	if len(pinned.Days) < 20 {
		t.Fatalf("%d days pinned", len(pinned.Days))
	}
	for _, p := range pinned.Days {
		day, err := time.Parse(time.DateOnly, p.Day)
		if err != nil {
			t.Fatal(err)
		}
		got := DayOf(day.Year(), day.Month(), day.Day(), Site{Latitude: p.Latitude, Longitude: p.Longitude})
		within(t, p.Day+" noon, s", got.Noon.Sub(p.Noon).Seconds(), 0, 2)
		// The library takes the sun's true radius of the day, 15.7 to 16.3 minutes of
		// arc; it matters most where the sun rises aslant.
		tolerance := 20 / math.Cos(p.Latitude*degree)
		within(t, p.Day+" sunrise, s", got.Rise.Sub(p.Rise).Seconds(), 0, tolerance)
		within(t, p.Day+" sunset, s", got.Set.Sub(p.Set).Seconds(), 0, tolerance)
	}
}

// The worked example of Reda & Andreas again (its equation of time from memory).
func TestWorkedExampleEquationOfTime(t *testing.T) {
	when := time.Date(2003, 10, 17, 12, 30, 30, 0, time.FixedZone("", -7*3600))
	within(t, "minutes", EquationOfTime(when).Minutes(), 14.6415, 0.02)
}

// The equation of time over a year: its four turning points as almanacs give them
// (from memory), in minutes.
func TestEquationOfTime(t *testing.T) {
	for _, c := range []struct {
		month   time.Month
		day     int
		minutes float64
	}{{2, 11, -14.2}, {5, 14, 3.7}, {7, 26, -6.5}, {11, 3, 16.4}} {
		within(t, c.month.String(), EquationOfTime(time.Date(2026, c.month, c.day, 12, 0, 0, 0, time.UTC)).Minutes(), c.minutes, 0.1)
	}
}

// Beyond the polar circles there are days without a sunrise, and the hemispheres
// change places between June and December.
func TestPolarDays(t *testing.T) {
	for _, c := range []struct {
		latitude float64
		month    time.Month
		up       time.Duration
	}{{70, 6, 24 * time.Hour}, {70, 12, 0}, {-70, 6, 0}, {-70, 12, 24 * time.Hour}, {90, 6, 24 * time.Hour}, {-90, 6, 0}} {
		d := DayOf(2026, c.month, 21, Site{Latitude: c.latitude})
		if d.Up != c.up || !d.Rise.IsZero() || !d.Set.IsZero() || d.Noon.IsZero() {
			t.Errorf("latitude %v in %v: %+v", c.latitude, c.month, d)
		}
	}
	equator := DayOf(2026, 6, 21, Site{})
	within(t, "minutes of the day at the equator", equator.Up.Minutes(), 12*60+7, 1)
}

// Whatever the place and day: the sun stands at the horizon where it rises and
// sets, on the meridian at noon, and day and night change places across the
// equator but for what refraction and the sun's radius add to both.
func TestDayProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		day := time.Unix(rapid.Int64Range(946684800, 4102444800).Draw(t, "day"), 0).UTC()
		site := Site{Latitude: rapid.Float64Range(-60, 60).Draw(t, "latitude"), Longitude: rapid.Float64Range(-180, 180).Draw(t, "longitude")}
		d := DayOf(day.Year(), day.Month(), day.Day(), site)
		for _, when := range []time.Time{d.Rise, d.Set} {
			if e := 90 - At(when, site).Zenith; math.Abs(e-risen) > 0.01 {
				t.Fatalf("%+v: elevation %v at %v", d, e, when)
			}
		}
		if noon := At(d.Noon, site).Ray(); math.Abs(noon.East) > 1e-4 || noon.Up <= 0 {
			t.Fatalf("%+v: %+v at noon", d, noon)
		}
		other := DayOf(day.Year(), day.Month(), day.Day(), Site{Latitude: -site.Latitude, Longitude: site.Longitude})
		extra := (d.Up + other.Up - 24*time.Hour).Minutes()
		// 0.8333 degrees at both ends of both days; 6.7 minutes a day at the equator.
		if extra < 12.5 || extra > 50 {
			t.Fatalf("%v: days of %v and %v", site, d.Up, other.Up)
		}
	})
}
