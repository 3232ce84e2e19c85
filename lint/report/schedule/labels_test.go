package schedule_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"stringline/lint"
	"stringline/lint/report/schedule"
	"stringline/schema/quantity"
)

func find(labels []schedule.Label, source, about string) (schedule.Label, bool) {
	i := slices.IndexFunc(labels, func(l schedule.Label) bool {
		return strings.Contains(l.Source, source) && (about == "" || l.About == about)
	})
	if i < 0 {
		return schedule.Label{}, false
	}
	return labels[i], true
}

// TestLabelsUnitedStates holds the ranch's labels to its facts and to the articles
// that the project's notes list for the 2023 code.
func TestLabelsUnitedStates(t *testing.T) {
	d := example(t, "ranch/ranch.design.hcl")
	labels := schedule.Labels(d)
	for _, c := range []struct {
		source, about, place string
		facts                map[string]string // unit by fact: what the label must say
	}{
		{"690.7(D)", "array.south", "disconnect.array.south", map[string]string{"pv_input.main.1.voc_cold": "V"}},
		{"690.13(B)", "array.south", "disconnect.array.south", nil},
		{"690.31(D)(2)", "cable_run.array.south", "every 3 m", nil},
		{"690.12(D)", "system", "", map[string]string{"array.south.declared.us_2023.shutdown_voltage_outside": "V", "array.south.declared.us_2023.shutdown_voltage_inside": "V"}},
		{"706.15(C)", "bank.house", "disconnect.bank.house", map[string]string{"bank.house.nominal": "V", "bank.house.short_circuit_current": "A"}},
		{"710.10", "system", "", map[string]string{"array.south.voc_cold": "V", "bank.house.voltage_max": "V", "charge_source.engine.charge_voltage": "V"}},
		{"110.22(A)", "disconnect.bank.house", "", map[string]string{"disconnect.bank.house.rating": "A"}},
	} {
		l, ok := find(labels, c.source, c.about)
		if !ok {
			t.Errorf("no label by %s at %s", c.source, c.about)
			continue
		}
		if !strings.Contains(l.Place, c.place) || l.Book != "us_2023" || !strings.Contains(l.Source, "2023") || l.Read == "" {
			t.Errorf("%s: %+v", c.source, l)
		}
		for id, unit := range c.facts {
			f, ok := d.System.Fact(id)
			if !ok || !strings.Contains(strings.Join(l.Lines, " "), quantity.Format(f.SI, unit)) {
				t.Errorf("%s does not say %s: %q", c.source, id, l.Lines)
			}
			if !slices.ContainsFunc(l.Values, func(e schedule.Entry) bool { return slices.Contains(e.Facts, id) }) {
				t.Errorf("%s does not name %s as its value", c.source, id)
			}
		}
	}
	// What the code asks for, practice need not ask for again.
	for _, l := range labels {
		if l.Book == "" && strings.Contains(strings.Join(l.Lines, " "), "live in daylight") {
			t.Errorf("the PV voltage stands twice: %+v", l)
		}
	}
	// Its feed is no split panel: no warning about multiwire circuits.
	if l, ok := find(labels, "710.15(C)", ""); ok {
		t.Errorf("not due: %+v", l)
	}
}

// TestLabelsOfPractice: where no code is in force, item 10 of the commissioning
// sheet: highest PV voltage, bank short-circuit current, shut-down order.
func TestLabelsOfPractice(t *testing.T) {
	for _, d := range examples(t) {
		if slices.ContainsFunc(d.Books, func(b string) bool { return b == "us_2023" }) {
			continue
		}
		text := ""
		for _, l := range schedule.Labels(&d) {
			if l.Book != "" || l.Source != "common practice" {
				t.Errorf("%s: %+v", d.File, l)
			}
			text += strings.Join(l.Lines, "\n") + "\n"
		}
		for _, id := range []string{"pv_inputs voc_cold V", "banks short_circuit_current A"} {
			collection, fact, unit := "", "", ""
			if _, err := fmt.Sscan(id, &collection, &fact, &unit); err != nil {
				t.Fatal(err)
			}
			for _, s := range d.System.Subjects(collection) {
				if f, _ := d.System.Fact(s.ID() + "." + fact); f.Known && !strings.Contains(text, quantity.Format(f.SI, unit)) {
					t.Errorf("%s: no label says %s.%s", d.File, s.ID(), fact)
				}
			}
		}
		loads, bank := strings.Index(text, "1. loads and inverters off"), strings.Index(text, "bank off, last")
		arrays := strings.Index(text, "2. arrays off")
		if loads < 0 || arrays < loads || bank < arrays {
			t.Errorf("%s: the order of shutting down is not loads, arrays, bank: %s", d.File, text)
		}
	}
}

// site makes a design with one bank in a place, under a code.
func site(book, place, bank string) string {
	where := ""
	if place != "" {
		where = fmt.Sprintf("site {\n  place = %q\n}\n", place)
	}
	return fmt.Sprintf("design \"Place\" {\n  codebooks = [%q]\n}\n%s%s\nbank \"house\" {\n  battery = \"cell\"\n  series = 1\n  parallel = 1\n}\n", book, where, bank)
}

func books(d *lint.DesignResult) map[string]int {
	count := map[string]int{}
	for _, l := range schedule.Labels(d) {
		count[l.Book]++
	}
	return count
}

// TestLabelsByPlace: a code asks for labels where it applies, and says so where
// the design does not tell.
func TestLabelsByPlace(t *testing.T) {
	const cell = "battery \"cell\" {\n  chemistry = \"lifepo4\"\n  nominal = \"12.8 V\"\n  capacity = \"200 Ah\"\n}\n"
	cases := []struct {
		book, place string
		due         bool
	}{
		{"us_2023", "building", true}, {"us_2023", "vehicle", true}, {"us_2023", "boat", false}, {"us_2023", "", true},
		{"iec", "ground", true}, {"iec", "boat", false}, {"iec", "vehicle", false}, {"iec", "", true},
		{"marine", "boat", true}, {"marine", "building", false}, {"marine", "", true},
		{"vehicle", "vehicle", true}, {"vehicle", "boat", false}, {"vehicle", "", true},
	}
	var texts []string
	for _, c := range cases {
		texts = append(texts, site(c.book, c.place, cell))
	}
	for i, d := range sheds(t, texts) {
		c := cases[i]
		if got := books(&d)[c.book] > 0; got != c.due {
			t.Errorf("%s at %q: labels %v, due %v", c.book, c.place, got, c.due)
		}
		for _, l := range schedule.Labels(&d) {
			if open := strings.Contains(l.If, "site.place"); l.Book != "" && open != (c.place == "") {
				t.Errorf("%s at %q: due if %q", c.book, c.place, l.If)
			}
		}
	}
}

// TestLabelEdges holds the thresholds on both sides.
func TestLabelEdges(t *testing.T) {
	cell := func(nominal, capacity string) string {
		return fmt.Sprintf("battery \"cell\" {\n  chemistry = \"lifepo4\"\n  nominal = %q\n  capacity = %q\n}\n", nominal, capacity)
	}
	engine := func(volts string) string {
		return fmt.Sprintf("charge_source \"engine\" {\n  bank = \"house\"\n  charge_current = \"20 A\"\n  charge_voltage = %q\n}\n", volts)
	}
	cases := []struct {
		name, text, source, says string
		due                      bool
	}{
		// NEC article 706: more than 1 kWh. 12.8 V x 78 Ah is 998 Wh, the edge that
		// the notes name; 10 V x 100 Ah is 1000 Wh exactly.
		{"998 Wh", site("us_2023", "building", cell("12.8 V", "78 Ah")), "706.15(C)", "", false},
		{"1000 Wh", site("us_2023", "building", cell("10 V", "100 Ah")), "706.15(C)", "", false},
		{"1011 Wh", site("us_2023", "building", cell("12.8 V", "79 Ah")), "706.15(C)", "", true},
		{"energy unknown", site("us_2023", "building", "battery \"cell\" {\n  nominal = \"12.8 V\"\n}\n"), "706.15(C)", "1 kWh", true},
		// IEC: above 60 V DC a bank's voltage is dangerous (62485-2 and 60364-4-41,
		// from memory); exactly 60 V is not above it. The charge source sets the
		// voltage on the bus.
		{"60 V", site("iec", "building", cell("51.2 V", "100 Ah")) + engine("60 V"), "62485-2", "DANGEROUS VOLTAGE", false},
		{"60.1 V", site("iec", "building", cell("51.2 V", "100 Ah")) + engine("60.1 V"), "62485-2", "DANGEROUS VOLTAGE", true},
	}
	var texts []string
	for _, c := range cases {
		texts = append(texts, c.text)
	}
	for i, d := range sheds(t, texts) {
		c := cases[i]
		l, found := find(schedule.Labels(&d), c.source, "bank.house")
		if got := found && strings.Contains(strings.Join(append(l.Lines, l.If), " "), c.says); got != c.due {
			t.Errorf("%s: %v %q, if %q; due: %v", c.name, found, l.Lines, l.If, c.due)
		}
	}
}

// TestLabelsUnknown: a value that is unknown is an empty entry in the label.
func TestLabelsUnknown(t *testing.T) {
	d := shed(t, site("us_2023", "building", "battery \"cell\" {\n  nominal = \"51.2 V\"\n  capacity = \"100 Ah\"\n}\n"))
	l, ok := find(schedule.Labels(d), "706.15(C)", "bank.house")
	if !ok || !strings.Contains(strings.Join(l.Lines, " "), "AVAILABLE FAULT CURRENT _____ A") || !strings.Contains(l.Place, "where bank.house is switched off: _____") {
		t.Errorf("%v %+v", ok, l)
	}
	if says := l.Cells()[2]; len(says.Missing) == 0 {
		t.Error("the label does not say what to supply")
	}
}

// TestLabelsOfAC: behind an inverter a device's voltage is not of direct current.
func TestLabelsOfAC(t *testing.T) {
	d := shed(t, `
design "AC" {}

battery "cell" {
  nominal = "12.8 V"
}

inverter "i" {
  ac_voltage = "230 V"
}

bank "house" {
  battery  = "cell"
  series   = 1
  parallel = 1
}

ac_output "mains" {
  inverter = "i"
  bank     = "house"
  fuse {
    rating = "100 A"
    class  = "T"
  }
}

load "oven" {
  from = "ac_output.mains"
  breaker {
    rating  = "16 A"
    voltage = "250 V"
  }
}
`)
	for about, says := range map[string]string{"protection.load.oven": "16.0 A, 250.0 V AC", "protection.ac_output.mains": "replace with class T, 100.0 A, _____ V DC, interrupting _____ A alone"} {
		if l, ok := find(schedule.Labels(d), "common practice", about); !ok || !slices.Contains(l.Lines, says) {
			t.Errorf("%s: %v %q, want %q", about, ok, l.Lines, says)
		}
	}
}
