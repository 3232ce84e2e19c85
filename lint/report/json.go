package report

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"math"
	"unicode"
	"unicode/utf16"
	"unicode/utf8"

	"stringline/lint"
	"stringline/lint/verdict"
	"stringline/schema/quantity"
	"stringline/schema/source"
)

// ToolName is the name of this program in machine output.
const ToolName = "stringline"

// JSON writes a run as the JSON that schema/check.schema.json describes:
// numbers to 9 significant digits, ordered and indented alike on every run.
// What is not printable is written as \u escapes, so that the text is also safe
// to show.
func JSON(w io.Writer, r *lint.Result) error {
	return whole(NewJSON(w, r.Version, r.Date), r)
}

// NewJSON is [JSON] for a run that goes on: each design is written as it comes
// and not kept. Version and date are those of the run.
func NewJSON(w io.Writer, version, date string) Sink {
	return &jsonSink{w: w, version: version, date: date}
}

type jsonSink struct {
	w             io.Writer
	version, date string
	designs       int
}

// head and tail are what stands around the designs of a [document].
type head struct {
	Format  int        `json:"format"`
	Tool    toolEntry  `json:"tool"`
	Date    string     `json:"date"`
	Columns columnUnit `json:"columns"`
}

type tail struct {
	Codebooks []codebookEntry `json:"codebooks"`
	Baseline  *baselineEntry  `json:"baseline"`
	Errors    []errorEntry    `json:"errors"`
	Exit      int             `json:"exit"`
	Summary   summaryEntry    `json:"summary"`
}

func (s *jsonSink) Design(d *lint.DesignResult) error {
	before := ",\n    "
	if s.designs == 0 {
		if err := s.head(); err != nil {
			return err
		}
		before = "[\n    "
	}
	s.designs++
	text, err := indented(designEntryOf(d), "    ")
	if err != nil {
		return err
	}
	_, err = s.w.Write(append([]byte(before), text...))
	return err
}

// head writes the document's beginning, up to the list of designs.
func (s *jsonSink) head() error {
	text, err := indented(head{Format, toolEntry{ToolName, s.version}, s.date, "code_points"}, "")
	if err != nil {
		return err
	}
	_, err = s.w.Write(append(bytes.TrimSuffix(text, []byte("\n}")), ",\n  \"designs\": "...))
	return err
}

func (s *jsonSink) End(r *lint.Result) error {
	after := "\n  ],"
	if s.designs == 0 {
		if err := s.head(); err != nil {
			return err
		}
		after = "[],"
	}
	end := tail{Codebooks: make([]codebookEntry, 0, len(r.Books)), Errors: errorEntries(r.Problems), Exit: r.Exit, Summary: summaryEntry(r.Summary)}
	if r.Baseline != nil {
		end.Baseline = baselineEntryOf(r.Baseline)
	}
	for i := range r.Books {
		end.Codebooks = append(end.Codebooks, codebookEntryOf(&r.Books[i]))
	}
	text, err := indented(end, "")
	if err != nil {
		return err
	}
	_, err = fmt.Fprintf(s.w, "%s%s\n", after, bytes.TrimPrefix(text, []byte("{")))
	return err
}

func writeJSON(w io.Writer, value any) error {
	text, err := indented(value, "")
	if err != nil {
		return err
	}
	_, err = w.Write(append(text, '\n'))
	return err
}

// indented gives a value as JSON over several lines, each but the first behind
// the prefix, fit to be shown.
func indented(value any, prefix string) ([]byte, error) {
	var b bytes.Buffer
	encoder := json.NewEncoder(&b)
	encoder.SetEscapeHTML(false)
	encoder.SetIndent(prefix, "  ")
	if err := encoder.Encode(value); err != nil {
		return nil, fmt.Errorf("writing JSON: %w", err)
	}
	return bytes.TrimSuffix(asciiControls(b.Bytes()), []byte("\n")), nil
}

func marshal(value any) ([]byte, error) {
	var b bytes.Buffer
	encoder := json.NewEncoder(&b)
	encoder.SetEscapeHTML(false)
	if err := encoder.Encode(value); err != nil {
		return nil, err
	}
	return bytes.TrimSuffix(b.Bytes(), []byte("\n")), nil
}

// asciiControls writes the characters that a terminal may act on, and JSON
// leaves as they are, as \u escapes. In JSON such characters stand in strings
// alone.
func asciiControls(text []byte) []byte {
	clean := true
	for i := 0; i < len(text) && clean; {
		r, size := utf8.DecodeRune(text[i:])
		clean = r < 0x7f || unicode.IsPrint(r)
		i += size
	}
	if clean {
		return text
	}
	var b bytes.Buffer
	for _, r := range string(text) {
		switch {
		case r < 0x7f || unicode.IsPrint(r):
			b.WriteRune(r)
		case r <= 0xffff:
			fmt.Fprintf(&b, `\u%04x`, r)
		default:
			high, low := utf16.EncodeRune(r)
			fmt.Fprintf(&b, `\u%04x\u%04x`, high, low)
		}
	}
	return b.Bytes()
}

func codebookEntryOf(b *lint.BookInUse) codebookEntry {
	e := codebookEntry{
		Name: b.Name, Version: b.Version, Edition: filled(b.Edition), Digest: b.Digest, Embedded: b.Embedded,
		Params: make([]parameterEntry, 0, len(b.Parameters)),
	}
	for i := range b.Parameters {
		e.Params = append(e.Params, parameterEntryOf(&b.Parameters[i]))
	}
	return e
}

func parameterEntryOf(p *lint.ParameterInUse) parameterEntry {
	entry := parameterEntry{Name: p.Name, Unit: p.Unit, SetAt: place(p.SetAt)}
	switch {
	case p.Value != nil:
		entry.Value = scalar{number(p.Value)}
	case p.Yes != nil:
		entry.Value = scalar{*p.Yes}
	case p.Word != "":
		entry.Value = scalar{p.Word}
	}
	return entry
}

func designEntryOf(d *lint.DesignResult) designEntry {
	e := designEntry{
		File: d.File, Workshop: filled(d.Workshop), Name: d.Name, Revision: filled(d.Revision), Digest: d.Digest,
		Verdicts: make([]verdictEntry, 0, len(d.Verdicts)), Errors: errorEntries(d.Problems), Supply: []supplyEntry{},
	}
	found := findings(d.Verdicts)
	for _, w := range wantedOf(found) {
		entry := supplyEntry{ID: filled(w.id), Because: filled(w.because), Grade: gradeWord(w.grade)}
		for _, n := range w.of {
			entry.Verdicts = append(entry.Verdicts, found[n].Key())
		}
		e.Supply = append(e.Supply, entry)
	}
	for i := range d.Verdicts {
		e.Verdicts = append(e.Verdicts, verdictEntryOf(&d.Verdicts[i]))
	}
	return e
}

func verdictEntryOf(v *verdict.Verdict) verdictEntry {
	e := verdictEntry{
		Key: v.Key(), Rule: v.Rule, About: v.About, Which: filled(v.Which),
		Verdict: outcomeWord(v.Outcome), Grade: gradeWord(v.Grade), BookGrade: gradeWord(v.BookGrade),
		Title: v.Title, Message: v.Message, Limits: make([]measuredEntry, 0, len(v.Limits)),
		Headroom: number(v.Headroom), Because: filled(v.Because),
		Missing: list(v.Missing), Assumed: list(v.Assumed), Params: make([]string, 0, len(v.Parameters)),
		Remedy: filled(v.Remedy), Source: v.Source, At: make([]placeEntry, 0, len(v.At)),
	}
	if v.Relation != "" {
		relation := relationWord(v.Relation)
		e.Relation = &relation
	}
	if v.Is != nil {
		is := measuredEntryOf(v.Is)
		e.Is = &is
	}
	for i := range v.Limits {
		e.Limits = append(e.Limits, measuredEntryOf(&v.Limits[i]))
	}
	if v.Spare != nil {
		if value := number(&v.Spare.Value); value != nil {
			e.Spare = &spareEntry{*value, v.Spare.Unit}
		}
	}
	for _, p := range v.Parameters {
		e.Params = append(e.Params, p.Name)
	}
	if v.Waiver != nil {
		e.Waiver = &waiverEntry{v.Waiver.Reason, v.Waiver.ApprovedBy, v.Waiver.Expires, place(v.Waiver.At)}
	}
	if v.Accepted != nil {
		e.Accepted = acceptedEntryOf(v.Accepted)
	}
	if v.Fault != nil {
		e.Fault = &faultEntry{v.Fault.Message, place(v.Fault.At)}
	}
	for _, at := range v.At {
		if p := place(at); p != nil {
			e.At = append(e.At, *p)
		}
	}
	return e
}

func acceptedEntryOf(a *verdict.Acceptance) *acceptedEntry {
	return &acceptedEntry{
		Since: a.Was.Since, Verdict: outcomeWord(a.Was.Outcome), Grade: gradeWord(a.Was.Grade), Found: filled(a.Was.Found),
		Headroom: number(a.Was.Headroom), Worse: filled(a.Worse), At: place(a.Was.At),
	}
}

func baselineEntryOf(b *lint.BaselineUse) *baselineEntry {
	e := &baselineEntry{File: b.Name, Accepted: b.Held, Worse: b.Worse, New: b.Fresh, Gone: make([]goneEntry, 0, len(b.Gone))}
	for i := range b.Gone {
		g := &b.Gone[i]
		e.Gone = append(e.Gone, goneEntry{File: g.File, Rule: g.Rule, About: g.About, Which: filled(g.Which), Since: g.Since, At: place(g.At)})
	}
	return e
}

func measuredEntryOf(m *verdict.Measured) measuredEntry {
	e := measuredEntry{ID: filled(m.ID), Formula: filled(m.Formula), Unit: m.Unit, AtLeast: number(m.AtLeast)}
	switch {
	case m.Value != nil:
		if value := number(m.Value); value != nil {
			e.Value = scalar{*value}
		}
	case m.Word != nil:
		e.Value = scalar{*m.Word}
	case m.Yes != nil:
		e.Value = scalar{*m.Yes}
	}
	return e
}

func errorEntries(problems source.Problems) []errorEntry {
	entries := make([]errorEntry, 0, len(problems))
	for i := range problems {
		p := &problems[i]
		entries = append(entries, errorEntry{
			Kind: p.Kind, Message: p.Message, Block: filled(p.Block), Expected: filled(p.Expected),
			Found: filled(p.Found), Near: filled(p.Near), At: place(p.At),
		})
	}
	return entries
}

// place gives a range, with noughts where only the file is known; null where
// not even that is.
func place(r source.Range) *placeEntry {
	if r.File == "" {
		return nil
	}
	return &placeEntry{r.File, r.Start.Line, r.Start.Column, r.End.Line, r.End.Column}
}

// number rounds for machine output. NaN and infinities, which JSON cannot hold,
// are unknown.
func number(v *float64) *float64 {
	if v == nil || math.IsNaN(*v) || math.IsInf(*v, 0) {
		return nil
	}
	rounded := quantity.Round(*v)
	return &rounded
}

func filled(text string) *string {
	if text == "" {
		return nil
	}
	return &text
}

func list(texts []string) []string {
	if texts == nil {
		return []string{}
	}
	return texts
}
