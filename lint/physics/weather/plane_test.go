package weather

import (
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"stringline/lint/physics/sun"

	"pgregory.net/rapid"
)

// The public year on planes, by two models of the sky: level both give the file's
// own global radiation; on a plane that faces south at the latitude the
// anisotropic sky gives a few percent more than the even one, on a wall that faces
// north less, and about as much to east and west. South beats east and west, which beat north.
func TestPublicYearOnPlanes(t *testing.T) {
	y, _ := Read(reference(t, "chicago-ohare-tmy3.epw"))
	site := sun.Site{Latitude: y.Latitude, Longitude: y.Longitude, Elevation: y.Elevation}
	planes := []sun.Plane{{}, {Tilt: 42, Azimuth: 180}, {Tilt: 42, Azimuth: 90}, {Tilt: 42, Azimuth: 270}, {Tilt: 42, Azimuth: 0}, {Tilt: 90, Azimuth: 0}}
	light, err := y.OnPlanes(site, 0.2, planes...)
	if err != nil {
		t.Fatal(err)
	}
	even := make([]float64, len(planes))
	for k, p := range planes {
		surface := p.Surface(0.2)
		for i, ray := range site.Through(y.Middle(0, y.Of), y.Step, y.Steps()) {
			even[k] += surface.LightIsotropic(sun.Sky{Global: y.Global[i], Beam: y.Beam[i], Diffuse: y.Diffuse[i]}, ray).Total()
		}
	}
	measured := sum(y.Global)
	if share := sum(light[0]) / measured; math.Abs(share-1) > 0.02 {
		t.Errorf("level: %.4f of what the file has", share)
	}
	for k, bounds := range [][2]float64{{0.999, 1.001}, {1.01, 1.06}, {0.98, 1.02}, {0.98, 1.02}, {0.85, 1}, {0.7, 0.99}} {
		if share := sum(light[k]) / even[k]; share < bounds[0] || share > bounds[1] {
			t.Errorf("%+v: %.4f of an even sky", planes[k], share)
		}
	}
	south, east, west, north := sum(light[1]), sum(light[2]), sum(light[3]), sum(light[4])
	if south < 1.1*measured || south > 1.25*measured || east >= south || west >= south || north >= east || north >= west {
		t.Errorf("level %v, south %v, east %v, west %v, north %v Wh/m2", measured, south, east, west, north)
	}
}

// Each way to the light on a plane gives the same: the whole year at once, and
// moment by moment.
func TestOnPlanesIsOnPlane(t *testing.T) {
	c := chicago()
	y, err := c.Year()
	if err != nil {
		t.Fatal(err)
	}
	site := sun.Site{Latitude: c.Latitude, Longitude: c.Longitude, Elevation: c.Elevation}
	plane := sun.Plane{Tilt: 35, Azimuth: 205}
	light, err := y.OnPlanes(site, 0.3, plane)
	if err != nil {
		t.Fatal(err)
	}
	for i := 0; i < y.Steps(); i += 5 {
		p := sun.At(y.Middle(i, y.Of), site)
		plain := sun.OnPlane(sun.Sky{Global: y.Global[i], Beam: y.Beam[i], Diffuse: y.Diffuse[i]}, p, plane, 0.3).Total()
		if math.Abs(light[0][i]-plain) > 0.05 {
			t.Fatalf("step %d: %v W/m2, moment by moment %v", i, light[0][i], plain)
		}
		if sky := sun.ClearSky(p, c.Elevation, c.Turbidity); math.Abs(sky.Global-y.Global[i]) > 0.1 || math.Abs(sky.Beam-y.Beam[i]) > 1 {
			t.Fatalf("step %d: %+v, in the year %v and %v W/m2", i, sky, y.Global[i], y.Beam[i])
		}
	}
}

func TestOnPlanesRefuses(t *testing.T) {
	y, err := chicago().Year()
	if err != nil {
		t.Fatal(err)
	}
	header, _ := ReadHeader([]byte(location))
	lost, _ := ReadHeader([]byte(strings.Replace(location, ",1.0,", ",?,", 1)))
	for want, c := range map[string]struct {
		year   *Year
		site   sun.Site
		albedo float64
		plane  sun.Plane
	}{
		"latitude is 95":              {y, sun.Site{Latitude: 95}, 0.2, sun.Plane{}},
		"albedo is 1.1":               {y, sun.Site{}, 1.1, sun.Plane{}},
		"tilt is -5":                  {y, sun.Site{}, 0.2, sun.Plane{Tilt: -5}},
		"the year has no hours":       {header, sun.Site{}, 0.2, sun.Plane{}},
		"does not tell its time zone": {lost, sun.Site{}, 0.2, sun.Plane{}},
	} {
		if _, err := c.year.OnPlanes(c.site, c.albedo, c.plane); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%s: %v", want, err)
		}
	}
	if light, err := y.OnPlanes(sun.Site{}, 0, sun.Plane{Tilt: 180}); err != nil || len(light) != 1 {
		t.Errorf("at the ends of the ranges: %v", err)
	}
}

// Known directions anywhere outside the tropics: the plane that faces the equator
// gets more of a clear year than the same one turned away or laid flat, and a
// brighter ground never takes light away.
func TestDirectionsAnywhere(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		latitude := rapid.Float64Range(28, 65).Draw(t, "latitude")
		faces := 180.0
		if rapid.Bool().Draw(t, "south of the equator") {
			latitude, faces = -latitude, 0
		}
		c := ClearSky{Latitude: latitude, Longitude: rapid.Float64Range(-180, 180).Draw(t, "longitude"), Turbidity: 3, Step: time.Hour}
		c.Zone = ZoneOf(c.Longitude)
		y, err := c.Year()
		if err != nil {
			t.Fatal(err)
		}
		tilt := rapid.Float64Range(10, 40).Draw(t, "tilt")
		site := sun.Site{Latitude: latitude, Longitude: c.Longitude}
		planes := []sun.Plane{{Tilt: tilt, Azimuth: faces}, {Tilt: tilt, Azimuth: faces + 180}, {}}
		light, err := y.OnPlanes(site, 0, planes...)
		if err != nil {
			t.Fatal(err)
		}
		if toward, away, flat := sum(light[0]), sum(light[1]), sum(light[2]); toward <= flat || away >= flat {
			t.Fatalf("toward the equator %v, away %v, flat %v Wh/m2", toward, away, flat)
		}
		snow, err := y.OnPlanes(site, 0.8, planes...)
		if err != nil {
			t.Fatal(err)
		}
		for k := range snow {
			for i, v := range snow[k] {
				if v < light[k][i] || math.IsNaN(v) {
					t.Fatalf("plane %d, step %d: %v W/m2 over snow, %v over black ground", k, i, v, light[k][i])
				}
			}
		}
	})
}

// BenchmarkOnPlanes is a clear year's light on two planes: what an 8,760-hour year
// of a design with two unlike arrays needs of the sun. The cost of a step does not
// grow as the year gets finer.
func BenchmarkOnPlanes(b *testing.B) {
	for _, step := range []time.Duration{time.Hour, 15 * time.Minute, time.Minute} {
		c := chicago()
		c.Step = step
		y, err := c.Year()
		if err != nil {
			b.Fatal(err)
		}
		site := sun.Site{Latitude: c.Latitude, Longitude: c.Longitude}
		b.Run(fmt.Sprintf("step=%v", step), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if _, err := y.OnPlanes(site, 0.2, sun.Plane{Tilt: 40, Azimuth: 180}, sun.Plane{Tilt: 40, Azimuth: 90}); err != nil {
					b.Fatal(err)
				}
			}
			b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N*y.Steps()), "ns/step")
		})
	}
}

// BenchmarkClearYear makes the year, BenchmarkRead reads one.
func BenchmarkClearYear(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := chicago().Year(); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkRead(b *testing.B) {
	text := []byte(whole(header(layout2017)))
	b.SetBytes(int64(len(text)))
	b.ReportAllocs()
	for b.Loop() {
		if y, problems := Read(text); y == nil || len(problems) > 0 {
			b.Fatal(problems)
		}
	}
}
