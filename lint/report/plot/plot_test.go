package plot_test

import (
	"bytes"
	"errors"
	"math"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint/report/plot"
)

func TestNames(t *testing.T) {
	if diff := cmp.Diff([]string{"iv.east.1", "iv.west.1", "day.east", "day.west", "year"}, plot.Names(loaded(t, "clinic/clinic.design.hcl"))); diff != "" {
		t.Error(diff)
	}
	s := loaded(t, "hut/hut.design.hcl")
	for name, near := range map[string]string{"iv.man.1": "iv.main.1", "iv.main.2": "iv.main.1", "yaer": "year", "dai.main": "day.main", "sunshine": "", "year.house": "", "iv": "", "": ""} {
		err := plot.Draw(&bytes.Buffer{}, s, name)
		var unknown *plot.UnknownError
		if !errors.As(err, &unknown) || unknown.Near != near || !strings.Contains(err.Error(), "no diagram") {
			t.Errorf("%q: %v, want %q meant", name, err, near)
		}
	}
	// An input's day is that of its charger.
	var one, other bytes.Buffer
	if err := errors.Join(plot.Draw(&one, s, "day.main"), plot.Draw(&other, s, "day.main.1")); err != nil {
		t.Fatal(err)
	}
	if strings.ReplaceAll(strings.ReplaceAll(other.String(), "day.main.1", "day.main"), "day-main-1", "day-main") != one.String() {
		t.Error("day.main.1 is another picture than day.main")
	}
}

// Every picture of every example: a file that is complete by itself, with words
// beside it, and texts that do not lie on one another.
func TestPictures(t *testing.T) {
	designs, err := filepath.Glob("../../../examples/*/*.design.hcl")
	if err != nil || len(designs) < 6 {
		t.Fatalf("only %d examples found: %v", len(designs), err)
	}
	for _, file := range designs {
		name := filepath.Base(filepath.Dir(file)) + "/" + filepath.Base(file)
		s := loaded(t, name)
		for _, picture := range plot.Names(s) {
			var alone, again, inside bytes.Buffer
			if err := errors.Join(plot.Alone(&alone, s, picture), plot.Alone(&again, s, picture), plot.Draw(&inside, s, picture)); err != nil {
				t.Fatal(err)
			}
			if !bytes.Equal(alone.Bytes(), again.Bytes()) {
				t.Errorf("%s %s differs from itself", name, picture)
			}
			if strings.Contains(inside.String(), "<style") || !strings.Contains(alone.String(), "prefers-color-scheme:dark") {
				t.Errorf("%s %s: styles stand in the page or are missing in the file", name, picture)
			}
			all := elements(t, alone.Bytes())
			if all[0].attrs["role"] != "img" || all[1].name != "title" || all[2].name != "desc" || len(all[2].text) < 60 {
				t.Errorf("%s %s says nothing of itself: %+v", name, picture, all[:3])
			}
			if strings.Contains(allText(all), "_____") && !strings.Contains(name, "broken") {
				t.Errorf("%s %s has an empty entry", name, picture)
			}
			overlaps(t, name+" "+picture, all)
			if _, heads, rows, err := plot.Describe(s, picture); err != nil || len(rows) == 0 || len(rows[0].Values) != len(heads)-1 {
				t.Errorf("%s %s: a table of %v with %d rows, %v", name, picture, heads, len(rows), err)
			}
		}
	}
}

// overlaps takes a letter for 5.4 units wide and 8 high, what a narrow sans serif
// has at 11 units (measured in Liberation Sans).
func overlaps(t *testing.T, name string, all []element) {
	t.Helper()
	type box struct {
		left, right, bottom float64
		text                string
	}
	var boxes []box
	for _, e := range all {
		if e.name != "text" {
			continue
		}
		x, long := number(t, e.attrs["x"]), 5.4*float64(len([]rune(e.text)))
		switch e.attrs["text-anchor"] {
		case "middle":
			x -= long / 2
		case "end":
			x -= long
		}
		b := box{x, x + long, number(t, e.attrs["y"]), e.text}
		if b.left < -1 || b.right > 364 {
			t.Errorf("%s: %q stands from %.0f to %.0f", name, b.text, b.left, b.right)
		}
		for _, other := range boxes {
			if math.Abs(b.bottom-other.bottom) < 8 && b.left < other.right && other.left < b.right {
				t.Errorf("%s: %q lies on %q", name, b.text, other.text)
			}
		}
		boxes = append(boxes, b)
	}
}

// Marks and levels stand where their numbers say, and the numbers are the facts'.
func TestCurvesReadBack(t *testing.T) {
	s := loaded(t, "hut/hut.design.hcl")
	all := drawn(t, s, "iv.main.1")
	marks := map[string]element{}
	for _, e := range all {
		if what := e.attrs["data-mark"]; what != "" {
			marks[e.panel["data-panel"]+" "+e.attrs["data-of"]+" "+what] = e
			at := func(value, end, from, to string) float64 {
				return number(t, e.panel[from]) + number(t, e.attrs[value])/number(t, e.panel[end])*(number(t, e.panel[to])-number(t, e.panel[from]))
			}
			if math.Abs(at("data-x", "data-x-end", "data-left", "data-right")-number(t, e.attrs["cx"])) > 0.01 ||
				math.Abs(at("data-y", "data-y-end", "data-bottom", "data-top")-number(t, e.attrs["cy"])) > 0.01 {
				t.Errorf("a mark lies beside its numbers: %v", e.attrs)
			}
		}
	}
	for mark, want := range map[string][2]string{
		"power standard maximum": {"vmp_stc", "mpp_stc"}, "power cold maximum": {"vmp_cold", "mpp_cold"}, "power hot maximum": {"vmp_hot", "mpp_hot"},
	} {
		m, ok := marks[mark]
		if !ok {
			t.Errorf("no mark %q", mark)
			continue
		}
		for n, attr := range []string{"data-x", "data-y"} {
			if got, want := number(t, m.attrs[attr]), factOf(t, s, "pv_input.main.1."+want[n]); math.Abs(got/want-1) > 1e-8 {
				t.Errorf("%s: %s is %v, the fact %v", mark, attr, got, want)
			}
		}
	}
	// Two strings of two slate-410 and one of two dusk-335: the data sheets' own
	// short-circuit currents, 2 x 13.95 A + 11.52 A (within 0.1 %, the fit's bound).
	if got := number(t, marks["current standard short_circuit"].attrs["data-y"]); math.Abs(got/39.42-1) > 1e-3 {
		t.Errorf("short circuit at %v A, want 39.42 A", got)
	}
	// Open circuit at 25 degC between the two kinds' own, 73.8 V and 74.8 V.
	if got := number(t, marks["current standard open_circuit"].attrs["data-x"]); got < 73.8 || got > 74.8 {
		t.Errorf("open circuit at %v V", got)
	}
	found := map[string]string{}
	for _, e := range all {
		for _, kind := range []string{"data-limit", "data-judged", "data-level"} {
			if id := e.attrs[kind]; id != "" {
				found[id] = e.attrs["data-x"] + e.attrs["data-y"]
			}
		}
	}
	want := map[string]string{
		"controller.ridge-85.pv_voltage_max": "150", "pv_input.main.1.voc_cold": "84.91296", "controller.ridge-85.pv_current_max": "50",
		"controller.ridge-85.pv_short_circuit_max": "60", "controller.ridge-85.pv_power_max": "2650",
	}
	if diff := cmp.Diff(want, found); diff != "" {
		t.Error(diff)
	}
}

// A mark past its limit says so in words and in red; the same limit met exactly
// does not. 84.91296 V is the coldest open circuit of the hut.
func TestPastTheLimit(t *testing.T) {
	for limit, past := range map[string]bool{"84.91 V": true, "84.91296 V": false, "84.92 V": false} {
		all := drawn(t, loaded(t, "hut/hut.design.hcl", `pv_voltage_max       = "150 V"`, `pv_voltage_max       = "`+limit+`"`), "iv.main.1")
		if said := strings.Contains(allText(all), "past the limit"); said != past {
			t.Errorf("limit %s: past the limit %v, want %v", limit, said, past)
		}
		red := slices.ContainsFunc(all, func(e element) bool {
			return e.attrs["data-judged"] != "" && strings.Contains(e.attrs["class"], "past")
		})
		if red != past {
			t.Errorf("limit %s: in red %v", limit, red)
		}
	}
}

// A limit far away is told in words; what is drawn keeps its size.
func TestOffScale(t *testing.T) {
	s := loaded(t, "hut/hut.design.hcl", `pv_voltage_max       = "150 V"`, `pv_voltage_max       = "600 V"`, `pv_short_circuit_max = "60 A"`, `pv_short_circuit_max = "500 A"`)
	all := drawn(t, s, "iv.main.1")
	if text := allText(all); !strings.Contains(text, "limit 600.0 V, off this scale") || !strings.Contains(text, "500.0 A") {
		t.Errorf("the limits are not told: %s", text)
	}
	for _, e := range all {
		if e.attrs["data-panel"] != "" && number(t, e.attrs["data-x-end"]) > 250 || e.attrs["data-limit"] != "" {
			t.Errorf("drawn all the same: %v", e.attrs)
		}
	}
}

// What is unknown is an empty entry that names what to supply; what is known is
// drawn beside it.
func TestUnknown(t *testing.T) {
	for _, c := range []struct {
		name, picture string
		changes       []string
		want          []string
		curves        int
	}{
		{"no site temperatures", "iv.main.1", []string{"  coldest   = \"-27 degC\" #", "#", "  hottest   = \"29 degC\"\n", ""},
			[]string{"_____", "supply coldest of site", "supply hottest of site", "25 °C"}, 2},
		{"no limit", "iv.main.1", []string{"pv_voltage_max       = \"150 V\"", ""}, []string{"limit _____ V"}, 6},
		{"no voc", "iv.main.1", []string{"  voc                = \"37.4 V\"", "", "  voc                = \"36.9 V\"", ""},
			[]string{"_____", "panel \"slate-410\", from its data sheet"}, 0},
		{"thin film", "iv.main.1", []string{"technology         = \"mono_si\"", "technology = \"thin_film\""},
			[]string{"cold, standard, hot curve: _____ A", "not for thin film", "is destroyed, is 150.0 V"}, 0},
		{"no position", "day.main", []string{"latitude  = \"46.52 deg\"\n", ""}, []string{"_____", "supply latitude of site"}, 0},
		{"no position", "year", []string{"latitude  = \"46.52 deg\"\n", ""}, []string{"yield of bank.house: _____ Wh", "supply latitude of site"}, 1},
	} {
		s := loaded(t, "hut/hut.design.hcl", c.changes...)
		all := drawn(t, s, c.picture)
		text := strings.Join(strings.Fields(allText(all)), " ")
		for _, words := range c.want {
			if !strings.Contains(text, words) {
				t.Errorf("%s, %s: %q is not there: %s", c.name, c.picture, words, text)
			}
		}
		curves := 0
		for _, e := range all {
			if e.attrs["data-curve"] != "" {
				curves++
			}
		}
		if curves != c.curves {
			t.Errorf("%s, %s: %d curves drawn, want %d", c.name, c.picture, curves, c.curves)
		}
	}
}

// Clipping is hatched and told, and nothing is where there is none.
func TestClippedDay(t *testing.T) {
	for setting, clips := range map[string]bool{"80 A": false, "30 A": true} {
		s := loaded(t, "hut/hut.design.hcl", `charge_current           = "80 A"`, `charge_current           = "`+setting+`"`)
		all := drawn(t, s, "day.main")
		hatched := slices.ContainsFunc(all, func(e element) bool { return e.attrs["data-area"] == "clipped" })
		if hatched != clips || strings.Contains(allText(all), "clipped by the limit") != clips {
			t.Errorf("at %s: hatched %v, want %v", setting, hatched, clips)
		}
		for _, e := range all {
			if e.attrs["data-curve"] != "output" {
				continue
			}
			most := 0.0
			for _, word := range strings.Fields(e.attrs["data-y"]) {
				most = math.Max(most, number(t, word))
			}
			// 30 A into 8 cells at 3.35 V: 804 W and no more.
			if clips && math.Abs(most-30*8*3.35) > 1e-6 {
				t.Errorf("at most %v W, want %v W", most, 30*8*3.35)
			}
		}
	}
}

// The year's bars are as high as their numbers, and the numbers are the facts'.
func TestYearReadsBack(t *testing.T) {
	s := loaded(t, "boat/boat-broken.design.hcl")
	all := drawn(t, s, "year")
	f, _ := s.Fact("bank.domestic.yield_by_month")
	months := f.Value().([]float64)
	load, _ := s.Fact("bank.domestic.load_by_month")
	bars, short := 0, 0
	for _, e := range all {
		if e.name == "rect" && e.attrs["class"] == "bar" && e.panel != nil {
			high := number(t, e.panel["data-bottom"]) - number(t, e.panel["data-top"])
			if want := months[bars] / number(t, e.panel["data-y-end"]) * high; math.Abs(want-number(t, e.attrs["height"])) > 0.02 {
				t.Errorf("month %d: a bar of %s, want %v", bars+1, e.attrs["height"], want)
			}
			bars++
		}
		if e.attrs["data-short"] != "" {
			short++
		}
	}
	lacking := 0
	for m := range months {
		if load.Value().([]float64)[m] > months[m] {
			lacking++
		}
	}
	if bars != 12 || short != lacking || lacking == 0 {
		t.Errorf("%d bars, %d months hatched of %d that lack", bars, short, lacking)
	}
}

// The style holds the colors that pages and pictures agree on.
func TestColors(t *testing.T) {
	for _, property := range []string{"--ink", "--paper", "--faint", "--stop", "--fix", "--supply"} {
		if strings.Count(plot.Colors, property+":") != 3 {
			t.Errorf("%s is not set for light, dark and paper", property)
		}
	}
	// A reader that knows no custom properties is given each color first.
	if strings.Count(plot.Style, "var(") != strings.Count(plot.Style, ",#") {
		t.Error("a color has no stand-in")
	}
}
