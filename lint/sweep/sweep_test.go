package sweep_test

import (
	"context"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint"
	"stringline/lint/linttest"
	"stringline/lint/sweep"
	"stringline/lint/verdict"
	"stringline/rules"
)

// hut reads the hut's workshop, changed as asked: file, from, to.
func hut(t testing.TB, changes ...[3]string) map[string]string {
	t.Helper()
	return example(t, "hut", changes...)
}

func options(texts map[string]string) lint.Options {
	return linttest.Options(rules.Books, texts, "hut/hut.design.hcl")
}

func run(t testing.TB, texts map[string]string, o sweep.Options, over ...string) (*sweep.Result, error) {
	t.Helper()
	return runOn(t, open(t, texts), o, over...)
}

func open(t testing.TB, texts map[string]string) *lint.Bench {
	t.Helper()
	return linttest.Bench(t, rules.Books, texts, "hut/hut.design.hcl")
}

func runOn(t testing.TB, bench *lint.Bench, o sweep.Options, over ...string) (*sweep.Result, error) {
	t.Helper()
	for _, text := range over {
		one, err := sweep.ParseOver(text)
		if err != nil {
			return nil, err
		}
		o.Over = append(o.Over, one)
	}
	return sweep.Run(context.Background(), bench, o)
}

func must(t testing.TB, texts map[string]string, o sweep.Options, over ...string) *sweep.Result {
	t.Helper()
	r, err := run(t, texts, o, over...)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func turn(t testing.TB, r *sweep.Result, rule, about string) *sweep.Turn {
	t.Helper()
	for i := range r.Turns {
		if r.Turns[i].Rule == rule && r.Turns[i].About == about {
			return &r.Turns[i]
		}
	}
	t.Fatalf("%s does not turn on %s: %+v", rule, about, r.Turns)
	return nil
}

const (
	devices = "hut/parts/devices.parts.hcl"
	panels  = "hut/parts/panels.parts.hcl"
	limit   = `pv_voltage_max       = "150 V"`
)

func limited(volts string) [3]string {
	return [3]string{devices, limit, `pv_voltage_max       = "` + volts + `"`}
}

// Cold voltage in closed form (check-values A2): n x Voc x (1 + coefficient x (T -
// 25)) is at the limit at T = 25 + (limit / (n x Voc) - 1) / coefficient. The hut
// has two in series of 37.4 V at -0.26 %/K, beside two of 36.9 V at -0.27 %/K: the
// warmer of both decides.
func TestColdVoltageTurnsWhereTheClosedFormSays(t *testing.T) {
	for i, volts := range []float64{78, 81.5, 85, 88.25} {
		if underRace && i > 0 {
			break
		}
		want := math.Max(25+(volts/(2*37.4)-1)/-0.0026, 25+(volts/(2*36.9)-1)/-0.0027)
		r := must(t, hut(t, limited(fmt.Sprintf("%g V", volts))), sweep.Options{WithoutYear: true}, "site.coldest=-60degC..20degC/5K")
		found := turn(t, r, "limits.cold_voltage", "pv_input.main.1")
		if got := found.Met().Value; math.Abs(got-want) > 0.01 {
			t.Errorf("at %g V it turns at %v degC, want %v", volts, got, want)
		}
		if found.Low.Value > want || want > found.High.Value || found.High.Value-found.Low.Value > r.Axes[0].Tolerance || r.Axes[0].Tolerance > 0.001 {
			t.Errorf("at %g V %v is not enclosed by %v and %v, %v apart", volts, want, found.Low, found.High, r.Axes[0].Tolerance)
		}
		if found.Before != verdict.Breaks || found.After != verdict.Meets || found.Grade != verdict.Stop {
			t.Errorf("at %g V: %+v", volts, found)
		}
	}
}

// A value of a part: the panel's Voc in its parts file. And one in another unit:
// a coefficient in V/K.
func TestPartsAndUnits(t *testing.T) {
	r := must(t, hut(t, limited("90 V")), sweep.Options{WithoutYear: true}, "panel.slate-410.voc=36V..45V/1V")
	want := 90 / (2 * (1 + 0.0026*52))
	if got := turn(t, r, "limits.cold_voltage", "pv_input.main.1").Met().Value; math.Abs(got-want) > 1e-3 || r.Axes[0].Part != `panel "slate-410"` {
		t.Errorf("it turns at %v V, want %v; part %s", got, want, r.Axes[0].Part)
	}
	if f := r.Rows[0].Values["pv_input.main.1.voc_cold"]; math.Abs(f.SI-36.9*2*(1+0.0027*52)) > 1e-9 {
		t.Errorf("with 36 V the other string decides: %v V", f.SI)
	}
	r = must(t, hut(t, limited("90 V")), sweep.Options{WithoutYear: true}, "panel.slate-410.temp_voc=-0.2V/K..-0.05V/K/0.05V/K")
	want = -(90 - 2*37.4) / (2 * 52)
	if got := turn(t, r, "limits.cold_voltage", "pv_input.main.1").Met().Value; math.Abs(got-want) > 1e-5 || r.Axes[0].Unit != "V/K" {
		t.Errorf("it turns at %v %s, want %v V/K", got, r.Axes[0].Unit, want)
	}
}

// Every point is judged as a design with that text would be: the value where it
// stands, in the design, in a part, behind a part's name, or where it does not
// stand yet.
func TestPointsAreWhatCheckSays(t *testing.T) {
	for i, c := range []struct {
		over, file, from, to string
		row                  int
	}{
		{"site.coldest=-40degC..-20degC/10K", "hut/hut.design.hcl", `coldest   = "-27 degC"`, `coldest   = "-40 degC"`, 0},
		{"string.south.a.parallel=1..3/1", "hut/hut.design.hcl", "parallel = 2\n", "parallel = 3\n", 2},
		{"charger.main.settings.absorption=28V..30V/0.5V", "hut/hut.design.hcl", `absorption               = "28.4 V"`, `absorption               = "29.5 V"`, 3},
		{"array.south.mounting=open_rack,roof_flush", "hut/hut.design.hcl", `mounting = "open_rack"`, `mounting = "roof_flush"`, 1},
		{"charger.main.settings.passcode_changed=true,false", "hut/hut.design.hcl", `passcode_changed         = true`, `passcode_changed         = false`, 1},
		{"string.south.a.panels.slate-410=1..4/1", "hut/hut.design.hcl", `{ "slate-410" = 2 }`, `{ "slate-410" = 4 }`, 3},
		{"site.albedo=0.1..0.5/0.2", "hut/hut.design.hcl", "  place     = \"building\"\n", "  place     = \"building\"\n  albedo = 0.5\n", 2},
		{"battery.fell-200.charge_current_max=50A..70A/10A", devices, `  charge_current_max    = "100 A"`, `  charge_current_max    = "60 A"`, 1},
		{"protection.charger.main.rating=80A..125A/20A", "hut/parts/protection.parts.hcl", "", "", -1},
	} {
		if underRace && i%4 != 0 {
			continue
		}
		r := must(t, hut(t), sweep.Options{}, c.over)
		if c.row < 0 { // written in the part that the circuit names
			if r.Axes[0].Part != `breaker "gate-125"` || len(r.Turns) == 0 {
				t.Errorf("%s: part %q, %d turns", c.over, r.Axes[0].Part, len(r.Turns))
			}
			continue
		}
		found, err := lint.Run(context.Background(), options(hut(t, [3]string{c.file, c.from, c.to})))
		if err != nil {
			t.Fatal(err)
		}
		row := &r.Rows[c.row]
		findings := [3]int{}
		for i := range found.Designs[0].Verdicts {
			v := &found.Designs[0].Verdicts[i]
			if v.Finding() {
				findings[v.Grade.Rank()]++
			}
			if got, ok := row.Outcome(v.Key()); !ok || got != v.Outcome {
				t.Errorf("%s: %s is %q in the sweep, %s in check", c.over, v.Key(), got, v.Outcome)
			}
		}
		if diff := cmp.Diff(findings, row.Findings); diff != "" {
			t.Errorf("%s (-check +sweep):\n%s", c.over, diff)
		}
		for id, f := range row.Values {
			want, ok := found.Designs[0].System.Fact(id)
			if diff := cmp.Diff(want, f); !ok || diff != "" {
				t.Errorf("%s: %s (-check +sweep):\n%s", c.over, id, diff)
			}
		}
	}
}

// What has no values in between turns from one to the next; a word, a yes and a
// count are not searched.
func TestStepsAndWords(t *testing.T) {
	r := must(t, hut(t), sweep.Options{WithoutYear: true}, "string.south.a.parallel=1..4/1")
	found := turn(t, r, "limits.pv_short_circuit", "pv_input.main.1")
	if found.Low.Text != "2" || found.High.Text != "3" || r.Axes[0].Between {
		t.Errorf("short-circuit current: %+v", found)
	}
	r = must(t, hut(t), sweep.Options{WithoutYear: true}, "charger.main.settings.passcode_changed=true,false")
	if found = turn(t, r, "limits.passcode", "charger.main"); found.Before != verdict.Meets || found.After != verdict.Breaks || found.High.Text != "false" || len(r.Facts) > 0 {
		t.Errorf("passcode: %+v, facts %v", found, r.Facts)
	}
	r = must(t, hut(t), sweep.Options{WithoutYear: true}, "cable_run.array.south.length=10m,20m,80m")
	if found = turn(t, r, "practice.voltage_drop", "cable_run.array.south"); found.High.Value-found.Low.Value > 0.001 {
		t.Errorf("listed values in order are searched between too: %+v", found)
	}
}

// Two values: the turning point for each of the second, and what turns with the
// second alone.
func TestTwoValues(t *testing.T) {
	r := must(t, hut(t, limited("150 V")), sweep.Options{WithoutYear: true}, "site.coldest=-40degC..0degC/20K", "controller.ridge-85.pv_voltage_max=80V..90V/5V")
	var got []float64
	for i := range r.Turns {
		if r.Turns[i].Rule == "limits.cold_voltage" && r.Turns[i].Axis == 0 {
			got = append(got, r.Turns[i].Met().Value)
		}
	}
	for i, volts := range []float64{80, 85} {
		want := math.Max(25+(volts/(2*37.4)-1)/-0.0026, 25+(volts/(2*36.9)-1)/-0.0027)
		if len(got) != 2 || math.Abs(got[i]-want) > 0.01 {
			t.Errorf("with %g V: %v, want %v", volts, got, want)
		}
	}
	if len(r.Rows) != 9 || !slices.Equal(r.Rows[4].At, []int{1, 1}) {
		t.Errorf("%d rows, the fifth at %v", len(r.Rows), r.Rows[4].At)
	}
	r = must(t, hut(t), sweep.Options{WithoutYear: true}, "site.coldest=-30degC..-20degC/5K", "charger.main.settings.absorption=28V..30V/1V")
	found := turn(t, r, "limits.absorption_ceiling", "charger.main")
	if found.Axis != 1 || found.Other != 0 || math.Abs(found.Met().Value-29.2) > 0.001 {
		t.Errorf("absorption turns with the second value alone: %+v", found)
	}
}

func TestRefusals(t *testing.T) {
	bench := open(t, hut(t))
	for over, want := range map[string]string{
		"site.coldest":                                 "expected ID=FROM..TO/STEP",
		"=1..2/1":                                      "expected ID=FROM..TO/STEP",
		"site.coldst=-40degC..0degC/5K":                `did you mean "site.coldest"?`,
		"site.coldest=-40degC..0degC":                  "found no step",
		"site.coldest=-40V..0degC/5K":                  "expected a temperature",
		"site.coldest=-40degC..0V/5K":                  "expected a temperature",
		"site.coldest=-40..0/5":                        "expected a temperature",
		"site.coldest=-40degC..0degC/5degC":            "expected a temperature difference",
		"site.coldest=-40degC..0degC/0K":               "the step is nought",
		"site.coldest=-40degC..0degC/-5K":              "the step is negative",
		"site.coldest=0degC..-40degC/5K":               "the range runs downward; write -40degC..0degC",
		"site.coldest=0degC..0degC/5K":                 "one value only",
		"site.coldest=-40degC..0degC/0.01K":            "4001 values; at most 500",
		"site.coldest=-40degC..99degC/5K":              "expected -90 degC to 40 degC",
		"string.south.a.parallel=1..4/0.5":             "whole things",
		"string.south.a.parallel=1..4.5/1":             "a whole number",
		"array.south.mounting=flat":                    "open_rack",
		"array.south.mounting=open_rack..roof_flush/1": "no values in order",
		"array.south.mounting=open_rack,open_rack":     "stands twice",
		"pv_input.main.1.voc_cold=1V..2V/1V":           "is computed",
		"controller.ridge-85.bank_voltages=12V":        "is a list",
		"param.practice.voltage_drop_max=0%..2%/1%":    "expected 0.1",
		"param.practice.voltage_drop_max=1V..2V/1V":    "expected a percentage",
		"param.practice.voltage_drop_mx=1%..2%/1%":     `did you mean "param.practice.voltage_drop_max"?`,
		"param.nobody.knows=1%..2%/1%":                 "no codebook in force has the parameter",
		"param.us_2023.none=1%..2%/1%":                 "no codebook in force has the parameter",
		"bank.house.declared.us_2023.ventilated=true":  `no codebook "us_2023" is in force`,
		"bank.hut.declared.us_2023.ventilated=true":    "there is no attribute",
		"cable_run.array.south.size=10AWG..4AWG/1AWG":  "gauges have no even steps",
		"string.south.a.panels.slate-401=1..4/1":       `did you mean "string.south.a.panels.slate-410"?`,
		"string.south.a.panels.slate-410=0..4/1":       "1 to 200",
		"charger.main.controller=x":                    "there is no attribute",
	} {
		if r, err := runOn(t, bench, sweep.Options{WithoutYear: true}, over); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%s: %v, %v; want %q", over, r, err, want)
		}
	}
	const good = "site.coldest=-40degC..0degC/5K"
	for want, c := range map[string]struct {
		over  []string
		facts []string
	}{
		"one value or two":                   {nil, nil},
		"not 3":                              {[]string{good, "site.hottest=20degC..30degC/5K", "site.albedo=0.1..0.2/0.1"}, nil},
		"are the same value":                 {[]string{good, "site.coldest=-20degC..0degC/5K"}, nil},
		`did you mean "system.yearly_yield"`: {[]string{good}, []string{"system.yearly_yeild"}},
		"is a list of values":                {[]string{good}, []string{"controller.ridge-85.bank_voltages"}},
		"points together":                    {[]string{"site.coldest=-40degC..0degC/0.1K", "site.albedo=0.1..0.9/0.1"}, nil},
	} {
		if _, err := runOn(t, bench, sweep.Options{Facts: c.facts, WithoutYear: true}, c.over...); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%v: %v; want %q", c.over, err, want)
		}
	}
	if _, err := run(t, hut(t, [3]string{"hut/hut.design.hcl", `"-27 degC"`, `"-27 V"`}), sweep.Options{}, good); err == nil || !strings.Contains(err.Error(), "has errors") {
		t.Errorf("a design with an error: %v", err)
	}
	ctx, cancel := context.WithCancel(context.Background())
	one, err := sweep.ParseOver(good)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := sweep.Run(ctx, bench, sweep.Options{Over: []sweep.Over{one}, Progress: func(int, int) { cancel() }}); err == nil {
		t.Error("it went on after the end")
	}
}

// A value that the design cannot have is an error of its point, and no verdict is
// said to turn there. What is unknown stays so.
func TestPointsThatCannotBe(t *testing.T) {
	r := must(t, hut(t), sweep.Options{WithoutYear: true}, "site.coldest=20degC..35degC/5K")
	if len(r.Rows[0].Problems) > 0 || len(r.Rows[3].Problems) == 0 || r.Exit() != 2 {
		t.Errorf("above the hottest: %v, exit %d", r.Rows[3].Problems, r.Exit())
	}
	for i := range r.Turns {
		if r.Turns[i].High.Value > 30 {
			t.Errorf("something turns where nothing could be read: %+v", r.Turns[i])
		}
	}
	r = must(t, hut(t, [3]string{panels, "  temp_voc           = \"-0.26 %/K\" # colder means more volts\n", ""}), sweep.Options{Facts: []string{"pv_input.main.1.voc_cold"}, WithoutYear: true}, "site.coldest=-40degC..0degC/20K")
	unproven := slices.ContainsFunc(r.Throughout, func(v verdict.Verdict) bool { return v.Rule == "limits.cold_voltage" && v.Outcome == verdict.Unproven })
	if f := r.Rows[0].Values["pv_input.main.1.voc_cold"]; f.Known || !unproven {
		t.Errorf("without the coefficient: %+v, unproven throughout %v", f, unproven)
	}
	if _, ok := r.Rows[0].Number("pv_input.main.1.voc_cold"); ok {
		t.Error("an unknown has a number")
	}
}

// A rule that needs a year of sun is searched with one.
func TestTurnOfTheYear(t *testing.T) {
	r := must(t, hut(t), sweep.Options{}, "load.kitchen.daily_energy=1kWh..3kWh/0.5kWh")
	found := turn(t, r, "practice.winter_balance", "system")
	if found.Before != verdict.Meets || found.After != verdict.Breaks || found.High.Value-found.Low.Value > r.Axes[0].Tolerance {
		t.Errorf("winter balance: %+v", found)
	}
	again := must(t, hut(t), sweep.Options{Workers: 1}, "load.kitchen.daily_energy=1kWh..3kWh/0.5kWh")
	if diff := cmp.Diff(r.Turns, again.Turns); diff != "" {
		t.Errorf("another answer with one worker:\n%s", diff)
	}
}

// BenchmarkSweep is forty points of one value with all turning points, without and
// with the year.
func BenchmarkSweep(b *testing.B) {
	for _, without := range []bool{true, false} {
		b.Run(fmt.Sprintf("year=%v", !without), func(b *testing.B) {
			texts := hut(b, limited("85 V"))
			b.ReportAllocs()
			for b.Loop() {
				must(b, texts, sweep.Options{WithoutYear: without}, "site.coldest=-40degC..0degC/1K")
			}
		})
	}
}
