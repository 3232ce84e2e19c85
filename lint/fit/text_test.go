package fit_test

import (
	"bytes"
	"context"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint"
	"stringline/lint/fit"
	"stringline/lint/verdict"
	"stringline/schema/hcltext"
)

func replaced(t testing.TB, text string, pairs ...string) string {
	t.Helper()
	for i := 0; i < len(pairs); i += 2 {
		if strings.Count(text, pairs[i]) != 1 {
			t.Fatalf("%q stands %d times in the text", pairs[i], strings.Count(text, pairs[i]))
		}
		text = strings.Replace(text, pairs[i], pairs[i+1], 1)
	}
	return text
}

// lightHut is the hut with so little to feed that fewer panels do, and its lines
// ended as asked.
func lightHut(t testing.TB, newline string) map[string]string {
	texts := example(t, "hut")
	text := replaced(t, texts["hut/hut.design.hcl"], `daily_energy = "1.1 kWh"`, `daily_energy = "0.1 kWh"`)
	texts["hut/hut.design.hcl"] = strings.ReplaceAll(text, "\n", newline)
	return texts
}

// What an arrangement does not touch keeps its bytes: every comment stays, line
// ends stay, and what was measured on other strings is kept as a comment.
func TestTextOfAnArrangement(t *testing.T) {
	for _, newline := range []string{"\n", "\r\n"} {
		if underRace && newline == "\n" {
			continue
		}
		texts := lightHut(t, newline)
		before := []byte(texts["hut/hut.design.hcl"])
		r := find(t, texts, "hut/hut.design.hcl", fit.Options{Years: 12})
		if len(r.Answers) < 4 {
			t.Fatalf("only %d answers", len(r.Answers))
		}
		silenced := 0
		for _, a := range r.Answers {
			text, _, err := r.Take(context.Background(), a.Number)
			if err != nil {
				t.Fatal(err)
			}
			if a.AsIs {
				if !bytes.Equal(text, before) {
					t.Errorf("the design as it stands is written otherwise:\n%s", cmp.Diff(string(before), string(text)))
				}
				continue
			}
			if bare := strings.ReplaceAll(string(text), "\r\n", ""); newline == "\r\n" && strings.ContainsAny(bare, "\r\n") || newline == "\n" && bytes.ContainsRune(text, '\r') {
				t.Errorf("arrangement %d: lines end otherwise than in the design", a.Number)
			}
			if !bytes.Equal(hcltext.Format(text), text) {
				t.Errorf("arrangement %d is not laid out", a.Number)
			}
			if bytes.Contains(text, []byte("# reading \"south-a-open\" {")) && bytes.Contains(text, []byte("#   value            = \"72.1 V\"")) {
				silenced++
			}
			rest := text
			for _, c := range hcltext.Comments(before) {
				words := strings.TrimLeft(c.Text, "# ")
				at := bytes.Index(rest, []byte(words))
				if at < 0 {
					t.Errorf("arrangement %d: the comment %q is gone", a.Number, c.Text)
					break
				}
				rest = rest[at+len(words):]
			}
		}
		if silenced != len(r.Answers)-1 {
			t.Errorf("in %d of %d arrangements the old reading is kept as a comment", silenced, len(r.Answers)-1)
		}
		takeAll(t, texts, "hut/hut.design.hcl", r)
	}
}

// Unlike panels go to inputs of their own where the controller has them: a new
// array is made on the free input, and check takes it.
func TestFreeInput(t *testing.T) {
	texts := farm(t)
	texts["growth/parts/store.parts.hcl"] = replaced(t, texts["growth/parts/store.parts.hcl"], "  pv_inputs            = 1\n", "  pv_inputs            = 2\n") + `
panel "flint-200" {
  technology         = "mono_si"
  cells              = 36
  pmax               = "200 W"
  voc                = "24.5 V"
  isc                = "10.4 A"
  vmp                = "20.4 V"
  imp                = "9.8 A"
  temp_voc           = "-0.27 %/K"
  temp_isc           = "0.05 %/K"
  temp_pmax          = "-0.35 %/K"
  noct               = "45 degC"
  tolerance          = "3 %"
  max_system_voltage = "1000 V"
  max_series_fuse    = "25 A"
  bypass_diodes      = 2
  connector          = "scarp-4"
}
`
	r := find(t, texts, "growth/farm.design.hcl", fit.Options{Panels: []fit.Panels{{Name: "shale-410", Count: 3}, {Name: "flint-200", Count: 4}}, Most: 400, Years: 30})
	i := slices.IndexFunc(r.Answers, func(a *fit.Arrangement) bool {
		return a.Banks[0].Voltage == 48 && len(a.LeftOver) == 0 && slices.ContainsFunc(a.Strings, func(s fit.Strings) bool { return s.CopyOf == "terrace" && s.Input == 2 })
	})
	if i < 0 {
		t.Fatalf("no answer uses all panels on both inputs: %d answers", len(r.Answers))
	}
	text, _, err := r.Take(context.Background(), r.Answers[i].Number)
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{`array "terrace-2" {`, `  pv_input = 2`, `{ "flint-200" = 4 }`, `{ "shale-410" = 3 }`, "  series                 = 4\n", `bank_voltage             = "48 V"`, `absorption               = "56.8 V"`, `low_voltage_disconnect = "48.0 V"`} {
		if !strings.Contains(string(text), want) {
			t.Errorf("%q is not in the text", want)
		}
	}
	for _, a := range r.Answers { // mirror images are tried once
		for _, b := range r.Answers {
			if a != b && a.Banks[0].Voltage == b.Banks[0].Voltage && cmp.Equal(sides(a), sides(b)) {
				t.Errorf("arrangements %d and %d are mirror images: %+v", a.Number, b.Number, a.Strings)
			}
		}
	}
	takeAll(t, texts, "growth/farm.design.hcl", r)
}

// sides gives what stands on each input, whichever it is.
func sides(a *fit.Arrangement) [][]fit.Strings {
	var all [][]fit.Strings
	at := 0
	for _, s := range a.Strings {
		if s.Input != at {
			all, at = append(all, nil), s.Input
		}
		s.Input, s.Array, s.CopyOf = 0, "", ""
		all[len(all)-1] = append(all[len(all)-1], s)
	}
	slices.SortFunc(all, func(x, y []fit.Strings) int { return strings.Compare(cmp.Diff(nil, x), cmp.Diff(nil, y)) })
	return all
}

func TestRefusals(t *testing.T) {
	texts := farm(t)
	for name, c := range map[string]struct {
		change func(string) string
		hand   []fit.Panels
		want   string
	}{
		"a panel that is not there":   {nil, []fit.Panels{{Name: "shale-401", Count: 9}}, `did you mean "shale-410"?`},
		"none of a panel":             {nil, []fit.Panels{{Name: "shale-410", Count: 0}}, "expected 1 to 200"},
		"more than a design may have": {nil, []fit.Panels{{Name: "shale-410", Count: 201}}, "expected 1 to 200"},
		"a panel twice":               {nil, []fit.Panels{{Name: "shale-410", Count: 1}, {Name: "shale-410", Count: 2}}, "named twice"},
		"a design with an error":      {func(s string) string { return replaced(t, s, `"-15 degC"`, `"-15 V"`) }, nil, "expected a temperature"},
		"no array": {func(s string) string {
			return s[:strings.Index(s, "array \"terrace\"")] + s[strings.Index(s, "grounding {"):]
		}, nil, "no panels"},
		"no array and panels in hand": {func(s string) string {
			return s[:strings.Index(s, "array \"terrace\"")] + s[strings.Index(s, "grounding {"):]
		}, []fit.Panels{{Name: "shale-410", Count: 9}}, "no array"},
	} {
		changed := map[string]string{}
		for file, text := range texts {
			changed[file] = text
		}
		if c.change != nil {
			changed["growth/farm.design.hcl"] = c.change(texts["growth/farm.design.hcl"])
		}
		bench, err := lint.OpenBench(context.Background(), options(changed, "growth/farm.design.hcl"))
		if err != nil {
			t.Fatal(err)
		}
		r, err := fit.Find(context.Background(), bench, fit.Options{Panels: c.hand})
		if err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: %v, %v; want %q", name, r, err, c.want)
		}
		bench.Close()
	}
	bench, err := lint.OpenBench(context.Background(), options(texts, "growth/farm.design.hcl"))
	if err != nil {
		t.Fatal(err)
	}
	defer bench.Close()
	ctx, cancel := context.WithCancel(context.Background())
	progress := func(done, total int) {
		if done == 5 {
			cancel()
		}
	}
	if _, err := fit.Find(ctx, bench, fit.Options{Panels: []fit.Panels{{Name: "shale-410", Count: 60}}, Progress: progress}); err == nil || ctx.Err() == nil {
		t.Errorf("it went on after the end: %v", err)
	}
}

// An unknown is never met: with the panel's coefficient gone nothing is an answer,
// and the rule that cannot be judged says what to supply. What has nothing to do
// with the panels is told beside.
func TestUnknown(t *testing.T) {
	texts := farm(t)
	texts["growth/parts/store.parts.hcl"] = replaced(t, texts["growth/parts/store.parts.hcl"], "  temp_voc           = \"-0.26 %/K\"\n", "")
	r := find(t, texts, "growth/farm.design.hcl", fit.Options{})
	if len(r.Answers)+len(r.After)+len(r.Waiting) > 0 {
		t.Errorf("%d arrangements may be taken although the cold voltage is unknown", len(r.Numbered()))
	}
	named := false
	for _, g := range r.Stopped {
		for _, a := range g.Stopped {
			named = named || slices.ContainsFunc(a.Stops, func(v verdict.Verdict) bool {
				return v.Rule == "limits.cold_voltage" && slices.Contains(v.Missing, "panel.shale-410.temp_voc")
			})
		}
	}
	if !named {
		t.Error("nothing says that the coefficient is missing")
	}
	if _, _, err := r.Take(context.Background(), 1); err == nil || !strings.Contains(err.Error(), "every one is stopped") {
		t.Errorf("taking what is stopped: %v", err)
	}

	texts = farm(t)
	text := texts["growth/farm.design.hcl"]
	texts["growth/farm.design.hcl"] = replaced(t, text, "    passcode_changed         = true\n", "    passcode_changed         = false\n", "  take_off               = \"diagonal\"\n", "")
	r = find(t, texts, "growth/farm.design.hcl", fit.Options{Panels: []fit.Panels{{Name: "shale-410", Count: 9}}})
	var beside []string
	for _, v := range r.Beside {
		beside = append(beside, v.Key())
	}
	if len(r.Answers) != 9 || !slices.Contains(beside, "limits.passcode|charger.main|") {
		t.Errorf("%d answers; beside %v", len(r.Answers), beside)
	}
	takeAll(t, texts, "growth/farm.design.hcl", r)
	if _, _, err := r.Take(context.Background(), 10); err == nil || !strings.Contains(err.Error(), "1 to 9") {
		t.Errorf("taking what is not there: %v", err)
	}
}

// A waiver of the design holds for an arrangement as check would have it, and the
// arrangement says that it rests on one.
func TestWaiver(t *testing.T) {
	texts := farm(t)
	texts["growth/farm.design.hcl"] += "\nwaiver \"limits.overpanel\" {\n  on      = [\"charger.main\"]\n  reason  = \"its maker wrote that 180 % is borne\"\n  expires = \"2027-01-01\"\n}\n"
	r := find(t, texts, "growth/farm.design.hcl", fit.Options{Panels: []fit.Panels{{Name: "shale-410", Count: 9}}})
	waived := 0
	for _, a := range r.Numbered() {
		if over := float64(panelsOf(a))*410 > 1.3*60*a.Banks[0].Voltage; over != (len(a.Waived) == 1 && a.Waived[0].Rule == "limits.overpanel") {
			t.Errorf("%+v: waived %v, over %v", a.Strings, a.Waived, over)
		} else if over {
			waived++
		}
	}
	if waived == 0 {
		t.Error("no arrangement rests on the waiver")
	}
	takeAll(t, texts, "growth/farm.design.hcl", r)
}

func panelsOf(a *fit.Arrangement) (n int) {
	for _, s := range a.Strings {
		for _, p := range s.Series {
			n += p.Count * s.Parallel
		}
	}
	return n
}

// A rule that reads values by itself rests on whatever it may read: what the design
// breaks of it today is no excuse for an arrangement.
func TestRuleByValue(t *testing.T) {
	texts := farm(t)
	texts["growth/workshop.hcl"] += "\ncodebook \"house\" {\n  path = \"codebooks/house\"\n}\n"
	texts["growth/codebooks/house/codebook.hcl"] = "name    = \"house\"\nversion = \"1.0.0\"\n"
	texts["growth/codebooks/house/low/rule.rego"] = `# METADATA
# title: Strings below forty volts
# description: So that whoever works on our roofs meets no more.
# custom:
#   grade: fix
#   each: pv_inputs
#   source: common practice
#   remedy: take panels out of series
package codebooks.house.low

check contains {"about": i.id, "is": fact.number(fact.value(i.voc_cold), "V"), "at_most": fact.number(40, "V")} if some i in input.pv_inputs
`
	opts := options(texts, "growth/farm.design.hcl")
	opts.Trust = []string{"house"}
	bench, err := lint.OpenBench(context.Background(), opts)
	if err != nil {
		t.Fatal(err)
	}
	defer bench.Close()
	r, err := fit.Find(context.Background(), bench, fit.Options{})
	if err != nil {
		t.Fatal(err)
	}
	if len(r.Answers) > 0 || len(r.Stopped) == 0 || !slices.ContainsFunc(r.Stopped, func(g fit.Group) bool { return g.Rule == "house.low" }) {
		t.Errorf("%d answers; one panel makes 41.3 V in the cold; stopped: %+v", len(r.Answers), r.Stopped)
	}
}

// A charger without an array gets one: a copy of another charger's.
func TestChargerWithoutArray(t *testing.T) {
	texts := example(t, "clinic")
	text := texts["clinic/clinic.design.hcl"]
	from := strings.Index(text, "array \"west\" {")
	to := from + strings.Index(text[from:], "\n}\n") + 3
	texts["clinic/clinic.design.hcl"] = text[:from] + text[to:]
	r := find(t, texts, "clinic/clinic.design.hcl", fit.Options{Panels: []fit.Panels{{Name: "acacia-450", Count: 12}}, Most: 300, Years: 6})
	i := slices.IndexFunc(r.Answers, func(a *fit.Arrangement) bool {
		return slices.ContainsFunc(a.Strings, func(s fit.Strings) bool { return s.CopyOf == "east" && s.Charger == "west" })
	})
	if i != 0 {
		t.Errorf("the best of %d answers does not use both chargers: %d", len(r.Answers), i)
	}
	takeAll(t, texts, "clinic/clinic.design.hcl", r)
}

// The bound holds, is told, and the likeliest come first; two runs give the same.
func TestBound(t *testing.T) {
	texts := farm(t)
	hand := []fit.Panels{{Name: "shale-410", Count: 9}}
	whole := find(t, texts, "growth/farm.design.hcl", fit.Options{Panels: hand})
	few := find(t, texts, "growth/farm.design.hcl", fit.Options{Panels: hand, Most: 60, Years: 2})
	if few.Judged != 60 || few.Possible != 69 || few.Years != 2 {
		t.Errorf("judged %d of %d, %d years", few.Judged, few.Possible, few.Years)
	}
	if len(few.Waiting) == 0 || len(few.Waiting[0].NotPut) == 0 || few.Waiting[0].YearlyEnergy != nil {
		t.Errorf("waiting: %+v", few.Waiting)
	}
	takeAll(t, texts, "growth/farm.design.hcl", few)
	again := find(t, texts, "growth/farm.design.hcl", fit.Options{Panels: hand, Workers: 1})
	if diff := cmp.Diff(shapesInOrder(whole), shapesInOrder(again), cmp.AllowUnexported(shape{})); diff != "" {
		t.Errorf("another order with one worker:\n%s", diff)
	}
	for i, a := range whole.Answers {
		if i > 0 && *a.YearlyEnergy > *whole.Answers[i-1].YearlyEnergy*1.0101 {
			t.Errorf("arrangement %d gives more than the one before it", a.Number)
		}
	}
}

func shapesInOrder(r *fit.Result) (all []shape) {
	for _, a := range r.Numbered() {
		all = append(all, shapes([]*fit.Arrangement{a})[0])
	}
	return all
}

// A bank voltage that cannot be had is told with the reason.
func TestBanks(t *testing.T) {
	texts := farm(t)
	for name, c := range map[string]struct {
		from, to string
		want     []string
	}{
		"too few batteries":    {"parallel               = 4\n", "parallel               = 2\n", []string{"48 V: it takes 4 of pebble-100 in series, and 2 are there"}},
		"three of them":        {"parallel               = 4\n", "parallel               = 3\n", []string{"48 V: it takes 4 of pebble-100 in series, and 3 are there"}},
		"all as they are":      {"parallel               = 4\n", "parallel               = 4\n", nil},
		"an odd one left over": {"parallel               = 4\n", "parallel               = 5\n", nil},
	} {
		changed := map[string]string{}
		for file, text := range texts {
			changed[file] = text
		}
		changed["growth/farm.design.hcl"] = replaced(t, texts["growth/farm.design.hcl"], c.from, c.to)
		r := find(t, changed, "growth/farm.design.hcl", fit.Options{Most: 9})
		var got []string
		for _, n := range r.NoBanks {
			got = append(got, formatVolts(n.Voltage)+": "+n.Why)
		}
		if diff := cmp.Diff(c.want, got); diff != "" {
			t.Errorf("%s:\n%s", name, diff)
		}
		if name == "an odd one left over" {
			left := 0
			for _, g := range r.Stopped {
				for _, a := range g.Stopped {
					left = max(left, a.Banks[0].LeftOver)
				}
			}
			for _, a := range r.Numbered() {
				left = max(left, a.Banks[0].LeftOver)
			}
			if left != 1 {
				t.Errorf("%d batteries left over of five", left)
			}
		}
	}
}

func formatVolts(v float64) string {
	return map[float64]string{12: "12 V", 24: "24 V", 48: "48 V"}[v]
}
