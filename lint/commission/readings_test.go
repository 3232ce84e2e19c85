package commission_test

import (
	"strconv"
	"strings"
	"testing"

	"stringline/lint/commission"
)

// due gives what is due for a voltage of the shed's string, in V.
func due(t *testing.T, celsius, light float64) float64 {
	r := built(t, shed)
	return *lineOf(t, commission.Of(&r.Designs[0], at(r, celsius, light)), "strings|string.roof.a|voc").Expect[0].Value
}

func volts(v float64) string { return strconv.FormatFloat(v, 'f', 9, 64) + " V" }

// TestBands puts readings on both sides of each end of their band.
func TestBands(t *testing.T) {
	voc := due(t, 47, 800)
	r := built(t, shed)
	kelvin := 320.15
	unlit := *lineOf(t, commission.Of(&r.Designs[0], commission.Conditions{CellTemperature: &kelvin}), "strings|string.roof.a|voc").Expect[0].Value
	for _, c := range []struct {
		reading, key, state string
	}{
		{"string.roof.a.voc " + volts(1.05*voc-1e-6) + " 47 800", "strings|string.roof.a|voc", commission.InBand},
		{"string.roof.a.voc " + volts(1.05*voc+1e-6) + " 47 800", "strings|string.roof.a|voc", commission.OutOfBand},
		{"string.roof.a.voc " + volts(0.95*voc+1e-6) + " 47 800", "strings|string.roof.a|voc", commission.InBand},
		{"string.roof.a.voc " + volts(0.95*voc-1e-6) + " 47 800", "strings|string.roof.a|voc", commission.OutOfBand},
		{"string.roof.a.voc " + volts(1.10*unlit-1e-6) + " 47", "strings|string.roof.a|voc", commission.InBand},
		{"string.roof.a.voc " + volts(1.10*unlit+1e-6) + " 47", "strings|string.roof.a|voc", commission.OutOfBand},
		{"string.roof.a.voc " + volts(voc), "strings|string.roof.a|voc", commission.Unproven},
		{"string.roof.a.isc 6.6 A 47", "strings|string.roof.a|isc", commission.Unproven},
		{"string.roof.a.voc 40 V 47 49", "strings|string.roof.a|voc", commission.Unproven}, // dusk
		{"bank.house.voltage 10.8 V", "order|bank.house|voltage", commission.InBand},
		{"bank.house.voltage 10.79 V", "order|bank.house|voltage", commission.OutOfBand},
		{"bank.house.voltage 14.2 V", "order|bank.house|voltage", commission.InBand},
		{"bank.house.voltage 14.21 V", "order|bank.house|voltage", commission.OutOfBand},
		{"bank.house.each.voltage 13.2 V", "battery|bank.house|each.voltage", commission.InBand},
		{"bank.house.each.voltage 9 V", "battery|bank.house|each.voltage", commission.OutOfBand},
		{"charger.main.current 30 A 47 800", "live|charger.main|current", commission.InBand},
		{"charger.main.current 30.01 A 47 800", "live|charger.main|current", commission.OutOfBand},
		{"charger.main.current 12 A 47 800", "live|charger.main|current", commission.OutOfBand},
		{"charger.main.current 29 A", "live|charger.main|current", commission.Unproven},
		{"charger.main.current 31 A", "live|charger.main|current", commission.OutOfBand}, // the limit speaks although the light is not known
		{"load.lamp.voltage 11 V", "live|load.lamp|voltage", commission.InBand},
		{"load.lamp.voltage 10.99 V", "live|load.lamp|voltage", commission.OutOfBand},
		{"load.lamp.power 20.1 W", "live|load.lamp|power", commission.OutOfBand}, // no line asks for it
		{"bank.house.power 100 W", "live|bank.house|power", commission.Unproven}, // nothing tells what it should be
		{"array.roof.voc " + volts(voc) + " 47 800", "strings|array.roof|voc", commission.InBand},
	} {
		text := with(c.reading)
		r := built(t, text)
		p := commission.Of(&r.Designs[0], unmeasured(r))
		l := lineOf(t, p, c.key)
		if len(l.Readings) != 1 || l.Readings[0].State != c.state {
			t.Errorf("%s: %+v, want %s", c.reading, l.Readings, c.state)
			continue
		}
		reading := l.Readings[0]
		finding := c.state == commission.OutOfBand || c.state == commission.Unproven
		if p.Findings() != finding || (reading.Because == "") == finding || !reading.At.Valid() || p.Summary.Recorded != 1 {
			t.Errorf("%s: finding %v, because %q, at %v, %+v", c.reading, p.Findings(), reading.Because, reading.At, p.Summary)
		}
		if c.state == commission.Unproven && len(reading.Missing) == 0 && !strings.Contains(reading.Because, "no fact") {
			t.Errorf("%s: unproven, and nothing to supply", c.reading)
		}
	}
}

// TestBandsAreTheWorkshops: practice's parameters set the bands, and plan and
// rule agree on every reading.
func TestBandsAreTheWorkshops(t *testing.T) {
	voc := due(t, 47, 800)
	text := with("string.roof.a.voc " + volts(1.03*voc) + " 47 800")
	for percent, want := range map[string]string{"2 %": commission.OutOfBand, "4 %": commission.InBand} {
		r := judged(t, map[string]string{"shed/shed.design.hcl": text,
			"shed/workshop.hcl": "codebook \"practice\" {\n  params {\n    reading_tolerance = \"" + percent + "\"\n  }\n}\n"}, "shed")
		p := commission.Of(&r.Designs[0], at(r, 47, 800))
		l := lineOf(t, p, "strings|string.roof.a|voc")
		if l.Readings[0].State != want {
			t.Errorf("%s: %+v", percent, l.Readings[0])
		}
		for _, v := range r.Designs[0].Verdicts {
			if v.Rule == "practice.reading" && (v.Outcome == "meets") != (want == commission.InBand) {
				t.Errorf("%s: the rule says %s, the plan %s", percent, v.Outcome, l.Readings[0].State)
			}
		}
	}
	low := "string.roof.a.voc " + volts(0.9*voc) + " 47 800"
	r := one(t, with(low, low)+`
waiver "practice.reading" {
  on      = ["reading.ra", "reading.rb"]
  reason  = "old panels"
  expires = "2027-01-01"
}
`)
	p := commission.Of(&r.Designs[0], unmeasured(r))
	if l := lineOf(t, p, "strings|string.roof.a|voc"); l.State != commission.Waived || p.Findings() || len(p.Head.Waivers) != 2 {
		t.Errorf("a waiver: %s, %+v, %+v", l.State, l.Readings, p.Head.Waivers)
	}
}

// TestReadingAgainstTheColdestMorning: a string that shows what is due and one
// panel more than its controller bears.
func TestReadingAgainstTheColdestMorning(t *testing.T) {
	voc := due(t, 47, 800)
	for limit, want := range map[string]string{"80 V": commission.InBand, "76 V": commission.OutOfBand} {
		// 76.87 V on the coldest morning, see TestExpectedReadings.
		r := built(t, strings.Replace(with("string.roof.a.voc "+volts(voc)+" 47 800"), `"100 V"`, `"`+limit+`"`, 1))
		p := commission.Of(&r.Designs[0], unmeasured(r))
		reading := lineOf(t, p, "strings|string.roof.a|voc").Readings[0]
		if reading.State != want || reading.AtCold == nil || !near(*reading.AtCold, 76.87, 1e-4) {
			t.Errorf("%s: %+v", limit, reading)
		}
	}
}

// TestApart: batteries within 0.05 V of each other before they are joined (12 V
// lithium, common practice), like strings within 5 % (IEC 62446-1, transcribed).
func TestApart(t *testing.T) {
	voc := due(t, 47, 800)
	high, low := volts(1.04*voc), volts(1.04*voc/1.05)
	for _, c := range []struct {
		key, state string
		readings   []string
	}{
		{"battery|bank.house|apart", commission.NotMeasured, nil},
		{"battery|bank.house|apart", commission.NotMeasured, []string{"bank.house.each.voltage 13.25 V"}},
		{"battery|bank.house|apart", commission.NotMeasured, []string{"bank.house.each.voltage 13.25 V", "bank.house.each.voltage 13.26 V"}}, // the third is not measured
		{"battery|bank.house|apart", commission.InBand, []string{"bank.house.each.voltage 13.25 V", "bank.house.each.voltage 13.30 V", "bank.house.each.voltage 13.27 V"}},
		{"battery|bank.house|apart", commission.OutOfBand, []string{"bank.house.each.voltage 13.25 V", "bank.house.each.voltage 13.301 V"}},
		{"strings|string.roof.a|like_voc", commission.InBand, []string{"string.roof.a.voc " + high + " 47 800", "string.roof.a.voc " + low + " 47 800"}},
		{"strings|string.roof.a|like_voc", commission.OutOfBand, []string{"string.roof.a.voc " + high + " 47 800", "string.roof.a.voc " + volts(1.04*voc/1.0501) + " 47 800"}},
		{"live|bank.house|share", commission.InBand, []string{"bank.house.each.current 10 A", "bank.house.each.current 11 A", "bank.house.each.current 10.5 A"}},
		{"live|bank.house|share", commission.OutOfBand, []string{"bank.house.each.current 10 A", "bank.house.each.current 11.01 A", "bank.house.each.current 10.5 A"}},
	} {
		r := built(t, with(c.readings...))
		p := commission.Of(&r.Designs[0], unmeasured(r))
		if l := lineOf(t, p, c.key); l.State != c.state || (l.Found != nil) != (len(c.readings) > 1) {
			t.Errorf("%v: %s, found %v, want %s", c.readings, l.State, l.Found, c.state)
		}
		if (p.Summary.Apart > 0) != (c.state == commission.OutOfBand) || p.Summary.Apart > 0 && !p.Findings() {
			t.Errorf("%v: %+v", c.readings, p.Summary)
		}
	}
}
