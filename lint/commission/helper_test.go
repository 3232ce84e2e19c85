package commission_test

import (
	"context"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"

	"stringline/lint"
	"stringline/lint/commission"
	"stringline/lint/facts"
	"stringline/lint/linttest"
	"stringline/rules"
	"stringline/schema/design"
)

// judged runs the whole pipeline over texts by name; the paths are what is judged.
func judged(t testing.TB, texts map[string]string, paths ...string) *lint.Result {
	t.Helper()
	r, err := lint.Run(context.Background(), linttest.Options(rules.Books, texts, paths...))
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// one judges a single design of text.
func one(t testing.TB, text string) *lint.Result {
	t.Helper()
	r := judged(t, map[string]string{"shed/shed.design.hcl": text}, "shed")
	if len(r.Designs) != 1 || len(r.Problems) > 0 {
		t.Fatalf("%d designs, %v", len(r.Designs), r.Problems)
	}
	return r
}

// built is a design as the pipeline has it before any rule judged it.
func built(t testing.TB, text string) *lint.Result {
	t.Helper()
	d := design.Load(design.Options{Files: fstest.MapFS{}, Path: "shed.design.hcl", Text: []byte(text)})
	if len(d.Problems) > 0 {
		t.Fatal(d.Problems)
	}
	return &lint.Result{Date: "2026-11-25", Designs: []lint.DesignResult{{File: "shed.design.hcl", Name: d.Name, Revision: d.Revision, Digest: d.Digest, System: facts.New(d)}}}
}

// examples reads the workshops that ship, codebooks of their own left out: those
// need a process apart.
func examples(t testing.TB) map[string]string {
	t.Helper()
	texts := map[string]string{}
	for _, pattern := range []string{"examples/*/*.hcl", "examples/*/parts/*.hcl"} {
		names, err := filepath.Glob(filepath.Join("../..", pattern))
		if err != nil || len(names) == 0 {
			t.Fatalf("%s: %v", pattern, err)
		}
		for _, name := range names {
			rel, err := filepath.Rel("../..", name)
			if err != nil {
				t.Fatal(err)
			}
			file, err := os.ReadFile(name)
			if err != nil {
				t.Fatal(err)
			}
			texts[filepath.ToSlash(rel)] = string(file)
		}
	}
	return texts
}

// at are conditions in degC and W/m2.
func at(r *lint.Result, celsius, light float64) commission.Conditions {
	kelvin := celsius + 273.15
	return commission.Conditions{CellTemperature: &kelvin, Irradiance: &light, Date: r.Date, Books: r.Books}
}

// unmeasured are conditions that nobody measured.
func unmeasured(r *lint.Result) commission.Conditions {
	return commission.Conditions{Date: r.Date, Books: r.Books}
}

// lineOf finds a line by its key; it must be there.
func lineOf(t testing.TB, p *commission.Plan, key string) *commission.Line {
	t.Helper()
	for i := range p.Sections {
		for j := range p.Sections[i].Lines {
			if l := &p.Sections[i].Lines[j]; l.Key == key {
				return l
			}
		}
	}
	t.Fatalf("no line %s", key)
	return nil
}

// keys lists the keys of all lines.
func keys(p *commission.Plan) []string {
	var all []string
	for i := range p.Sections {
		for j := range p.Sections[i].Lines {
			all = append(all, p.Sections[i].Lines[j].Key)
		}
	}
	return all
}

func near(a, b, tolerance float64) bool {
	return math.Abs(a-b) <= tolerance*math.Max(math.Abs(a), math.Abs(b))
}

// shed is a small system with everything that a plan of a lithium bank needs. Its
// panel is the 200 W multicrystalline module of check value D2.
const shed = `
design "Small shed" {
  revision = "A"
}

site {
  coldest = "-20 degC"
  hottest = "35 degC"
}

panel "multi-200" {
  pmax            = "200.1 W"
  voc             = "32.9 V"
  isc             = "8.21 A"
  vmp             = "26.3 V"
  imp             = "7.61 A"
  temp_voc        = "-0.123 V/K"
  temp_isc        = "0.0032 A/K"
  temp_pmax       = "-0.485 %/K"
  noct            = "47 degC"
  cells           = 54
  technology      = "poly_si"
  max_series_fuse = "15 A"
}

controller "tracker" {
  kind               = "mppt"
  pv_voltage_max     = "100 V"
  charge_current_max = "30 A"
  bank_voltages      = ["12 V", "24 V"]
  full_power_to      = "45 degC"
  efficiency         = "96 %"
}

battery "block" {
  chemistry             = "lifepo4"
  nominal               = "12.8 V"
  capacity              = "100 Ah"
  cells                 = 4
  discharge_voltage_min = "10.8 V"
  charge_current_max    = "50 A"
  short_circuit_current = "2.4 kA"
  bms {
    charge_cutoff = "60 A"
  }
}

bank "house" {
  battery                = "block"
  series                 = 1
  parallel               = 3
  coldest                = "5 degC"
  low_voltage_disconnect = "11.5 V"
}

charger "main" {
  controller = "tracker"
  bank       = "house"
  hottest    = "40 degC"
  settings {
    bank_voltage   = "12 V"
    charge_current = "30 A"
    absorption     = "14.2 V"
    float          = "13.5 V"
    equalize       = false

    temperature_compensation = "0 mV/K"
  }
}

array "roof" {
  charger = "main"
  losses  = "10 %"
  string "a" {
    panels   = { "multi-200" = 2 }
    parallel = 2
  }
  disconnect {
    rating     = "32 A"
    voltage    = "150 V"
    dc_rated   = true
    load_break = true
  }
}

load "lamp" {
  from        = "bank.house"
  power       = "20 W"
  voltage_min = "11 V"
  voltage_max = "15 V"
}
`

// with adds readings to the shed: each "of value unit [celsius [light]]".
func with(readings ...string) string {
	var b strings.Builder
	b.WriteString(shed)
	for i, r := range readings {
		f := strings.Fields(r)
		b.WriteString("\nreading \"r" + string(rune('a'+i)) + "\" {\n  of = \"" + f[0] + "\"\n  value = \"" + f[1] + " " + f[2] + "\"\n")
		if len(f) > 3 {
			b.WriteString("  cell_temperature = \"" + f[3] + " degC\"\n")
		}
		if len(f) > 4 {
			b.WriteString("  irradiance = \"" + f[4] + " W/m2\"\n")
		}
		b.WriteString("}\n")
	}
	return b.String()
}
