package fit_test

import (
	"fmt"
	"testing"
	"time"

	"stringline/lint/fit"
)

// However many kinds of panel are in hand, the layouts are thought of in bounded
// time, and it is told that these are not all. Six kinds of two hundred make 6e13
// strings; on four inputs that are alike nearly all layouts are mirror images.
func TestManyKindsInHand(t *testing.T) {
	if underRace {
		t.Skip("one goroutine thinks of layouts")
	}
	texts := farm(t)
	parts, file := "growth/parts/store.parts.hcl", "growth/farm.design.hcl"
	texts[parts] = replaced(t, texts[parts], `  pv_inputs            = 1`, `  pv_inputs            = 4`)
	var hand []fit.Panels
	for i := range 6 {
		name := fmt.Sprintf("flint-%d", i)
		// Currents a third and more apart: none goes in a string with another.
		texts[parts] += fmt.Sprintf("\npanel %q {\n  pmax = \"400 W\"\n  voc = \"40 V\"\n  vmp = \"33 V\"\n  isc = \"%d A\"\n  imp = \"%d A\"\n}\n", name, i*i+3*i+4, i*i+2*i+3)
		hand = append(hand, fit.Panels{Name: name, Count: 200})
	}
	began := time.Now()
	r := find(t, texts, file, fit.Options{Panels: hand, Most: 1, Years: 1})
	if !r.More || r.Judged != 1 || r.Possible <= 1 {
		t.Errorf("judged %d of %d, more: %v", r.Judged, r.Possible, r.More)
	}
	t.Logf("%d layouts in %v", r.Possible, time.Since(began))
}

// Layouts by hand: three like panels make five on one input (1; 2 side by side, 2 in
// a row; 3 and 3), and three more on two inputs that are alike (1 and 1, 1 and each
// of the twos), mirror images counted once; each at three bank voltages.
func TestLayoutsByHand(t *testing.T) {
	texts := farm(t)
	parts, file := "growth/parts/store.parts.hcl", "growth/farm.design.hcl"
	texts[parts] = replaced(t, texts[parts], `  pv_inputs            = 1`, `  pv_inputs            = 2`)
	r := find(t, texts, file, fit.Options{Panels: []fit.Panels{{Name: "shale-410", Count: 3}}, Years: 1})
	if r.Possible != 3*8 || r.Judged != r.Possible || r.More {
		t.Errorf("%d layouts, more: %v; by hand there are 24", r.Possible, r.More)
	}
}
