package report

import (
	"stringline/lint"
)

// Sink takes a run in as it goes on: designs one by one in the order of their
// files, then what belongs to no one design. A sink keeps of a design only what
// its output still needs, so that a run over thousands of designs stays small.
type Sink interface {
	// Design takes one design in. It may be dropped afterwards.
	Design(d *lint.DesignResult) error
	// End writes what is left. Of r it reads all but the designs, which were
	// handed in before.
	End(r *lint.Result) error
}

// whole hands a run that is over to a sink.
func whole(s Sink, r *lint.Result) error {
	for i := range r.Designs {
		if err := s.Design(&r.Designs[i]); err != nil {
			return err
		}
	}
	return s.End(r)
}
