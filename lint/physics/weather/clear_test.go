package weather

import (
	"math"
	"strings"
	"testing"
	"time"

	"stringline/lint/physics/sun"

	"pgregory.net/rapid"
)

func chicago() ClearSky {
	return ClearSky{Latitude: 41.98, Longitude: -87.92, Elevation: 201, Zone: -6, Turbidity: sun.LinkeTurbidity, Step: time.Hour}
}

func sum(s []float64) float64 {
	total := 0.0
	for _, v := range s {
		total += v
	}
	return total
}

// The clear sky beside the public year: each month has a good part of a clear
// one's light, its brightest hour comes near a clear one, and no hour goes far
// beyond.
func TestClearYearAgainstPublicYear(t *testing.T) {
	y, _ := Read(reference(t, "chicago-ohare-tmy3.epw"))
	c, err := chicago().Year()
	if err != nil {
		t.Fatal(err)
	}
	for month := 1; month <= 12; month++ {
		from, to := before[month-1]*24, before[month]*24
		share := sum(y.Global[from:to]) / sum(c.Global[from:to])
		if share > 0.9 || share < 0.3 {
			t.Errorf("month %d: %.2f of a clear one", month, share)
		}
		brightest := 0.0
		for i := from; i < to; i++ {
			if c.Global[i] > 300 {
				brightest = max(brightest, y.Global[i]/c.Global[i])
			}
		}
		if brightest < 0.9 || brightest > 1.15 {
			t.Errorf("month %d: its brightest hour is %.2f of a clear one", month, brightest)
		}
	}
	// Rough air beside measured air: monthly means within 5 K.
	air := Seasons{Coldest: y.Extremes.MeanMin, Hottest: y.Extremes.MeanMax, Latitude: 41.98}
	warm := chicago()
	warm.Air = air.Air
	w, err := warm.Year()
	if err != nil {
		t.Fatal(err)
	}
	for month := 1; month <= 12; month++ {
		from, to := before[month-1]*24, before[month]*24
		if off := (sum(w.Air[from:to]) - sum(y.Air[from:to])) / float64(to-from); math.Abs(off) > 5 {
			t.Errorf("month %d: %.1f K off", month, off)
		}
	}
	if w.Coldest < air.Coldest || w.Hottest > air.Hottest {
		t.Errorf("air from %v to %v K", w.Coldest, w.Hottest)
	}
}

func TestClearYearSteps(t *testing.T) {
	hourly, err := chicago().Year()
	if err != nil {
		t.Fatal(err)
	}
	sound(t, hourly)
	if !hourly.Clear || hourly.Air != nil || hourly.Wind != nil || hourly.Lacks() != "" || hourly.Leap || hourly.Extremes.Known {
		t.Errorf("%+v", hourly)
	}
	fine := chicago()
	fine.Step = 5 * time.Minute
	f, err := fine.Year()
	if err != nil {
		t.Fatal(err)
	}
	if share := sum(f.Global) / 12 / sum(hourly.Global); math.Abs(share-1) > 0.003 {
		t.Errorf("steps of five minutes give %.4f of hours", share)
	}
}

func TestClearYearRefuses(t *testing.T) {
	for want, change := range map[string]func(*ClearSky){
		"latitude is 91":                   func(c *ClearSky) { c.Latitude = 91 },
		"longitude is not a finite number": func(c *ClearSky) { c.Longitude = math.NaN() },
		"elevation is 9500":                func(c *ClearSky) { c.Elevation = 9500 },
		"time zone is -13.5":               func(c *ClearSky) { c.Zone = -13.5 },
		"turbidity is 0":                   func(c *ClearSky) { c.Turbidity = 0 },
		"step is 0":                        func(c *ClearSky) { c.Step = 0 },
		"step is 7200":                     func(c *ClearSky) { c.Step = 2 * time.Hour },
		"whole number of steps of 7m0s":    func(c *ClearSky) { c.Step = 7 * time.Minute },
		"air temperature is 20":            func(c *ClearSky) { c.Air = func(day, hour float64) float64 { return 20 } },
		"air temperature is not a finite":  func(c *ClearSky) { c.Air = func(day, hour float64) float64 { return math.NaN() } },
	} {
		c := chicago()
		change(&c)
		if y, err := c.Year(); err == nil || y != nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%s: %v", want, err)
		}
	}
}

// Air is asked for in local time, in the middle of each step.
func TestAirHook(t *testing.T) {
	c := chicago()
	c.Air = func(day, hour float64) float64 { return 200 + day/10 + hour/1000 }
	y, err := c.Year()
	if err != nil {
		t.Fatal(err)
	}
	for i, want := range map[int]float64{0: 200 + 0.5/240 + 0.0005, 36: 200 + 36.5/240 + 0.0125, 8759: 200 + 8759.5/240 + 0.0235} {
		if math.Abs(y.Air[i]-want) > 1e-9 {
			t.Errorf("step %d: %v K, want %v", i, y.Air[i], want)
		}
	}
	south := Seasons{Coldest: 270, Hottest: 310, Latitude: -35}
	if july, january := south.Air(200, 14), south.Air(17, 14); july >= january {
		t.Errorf("south of the equator July has %v K and January %v", july, january)
	}
}

// Anywhere: the light stands around local noon, the year lies below what there is
// above the air, and the two hemispheres differ by the Earth's distance alone.
func TestClearYearProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := ClearSky{
			Latitude: rapid.Float64Range(-90, 90).Draw(t, "latitude"), Longitude: rapid.Float64Range(-180, 180).Draw(t, "longitude"),
			Elevation: rapid.Float64Range(-400, 6000).Draw(t, "elevation"), Turbidity: rapid.Float64Range(1, 8).Draw(t, "turbidity"), Step: time.Hour,
		}
		c.Zone = ZoneOf(c.Longitude)
		y, err := c.Year()
		if err != nil {
			t.Fatal(err)
		}
		sound(t, y)
		var all, night, above float64
		for i, ray := range (sun.Site{Latitude: c.Latitude, Longitude: c.Longitude}).Through(y.Middle(0, y.Of), y.Step, y.Steps()) {
			all += y.Global[i]
			above += max(0, ray.Up) * sun.Extraterrestrial(ray.Distance)
			if hour := i % 24; hour < 5 || hour > 18 {
				night += y.Global[i]
			}
		}
		if all <= 0 || all > 0.95*above || math.Abs(c.Latitude) < 40 && night > 0.02*all {
			t.Fatalf("%v Wh/m2, %v of them at night, %v above the air", all, night, above)
		}
		c.Latitude = -c.Latitude
		other, err := c.Year()
		if err != nil {
			t.Fatal(err)
		}
		if share := sum(other.Global) / all; share < 0.94 || share > 1.06 {
			t.Fatalf("the other hemisphere gets %v of this one", share)
		}
	})
}

// Steps in order give the air of each by itself, north and south.
func TestSeasonsThrough(t *testing.T) {
	for _, s := range []Seasons{{Coldest: 246, Hottest: 302, Latitude: 46}, {Coldest: 270, Hottest: 315, Latitude: -30}} {
		for _, step := range []time.Duration{time.Hour, 15 * time.Minute} {
			air, n := s.Through(step), int(24*time.Hour/step)
			for i := range 365 * n {
				day := (float64(i) + 0.5) / float64(n)
				hour := 24 * (day - math.Floor(day))
				if got, want := air(day, hour), s.Air(day, hour); math.Abs(got-want) > 1e-9 {
					t.Fatalf("day %v: %v K, want %v K", day, got, want)
				}
			}
		}
	}
}
