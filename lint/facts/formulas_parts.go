package facts

import (
	"fmt"
	"strings"
)

// How many of each part a design takes, and how much conductor: what a parts list
// and a wire schedule say.

const quantityMeans = "how many of it the design takes"

var (
	panelQuantity = declare(Entry{Collection: "panels", Name: "quantity", Bound: true,
		Means: quantityMeans, Formula: "sum over strings of those in series x parallel", Source: "the design"},
		func(p *Panel, w *Work) float64 {
			w.lost(p.lost)
			total := 0.0
			var said []string
			for _, s := range p.strings {
				series, parallel := s.of(p), stringParallel.Of(w, s)
				total += series * parallel
				said = append(said, fmt.Sprintf("%s %g x %g", s.id, series, parallel))
			}
			w.Say("%s", strings.Join(said, " + "))
			return total
		})

	controllerQuantity = declare(Entry{Collection: "controllers", Name: "quantity", Bound: true,
		Means: quantityMeans, Formula: "chargers with it", Source: "the design"},
		func(c *Controller, w *Work) float64 { w.lost(c.lost); return float64(len(c.chargers)) })

	batteryQuantity = declare(Entry{Collection: "batteries", Name: "quantity", Bound: true,
		Means: quantityMeans, Formula: "sum over banks of series x parallel", Source: "the design"},
		func(b *Battery, w *Work) float64 {
			w.lost(b.lost)
			total := 0.0
			var said []string
			for _, bank := range b.banks {
				series, parallel := bankSeries.Of(w, bank), bankParallel.Of(w, bank)
				total += series * parallel
				said = append(said, fmt.Sprintf("%s %g x %g", bank.id, series, parallel))
			}
			w.Say("%s", strings.Join(said, " + "))
			return total
		})

	inverterQuantity = declare(Entry{Collection: "inverters", Name: "quantity", Bound: true,
		Means: quantityMeans, Formula: "AC outputs with it", Source: "the design"},
		func(i *Inverter, w *Work) float64 { w.lost(i.lost); return float64(len(i.outputs)) })

	converterQuantity = declare(Entry{Collection: "converters", Name: "quantity", Bound: true,
		Means: quantityMeans, Formula: "supplies with it", Source: "the design"},
		func(c *Converter, w *Work) float64 { w.lost(c.lost); return float64(len(c.supplies)) })

	protectionQuantity = declare(Entry{Collection: "protections", Name: "quantity",
		Means: "how many of it stand side by side", Formula: alikeFormula, Source: "the design"},
		func(p *Protection, w *Work) float64 {
			if bank, ok := p.circuit.(*Bank); ok && p.each {
				return bankParallel.Of(w, bank)
			}
			return sideBySide(w, p.circuit)
		})

	disconnectQuantity = declare(Entry{Collection: "disconnects", Name: "quantity",
		Means: "how many of it stand side by side", Formula: alikeFormula, Source: "the design"},
		func(d *Disconnect, w *Work) float64 { return sideBySide(w, d.circuit) })

	runRoute = declare(Entry{Collection: "cable_runs", Name: "route_total", Unit: "m",
		Means:   "length of its way, of all alike: what a cable of several cores or a grounding conductor beside it takes",
		Formula: "length; of a string's x parallel", Source: "the design"},
		func(r *Run, w *Work) float64 {
			length, n := runLength.Of(w, r), sideBySide(w, r.circuit)
			w.Say("%s", times(n, say(length, "m")))
			return n * length
		})

	runConductor = declare(Entry{Collection: "cable_runs", Name: "conductor_total", Unit: "m",
		Means: "length of single conductor that it takes, both ways", Formula: "2 x per_pole x route_total", Source: "the design"},
		func(r *Run, w *Work) float64 {
			route, n := runRoute.Of(w, r), runPerPole.Of(w, r)
			w.Say("%s", times(2, times(n, say(route, "m"))))
			return 2 * n * route
		})
)

const alikeFormula = "1; in a string's parallel, and of each string of batteries the bank's parallel"

// sideBySide counts circuits of which one block stands for several: a string block
// stands for all its parallel strings.
func sideBySide(w *Work, c subject) float64 {
	if s, ok := c.(*String); ok {
		return stringParallel.Of(w, s)
	}
	return 1
}
