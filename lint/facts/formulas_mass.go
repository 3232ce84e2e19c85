package facts

import "stringline/lint/physics/conductor"

// How much metal the conductors of the PV side take.

const massMethod = "area x length x density: copper 8890 kg/m3 (IEC 60028), aluminum 2703 kg/m3 (IEC 60889), both from memory"

var (
	runMass = declare(Entry{Collection: "cable_runs", Name: "conductor_mass", Unit: "kg",
		Means:   "mass of the metal of its conductors; of a string's run for all strings of that kind",
		Formula: "2 x per_pole x area x length x density, times the parallel strings that have it", Source: massMethod},
		func(r *Run, w *Work) float64 {
			area, length, n, material := runArea.Of(w, r), runLength.Of(w, r), runPerPole.Of(w, r), runMaterial.Of(w, r)
			strings := 1.0
			if s, ok := r.circuit.(*String); ok {
				strings = stringParallel.Of(w, s)
			}
			if !w.Known() {
				return 0
			}
			w.Say("%g x 2 x %s x %s", strings*n, say(area, "mm2"), say(length, "m"))
			return strings * w.physics(conductor.Mass(area, length, int(n), material))
		})

	_ = declare(Entry{Collection: "system", Name: "pv_conductor_mass", Unit: "kg",
		Means:   "mass of the metal of all runs of its strings and arrays",
		Formula: "sum of conductor_mass of the runs of strings and arrays", Source: massMethod},
		func(s *Whole, w *Work) float64 {
			total := 0.0
			for _, i := range s.allInputs(w) {
				for _, a := range i.allArrays(w) {
					for _, r := range a.runs {
						total += runMass.Of(w, r)
					}
					for _, t := range a.all(w) {
						for _, r := range t.runs {
							total += runMass.Of(w, r)
						}
					}
				}
			}
			return total
		})
)
