package facts

import (
	"slices"
	"testing"

	"stringline/lint/physics/sun"
	"stringline/schema/design"
)

const noHours = "LOCATION,Upper Terrace,-,ZZZ,invented,999999,46.5,9.87,1.0,1840.0\n"

func withFile(file *design.Weather, all *Weathers) (*System, *Site) {
	d := design.Load(design.Options{Path: "a.design.hcl", Text: []byte("design \"d\" {\n}\n\nsite {\n  coldest = \"-20 degC\"\n  hottest = \"30 degC\"\n  latitude = \"46 deg\"\n  longitude = \"9 deg\"\n  elevation = \"100 m\"\n}\n")})
	d.Weather = file
	s := NewWith(d, all)
	return s, s.subjects["site"][0].typed.(*Site)
}

// A file that several designs name is read once.
func TestWeathersAreShared(t *testing.T) {
	text := []byte(noHours)
	var all Weathers
	_, first := withFile(&design.Weather{File: "a.epw", Text: text}, &all)
	_, second := withFile(&design.Weather{File: "b/../a.epw", Text: text}, &all)
	_, other := withFile(&design.Weather{File: "a.epw", Text: []byte(noHours)}, &all)
	if first.weather == nil || first.weather != second.weather || first.weather == other.weather {
		t.Errorf("files %p, %p and another %p", first.weather, second.weather, other.weather)
	}
	if one, _ := first.weather.read(); one == nil {
		t.Error("the header is lost")
	} else if two, _ := second.weather.read(); two != one {
		t.Error("read twice")
	}
}

// No year is made, and no hour of a weather file read, before a fact of it is
// asked for.
func TestNoYearUnlessAsked(t *testing.T) {
	s, site := withFile(nil, &Weathers{})
	for _, id := range []string{"site.coldest", "site.latitude", "site.sky", "system.daily_load"} {
		if _, ok := s.Fact(id); !ok {
			t.Fatal(id)
		}
	}
	if site.clear != nil {
		t.Error("a clear sky was made unasked")
	}
	w := &Work{Entry: &Entry{}}
	if site.sky(w) == nil || site.clear == nil {
		t.Error("no clear sky was made when asked")
	}
	_, site = withFile(&design.Weather{File: "a.epw", Text: []byte(noHours)}, &Weathers{})
	headed, _ := site.weather.readHeader()
	if headed == nil || site.weather.year != nil {
		t.Error("the hours were read with the header")
	}
}

// Designs on one site share its clear sky and the light in a plane; another site,
// albedo or tilt has its own.
func TestSkiesAreShared(t *testing.T) {
	var all Weathers
	_, one := withFile(nil, &all)
	_, two := withFile(nil, &all)
	w := &Work{Entry: &Entry{}}
	sky := one.sky(w)
	if sky == nil || two.sky(w) != sky {
		t.Fatal("two designs on one site have two skies")
	}
	at := one.place(w)
	plane := sun.Plane{Tilt: 45, Azimuth: 180}
	light, err := all.onPlanes(sky, at, 0.2, []sun.Plane{plane})
	if err != nil {
		t.Fatal(err)
	}
	want, err := sky.OnPlanes(at, 0.2, plane, sun.Plane{Tilt: 90, Azimuth: 90})
	if err != nil {
		t.Fatal(err)
	}
	again, err := all.onPlanes(sky, at, 0.2, []sun.Plane{{Tilt: 90, Azimuth: 90}, plane})
	if err != nil {
		t.Fatal(err)
	}
	if &again[1][0] != &light[0][0] || !slices.Equal(again[1], want[0]) || !slices.Equal(again[0], want[1]) {
		t.Error("the light in a plane is another's, or made twice")
	}
	if darker, err := all.onPlanes(sky, at, 0, []sun.Plane{plane}); err != nil || slices.Equal(darker[0], light[0]) {
		t.Error("another albedo gives the same light")
	}
	for tilt := range 3 * mostShared {
		if _, err := all.onPlanes(sky, at, 0.2, []sun.Plane{{Tilt: float64(tilt) / 10, Azimuth: 180}}); err != nil || len(all.light) > mostShared {
			t.Fatalf("%d planes are kept (error: %v)", len(all.light), err)
		}
	}
}

// Columns count code points; a field beyond the line's end stands at its last.
func TestColumn(t *testing.T) {
	line := []byte("1,é2,3")
	for field, want := range map[int]int{0: 1, 1: 1, 2: 3, 3: 6, 9: 6} {
		if got := column(line, field); got != want {
			t.Errorf("field %d at column %d, want %d", field, got, want)
		}
	}
	if line, start := lineOf([]byte("aé\nb\nc"), 2); string(line) != "b" || start != 4 {
		t.Errorf("line 2 is %q at byte %d", line, start)
	}
	if line, _ := lineOf([]byte("a"), 3); line != nil {
		t.Errorf("line 3 is %q", line)
	}
}
