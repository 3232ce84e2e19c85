package report

import (
	"io"

	"stringline/lint"
	"stringline/lint/facts"
)

// worksheetDocument is the JSON of a worksheet, format 1. Lines refer to each
// other by number; the last one is the fact that was asked for.
type worksheetDocument struct {
	Format int             `json:"format"`
	File   string          `json:"file"`
	Design string          `json:"design"`
	Fact   string          `json:"fact"`
	Lines  []worksheetLine `json:"lines"`
	Use    []worksheetUse  `json:"use"`
}

type worksheetLine struct {
	Line    int         `json:"line"`
	ID      string      `json:"id"`
	Means   string      `json:"means"`
	Value   scalar      `json:"value"`
	Unit    string      `json:"unit"`
	Over    *overEntry  `json:"over"`
	AtLeast *float64    `json:"at_least"`
	Inputs  []int       `json:"inputs"`
	Formula *string     `json:"formula"`
	Says    *string     `json:"says"`
	Source  *string     `json:"source"`
	Note    *string     `json:"note"`
	Missing []string    `json:"missing"`
	Assumed []string    `json:"assumed"`
	At      *placeEntry `json:"at"`
}

type worksheetUse struct {
	Key     string      `json:"key"`
	Verdict outcomeWord `json:"verdict"`
}

// WorksheetJSON writes how one fact came about as JSON. It fails where the
// design has no such fact.
func WorksheetJSON(w io.Writer, d *lint.DesignResult, id string) error {
	if d.System == nil {
		return unknownFact(id)
	}
	root, ok := d.System.Work(id)
	if !ok {
		return unknownFact(id)
	}
	doc := worksheetDocument{Format: Format, File: d.File, Design: d.Name, Fact: id, Use: []worksheetUse{}}
	for _, l := range worksheetOf(root) {
		f := &l.work.Fact
		line := worksheetLine{
			Line: l.number, ID: f.ID, Means: l.work.Entry.Means, Value: factScalar(f), Unit: f.Unit, Inputs: l.inputs,
			Formula: filled(l.work.Entry.Formula), Says: filled(f.Says), Note: filled(l.work.Note),
			Missing: list(f.Missing), Assumed: list(f.Assumed), At: place(l.work.At),
		}
		if line.Inputs == nil {
			line.Inputs = []int{}
		}
		if !l.work.Entry.Attribute {
			line.Source = filled(l.work.Entry.Source)
		}
		if f.Kind == facts.Series && f.Known {
			line.Over = &overEntry{Unit: l.work.Entry.Over, Values: inUnits(f.Over, l.work.Entry.Over)}
		}
		if f.AtLeast != nil {
			bound := inUnit(*f.AtLeast, f.Unit)
			line.AtLeast = number(&bound)
		}
		doc.Lines = append(doc.Lines, line)
	}
	for _, v := range uses(d, id) {
		doc.Use = append(doc.Use, worksheetUse{v.Key(), outcomeWord(v.Outcome)})
	}
	return writeJSON(w, doc)
}

// overEntry is what a series runs over.
type overEntry struct {
	Unit   string    `json:"unit"`
	Values []float64 `json:"values"`
}

// inUnits gives SI values in a unit, as machine output rounds them.
func inUnits(list []float64, unit string) []float64 {
	values := make([]float64, 0, len(list))
	for _, v := range list {
		in := inUnit(v, unit)
		if n := number(&in); n != nil {
			values = append(values, *n)
		}
	}
	return values
}

func factScalar(f *facts.Fact) scalar {
	if !f.Known {
		return scalar{}
	}
	switch f.Kind {
	case facts.Word:
		return scalar{f.Word}
	case facts.YesNo:
		return scalar{f.Yes}
	case facts.Series, facts.List:
		return scalar{inUnits(f.List, f.Unit)}
	}
	value := inUnit(f.SI, f.Unit)
	if n := number(&value); n != nil {
		return scalar{*n}
	}
	return scalar{}
}
