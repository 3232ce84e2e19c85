package facts_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"stringline/lint/facts"
)

// fallbacks are attributes whose absence makes another one count, so that facts
// may rise as they go.
var fallbacks = []string{"low_cutoff", "voltage_min"}

// Of a design with any of its attributes taken out: what is still known and
// assumes nothing new is what it was, and a lower bound is below what the whole
// design gives.
func TestFewerAttributesNeverMislead(t *testing.T) {
	before := known(load(t, hut))
	lines := removable(hut)
	rapid.Check(t, func(t *rapid.T) {
		text := hut
		for range rapid.IntRange(1, 12).Draw(t, "how many") {
			line := rapid.SampledFrom(lines).Draw(t, "line")
			falls := false
			for _, f := range fallbacks {
				falls = falls || strings.Contains(line, f)
			}
			if !falls {
				text = strings.Replace(text, line, "", 1)
			}
		}
		s, problems := loose(text)
		sound(t, s)
		if len(problems) > 0 {
			return
		}
		for id, f := range known(s) {
			was := before[id]
			if !was.Known {
				continue
			}
			if f.Known && len(f.Assumed) <= len(was.Assumed) && !cmp.Equal(f.Value(), was.Value()) {
				t.Errorf("%s turns from %v to %v", id, was.Value(), f.Value())
			}
			if f.AtLeast != nil && *f.AtLeast > was.SI*(1+1e-9) {
				t.Errorf("%s is at least %v, and is %v", id, facts.InUnit(*f.AtLeast, f.Unit), was.Value())
			}
		}
	})
}

// FuzzFacts derives all facts of any text: no panic, no lie about itself.
func FuzzFacts(f *testing.F) {
	f.Add(hut)
	f.Add(small)
	f.Add(`design "x" {}`)
	f.Add("array \"a\" {\n  charger = \"c\"\n  pv_input = 2\n}\ncharger \"c\" {}\n")
	f.Fuzz(func(t *testing.T, text string) {
		s, _ := loose(text)
		sound(t, s)
		_ = s.Document()
		_ = s.Structure()
	})
}
