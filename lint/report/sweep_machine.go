package report

import (
	"encoding/csv"
	"fmt"
	"io"
	"strconv"

	"stringline/lint/facts"
	"stringline/lint/sweep"
	"stringline/lint/verdict"
	"stringline/schema/quantity"
)

// sweepDocument is the JSON of a sweep, format 1.
type sweepDocument struct {
	Format      int              `json:"format" jsonschema:"number of this format; keys are added within one, never removed or retyped"`
	Tool        toolEntry        `json:"tool"`
	Date        string           `json:"date" jsonschema:"yyyy-mm-dd, the day that decides the ends of waivers"`
	File        string           `json:"file"`
	Design      string           `json:"design"`
	Revision    *string          `json:"revision"`
	Digest      string           `json:"digest" jsonschema:"over all files of the design as it stands"`
	Axes        []axisEntry      `json:"axes" jsonschema:"one or two"`
	Facts       []columnEntry    `json:"facts"`
	Points      []pointEntry     `json:"points" jsonschema:"the first axis turns fastest"`
	Turns       []sweepTurnEntry `json:"turns" jsonschema:"where verdicts turn"`
	Throughout  []findingEntry   `json:"throughout" jsonschema:"findings that stand at every point"`
	WithoutYear bool             `json:"without_year" jsonschema:"the year of sun was left out"`
	NotPut      []string         `json:"not_put" jsonschema:"rules that could not be put for want of the year"`
	Exit        int              `json:"exit" jsonschema:"0; 2 where a point could not be read"`
}

type axisEntry struct {
	ID        string   `json:"id"`
	Unit      string   `json:"unit" jsonschema:"of its values; empty for bare numbers and words"`
	Values    []scalar `json:"values"`
	Between   bool     `json:"between" jsonschema:"turning points were looked for between the values"`
	Tolerance *float64 `json:"tolerance" jsonschema:"how close they were found, in unit"`
	Codebook  *string  `json:"codebook" jsonschema:"whose parameter it is, or whose question it answers; null for an attribute of the language"`
	InForce   *string  `json:"in_force" jsonschema:"what a parameter is set to where no sweep varies it; null for what is no parameter"`
}

type columnEntry struct {
	ID    string `json:"id"`
	Unit  string `json:"unit"`
	Means string `json:"means"`
}

type pointEntry struct {
	At     []scalar     `json:"at" jsonschema:"the value of each axis"`
	Values []scalar     `json:"values" jsonschema:"of facts, in their order; null where unknown"`
	Limits []*float64   `json:"limits" jsonschema:"what a rule allows each fact, in its unit; null where none does"`
	Stop   int          `json:"stop"`
	Fix    int          `json:"fix"`
	Advise int          `json:"advise"`
	Errors []errorEntry `json:"errors"`
}

type sweepTurnEntry struct {
	Key    string       `json:"key"`
	Rule   string       `json:"rule"`
	About  string       `json:"about"`
	Which  *string      `json:"which"`
	Grade  gradeWord    `json:"grade"`
	Title  string       `json:"title"`
	Axis   string       `json:"axis" jsonschema:"id of the axis along which it turns"`
	Other  scalar       `json:"other" jsonschema:"value of the other axis; null where there is none"`
	Before *outcomeWord `json:"before" jsonschema:"verdict at low; null where there is none"`
	After  *outcomeWord `json:"after" jsonschema:"verdict at high; null where there is none"`
	Low    scalar       `json:"low"`
	High   scalar       `json:"high"`
	Unit   string       `json:"unit"`
	Says   string       `json:"says" jsonschema:"in words, rounded to the side that is met"`
}

// SweepSchema gives the JSON Schema of what [SweepJSON] writes. A test holds
// schema/sweep.schema.json to it.
func SweepSchema() ([]byte, error) {
	return schemaOf[sweepDocument]("what stringline sweep --as json writes, format 1", nil)
}

// SweepJSON writes a sweep as JSON.
func SweepJSON(w io.Writer, r *sweep.Result, version, date string) error {
	doc := sweepDocument{
		Format: Format, Tool: toolEntry{ToolName, version}, Date: date, File: r.Base.File, Design: r.Base.Name, Revision: filled(r.Base.Revision), Digest: r.Base.Digest,
		Axes: []axisEntry{}, Facts: []columnEntry{}, Points: []pointEntry{}, Turns: []sweepTurnEntry{}, Throughout: findingEntries(r.Throughout), WithoutYear: r.WithoutYear, NotPut: list(r.NotPut), Exit: r.Exit(),
	}
	for _, a := range r.Axes {
		e := axisEntry{ID: a.ID, Unit: a.Unit, Values: []scalar{}, Between: a.Between, Codebook: filled(a.Book), InForce: filled(a.InForce)}
		if a.Between {
			e.Tolerance = number(&a.Tolerance)
		}
		for _, p := range a.Points {
			e.Values = append(e.Values, axisScalar(a, p))
		}
		doc.Axes = append(doc.Axes, e)
	}
	for _, c := range r.Facts {
		doc.Facts = append(doc.Facts, columnEntry{c.ID, c.Unit, c.Means})
	}
	for i := range r.Rows {
		doc.Points = append(doc.Points, pointEntryOf(r, &r.Rows[i]))
	}
	for i := range r.Turns {
		t := &r.Turns[i]
		a := r.Axes[t.Axis]
		e := sweepTurnEntry{Key: t.Key(), Rule: t.Rule, About: t.About, Which: filled(t.Which), Grade: gradeWord(t.Grade), Title: t.Title, Axis: a.ID,
			Before: outcomeOrNone(t.Before), After: outcomeOrNone(t.After), Low: axisScalar(a, t.Low), High: axisScalar(a, t.High), Unit: a.Unit, Says: TurnText(r, t)}
		if t.Other >= 0 {
			e.Other = axisScalar(r.Axes[1-t.Axis], r.Axes[1-t.Axis].Points[t.Other])
		}
		doc.Turns = append(doc.Turns, e)
	}
	return writeJSON(w, doc)
}

func outcomeOrNone(o verdict.Outcome) *outcomeWord {
	if o == "" {
		return nil
	}
	word := outcomeWord(o)
	return &word
}

// axisScalar is a value of an axis: a number where it is one.
func axisScalar(a *sweep.Axis, p sweep.Point) scalar {
	if a.Number() {
		if n := number(&p.Value); n != nil {
			return scalar{*n}
		}
	}
	switch p.Text {
	case "true":
		return scalar{true}
	case "false":
		return scalar{false}
	}
	return scalar{p.Text}
}

func pointEntryOf(r *sweep.Result, row *sweep.Row) pointEntry {
	e := pointEntry{At: []scalar{}, Values: []scalar{}, Limits: []*float64{}, Stop: row.Findings[0], Fix: row.Findings[1], Advise: row.Findings[2], Errors: errorEntries(row.Problems)}
	for i, a := range r.Axes {
		e.At = append(e.At, axisScalar(a, a.Points[row.At[i]]))
	}
	for _, c := range r.Facts {
		f := row.Values[c.ID]
		e.Values = append(e.Values, factScalar(&f))
		var limit *float64
		if v, ok := row.Limits[c.ID]; ok {
			limit = number(&v)
		}
		e.Limits = append(e.Limits, limit)
	}
	return e
}

// SweepCSV writes a sweep as comma-separated values (RFC 4180): one line a point,
// with the value of each axis, the facts in their units, and how many findings of
// each grade there are. A fact whose limit moves has what is allowed behind it. What
// is unknown is empty.
func SweepCSV(w io.Writer, r *sweep.Result) error {
	out := csv.NewWriter(w)
	var head []string
	name := func(id, unit string) {
		if unit != "" && unit != "word" && unit != "yes_no" {
			id += " [" + unit + "]"
		}
		head = append(head, id)
	}
	for _, a := range r.Axes {
		name(a.ID, a.Unit)
	}
	for _, c := range r.Facts {
		name(c.ID, c.Unit)
		if c.LimitMoves {
			name("allowed for "+c.ID, c.Unit)
		}
	}
	rows := [][]string{append(head, "stop", "fix", "advise", "errors")}
	for i := range r.Rows {
		row := &r.Rows[i]
		var cells []string
		for n, a := range r.Axes {
			p := a.Points[row.At[n]]
			if a.Number() {
				cells = append(cells, strconv.FormatFloat(p.Value, 'g', -1, 64))
			} else {
				cells = append(cells, safeCell(p.Text))
			}
		}
		for _, c := range r.Facts {
			f, ok := row.Values[c.ID]
			if !ok {
				f = facts.Fact{}
			}
			cells = append(cells, factCell(&f))
			if limit, ok := row.Limits[c.ID]; c.LimitMoves && ok {
				cells = append(cells, strconv.FormatFloat(quantity.Round(limit), 'g', -1, 64))
			} else if c.LimitMoves {
				cells = append(cells, "")
			}
		}
		for _, n := range append(row.Findings[:], len(row.Problems)) {
			cells = append(cells, strconv.Itoa(n))
		}
		rows = append(rows, cells)
	}
	if err := out.WriteAll(rows); err != nil {
		return fmt.Errorf("writing a sweep as CSV: %w", err)
	}
	return nil
}

// safeCell keeps a word from being taken for a formula by a spreadsheet.
func safeCell(text string) string {
	f := facts.Fact{Kind: facts.Word, Known: true, Word: text}
	return factCell(&f)
}
