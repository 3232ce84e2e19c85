package facts

import (
	"stringline/lint/physics/battery"
	"stringline/lint/physics/panel"
)

// What is held against a meter before and while a system is put into use. What a
// meter shows at the light of a moment is in now.go.

const insulationSource = "IEC 62446-1, transcribed in part, the resistances from memory"

var (
	_ = declare(Entry{Collection: "banks", Name: "voltage_floor", Unit: "V",
		Means: "voltage below which it must not be discharged", Formula: "series x the battery's discharge_voltage_min", Source: batterySheet},
		func(b *Bank, w *Work) float64 {
			n, v := bankSeries.Of(w, b), batteryFloor.Of(w, b.battery)
			w.Say("%s", times(n, say(v, "V")))
			return n * v
		})

	_ = declare(Entry{Collection: "banks", Name: "joining_spread", Unit: "V",
		Means:   "how far its parallel strings may be apart in voltage before they are joined",
		Formula: "0.05 V x nominal / 12.8 V", Source: commonPractice + " for lithium; the safe side for lead; a maker's own figure wins"},
		func(b *Bank, w *Work) float64 {
			v := bankNominal.Of(w, b)
			w.Say("0.05 V x %s / 12.8 V", say(v, "V"))
			return w.physics(battery.JoiningSpread(v))
		})

	_ = declare(Entry{Collection: "strings", Name: "insulation_test_voltage", Unit: "V",
		Means: "voltage that its insulation against ground is tested with, the controller taken off", Formula: "by 1.25 x voc_stc: 250 V below 120 V, 500 V to 500 V, 1000 V to 1000 V, else 1500 V", Source: insulationSource},
		func(s *String, w *Work) float64 {
			voltage, _ := s.insulation(w)
			return voltage
		})

	_ = declare(Entry{Collection: "strings", Name: "insulation_resistance_min", Unit: "ohm",
		Means: "least resistance against ground that the test must show", Formula: "0.5 Mohm where 1.25 x voc_stc is below 120 V, else 1 Mohm", Source: insulationSource},
		func(s *String, w *Work) float64 {
			_, least := s.insulation(w)
			return least
		})
)

func (s *String) insulation(w *Work) (voltage, least float64) {
	open := stringVocSTC.Of(w, s)
	w.Say("1.25 x %s", say(open, "V"))
	if !w.Known() {
		return 0, 0
	}
	voltage, least, err := panel.InsulationTest(open)
	w.physics(0, err)
	return voltage, least
}
