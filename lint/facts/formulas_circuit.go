package facts

import "strings"

// What a run, protection or disconnect meets depends on the circuit it stands
// in. Here are the answers, circuit by circuit.

const (
	currentFormula = "of a string isc_stc; of an array the sum of its strings' isc_stc; of a charger the controller's charge_current_max; of an AC output, supply or load its current; " +
		"of a charge source charge_current; of a bank's main the larger of charge_current_total and discharge_current_continuous"
	faultFormula = "short_circuit_current of the bank; on the PV side isc_stc of the input + the controller's pv_backfeed_max; behind a converter its rated current, behind an inverter surge / ac_voltage"
	busFormula   = "voc_cold of the controller input on the PV side, voltage_max of the bank on its side, the converter's output or ac_voltage behind those"
	busSource    = "every device is judged against the highest voltage where it stands"
)

func circuitCurrent(w *Work, c subject) float64 {
	switch c := c.(type) {
	case *String:
		return tell(w, stringIscSTC, c)
	case *Array:
		return overStrings(w, stringIscSTC, c.all(w))
	case *Charger:
		return tell(w, controllerCharge, c.controller)
	case *Output:
		return tell(w, outputCurrent, c)
	case *Supply:
		return tell(w, supplyCurrent, c)
	case *ChargeSource:
		return tell(w, sourceCurrent, c)
	case *Load:
		return tell(w, loadCurrent, c)
	case *Bank:
		return mainCurrent(w, c)
	}
	return 0
}

// mainCurrent gives what flows in a bank's main conductor.
func mainCurrent(w *Work, b *Bank) float64 {
	in, out := bankChargeTotal.Of(w, b), bankDischarge.Of(w, b)
	if out > in {
		return tell(w, bankDischarge, b)
	}
	return tell(w, bankChargeTotal, b)
}

func operatingCurrent(w *Work, c subject) float64 {
	switch c := c.(type) {
	case *String:
		return tell(w, stringImpSTC, c)
	case *Array:
		return overStrings(w, stringImpSTC, c.all(w))
	case *Charger:
		return tell(w, chargerLimit, c)
	case *Output:
		return tell(w, outputOperating, c)
	case *Supply:
		return tell(w, supplyOperating, c)
	case *Load:
		return tell(w, loadOperating, c)
	}
	return circuitCurrent(w, c)
}

// tell reads a fact that decides and takes over its workings.
func tell[S subject](w *Work, key Key[S, float64], s S) float64 {
	v := key.Of(w, s)
	in := key.input(s)
	w.lead(in)
	said := in.Fact.Says
	if said == "" {
		said = s.self().id + " " + say(v, in.Fact.Unit)
	}
	w.Say("%s", said)
	return v
}

// inputOf gives the controller input of a circuit on the PV side, nil elsewhere.
func inputOf(c subject) *Input {
	switch c := c.(type) {
	case *String:
		return c.input
	case *Array:
		return c.input
	}
	return nil
}

// busOf gives the bank whose bus a circuit hangs on with no converter between;
// nil on the PV side and behind converters and inverters.
func busOf(c subject) *Bank {
	switch c := c.(type) {
	case *Bank:
		return c
	case *Charger:
		return c.bank
	case *Output:
		return c.bank
	case *Supply:
		return c.bank
	case *ChargeSource:
		return c.bank
	case *Load:
		if c.output == nil && c.supply == nil {
			return c.bank
		}
	}
	return nil
}

func baseVoltage(w *Work, c subject) float64 {
	if in := inputOf(c); in != nil {
		return tell(w, inputVmpSTC, in)
	}
	if bank := busOf(c); bank != nil {
		return bankSystemVoltage.Of(w, bank)
	}
	if load, ok := c.(*Load); ok {
		return loadSourceVoltage.Of(w, load)
	}
	return 0
}

func busVoltage(w *Work, c subject) float64 {
	if in := inputOf(c); in != nil {
		return tell(w, inputVocCold, in)
	}
	if bank := busOf(c); bank != nil {
		return tell(w, bankVoltageMax, bank)
	}
	if load, ok := c.(*Load); ok {
		return loadSourceMax.Of(w, load)
	}
	return 0
}

func faultNear(w *Work, c subject) float64 {
	if in := inputOf(c); in != nil {
		isc, backfeed := inputIscSTC.Of(w, in), controllerBackfeed.Of(w, in.charger.controller)
		w.Say("%s + %s backfeed", say(isc, "A"), say(backfeed, "A"))
		return isc + backfeed
	}
	if bank := busOf(c); bank != nil {
		return tell(w, bankShortCircuit, bank)
	}
	load, ok := c.(*Load)
	switch {
	case ok && load.supply != nil:
		return tell(w, converterCurrent, load.supply.converter)
	case ok && load.output != nil:
		return quotient(w, inverterSurge.Of(w, load.output.inverter), "W", inverterACVoltage.Of(w, load.output.inverter), "V")
	}
	return 0
}

var (
	protectionKind = declare(Entry{Collection: "protections", Name: "kind",
		Means: "what it is: fuse or breaker", Formula: "its block", Source: "the design"},
		func(p *Protection, w *Work) string { return p.block.Kind.Name })

	protectionBus = declare(Entry{Collection: "protections", Name: "bus_voltage", Unit: "V", Bound: true,
		Means: "highest voltage where it stands", Formula: busFormula, Source: busSource},
		func(p *Protection, w *Work) float64 { return busVoltage(w, p.circuit) })

	protectionCurrent = declare(Entry{Collection: "protections", Name: "current", Unit: "A", Bound: true,
		Means:   "current that it must carry; no code factor inside",
		Formula: "that of the run it protects; of each string of batteries the bank's over parallel", Source: "as for runs"},
		func(p *Protection, w *Work) float64 {
			i := circuitCurrent(w, p.circuit)
			bank, ok := p.circuit.(*Bank)
			if !ok || !p.each {
				return i
			}
			n := bankParallel.Of(w, bank)
			w.Say("%s / %g", say(i, "A"), n)
			if n <= 0 {
				return 0
			}
			return i / n
		})

	protectionFault = declare(Entry{Collection: "protections", Name: "fault_current", Unit: "A", Bound: true,
		Means:   "prospective fault current that it must interrupt",
		Formula: "fault_current of the string in a string's; of each string of batteries what one string or all others together give, the larger; else fault_current_near of the run it protects", Source: "sources in parallel add"},
		func(p *Protection, w *Work) float64 {
			switch c := p.circuit.(type) {
			case *String:
				return tell(w, stringFault, c)
			case *Bank:
				if !p.each {
					break
				}
				n, i := bankParallel.Of(w, c), batteryShortCircuit.Of(w, c.battery)
				w.Say("%s", times(max(1, n-1), say(i, "A")))
				return max(1, n-1) * i
			}
			return faultNear(w, p.circuit)
		})

	protectionTwoWay = declare(Entry{Collection: "protections", Name: "two_way",
		Means: "current can flow through it both ways", Formula: twoWayFormula, Source: commonPractice},
		func(p *Protection, w *Work) bool { return twoWay(w, p.circuit) })

	disconnectBus = declare(Entry{Collection: "disconnects", Name: "bus_voltage", Unit: "V", Bound: true,
		Means: "highest voltage where it stands", Formula: busFormula, Source: busSource},
		func(d *Disconnect, w *Work) float64 { return busVoltage(w, d.circuit) })

	disconnectCurrent = declare(Entry{Collection: "disconnects", Name: "current", Unit: "A", Bound: true,
		Means: "current that it must carry; no code factor inside", Formula: "that of the run beside it", Source: "as for runs"},
		func(d *Disconnect, w *Work) float64 { return circuitCurrent(w, d.circuit) })
)

var twoWayFormula = strings.Join([]string{
	"yes between bank and controller or charge source and in the bank itself",
	"at an inverter where it can charge",
	"in a string or array where other strings, or the controller, can feed back",
	"no for supplies and loads",
}, "; ")

func twoWay(w *Work, c subject) bool {
	switch c := c.(type) {
	case *Bank, *Charger, *ChargeSource:
		return true
	case *Output:
		return inverterCharge.Of(w, c.inverter) > 0
	case *String:
		return othersFeed(w, c.input, stringParallel.Of(w, c) > 1, func(s *String) bool { return s == c })
	case *Array:
		return othersFeed(w, c.input, false, func(s *String) bool { return s.array == c })
	}
	return false
}

// othersFeed tells whether a string other than those that are own, or the
// controller, can send current back. Where another string stands on the input
// the controller's backfeed does not matter and is not asked for.
func othersFeed(w *Work, in *Input, others bool, own func(*String) bool) bool {
	for _, s := range in.all(w) {
		others = others || !own(s)
	}
	if w.Known() && others {
		return true
	}
	return controllerBackfeed.Of(w, in.charger.controller) > 0
}

var (
	systemPVMax = declare(Entry{Collection: "system", Name: "pv_voltage_max", Unit: "V", Bound: true,
		Means: "highest PV voltage that is there, for labels and bands", Formula: "largest voc_cold of all controller inputs", Source: "IEC 62548-1"},
		func(s *Whole, w *Work) float64 { return largest(w, inputVocCold, s.allInputs(w)) })

	systemDCMax = declare(Entry{Collection: "system", Name: "dc_voltage_max", Unit: "V", Bound: true,
		Means: "highest DC voltage that is there", Formula: "larger of pv_voltage_max and the banks' voltage_max", Source: "IEC 62548-1"},
		func(s *Whole, w *Work) float64 {
			pv := systemPVMax.Of(w, s)
			bank := largest(w, bankVoltageMax, s.allBanks(w))
			if bank > pv {
				return bank
			}
			return tell(w, systemPVMax, s)
		})
)
