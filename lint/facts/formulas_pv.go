package facts

import (
	"fmt"
	"math"
	"strings"

	"stringline/lint/physics/panel"
)

// Panels, strings, controller inputs and arrays.

const (
	dataSheet      = "the panel's data sheet, IEC 61215 and EN 50380"
	commonPractice = "common practice"
	series         = "cells in series: voltages add"
	parallel       = "strings in parallel: currents add"
	bypassed       = "panels in series: one current, bypass diodes carry the rest"
)

// shareOf declares how a panel's temperature coefficient is read: a share per
// kelvin as written, or one in V/K, A/K or W/K over the panel's own value.
func shareOf(name string, own Key[*Panel, float64]) Key[*Panel, float64] {
	_, attribute := splitName(own.collection + "." + own.name)
	return declare(Entry{Collection: "panels", Name: name, Unit: "%/K",
		Formula: "as written; one that is not in %/K is divided by the panel's own " + attribute, Source: dataSheet},
		func(p *Panel, w *Work) float64 {
			v := readAttribute(p.Subject, w.Entry, w).number
			if written, given := p.written(w.Entry); given && !written.Bad && written.Written.Symbol != "" && written.Written.Dimension != perKelvin {
				return w.physics(panel.PerKelvin(v, own.Of(w, p)))
			}
			return v
		})
}

var (
	panelTempVoc  = shareOf("temp_voc", panelVoc)
	panelTempIsc  = shareOf("temp_isc", panelIsc)
	panelTempPmax = shareOf("temp_pmax", panelPmax)
)

var panelNominalCell = declare(Entry{Collection: "panels", Name: "nominal_cell", Unit: "degC",
	Means:   "cell temperature at 800 W/m2 and 20 degC of air",
	Formula: "noct, else nmot", Source: dataSheet},
	func(p *Panel, w *Work) float64 {
		if !panelNoct.Given(p) && panelNmot.Given(p) {
			return panelNmot.Of(w, p)
		}
		return panelNoct.Of(w, p)
	})

var panelShortCircuit = declare(Entry{Collection: "panels", Name: "short_circuit", Unit: "A",
	Means:   "short-circuit current that sums count with; where the data sheet is silent on light from behind, of the front alone (assumed)",
	Formula: "larger of isc and, where stated, isc_bifacial", Source: dataSheet, Bound: true},
	func(p *Panel, w *Work) float64 {
		front := panelIsc.Of(w, p)
		if !panelIscBifacial.Given(p) {
			w.assume()
			return front
		}
		return max(front, panelIscBifacial.Of(w, p))
	})

// overPanels adds a value over a string's panels in series.
func (s *String) overPanels(w *Work, of func(*Panel) float64, term func(*Panel) string) float64 {
	total := 0.0
	var terms []string
	for _, p := range s.panels {
		total += p.count * w.part(func() float64 { return of(p.panel) })
		if w.Known() {
			terms = append(terms, times(p.count, term(p.panel)))
		}
	}
	w.Say("%s", strings.Join(terms, " + "))
	return total
}

// most gives the largest over a string's panels, least the smallest.
func (s *String) most(w *Work, of func(*Panel) float64) float64 {
	v := 0.0
	for _, p := range s.panels {
		v = max(v, w.part(func() float64 { return of(p.panel) }))
	}
	return v
}

func (s *String) least(w *Work, key Key[*Panel, float64], unit string) float64 {
	v := math.Inf(1)
	var from *Panel
	for _, p := range s.panels {
		if one := key.Of(w, p.panel); one < v {
			v, from = one, p.panel
		}
	}
	if from != nil {
		w.lead(key.input(from))
		w.Say("%s of %s", say(v, unit), from.block.Name)
	}
	return v
}

var (
	stringPanelCount = declare(Entry{Collection: "strings", Name: "panel_count", Unit: "",
		Means: "panels in series", Formula: "sum of its panels", Source: "the design"},
		func(s *String, w *Work) float64 {
			n := 0.0
			for _, p := range s.panels {
				n += p.count
			}
			return n
		})

	stringVocSTC = declare(Entry{Collection: "strings", Name: "voc_stc", Unit: "V", Bound: true,
		Means: "open-circuit voltage at 25 degC", Formula: "sum over its panels of voc", Source: series},
		func(s *String, w *Work) float64 {
			return s.overPanels(w, func(p *Panel) float64 { return panelVoc.Of(w, p) },
				func(p *Panel) string { return say(panelVoc.Of(w, p), "V") })
		})

	stringVocCold = declare(Entry{Collection: "strings", Name: "voc_cold", Unit: "V", Bound: true,
		Means:   "open-circuit voltage on the coldest morning",
		Formula: "sum over its panels of voc x (1 + temp_voc x (cell_cold - 25 degC))", Source: "method of IEC 62548-1; " + dataSheet},
		func(s *String, w *Work) float64 {
			return s.openCircuit(w, func() float64 { return inputCellCold.Of(w, s.input) })
		})

	stringVocHot = declare(Entry{Collection: "strings", Name: "voc_hot", Unit: "V",
		Means:   "open-circuit voltage of hot cells",
		Formula: "sum over its panels of voc x (1 + temp_voc x (cell_hot - 25 degC))", Source: "method of IEC 62548-1; " + dataSheet},
		func(s *String, w *Work) float64 {
			return s.openCircuit(w, func() float64 { return stringCellHot.Of(w, s) })
		})

	stringCellHot = declare(Entry{Collection: "strings", Name: "cell_hot", Unit: "degC",
		Means:   "hottest cell temperature, of the panel that gets hottest",
		Formula: "site.hottest + (nominal_cell + mounting_rise - 20 degC) x 1000/800; with unlike panels the largest", Source: "definition of NOCT in IEC 61215"},
		func(s *String, w *Work) float64 {
			hottest := 0.0
			for _, p := range s.panels {
				air, nominal, rise := siteHottest.Of(w, s.array.site), panelNominalCell.Of(w, p.panel), arrayMountingRise.Of(w, s.array)
				if !w.Known() {
					continue
				}
				if cell := w.physics(panel.CellHot(air, nominal, rise)); cell > hottest {
					hottest = cell
					w.Say("%s + (%s + %s - 20 degC) x 1000/800", say(air, "degC"), say(nominal, "degC"), say(rise, "K"))
				}
			}
			return hottest
		})

	stringVmpSTC = declare(Entry{Collection: "strings", Name: "vmp_stc", Unit: "V",
		Means: "voltage at maximum power by itself, at 25 degC", Formula: "maximum of its own curve at 1000 W/m2 and 25 degC", Source: fiveParameters},
		func(s *String, w *Work) float64 { return s.maximum(w, standardCell).Voltage })

	stringVmpHot = declare(Entry{Collection: "strings", Name: "vmp_hot", Unit: "V",
		Means: "voltage at maximum power by itself, of hot cells", Formula: "maximum of its own curve at 1000 W/m2 and cell_hot", Source: fiveParameters},
		func(s *String, w *Work) float64 {
			return s.maximum(w, func(s *String) float64 { return stringCellHot.Of(w, s) }).Voltage
		})

	stringIscSTC = declare(Entry{Collection: "strings", Name: "isc_stc", Unit: "A", Bound: true,
		Means: "short-circuit current at 25 degC", Formula: "largest short_circuit of its panels", Source: bypassed},
		func(s *String, w *Work) float64 {
			isc := s.most(w, func(p *Panel) float64 { return panelShortCircuit.Of(w, p) })
			w.Say("%s", say(isc, "A"))
			return isc
		})

	stringCloudEdge = declare(Entry{Collection: "strings", Name: "cloud_edge", Unit: "",
		Means:   "factor for sunlight at the edge of bright clouds and off snow",
		Formula: "1.25", Source: "IEC 62548-1 and NEC 690.8 take the same", Assumes: "1.25 for bright cloud edges"},
		func(s *String, w *Work) float64 { return panel.CloudEdge })

	stringIscMax = declare(Entry{Collection: "strings", Name: "isc_max", Unit: "A", Bound: true,
		Means:   "largest short-circuit current, under bright cloud edges and with hot cells",
		Formula: "largest over its panels of short_circuit x cloud_edge x (1 + temp_isc x max(0, cell_hot - 25 degC))", Source: "IEC 62548-1; " + dataSheet},
		func(s *String, w *Work) float64 {
			edge := stringCloudEdge.Of(w, s)
			most := 0.0
			for _, p := range s.panels {
				isc := w.part(func() float64 {
					isc, coefficient, cell := panelShortCircuit.Of(w, p.panel), panelTempIsc.Of(w, p.panel), stringCellHot.Of(w, s)
					if !w.Known() {
						return 0
					}
					return w.physics(panel.ShortCircuitMax(isc, coefficient, cell, edge))
				})
				if isc > most && w.Known() {
					w.Say("%g x %s, at %s", edge, linear(panelShortCircuit.Of(w, p.panel), "A", panelTempIsc.Of(w, p.panel),
						max(panel.StandardCell, stringCellHot.Of(w, s))), say(stringCellHot.Of(w, s), "degC"))
				}
				most = max(most, isc)
			}
			return most
		})

	stringImpSTC = declare(Entry{Collection: "strings", Name: "imp_stc", Unit: "A",
		Means:   "current at maximum power, at 25 degC; with unlike panels in series the smallest, not a curve's maximum",
		Formula: "smallest imp of its panels", Source: "panels in series: one current"},
		func(s *String, w *Work) float64 { return s.least(w, panelImp, "A") })

	stringPmaxSTC = declare(Entry{Collection: "strings", Name: "pmax_stc", Unit: "W", Bound: true,
		Means: "power of its nameplates", Formula: "sum over its panels of pmax", Source: dataSheet},
		func(s *String, w *Work) float64 {
			return s.overPanels(w, func(p *Panel) float64 { return panelPmax.Of(w, p) },
				func(p *Panel) string { return say(panelPmax.Of(w, p), "W") })
		})

	stringFuseMax = declare(Entry{Collection: "strings", Name: "series_fuse_max", Unit: "A",
		Means: "largest fuse that its panels allow in series", Formula: "smallest max_series_fuse of its panels", Source: dataSheet},
		func(s *String, w *Work) float64 { return s.least(w, panelFuseMax, "A") })

	stringSystemMax = declare(Entry{Collection: "strings", Name: "system_voltage_max", Unit: "V",
		Means: "largest system voltage that its panels allow", Formula: "smallest max_system_voltage of its panels", Source: dataSheet},
		func(s *String, w *Work) float64 { return s.least(w, panelSystemMax, "V") })

	stringFault = declare(Entry{Collection: "strings", Name: "fault_current", Unit: "A", Bound: true,
		Means:   "what all else on its controller input can feed into one of its strings in a fault; no code factor inside",
		Formula: "sum of isc_stc of all other strings on the input + the controller's pv_backfeed_max", Source: "IEC 62548-1, unlike strings one by one"},
		func(s *String, w *Work) float64 {
			total := 0.0
			var terms []string
			for _, other := range s.input.all(w) {
				n, isc := stringParallel.Of(w, other), stringIscSTC.Of(w, other)
				if other == s {
					n = max(0, n-1)
				}
				total += n * isc
				if n > 0 {
					terms = append(terms, times(n, say(isc, "A")))
				}
			}
			backfeed := controllerBackfeed.Of(w, s.input.charger.controller)
			terms = append(terms, say(backfeed, "A")+" backfeed")
			w.Say("%s", strings.Join(terms, " + "))
			return total + backfeed
		})
)

// openCircuit adds the open-circuit voltages of a string's panels at a cell
// temperature.
func (s *String) openCircuit(w *Work, cell func() float64) float64 {
	v := s.overPanels(w,
		func(p *Panel) float64 {
			voc, coefficient, at := panelVoc.Of(w, p), panelTempVoc.Of(w, p), cell()
			if !w.Known() {
				return 0
			}
			return w.physics(panel.OpenCircuit(voc, coefficient, at))
		},
		func(p *Panel) string { return linear(panelVoc.Of(w, p), "V", panelTempVoc.Of(w, p), cell()) })
	w.Say("%s, at %s", w.Fact.Says, say(cell(), "degC"))
	return v
}

// linear writes a value carried to another cell temperature.
func linear(si float64, unit string, coefficient, cell float64) string {
	apart := cell - panel.StandardCell
	if coefficient == 0 || apart == 0 {
		return say(si, unit)
	}
	sign := "+"
	if coefficient*apart < 0 {
		sign = "-"
	}
	return fmt.Sprintf("%s x (1 %s %s x %s)", say(si, unit), sign, say(math.Abs(coefficient), "%/K"), say(math.Abs(apart), "K"))
}

var arrayMountingRise = declare(Entry{Collection: "arrays", Name: "mounting_rise", Unit: "K",
	Means:   "what its mounting adds to the nominal cell temperature",
	Formula: "0 K open_rack and portable, 6 K roof_standoff, 18 K roof_flush", Source: commonPractice + ", from memory", Assumes: "a figure for each mounting"},
	func(a *Array, w *Work) float64 {
		mounting := arrayMounting.Of(w, a)
		if !w.Known() {
			return 0
		}
		return w.physics(panel.MountingRise(mounting))
	})
