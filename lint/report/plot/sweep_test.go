package plot_test

import (
	"bytes"
	"context"
	"encoding/xml"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"

	"stringline/lint/linttest"
	"stringline/lint/report/plot"
	"stringline/lint/sweep"
	"stringline/rules"
)

func hutSweep(t *testing.T, title string, over ...string) *sweep.Result {
	t.Helper()
	texts := linttest.Change(t, linttest.Texts(t, os.DirFS("../../../examples"), "hut"),
		[3]string{"hut/parts/devices.parts.hcl", `pv_voltage_max       = "150 V"`, `pv_voltage_max       = "85 V"`},
		[3]string{"hut/hut.design.hcl", `design "Larch Col hut"`, "design \"" + title + "\""})
	bench := linttest.Bench(t, rules.Books, texts, "hut/hut.design.hcl")
	o := sweep.Options{WithoutYear: true}
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

// What is drawn can be read back: the numbers beside a path are the facts', the
// path goes through them by the ends of the axes, and the turn stands at its value.
func TestSweepReadsBack(t *testing.T) {
	r := hutSweep(t, "A <b> & hut", "site.coldest=-40degC..0degC/5K")
	var b bytes.Buffer
	if err := plot.Sweep(&b, r); err != nil {
		t.Fatal(err)
	}
	decoder := xml.NewDecoder(bytes.NewReader(b.Bytes()))
	panel := map[string]float64{}
	curves, turns, limits := 0, 0, 0
	number := func(text string) float64 {
		v, err := strconv.ParseFloat(text, 64)
		if err != nil {
			t.Errorf("%q is no number", text)
		}
		return v
	}
	for {
		token, err := decoder.Token()
		if err != nil {
			break
		}
		e, ok := token.(xml.StartElement)
		if !ok {
			continue
		}
		at := map[string]string{}
		for _, a := range e.Attr {
			at[a.Name.Local] = a.Value
		}
		if at["data-panel"] != "" {
			for _, name := range []string{"data-x-begin", "data-x-end", "data-y-begin", "data-y-end", "data-left", "data-right", "data-top", "data-bottom"} {
				panel[name] = number(at[name])
			}
		}
		x := func(v float64) float64 {
			return panel["data-left"] + (v-panel["data-x-begin"])/(panel["data-x-end"]-panel["data-x-begin"])*(panel["data-right"]-panel["data-left"])
		}
		y := func(v float64) float64 {
			return panel["data-bottom"] + (v-panel["data-y-begin"])/(panel["data-y-end"]-panel["data-y-begin"])*(panel["data-top"]-panel["data-bottom"])
		}
		switch {
		case at["data-curve"] != "":
			if at["data-curve"] == "limit" {
				limits++
			} else {
				curves++
			}
			xs, ys := strings.Fields(at["data-x"]), strings.Fields(at["data-y"])
			way := strings.FieldsFunc(at["d"], func(r rune) bool { return r == 'M' || r == 'L' })
			if len(xs) != 9 || len(ys) != 9 || len(way) != 9 {
				t.Fatalf("%s: %d, %d, %d points", at["data-fact"], len(xs), len(ys), len(way))
			}
			for i := range xs {
				if want, ok := r.Rows[i].Number(at["data-fact"]); at["data-curve"] == "value" && (!ok || math.Abs(number(ys[i])-want) > 1e-6*math.Abs(want)) {
					t.Errorf("%s at %s: %s drawn, %v is the fact", at["data-fact"], xs[i], ys[i], want)
				}
				px, py, _ := strings.Cut(way[i], " ")
				if math.Abs(number(px)-x(number(xs[i]))) > 0.02 || math.Abs(number(py)-y(number(ys[i]))) > 0.02 {
					t.Errorf("%s: the path is at %s, the numbers are %s and %s", at["data-fact"], way[i], xs[i], ys[i])
				}
			}
		case at["data-turn"] != "":
			turns++
			// 25 + (85 / 74.8 - 1) / -0.0026
			if want := 25 + (85/74.8-1)/-0.0026; math.Abs(number(at["data-x"])-want) > 0.01 || !strings.HasPrefix(at["d"], "M"+strconv.FormatFloat(math.Round(x(want)*100)/100, 'f', -1, 64)[:4]) {
				t.Errorf("the turn stands at %s (%s), want %v", at["data-x"], at["d"], want)
			}
		}
	}
	if curves < 3 || turns != 1 || limits < 1 {
		t.Errorf("%d curves, %d turns, %d limits", curves, turns, limits)
	}
	for _, want := range []string{"<title", "<desc", "A &lt;b&gt; &amp; hut", "prefers-color-scheme", "met down to -27.447 degC"} {
		if !strings.Contains(b.String(), want) {
			t.Errorf("%q is not in the picture", want)
		}
	}
}

func TestSweepOfTwoAndOfWords(t *testing.T) {
	var b bytes.Buffer
	if err := plot.Sweep(&b, hutSweep(t, "hut", "site.coldest=-40degC..0degC/10K", "string.south.a.parallel=1..6/1")); err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{`data-curve="1"`, `data-curve="6"`, `class="line dash"`, `class="line chain"`} {
		if !strings.Contains(b.String(), want) {
			t.Errorf("%s is not in the picture", want)
		}
	}
	if strings.Contains(b.String(), `data-curve="5"`) {
		t.Error("more lines than can be told apart")
	}
	if err := plot.Sweep(&b, hutSweep(t, "hut", "array.south.mounting=open_rack,roof_flush")); err == nil || !strings.Contains(err.Error(), "no values in rising order") {
		t.Errorf("words are drawn: %v", err)
	}
}
