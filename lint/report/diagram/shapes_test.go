package diagram_test

import (
	"fmt"
	"strings"
	"testing"

	"stringline/lint"
	"stringline/lint/report/diagram"
)

// parts that the designs of these tests are made of; all figures are made up.
const parts = `
panel "slate-410" {
  pmax     = "410 W"
  voc      = "37.4 V"
  isc      = "13.95 A"
  vmp      = "31.4 V"
  imp      = "13.06 A"
  temp_voc = "-0.26 %/K"
}

controller "ridge-70" {
  kind               = "mppt"
  pv_voltage_max     = "150 V"
  charge_current_max = "70 A"
  pv_inputs          = 2
}

battery "fell-200" {
  chemistry = "lifepo4"
  nominal   = "25.6 V"
  capacity  = "200 Ah"
  bms {
    charge_cutoff = "100 A"
  }
}

inverter "moor-2000" {
  continuous = "2000 W"
  ac_voltage = "230 V"
}

converter "brook-20" {
  output  = "12.5 V"
  current = "20 A"
}
`

const run = `
  cable_run {
    size   = "16 mm2"
    length = "4 m"
  }
`

const device = `
  fuse {
    rating = "40 A"
  }
`

func shed(t testing.TB, text string) *lint.DesignResult {
	t.Helper()
	d := judged(t, map[string]string{"shed/shed.design.hcl": text + parts}, "shed/shed.design.hcl")[0]
	if d.System == nil {
		t.Fatalf("the design could not be read: %v", d.Problems)
	}
	return &d
}

// large makes a system of many arrays, inputs, strings and circuits, on two banks.
func large() string {
	var b strings.Builder
	b.WriteString(`design "Large station" {}` + "\n")
	for _, bank := range []string{"west", "east"} {
		fmt.Fprintf(&b, "bank %q {\n  battery = \"fell-200\"\n  series = 2\n  parallel = 12\n  each {%s}\n  main {%s%s}\n}\n", bank, device, run, device)
		for c := range 3 {
			fmt.Fprintf(&b, "charger \"%s%d\" {\n  controller = \"ridge-70\"\n  bank = %q\n%s%s}\n", bank, c, bank, run, device)
			for a := range 3 {
				fmt.Fprintf(&b, "array \"%s%d%d\" {\n  charger = \"%s%d\"\n  pv_input = %d\n%s%s", bank, c, a, bank, c, 1+a%2, run, device)
				for s := range 3 {
					fmt.Fprintf(&b, "  string \"s%d\" {\n    panels = { \"slate-410\" = 3 }\n    parallel = %d\n%s%s}\n", s, 1+s, run, device)
				}
				b.WriteString("}\n")
			}
		}
		fmt.Fprintf(&b, "charge_source \"shore_%s\" {\n  bank = %q\n%s%s}\n", bank, bank, run, device)
		fmt.Fprintf(&b, "ac_output \"mains_%s\" {\n  inverter = \"moor-2000\"\n  bank = %q\n%s%s}\n", bank, bank, run, device)
		fmt.Fprintf(&b, "supply \"low_%s\" {\n  converter = \"brook-20\"\n  from = \"bank.%s\"\n%s%s}\n", bank, bank, run, device)
		for l := range 14 {
			for kind, from := range map[string]string{"dc": "bank." + bank, "ac": "ac_output.mains_" + bank, "low": "supply.low_" + bank, "terminals": "charger." + bank + "0.load_terminals"} {
				fmt.Fprintf(&b, "load \"%s_%s_%02d\" {\n  from = %q\n  power = \"20 W\"\n%s%s}\n", kind, bank, l, from, run, device)
			}
		}
	}
	return b.String()
}

func TestLarge(t *testing.T) {
	d := shed(t, large())
	if n := len(d.System.Subjects("loads")); n != 112 {
		t.Fatalf("%d loads are in the design, 112 were meant", n)
	}
	sound(t, d)
}

// TestShapes: systems that lack something, or have it twice.
func TestShapes(t *testing.T) {
	bank := "bank \"house\" {\n  battery = \"fell-200\"\n  series = 1\n  parallel = 1\n}\n"
	for name, c := range map[string]struct {
		text string
		says []string
	}{
		"nothing":        {"design \"Empty\" {}\n", []string{"No bank is described", "DC grounded at _____ pole"}},
		"bank alone":     {"design \"Bank\" {}\n" + bank, []string{"Busbar of bank.house"}},
		"no array":       {"design \"No sun\" {}\n" + bank + "charge_source \"engine\" {\n  bank = \"house\"\n" + run + device + "}\n", []string{"charges with _____ A at _____ V"}},
		"idle charger":   {"design \"Idle\" {}\n" + bank + "charger \"main\" {\n  controller = \"ridge-70\"\n  bank = \"house\"\n}\n", []string{"no array feeds it"}},
		"unknown rating": {"design \"Silent\" {}\n" + bank + "load \"lamp\" {\n  from = \"bank.house\"\n  fuse {\n    class = \"T\"\n  }\n  disconnect {\n    poles = 2\n  }\n  cable_run {\n    length = \"2 m\"\n  }\n}\n", []string{"fuse T _____ A, _____ V for DC: _____", "switch _____ A, _____ V for DC: _____, 2 poles", "under load: _____", "2 x _____ mm2 Cu", "carries _____ A, maker's ampacity _____ A"}},
		"left out":       {"design \"Lost\" {}\n" + bank + "load \"lamp\" {\n  from = \"bank.barn\"\n  power = \"5 W\"\n}\n", []string{"NOT DRAWN, for they name what is not there: load.lamp"}},
		"two banks":      {"design \"Two\" {}\n" + bank + strings.Replace(bank, "house", "barn", 1), []string{"Busbar of bank.house", "Busbar of bank.barn"}},
		"AC circuit":     {"design \"AC\" {}\n" + bank + "ac_output \"mains\" {\n  inverter = \"moor-2000\"\n  bank = \"house\"\n}\nload \"oven\" {\n  from = \"ac_output.mains\"\n  breaker {\n    rating = \"16 A\"\n    voltage = \"250 V\"\n  }\n  disconnect {\n    rating = \"20 A\"\n    voltage = \"240 V\"\n    poles = 2\n  }\n}\n", []string{"breaker 16.0 A, 250.0 V, _____ poles", "switch 20.0 A, 240.0 V, 2 poles"}},
		"not for DC":     {"design \"Wrong\" {}\n" + bank + "load \"lamp\" {\n  from = \"bank.house\"\n  breaker {\n    rating = \"16 A\"\n    dc_rated = false\n  }\n  disconnect {\n    rating = \"16 A\"\n    load_break = false\n  }\n}\n", []string{"breaker 16.0 A, _____ V NOT for DC", "NOT to be opened under load"}},
	} {
		t.Run(name, func(t *testing.T) {
			d := shed(t, c.text)
			sound(t, d)
			words := ""
			parsed(t, drawn(t, d, diagram.Narrow())).each(func(e *element) {
				if e.name == "text" {
					words += e.text + " "
				}
			})
			for _, says := range c.says {
				if !strings.Contains(words, says) {
					t.Errorf("the drawing does not say %q: %s", says, words)
				}
			}
		})
	}
}

// TestHostile: names and words that are meant to hurt stay words. Labels that
// enter ids hold nothing but letters, figures, _ and -; they may be long.
func TestHostile(t *testing.T) {
	long := strings.Repeat("a-very-long-name-", 3) + "and-its-end" // labels have 64 letters at most
	d := shed(t, "design \"<script>alert(1)</script> & \\\"quotes\\\" ]]> אבג العربية\" {\n  revision = \"<b>\"\n}\n"+
		"bank \"house\" {\n  battery = \"fell-200\"\n  series = 1\n  parallel = 1\n}\n"+
		"load \""+long+"\" {\n  from = \"bank.house\"\n  power = \"5 W\"\n"+run+device+"}\n")
	sound(t, d)
	drawing := drawn(t, d, diagram.Narrow())
	if strings.Contains(string(drawing), "<script") || strings.Contains(string(drawing), "<b>") {
		t.Error("markup of the design stands in the drawing as markup")
	}
	root := parsed(t, drawing)
	if title := root.child("title").text; !strings.Contains(title, `<script>alert(1)</script> & "quotes" ]]> אבג العربية`) || !strings.Contains(title, "revision <b>") {
		t.Errorf("the title does not read as the design says: %s", title)
	}
	load := root.things()["load."+long]
	if len(load) != 1 || !strings.Contains(load[0].child("title").text, long) {
		t.Fatal("the long name is not whole in its title")
	}
	shown := ""
	load[0].each(func(e *element) {
		if e.name == "text" && e.values["font-weight"] != "" && shown == "" {
			shown = e.text
		}
	})
	if !strings.HasPrefix(shown, "load.a-very") || !strings.HasSuffix(shown, "-end") || !strings.Contains(shown, "…") {
		t.Errorf("the long name is shown as %q: both its ends should be", shown)
	}
}
