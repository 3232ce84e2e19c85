package facts

import "math"

// Readings. Each has the unit of what was measured.

var (
	readingExpected = declare(Entry{Collection: "readings", Name: "expected", Unit: "V", Units: []string{"A", "W"},
		Means:   "what the meter should show at the recorded irradiance and cell temperature",
		Formula: "the curve of the string, or of the controller input that the array is on, at irradiance and cell_temperature: its open-circuit voltage, short-circuit current, or the voltage, current or power of its maximum; of a voltage without irradiance the middle of what it is at 200 and at 1000 W/m2",
		Source:  fiveParameters},
		func(r *Reading, w *Work) float64 {
			what, unit := r.quantity()
			w.Fact.Unit = unit
			return w.due(r.of, what, momentOf(r))
		})

	_ = declare(Entry{Collection: "readings", Name: "with_irradiance",
		Means: "the light was measured with it; where it was not (assumed) only a voltage tells anything", Formula: "irradiance is given", Source: "the design"},
		func(r *Reading, w *Work) bool {
			if !readingIrradiance.Given(r) {
				w.Fact.Assumed = union(w.Fact.Assumed, []string{r.id + ".irradiance"})
				return false
			}
			readingIrradiance.Of(w, r)
			return true
		})

	readingDifference = declare(Entry{Collection: "readings", Name: "difference", Unit: "V", Units: []string{"A", "W"},
		Means: "how far the reading is from what was due", Formula: "value - expected", Source: "subtraction"},
		func(r *Reading, w *Work) float64 {
			_, unit := r.quantity()
			w.Fact.Unit = unit
			value, due := readingValue.Of(w, r), readingExpected.Of(w, r)
			w.Say("%s - %s", say(value, unit), say(due, unit))
			return value - due
		})

	readingShare = declare(Entry{Collection: "readings", Name: "difference_share", Unit: "%",
		Means: "that, as a share of what was due", Formula: "difference / expected", Source: "division"},
		func(r *Reading, w *Work) float64 {
			off, due := readingDifference.Of(w, r), readingExpected.Of(w, r)
			if w.Known() && due == 0 {
				w.fail("nothing was due")
				return 0
			}
			return off / due
		})

	_ = declare(Entry{Collection: "readings", Name: "at_cold", Unit: "V",
		Means:   "what an open-circuit voltage as measured comes to on the coldest morning, to hold against the controller's limit before the PV switch is closed",
		Formula: "value x voc_cold / expected", Source: "a share of the voltage is a share of it in the cold: common practice, after IEC 60891"},
		func(r *Reading, w *Work) float64 {
			if what, _ := r.quantity(); what != "voc" {
				w.fail("it is no open-circuit voltage")
				return 0
			}
			value, due, cold := readingValue.Of(w, r), readingExpected.Of(w, r), 0.0
			switch of := r.of.(type) {
			case *String:
				cold = stringVocCold.Of(w, of)
			case *Array:
				cold = inputVocCold.Of(w, of.input)
			case *Input:
				cold = inputVocCold.Of(w, of)
			}
			if w.Known() && due == 0 {
				w.fail("nothing was due")
				return 0
			}
			w.Say("%s x %s / %s", say(value, "V"), say(cold, "V"), say(due, "V"))
			return value * cold / due
		})
)

// Spread says how readings that should agree are held against each other.
type Spread uint8

// The spreads. SpreadOfDue takes each reading as a share of what was due at its
// own light and warmth, and tells (largest - smallest) / smallest, in %.
// SpreadOfValue takes the readings as they are and tells the same.
// SpreadDifference tells largest - smallest, in the readings' unit.
const (
	SpreadOfDue Spread = iota
	SpreadOfValue
	SpreadDifference
)

// Apart derives how far readings that should agree are from each other. ids are
// of readings; those that are unknown, or not positive, are left out, for
// SpreadOfDue also those of which nobody knows what was due. ok is false where
// fewer than two are left, or there is no such subject.
func (s *System) Apart(about string, ids []string, by Spread) (w *Work, ok bool) {
	of, there := s.byID[about]
	if !there {
		return nil, false
	}
	w = &Work{subject: of, Entry: &Entry{Collection: of.collection.Name, Name: "now.readings_apart", Unit: "%",
		Means: "how far readings that should agree are from each other", Formula: "(largest - smallest) / smallest of value", Source: "IEC 62446-1; " + commonPractice}}
	w.Fact.ID = "now." + about + ".readings_apart"
	switch by {
	case SpreadOfDue:
		w.Entry.Formula = "(largest - smallest) / smallest of value / expected"
	case SpreadDifference:
		w.Entry.Formula = "largest - smallest of value"
	}
	least, most, n := math.Inf(1), 0.0, 0
	for _, id := range ids {
		on, there := s.byID[id]
		if !there {
			continue
		}
		r, isReading := on.typed.(*Reading)
		if !isReading || !positive(readingValue.input(r)) || by == SpreadOfDue && !positive(readingExpected.input(r)) {
			continue
		}
		v := readingValue.Of(w, r)
		if by == SpreadOfDue {
			v /= readingExpected.Of(w, r)
		} else if by == SpreadDifference {
			_, w.Entry.Unit = r.quantity()
		}
		least, most, n = math.Min(least, v), math.Max(most, v), n+1
	}
	if n < 2 {
		return nil, false
	}
	w.Fact.Unit = w.Entry.Unit
	switch by {
	case SpreadDifference:
		w.Say("%s - %s", say(most, w.Fact.Unit), say(least, w.Fact.Unit))
		w.finish(value{number: most - least})
	case SpreadOfDue:
		w.Say("%s to %s of what was due", say(least, "%"), say(most, "%"))
		w.finish(value{number: (most - least) / least})
	default:
		w.finish(value{number: (most - least) / least})
	}
	return w, true
}

func positive(w *Work) bool { return w.Fact.Known && w.Fact.SI > 0 }
