package report

import (
	"bytes"
	"context"
	"encoding/csv"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"

	"stringline/lint"
	"stringline/lint/sweep"
)

func sweepOf(t *testing.T, bench *lint.Bench, o sweep.Options, over ...string) *sweep.Result {
	t.Helper()
	for _, text := range over {
		one, err := sweep.ParseOver(text)
		if err != nil {
			t.Fatal(err)
		}
		o.Over = append(o.Over, one)
	}
	r, err := sweep.Run(context.Background(), bench, o)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// hotHut has a controller input that the cold overcomes.
func hotHut(t *testing.T) *lint.Bench {
	return exampleBench(t, "hut", "hut.design.hcl", [3]string{"hut/parts/devices.parts.hcl", `pv_voltage_max       = "150 V"`, `pv_voltage_max       = "85 V"`},
		[3]string{"hut/hut.design.hcl", "    passcode_changed         = true\n", "    passcode_changed         = false\n"})
}

func TestSweepText(t *testing.T) {
	bench := hotHut(t)
	r := sweepOf(t, bench, sweep.Options{WithoutYear: true}, "site.coldest=-40degC..35degC/15K")
	for width, name := range map[int]string{80: "sweep.txt", 40: "sweep-40.txt"} {
		var b bytes.Buffer
		if err := Sweep(&b, r, Page{Width: width}); err != nil {
			t.Fatal(err)
		}
		golden(t, name, b.Bytes())
		for line := range strings.Lines(b.String()) {
			if n := columns(strings.TrimSuffix(line, "\n")); n >= width {
				t.Errorf("at %d columns a line takes %d: %s", width, n, line)
			}
		}
	}
	two := sweepOf(t, bench, sweep.Options{WithoutYear: true}, "site.coldest=-40degC..-20degC/10K", "string.south.a.parallel=1..3/1")
	var b bytes.Buffer
	if err := Sweep(&b, two, Page{}); err != nil {
		t.Fatal(err)
	}
	golden(t, "sweep-two.txt", b.Bytes())
	b.Reset()
	limit := sweepOf(t, bench, sweep.Options{WithoutYear: true}, "param.practice.voltage_drop_max=1%..2%/0.5%")
	if err := Sweep(&b, limit, Page{}); err != nil {
		t.Fatal(err)
	}
	golden(t, "sweep-parameter.txt", b.Bytes())
}

// moving counts the facts whose limit moves.
func moving(r *sweep.Result) int {
	n := 0
	for _, c := range r.Facts {
		if c.LimitMoves {
			n++
		}
	}
	return n
}

// The rounding of a turning point goes to the side on which the rule is met.
func TestTurnText(t *testing.T) {
	r := sweepOf(t, hotHut(t), sweep.Options{WithoutYear: true}, "site.coldest=-40degC..0degC/5K")
	for i := range r.Turns {
		if turn := &r.Turns[i]; turn.Rule == "limits.cold_voltage" {
			// 25 + (85 / 74.8 - 1) / -0.0026 = -27.4476
			if got := TurnText(r, turn); got != "met down to -27.447 degC, breaks below" {
				t.Errorf("it says %q", got)
			}
			return
		}
	}
	t.Error("cold voltage does not turn")
}

func TestSweepMachine(t *testing.T) {
	made, err := SweepSchema()
	schema := freshSchema(t, "../../schema/sweep.schema.json", made, err)
	bench := hotHut(t)
	for _, over := range [][]string{
		{"site.coldest=-40degC..35degC/15K"},
		{"array.south.mounting=open_rack,roof_flush", "string.south.a.parallel=1..3/1"},
		{"charger.main.settings.passcode_changed=true,false"},
		{"param.practice.voltage_drop_max=1%..3%/0.5%"},
	} {
		r := sweepOf(t, bench, sweep.Options{WithoutYear: true}, over...)
		var b bytes.Buffer
		if err := SweepJSON(&b, r, bench.Version(), bench.Date()); err != nil {
			t.Fatal(err)
		}
		doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(b.Bytes()))
		if err != nil {
			t.Fatal(err)
		}
		if err := schema.Validate(doc); err != nil {
			t.Errorf("%v: %v", over, err)
		}
		wrong, err := jsonschema.UnmarshalJSON(bytes.NewReader(bytes.Replace(b.Bytes(), []byte(`"points"`), []byte(`"dots"`), 1)))
		if err != nil || schema.Validate(wrong) == nil {
			t.Errorf("%v: the schema takes a document without points: %v", over, err)
		}
		b.Reset()
		if err := SweepCSV(&b, r); err != nil {
			t.Fatal(err)
		}
		rows, err := csv.NewReader(&b).ReadAll()
		if err != nil || len(rows) != 1+len(r.Rows) || len(rows[0]) != len(r.Axes)+len(r.Facts)+moving(r)+4 {
			t.Errorf("%v: %d rows of %d, %v", over, len(rows), len(r.Rows), err)
		}
		if over[0] == "site.coldest=-40degC..35degC/15K" && (rows[0][0] != "site.coldest [degC]" || rows[1][0] != "-40" || rows[6][0] != "35") {
			t.Errorf("head %v, first %v, last %v", rows[0], rows[1], rows[6])
		}
	}
}
