package fit_test

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"stringline/lint/fit"
)

// often gives the first word most of the time.
func often(words ...string) []string {
	for range 6 {
		words = append(words, words[0])
	}
	return words
}

// Of designs made at random, too: what is an answer check does not refuse, every
// string is within what is in hand, and each arrangement is told once.
func TestAnyFarm(t *testing.T) {
	rounds := 16
	if testing.Short() || underRace {
		rounds = 3
	}
	random := rand.New(rand.NewPCG(6, 2026))
	pick := func(words ...string) string { return words[random.IntN(len(words))] }
	answers := 0
	for round := range rounds {
		texts := farm(t)
		parts, file := "growth/parts/store.parts.hcl", "growth/farm.design.hcl"
		count := 1 + random.IntN(12)
		texts[parts] = replaced(t, texts[parts],
			`  pv_voltage_max       = "150 V"`, `  pv_voltage_max       = "`+pick("60 V", "100 V", "150 V", "250 V")+`"`,
			`  pv_short_circuit_max = "60 A"`, `  pv_short_circuit_max = "`+pick("30 A", "60 A", "100 A")+`"`,
			`  pv_inputs            = 1`, `  pv_inputs            = `+pick("1", "1", "2"),
			`  overpanel_max        = "130 %"`, pick(`  overpanel_max        = "130 %"`, `  overpanel_max        = "200 %"`, `  overpanel_max        = "300 %"`, `  overpanel_max        = "200 %"`, ""),
			`  series_max            = 4`, `  series_max            = `+pick("1", "2", "4"))
		texts[file] = replaced(t, texts[file],
			`  coldest   = "-15 degC"`, fmt.Sprintf(`  coldest   = "%d degC"`, random.IntN(45)-40),
			"parallel               = 4\n", "parallel               = "+pick("1", "2", "4")+"\n",
			`    absorption               = "14.2 V"`, pick(often(`    absorption               = "14.2 V"`, `    absorption               = "15.9 V"`, "")...),
			`  tilt     = "35 deg"`, pick(often(`  tilt     = "35 deg"`, "")...))
		r := find(t, texts, file, fit.Options{Panels: []fit.Panels{{Name: "shale-410", Count: count}}, Most: 120, Years: 5})
		told := map[string]bool{}
		for _, a := range r.Numbered() {
			key := fmt.Sprintf("%v %+v", a.Banks, a.Strings)
			if told[key] {
				t.Errorf("round %d: %s is told twice", round, key)
			}
			told[key] = true
			left := 0
			for _, p := range a.LeftOver {
				left += p.Count
			}
			if panelsOf(a)+left != count {
				t.Errorf("round %d: %d of %d panels and %d left over", round, panelsOf(a), count, left)
			}
		}
		answers += len(r.Answers)
		takeAll(t, texts, file, r)
	}
	if answers < rounds/2 {
		t.Errorf("only %d answers in %d rounds: this proves little", answers, rounds)
	}
}
