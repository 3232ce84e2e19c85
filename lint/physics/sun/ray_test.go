package sun

import (
	"fmt"
	"math"
	"testing"
	"time"

	"pgregory.net/rapid"
)

// angleBetween gives the angle between two directions in degrees.
func angleBetween(a, b Ray) float64 {
	east, north, up := a.North*b.Up-a.Up*b.North, a.Up*b.East-a.East*b.Up, a.East*b.North-a.North*b.East
	return math.Atan2(math.Sqrt(east*east+north*north+up*up), a.East*b.East+a.North*b.North+a.Up*b.Up) / degree
}

// The fast way is held against the plain one at any place, time and step.
func TestThroughIsAt(t *testing.T) {
	worst := 0.0
	rapid.Check(t, func(t *rapid.T) {
		start := time.Unix(rapid.Int64Range(946684800, 4102444800).Draw(t, "start"), 0)
		step := time.Duration(rapid.SampledFrom([]int{1, 60, 600, 900, 3600, 7200, 43200, 86400}).Draw(t, "step")) * time.Second
		site := Site{Latitude: rapid.Float64Range(-90, 90).Draw(t, "latitude"), Longitude: rapid.Float64Range(-180, 180).Draw(t, "longitude"), Elevation: rapid.Float64Range(-400, 6000).Draw(t, "elevation")}
		n := rapid.IntRange(0, 400).Draw(t, "n")
		next := 0
		for i, r := range site.Through(start, step, n) {
			if i != next {
				t.Fatalf("step %d comes where %d is due", i, next)
			}
			next++
			if i%7 != 0 && i < n-3 {
				continue
			}
			p := At(start.Add(time.Duration(i)*step), site)
			off := angleBetween(r, p.Ray())
			if elevation := 90 - p.Zenith; math.Abs(elevation-risen) < 0.0012 { // refraction begins here at once: either side will do
				for _, apparent := range []float64{p.Zenith, p.Zenith - site.refraction()*lift(risen+1e-9)} {
					either := p
					either.Apparent = apparent
					off = min(off, angleBetween(r, either.Ray()))
				}
			}
			if length := r.East*r.East + r.North*r.North + r.Up*r.Up; !(off < 0.0012) || math.Abs(length-1) > 1e-9 || math.Abs(r.Distance-p.Distance) > 1e-6 {
				t.Fatalf("step %d: %+v, plainly %+v: %v degrees apart", i, r, p, off)
			}
			worst = max(worst, off)
		}
		if next != n {
			t.Fatalf("%d steps of %d", next, n)
		}
	})
	t.Logf("worst %.5f degrees", worst)
}

func TestThroughStops(t *testing.T) {
	for i := range (Site{}).Through(time.Unix(0, 0), time.Hour, 100) {
		if i == 30 {
			break
		}
	}
	for i := range (Site{}).Through(time.Unix(0, 0), 0, 100) {
		t.Fatalf("a step of nothing gives step %d", i)
	}
}

// At the poles the sun's elevation is its declination: all day the same but for
// its slow motion, and at one pole the negative of that at the other.
func TestDeclination(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		when := time.Unix(rapid.Int64Range(946684800, 4102444800).Draw(t, "time"), 0)
		north, south := At(when, Site{Latitude: 90}), At(when, Site{Latitude: -90})
		// Parallax lowers the sun at both, by 0.0024 degrees.
		if sum := (90 - north.Zenith) + (90 - south.Zenith); math.Abs(sum) > 0.006 {
			t.Fatalf("%v: poles %v and %v", when, north, south)
		}
		later := At(when.Add(12*time.Hour), Site{Latitude: 90})
		if moved := math.Abs(later.Zenith - north.Zenith); moved > 0.21 {
			t.Fatalf("%v: the declination moves by %v degrees in half a day", when, moved)
		}
		if declination := math.Abs(90 - north.Zenith); declination > 23.45 {
			t.Fatalf("%v: declination %v", when, declination)
		}
	})
}

// BenchmarkYear is a year of sun positions with the light on one plane under a
// clear sky. The cost of a step does not grow as the year gets finer. The plain way
// beside it takes each moment by itself.
func BenchmarkYear(b *testing.B) {
	start := time.Date(2026, 1, 1, 0, 30, 0, 0, time.UTC)
	site, plane := Site{Latitude: 47}, Plane{40, 180}
	for _, step := range []time.Duration{time.Hour, 15 * time.Minute, time.Minute} {
		n := int(365 * 24 * time.Hour / step)
		perStep := func(b *testing.B) {
			b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N*n), "ns/step")
		}
		b.Run(fmt.Sprintf("positions/step=%v", step), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				sum := 0.0
				for _, r := range site.Through(start, step, n) {
					sum += r.Up
				}
				if sum == 0 {
					b.Fatal("no sun")
				}
			}
			perStep(b)
		})
		b.Run(fmt.Sprintf("clear/step=%v", step), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				sum := 0.0
				clear, surface := ClearOver(0, LinkeTurbidity), plane.Surface(0.2)
				for _, r := range site.Through(start, step, n) {
					sum += surface.Light(clear.Sky(r), r).Total()
				}
				if sum <= 0 {
					b.Fatal("no light in a year")
				}
			}
			perStep(b)
		})
	}
	b.Run("plain/step=1h", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			sum := 0.0
			for hour := range 8760 {
				p := At(start.Add(time.Duration(hour)*time.Hour), site)
				sum += OnPlane(ClearSky(p, 0, LinkeTurbidity), p, plane, 0.2).Total()
			}
			if sum <= 0 {
				b.Fatal("no light in a year")
			}
		}
	})
}
