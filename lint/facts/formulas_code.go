package facts

// What rules of a code ask about a design that no formula of theirs can ask: whether
// a data sheet says a thing at all.

var stringTempVocGiven = declare(Entry{Collection: "strings", Name: "temp_voc_given",
	Means:   "all of its panels' data sheets give a temperature coefficient of the open-circuit voltage; no where one is silent (assumed)",
	Formula: "yes where each of its panels has temp_voc", Source: dataSheet},
	func(s *String, w *Work) bool {
		for _, p := range s.panels {
			if !panelTempVoc.Given(p.panel) {
				w.assume()
				w.Say("%s gives none", p.panel.id)
				return false
			}
		}
		return true
	})
