package energy

import "math"

// Flows are the energies that pass in a time, in J at the bank's terminals unless
// said. Nothing is both clipped and curtailed: clipped is what a controller's
// current limit keeps out, curtailed what the loads and the bank do not take of
// the rest.
type Flows struct {
	Array     float64 // what the arrays could give, losses off
	Converted float64 // lost in the controllers: (1 - efficiency) Array
	Clipped   float64 // kept out by the controllers' limits, as it would be at the terminals
	Yield     float64 // out of the controllers, the bank always accepting
	Other     float64 // from other sources

	Load       float64 // what the loads ask
	Direct     float64 // part of it that sources cover at once
	Discharged float64 // part of it that the store covers
	Unserved   float64 // part of it that nothing covers

	Charged   float64 // into the store
	StoreLost float64 // of Charged, what the round trip takes
	Curtailed float64 // of Yield and Other, what nothing takes
}

// Used gives what the loads get.
func (f *Flows) Used() float64 { return f.Direct + f.Discharged }

// Lost gives what turns to heat in controllers and store.
func (f *Flows) Lost() float64 { return f.Converted + f.StoreLost }

func (f *Flows) add(g *Flows) {
	f.Array += g.Array
	f.Converted += g.Converted
	f.Clipped += g.Clipped
	f.Yield += g.Yield
	f.Other += g.Other
	f.Load += g.Load
	f.Direct += g.Direct
	f.Discharged += g.Discharged
	f.Unserved += g.Unserved
	f.Charged += g.Charged
	f.StoreLost += g.StoreLost
	f.Curtailed += g.Curtailed
}

// residual gives by how many J the flows do not close with what was and is in
// store: the larger of the two lines that [Step] names.
func (f *Flows) residual(before, stored float64) float64 {
	sources := f.Array + f.Other - f.Used() - (stored - before) - f.Lost() - f.Clipped - f.Curtailed
	loads := f.Load - f.Used() - f.Unserved
	return max(math.Abs(sources), math.Abs(loads))
}

// Step is the account of one step of a bank. It closes:
//
//	Array + Other = Used + (Stored - Before) + Lost + Clipped + Curtailed
//	Load          = Used + Unserved
type Step struct {
	Flows
	Index          int     // from 0
	Before, Stored float64 // J in store at the start and at the end, as the loads will get it
}

// Residual gives by how many J the account of the step does not close. It is
// rounding alone, below 1e-9 of the largest figure of the step.
func (s *Step) Residual() float64 { return s.residual(s.Before, s.Stored) }

// Sum adds steps up, and closes as they do.
type Sum struct {
	Flows
	Time float64 // s that it covers

	Before, Stored, LeastStored              float64 // J in store at its start, at its end, and the least at the end of any step
	ClippedTime, UnservedTime, CurtailedTime float64 // s of steps in which there is any
}

// Residual gives by how many J the account of the time does not close.
func (s *Sum) Residual() float64 { return s.residual(s.Before, s.Stored) }

func (s *Sum) addStep(t *Step, duration float64, clipped, unserved bool) {
	if s.Time == 0 {
		s.Before, s.LeastStored = t.Before, t.Stored
	}
	s.Time += duration
	s.Flows.add(&t.Flows)
	s.Stored = t.Stored
	s.LeastStored = min(s.LeastStored, t.Stored)
	if clipped {
		s.ClippedTime += duration
	}
	if unserved {
		s.UnservedTime += duration
	}
	if t.Curtailed > slack*(t.Yield+t.Other) {
		s.CurtailedTime += duration
	}
}

// join adds the sum of the time that follows.
func (s *Sum) join(t *Sum) {
	if t.Time == 0 {
		return
	}
	if s.Time == 0 {
		*s = *t
		return
	}
	s.Time += t.Time
	s.Flows.add(&t.Flows)
	s.Stored = t.Stored
	s.LeastStored = min(s.LeastStored, t.LeastStored)
	s.ClippedTime += t.ClippedTime
	s.UnservedTime += t.UnservedTime
	s.CurtailedTime += t.CurtailedTime
}
