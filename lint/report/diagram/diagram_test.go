package diagram_test

import (
	"bytes"
	"fmt"
	"io"
	"math"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint"
	"stringline/lint/report/diagram"
	"stringline/schema/quantity"
)

func layouts() map[string]diagram.Layout {
	return map[string]diagram.Layout{"narrow": diagram.Narrow(), "wide": diagram.Wide()}
}

// TestGolden pins drawings of the examples, as files of their own.
func TestGolden(t *testing.T) {
	pinned := []string{"boat.narrow", "clinic.wide", "growth-48.narrow", "hut.narrow", "hut-broken.wide", "ranch.wide"}
	for _, d := range examples(t) {
		for suffix, l := range layouts() {
			name := strings.TrimSuffix(path.Base(d.File), ".design.hcl") + "." + suffix
			if !slices.Contains(pinned, name) {
				continue
			}
			name = filepath.Join("testdata", name+".svg")
			l.Alone = true
			got := drawn(t, &d, l)
			if *update {
				if err := os.WriteFile(name, got, 0o644); err != nil {
					t.Fatal(err)
				}
				continue
			}
			want, err := os.ReadFile(name)
			if err != nil {
				t.Fatal(err)
			}
			if diff := cmp.Diff(string(want), string(got)); diff != "" {
				t.Errorf("%s differs (-want +got):\n%s", name, diff)
			}
		}
	}
}

// placedKinds are the collections whose subjects stand in a system.
var placedKinds = []string{"strings", "arrays", "pv_inputs", "chargers", "banks", "cable_runs", "protections", "disconnects", "ac_outputs", "supplies", "charge_sources", "loads"}

// complete holds that each thing of the design is drawn exactly once, over all
// sheets, that nothing else is, and that ratings are those of the facts.
func complete(t *testing.T, d *lint.DesignResult, drawings ...[]byte) {
	t.Helper()
	found := map[string][]*element{}
	for _, drawing := range drawings {
		for id, all := range parsed(t, drawing).things() {
			found[id] = append(found[id], all...)
		}
	}
	expected := map[string]bool{"grounding": true}
	for _, kind := range placedKinds {
		for _, s := range d.System.Subjects(kind) {
			expected[s.ID()] = true
		}
	}
	for id := range expected {
		if len(found[id]) != 1 {
			t.Errorf("%s: %s is drawn %d times", d.File, id, len(found[id]))
		}
	}
	for id, all := range found {
		if !expected[id] {
			t.Errorf("%s: %s is drawn and is not in the design", d.File, id)
		}
		for _, g := range all {
			if g.values["data-kind"] == "" || g.child("title") == nil || g.child("title").text == "" {
				t.Errorf("%s: %s has no kind or no title", d.File, id)
			}
			same(t, d, id+".rating", g, "data-rating")
			same(t, d, id+".length", g, "data-length")
			same(t, d, id+".size", g, "data-area")
		}
	}
}

// same holds that an attribute reads back as its fact, and is absent where the
// fact is unknown or does not exist.
func same(t *testing.T, d *lint.DesignResult, fact string, g *element, name string) {
	t.Helper()
	f, ok := d.System.Fact(fact)
	text, given := g.values[name]
	switch {
	case given != (ok && f.Known):
		t.Errorf("%s: %s: the drawing has %s: %v, the fact is known: %v", d.File, fact, name, given, ok && f.Known)
	case given && math.Abs(number(t, text)-f.SI) > 1e-8*math.Abs(f.SI):
		t.Errorf("%s: %s reads back as %s, the fact is %g", d.File, fact, text, f.SI)
	}
	if !given {
		return
	}
	if name == "data-rating" && !strings.Contains(g.child("title").text, quantity.Format(f.SI, "A")) {
		t.Errorf("%s: the title of %s does not say its rating", d.File, fact)
	}
}

// TestComplete counts from the design: each component, conductor and protection
// stands in the drawing once, with the rating of its fact, and no text runs into
// another. The examples are counted as one drawing and as sheets.
func TestComplete(t *testing.T) {
	for _, d := range examples(t) {
		t.Run(path.Base(d.File), func(t *testing.T) { sound(t, &d) })
	}
}

// sound holds what every drawing of a design owes.
func sound(t *testing.T, d *lint.DesignResult) {
	t.Helper()
	for name, l := range layouts() {
		one := drawn(t, d, l)
		complete(t, d, one)
		for _, wrong := range overlaps(t, parsed(t, one)) {
			t.Errorf("%s: %s", name, wrong)
		}
		sheets, err := diagram.Sheets(d, l)
		if err != nil {
			t.Fatal(err)
		}
		complete(t, d, sheets...)
		for i, sheet := range sheets {
			frame := strings.Fields(parsed(t, sheet).values["viewBox"])
			if wide, high := number(t, frame[2]), number(t, frame[3]); wide == 720 && high > wide*1.30 {
				t.Errorf("%s: sheet %d of %d is %g wide and %g high: too high for a page", name, i+1, len(sheets), wide, high)
			}
		}
		for _, sheet := range sheets {
			for _, wrong := range overlaps(t, parsed(t, sheet)) {
				t.Errorf("%s, sheets: %s", name, wrong)
			}
		}
		if !bytes.Equal(one, drawn(t, d, l)) {
			t.Errorf("%s: the same design gave other bytes", name)
		}
	}
}

// TestNothingComesFromElsewhere: no script, no font, no reference leads out.
func TestNothingComesFromElsewhere(t *testing.T) {
	for _, d := range examples(t) {
		parsed(t, drawn(t, &d, diagram.Wide())).each(func(e *element) {
			for name, value := range e.values {
				if strings.HasPrefix(name, "on") || name == "href" || strings.Contains(value, "url(") {
					t.Errorf("%s: <%s %s=%q>", d.File, e.name, name, value)
				}
			}
			switch e.name {
			case "script", "foreignObject", "image", "use", "a":
				t.Errorf("%s: <%s>", d.File, e.name)
			}
		})
	}
}

// TestFindings: each finding stands beside its subject, or beside what stands for
// it, or in the notes; with its grade and rule in words.
func TestFindings(t *testing.T) {
	for _, d := range examples(t) {
		root := parsed(t, drawn(t, &d, diagram.Narrow()))
		things := root.things()
		marks, clean := 0, true
		for i := range d.Verdicts {
			v := &d.Verdicts[i]
			if !v.Finding() {
				continue
			}
			clean = false
			place := root
			if found, ok := things[v.About]; ok {
				place = found[0]
			}
			words := ""
			shapes := 0
			place.each(func(e *element) {
				if e.name == "text" {
					words += e.text + " "
				}
				if e.name == "path" || e.name == "circle" {
					shapes++
				}
			})
			marks++
			if !strings.Contains(words, strings.ToUpper(string(v.Grade))+" "+string(v.Outcome)+": ") || !strings.Contains(words, v.Rule) && !strings.Contains(words, " more") {
				t.Errorf("%s: beside %s stands nothing of %s", d.File, v.About, v.Rule)
			}
			if shapes == 0 {
				t.Errorf("%s: no mark at %s", d.File, v.About)
			}
		}
		if broken := strings.Contains(d.File, "broken"); broken && marks == 0 {
			t.Errorf("%s: no finding to look for", d.File)
		}
		if clean && bytes.Contains(drawn(t, &d, diagram.Narrow()), []byte("--stop")) {
			t.Errorf("%s: a clean design is drawn with red in it", d.File)
		}
	}
}

// TestDescription: the words tell the path from the array to the loads.
func TestDescription(t *testing.T) {
	d := example(t, "ranch/ranch.design.hcl")
	words := parsed(t, drawn(t, d, diagram.Wide())).child("desc").text
	last := -1
	for _, part := range []string{"string.south.a", "breaker 35.0 A", "pv_input.main.1", "charger.main", "breaker 80.0 A",
		"busbar of bank.house", "switch 200.0 A", "fuse 100.0 A", "the batteries of bank.house", "fuse 80.0 A", "ac_output.shop", "load.pump", "Grounding: DC negative grounded"} {
		at := strings.Index(words, part)
		if at <= last {
			t.Errorf("%q does not follow what comes before it in: %s", part, words)
		}
		last = at
	}
	for _, kind := range []string{"strings", "chargers", "loads", "ac_outputs", "supplies", "charge_sources"} {
		for _, s := range d.System.Subjects(kind) {
			if !strings.Contains(words, s.ID()) {
				t.Errorf("the description leaves out %s", s.ID())
			}
		}
	}
}

func TestRefusals(t *testing.T) {
	if err := diagram.Draw(io.Discard, &lint.DesignResult{}, diagram.Narrow()); err == nil || !strings.Contains(err.Error(), "drawing the diagram: ") {
		t.Errorf("a design that could not be read: %v", err)
	}
	if _, err := diagram.Sheets(nil, diagram.Wide()); err == nil {
		t.Error("no design at all: drawn")
	}
	d := example(t, "hut/hut.design.hcl")
	if err := diagram.Draw(io.Discard, d, diagram.Layout{Column: 299}); err == nil || !strings.Contains(err.Error(), "at least 300") {
		t.Errorf("a column that is too narrow: %v", err)
	}
	if err := diagram.Draw(io.Discard, d, diagram.Layout{Column: 300}); err != nil {
		t.Errorf("the narrowest column: %v", err)
	}
	if err := diagram.Draw(failing{}, d, diagram.Narrow()); err == nil || !strings.Contains(err.Error(), "disk full") {
		t.Errorf("a writer that fails: %v", err)
	}
}

type failing struct{}

func (failing) Write([]byte) (int, error) { return 0, fmt.Errorf("disk full") }

func BenchmarkDraw(b *testing.B) {
	d := example(b, "clinic/clinic.design.hcl")
	b.ReportAllocs()
	for b.Loop() {
		if err := diagram.Draw(io.Discard, d, diagram.Wide()); err != nil {
			b.Fatal(err)
		}
	}
}
