package design_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/schema/design"
	"stringline/schema/source"
)

// TestProblems holds every class of problem at its place. The text of a case
// follows the line `design "t" {}`, so its first line is line 2.
func TestProblems(t *testing.T) {
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"nothing wrong", `panel "a" { voc = "37.4 V" }`, nil},

		// Quantities.
		{"bare number", `panel "a" { voc = 37.4 }`,
			[]string{`2:19: voc: expected a voltage (V), found the bare number 37.4, which has no unit; write it with its unit and in quotes, such as "37.4 V"`}},
		{"another dimension", `panel "a" { voc = "37.4 A" }`, []string{`2:19: voc: expected a voltage (V), found a current, "37.4 A"`}},
		{"difference for temperature", `site { coldest = "-27 K" }`,
			[]string{`2:18: coldest: expected a temperature (degC), found a temperature difference, "-27 K"; a temperature is written in degC or degF, a temperature difference in K`}},
		{"percent as a share", `array "a" {
  charger = "m"
  losses  = 0.03
}`, []string{
			`2:1: an array without a string`,
			`3:13: charger: there is no charger "m"`,
			`4:13: losses: expected a percentage (%), found the bare number 0.03, which has no unit; write it with its unit and in quotes, such as "0.03 %"`,
		}},
		{"out of range", `panel "a" { voc = "37400 V" }`, []string{`2:19: voc: expected more than 0 V, at most 200 V, found "37400 V"`}},
		{"zero where it cannot be", `panel "a" { voc = "0 V" }`, []string{`2:19: voc: expected more than 0 V, at most 200 V, found "0 V"`}},
		{"at the end of the range", `panel "a" { voc = "200 V" }`, nil},
		{"at the end, in another unit", `panel "a" { voc = "0.2 kV" }`, nil},
		{"just past the end", `panel "a" { voc = "200.001 V" }`, []string{`2:19: voc: expected more than 0 V, at most 200 V, found "200.001 V"`}},
		{"inf", `panel "a" { voc = "inf V" }`, []string{`2:19: voc: expected a number and a unit, such as "37.4 V", found "inf V"; a finite number is due`}},
		{"1p4", `panel "a" { voc = "1p4 V" }`, []string{`2:19: voc: expected a number and a unit, such as "37.4 V", found "1p4 V"; decimal digits only`}},
		{"decimal comma", `panel "a" { voc = "37,4 V" }`, []string{`2:19: voc: expected a number and a unit, such as "37.4 V", found "37,4 V"; a decimal point is written as ".": "37.4"`}},
		{"yes for a quantity", `panel "a" { voc = true }`, []string{`2:19: voc: expected a voltage (V), found true`}},
		{"coefficient per volt out of range", `panel "a" {
  voc      = "40 V"
  temp_voc = "-1.2 V/K"
}`, []string{`4:14: temp_voc: expected -2 %/K to 1 %/K, found -1.2 V/K, which is -3.00 %/K`}},
		{"coefficient per volt in range", "panel \"a\" {\n  voc = \"40 V\"\n  temp_voc = \"-0.8 V/K\"\n}", nil},
		{"wrong sign of compensation", `charger "m" {
  controller = "c"
  bank       = "b"
  settings { temperature_compensation = "3 mV/K" }
}
controller "c" {}
bank "b" {
  battery  = "x"
  series   = 1
  parallel = 1
}
battery "x" {}`, []string{`5:41: temperature_compensation: expected -0.01 V/K to 0 V/K, found "3 mV/K"`}},

		// Numbers and counts.
		{"count in quotes", `panel "a" { cells = "54" }`, []string{`2:21: cells: expected a whole number, found the text "54"; write the number without quotes`}},
		{"fraction of a count", `panel "a" { cells = 54.5 }`, []string{`2:21: cells: expected a whole number, found 54.5`}},
		{"zero count", `panel "a" { cells = 0 }`, []string{`2:21: cells: expected 1 to 600, found 0`}},
		{"negative count", `panel "a" { cells = -4 }`, []string{`2:21: cells: expected 1 to 600, found -4`}},

		// Words, yes and no, dates, texts.
		{"word with a near one", `controller "a" { kind = "mptt" }`, []string{`2:25: kind: expected one of "mppt", "pwm", found "mptt" (did you mean "mppt"?)`}},
		{"word in capitals", `controller "a" { kind = "MPPT" }`, []string{`2:25: kind: expected one of "mppt", "pwm", found "MPPT" (did you mean "mppt"?)`}},
		{"yes in quotes", `controller "a" { isolated = "true" }`, []string{`2:29: isolated: expected true or false, without quotes, found the text "true"`}},
		{"number for a word", `controller "a" { kind = 1 }`, []string{`2:25: kind: expected one of "mppt", "pwm", found the bare number 1`}},

		// Names.
		{"unknown attribute", `panel "a" { vco = "37.4 V" }`, []string{`2:13: unknown attribute "vco" of panel (did you mean "voc"?)`}},
		{"unknown block", `panle "a" {}`, []string{`2:1: unknown block "panle" in the top level of a design (did you mean "panel"?)`}},
		{"capital label", `panel "Slate" {}`, []string{`2:7: the name "Slate" of a panel: expected small letters, digits, - and _, at most 64 (did you mean "slate"?)`}},
		{"label with a letter of another script", `panel "sl` + "а" + `te" {}`,
			[]string{`2:7: the name "slаte" of a panel: expected small letters, digits, - and _, at most 64: the letter 'а' (U+0430) is not one of a to z`}},
		{"no label", `panel {}`, []string{`2:1: a panel block has one label, its name in quotes`}},
		{"two labels", `panel "a" "b" {}`, []string{`2:1: a panel block has one label, its name in quotes`}},
		{"label that is not due", `site "hut" {}`, []string{`2:6: a site block has no label`}},
		{"block for an attribute", `panel "a" {
  voc {}
}`, []string{`3:3: voc is an attribute of panel: write voc = …`}},
		{"attribute for a block", `battery "a" { bms = 1 }`, []string{`2:15: bms is a block: write bms { … } without the equals sign`}},
		{"block in a wrong place", "main {}\n", []string{`2:1: a main block does not stand in the top level of a design; it stands in bank`}},
		{"attribute in no block", `coldest = "-27 degC"`, []string{`2:1: coldest stands in no block`}},
		{"later language, block", `wind_turbine "a" {}`, []string{`2:1: wind_turbine: wind turbines are not part of the language yet`}},
		{"later language, attribute", `array "a" {
  seasonal_tilt = "60 deg"
}`, []string{`2:1: an array without a string`, `2:1: charger is missing: the charger that it feeds`,
			`3:3: seasonal_tilt: tilt that changes with the season is not part of the language yet`}},

		// Twice.
		{"attribute twice", "panel \"a\" {\n  voc = \"37 V\"\n  voc = \"38 V\"\n}", []string{`4:3: voc is given twice in one block`}},
		{"part twice", "panel \"a\" {}\npanel \"a\" {}", []string{`3:1: panel "a" is declared twice, first at a.design.hcl:2:1`}},
		{"site twice", "site {}\nsite {}", []string{`3:1: a second site block in the top level of a design, the first is at a.design.hcl:2:1`}},
		{"panel twice in one string", `array "a" {
  charger = "m"
  string "s" { panels = { "p" = 2, "p" = 3 } }
}`, []string{`3:13: charger: there is no charger "m"`, `4:36: "p" stands twice in one object, first at a.design.hcl:4:27`}},
		{"fuse and breaker", `load "l" {
  from = "bank.b"
  fuse {}
  breaker {}
}
bank "b" {
  battery  = "x"
  series   = 1
  parallel = 1
}
battery "x" {}`, []string{`5:3: a breaker beside a fuse: a run has one protection, the first is at a.design.hcl:4:3`}},
	} {
		t.Run(c.name, func(t *testing.T) {
			d := load(t, "design \"t\" {}\n"+c.text)
			if diff := cmp.Diff(c.want, shown(d.Problems)); diff != "" {
				t.Errorf("problems (-want +got):\n%s", diff)
			}
			for _, p := range d.Problems {
				if p.Kind == "" || !p.At.Valid() {
					t.Errorf("problem without kind or place: %+v", p)
				}
			}
		})
	}
}

// whole is a small design without problems; a test adds to it.
const whole = `design "t" {}
bank "house" {
  battery  = "cell"
  series   = 1
  parallel = 2
}
battery "cell" {}
controller "c2" { pv_inputs = 2 }
charger "main" {
  controller = "c2"
  bank       = "house"
}
panel "p" {}
array "south" {
  charger = "main"
  string "a" { panels = { p = 2 } }
}
inverter "i" {}
ac_output "cabin" {
  inverter = "i"
  bank     = "house"
}
converter "k" {}
supply "twelve" {
  converter = "k"
  from      = "bank.house"
}
cable "welding-35" { size = "35 mm2" }
fuse "t-200" {
  rating = "200 A"
  class  = "T"
}
`

// TestReferences: the text of a case follows whole; places are lines after it.
func TestReferences(t *testing.T) {
	first := strings.Count(whole, "\n")
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"nothing wrong", "", nil},
		{"near name of a bank", `charge_source "e" { bank = "hous" }`, []string{`1:28: bank: there is no bank "hous" (did you mean "house"?)`}},
		{"near name of a part", `ac_output "b" {
  inverter = "j"
  bank     = "house"
}`, []string{`2:14: inverter: there is no inverter "j"`}},
		{"load on a bank", `load "l" { from = "bank.house" }`, nil},
		{"load on an output", `load "l" { from = "ac_output.cabin" }`, nil},
		{"load on a supply", `load "l" { from = "supply.twelve" }`, nil},
		{"load on load terminals", `load "l" { from = "charger.main.load_terminals" }`, nil},
		{"load on a charger", `load "l" { from = "charger.main" }`,
			[]string{`1:19: from: expected bank.NAME, ac_output.NAME, supply.NAME or charger.NAME.load_terminals, found "charger.main" (did you mean "charger.main.load_terminals"?)`}},
		{"load on a bare name", `load "l" { from = "house" }`, []string{`1:19: from: expected bank.NAME, ac_output.NAME, supply.NAME or charger.NAME.load_terminals, found "house"`}},
		{"load on a misspelt kind", `load "l" { from = "bnak.house" }`,
			[]string{`1:19: from: expected bank.NAME, ac_output.NAME, supply.NAME or charger.NAME.load_terminals, found "bnak.house" (did you mean "bank.house"?)`}},
		{"load on an output that is not there", `load "l" { from = "ac_output.cabine" }`, []string{`1:19: from: there is no ac_output "cabine" (did you mean "cabin"?)`}},
		{"supply on a supply", "supply \"b\" {\n  converter = \"k\"\n  from = \"supply.twelve\"\n}", []string{`3:10: from: a supply hangs on a bank, not on supply.twelve`}},
		{"supplies in a circle", "supply \"b\" {\n  converter = \"k\"\n  from = \"supply.c\"\n}\nsupply \"c\" {\n  converter = \"k\"\n  from = \"supply.b\"\n}",
			[]string{`3:10: from: the supplies feed each other in a circle: supply.b <- supply.c <- supply.b`, `7:10: from: the supplies feed each other in a circle: supply.c <- supply.b <- supply.c`}},
		{"input that is there", "array \"b\" {\n  charger = \"main\"\n  pv_input = 2\n  string \"s\" { panels = { p = 1 } }\n}", nil},
		{"input that is not there", "array \"b\" {\n  charger = \"main\"\n  pv_input = 3\n  string \"s\" { panels = { p = 1 } }\n}",
			[]string{`3:14: pv_input: controller "c2" has no input 3; its pv_inputs is 2 (a.design.hcl:8:31)`}},
		{"string without panels", "array \"b\" {\n  charger = \"main\"\n  string \"s\" { panels = {} }\n}",
			[]string{`3:25: panels: expected panels and how many of each in series, such as { "name" = 2 }, found a string without panels`}},
		{"no panels at all", "array \"b\" {\n  charger = \"main\"\n  string \"s\" {}\n}", []string{`3:3: panels is missing: which panels, and how many of each in series`}},
		{"zero panels", "array \"b\" {\n  charger = \"main\"\n  string \"s\" { panels = { p = 0 } }\n}", []string{`3:31: panels: expected 1 to 200, found 0`}},
		{"unknown panel", "array \"b\" {\n  charger = \"main\"\n  string \"s\" { panels = { q = 1 } }\n}", []string{`3:27: panels: there is no panel "q"`}},
		{"part named in a run", "load \"l\" {\n  from = \"bank.house\"\n  cable_run {\n    cable  = \"welding-35\"\n    length = \"2 m\"\n  }\n}", nil},
		{"part beside what it gives", "load \"l\" {\n  from = \"bank.house\"\n  cable_run {\n    cable = \"welding-35\"\n    size = \"25 mm2\"\n  }\n}",
			[]string{`5:5: size is given here and by cable "welding-35" at a.design.hcl:28:22; beside the name of a part stands only what the part leaves out`}},
		{"unknown part in a fuse", "load \"l\" {\n  from = \"bank.house\"\n  fuse { fuse = \"t-20\" }\n}", []string{`3:17: fuse: there is no fuse "t-20" (did you mean "t-200"?)`}},
		{"distance in a data sheet", `fuse "x" { distance = "0.2 m" }`, []string{`1:12: distance says how a fuse is placed in a circuit; it does not belong into its data sheet`}},
		{"label on a placed fuse", "load \"l\" {\n  from = \"bank.house\"\n  fuse \"t-200\" {}\n}", []string{`3:8: a fuse in a circuit has no label; write fuse = "t-200" inside it to name a part`}},
		{"hotter than hottest", "site {\n  coldest = \"40 degC\"\n  hottest = \"29 degC\"\n}", []string{`2:13: coldest, 40 degC, is above hottest, 29 degC`}},
		{"as hot as hottest", "site {\n  coldest = \"29 degC\"\n  hottest = \"29 degC\"\n}", nil},
		{"hours and energy", "load \"l\" {\n  from = \"bank.house\"\n  daily_energy = \"100 Wh\"\n  hours_per_day = 2\n}",
			[]string{`4:3: hours_per_day beside daily_energy (at a.design.hcl:35:3): a load gives its hours or its energy, not both`}},
		{"clock hours", "load \"l\" {\n  from = \"bank.house\"\n  between = [\"18 h\", \"23 h\"]\n}", nil},
		{"one clock hour", "load \"l\" {\n  from = \"bank.house\"\n  between = [\"18 h\"]\n}", []string{`3:13: between: expected 2 values, found 1`}},
		{"eleven months", "load \"l\" {\n  from = \"bank.house\"\n  months = [1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1]\n}", []string{`3:12: months: expected 12 values, found 11`}},

		// Readings and waivers.
		{"reading", "reading \"r\" {\n  of = \"string.south.a.voc\"\n  value = \"72 V\"\n}", nil},
		{"reading of an input", "reading \"r\" {\n  of = \"pv_input.main.1.isc\"\n  value = \"12 A\"\n}", nil},
		{"reading of one string of batteries", "reading \"r\" {\n  of = \"bank.house.each.voltage\"\n  value = \"26.5 V\"\n}", nil},
		{"reading of a string of batteries as of panels", "reading \"r\" { of = \"bank.house.each.voc\" }", []string{"1:20: of: voc is measured on strings, arrays and PV inputs; on a bank power, voltage or current"}},
		{"reading of nothing", "reading \"r\" { of = \"string.south.b.voc\" }", []string{`1:20: of: there is no "string.south.b" in this design (did you mean "string.south.a"?)`}},
		{"reading of a misspelt quantity", "reading \"r\" { of = \"string.south.a.vocc\" }",
			[]string{`1:20: of: expected a subject and what was measured, such as string.south.a.voc, found "string.south.a.vocc" (did you mean "string.south.a.voc"?)`}},
		{"reading without a quantity", "reading \"r\" { of = \"bank\" }", []string{`1:20: of: expected a subject and what was measured, such as string.south.a.voc, found "bank"`}},
		{"open circuit of a bank", "reading \"r\" { of = \"bank.house.voc\" }", []string{`1:20: of: voc is measured on strings, arrays and PV inputs; on a bank power, voltage or current`}},
		{"reading in a wrong unit", "reading \"r\" {\n  of = \"string.south.a.voc\"\n  value = \"72 A\"\n}", []string{`3:11: value: voc is a voltage (V), found a current, "72 A"`}},
		{"waiver", "waiver \"practice.x\" {\n  on = [\"bank.house\"]\n  reason = \"r\"\n  expires = \"2028-02-29\"\n}", nil},
		{"30 February", "waiver \"practice.x\" {\n  on = [\"bank.house\"]\n  reason = \"r\"\n  expires = \"2027-02-30\"\n}",
			[]string{`4:13: expires: expected a day of the calendar, such as "2026-05-02", found "2027-02-30"; there is no such day`}},
		{"29 February", "waiver \"practice.x\" {\n  on = [\"bank.house\"]\n  reason = \"r\"\n  expires = \"2027-02-29\"\n}",
			[]string{`4:13: expires: expected a day of the calendar, such as "2026-05-02", found "2027-02-29"; there is no such day`}},
		{"empty reason", "waiver \"practice.x\" {\n  on = [\"bank.house\"]\n  reason = \" \"\n  expires = \"2027-02-27\"\n}",
			[]string{`3:12: reason: expected a text, found an empty one; leave the attribute out where there is nothing to say`}},
		{"no end", "waiver \"practice.x\" {\n  on = [\"bank.house\"]\n  reason = \"r\"\n}", []string{`1:1: expires is missing: the last day on which it holds`}},
		{"on nothing", "waiver \"practice.x\" {\n  on = []\n  reason = \"r\"\n  expires = \"2027-02-27\"\n}", []string{`2:8: on: expected a list, found an empty one`}},
		{"no rule id", "waiver \"practice\" {\n  on = [\"bank.house\"]\n  reason = \"r\"\n  expires = \"2027-02-27\"\n}",
			[]string{`1:8: the name "practice" of a waiver: expected a rule id, such as codebook.rule`}},
		{"two for one rule and subject", "waiver \"practice.x\" {\n  on = [\"bank.house\", \"bank.shed\"]\n  reason = \"r\"\n  expires = \"2027-02-27\"\n}\nwaiver \"practice.x\" {\n  on = [\"bank.shed\"]\n  reason = \"r\"\n  expires = \"2027-02-27\"\n}",
			[]string{`7:9: practice.x on bank.shed has a waiver already, at a.design.hcl:34:23`}},
		{"two for one rule", "waiver \"practice.x\" {\n  on = [\"bank.house\"]\n  reason = \"r\"\n  expires = \"2027-02-27\"\n}\nwaiver \"practice.x\" {\n  on = [\"bank.shed\"]\n  reason = \"r\"\n  expires = \"2027-02-27\"\n}", nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			d := load(t, whole+c.text)
			var got []string
			for _, p := range d.Problems {
				p.At.Start.Line -= first
				got = append(got, shown(source.Problems{p})...)
			}
			if diff := cmp.Diff(c.want, got); diff != "" {
				t.Errorf("problems (-want +got):\n%s", diff)
			}
		})
	}
}

// A value that was written but could not be read is Bad, and no default takes
// its place.
func TestBadValues(t *testing.T) {
	d := load(t, strings.Replace(whole, "charger = \"main\"", "charger = \"main\"\n  losses = \"8 V\"", 1))
	v, ok := d.Find("array", "south").Value("losses")
	if !ok || !v.Bad {
		t.Errorf("losses: given %v, %+v; want it given and bad", ok, v)
	}
	d = load(t, strings.Replace(whole, "bank       = \"house\"", "bank       = \"huse\"", 1))
	if v, ok := d.Find("charger", "main").Value("bank"); !ok || !v.Bad {
		t.Error("a reference that names nothing is not bad")
	}
	if d.Refers(d.Find("charger", "main"), "bank") != nil {
		t.Error("a reference that names nothing leads somewhere")
	}
}

func TestDefaults(t *testing.T) {
	run := func(size string) *design.Block {
		d := load(t, whole+"load \"l\" {\n  from = \"bank.house\"\n  cable_run {\n"+size+"  }\n}\n")
		return d.Find("load", "l").Child("cable_run")
	}
	for _, c := range []struct {
		size, attribute, want string
		ok                    bool
	}{
		{"size = \"6 mm2\"\n", "strand", "class_5", true},
		{"size = \"10 AWG\"\n", "strand", "class_2", true},
		{"size = \"250 kcmil\"\n", "strand", "class_2", true},
		{"cable = \"welding-35\"\n", "strand", "class_5", true},
		{"", "strand", "", false}, // the default hangs on an unknown size
		{"size = \"6 V\"\n", "strand", "", false},
		{"", "material", "Cu", true},
		{"", "terminal_temperature", "60 degC", true},
		{"", "per_pole", "1", true},
		{"", "insulation", "", false},
		{"", "length", "", false},
		{"", "no_such", "", false},
	} {
		got, ok := run(c.size).Default(c.attribute)
		if got != c.want || ok != c.ok {
			t.Errorf("%q: default of %s = %q, %v; want %q, %v", c.size, c.attribute, got, ok, c.want, c.ok)
		}
	}
}

// A name that cannot be used is one problem, not one more for each reference;
// names that differ only by case do not both get in.
func TestRefusedNameIsToldOnce(t *testing.T) {
	d := load(t, "design \"t\" {}\nbank \"House\" {}\ncharge_source \"e\" { bank = \"House\" }\n")
	var labels []string
	for _, p := range d.Problems {
		if p.Kind != "missing" {
			labels = append(labels, shown(source.Problems{p})...)
		}
	}
	want := []string{`2:6: the name "House" of a bank: expected small letters, digits, - and _, at most 64 (did you mean "house"?)`}
	if diff := cmp.Diff(want, labels); diff != "" {
		t.Errorf("problems (-want +got):\n%s", diff)
	}
	if d.Find("bank", "House") != nil {
		t.Error("a bank whose name cannot enter ids is in the design")
	}
	if v, _ := d.Find("charge_source", "e").Value("bank"); !v.Bad {
		t.Error("a reference to it is not bad")
	}
}
