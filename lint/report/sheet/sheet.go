// Package sheet makes a design's dossier: one HTML page that a practitioner
// carries to the roof, hands to the customer and files with the inspector.
//
// [Write] makes the page, [Diagram] one of its pictures and [Parts] its parts list
// by itself. The page stands alone: no network, no script, no other file, and a
// content security policy that forbids all of them. It is made for a telephone
// (360 pixels), for paper (A4 and Letter) and for the dark, and for readers who
// hear it: landmarks, headings in order, captions, heads of rows and columns, and
// a text beside every picture. Colors after the safety-sign standards (ISO 3864,
// from memory): red for a stop, amber for a fix, blue for what to supply; none of
// them says anything that words do not.
//
// Nothing is computed here. Every figure is a fact, stands in a verdict or in the
// commissioning plan; unknown ones are empty entries. What comes from a design is
// escaped, what is not printable in it shown as its code, and its direction of
// writing kept to itself.
package sheet

import (
	"bytes"
	_ "embed"
	"fmt"
	"html/template"
	"io"
	"strings"

	"stringline/lint"
	"stringline/lint/commission"
	"stringline/lint/report"
	"stringline/lint/report/plot"
	"stringline/lint/verdict"
)

//go:embed page.html
var pageText string

//go:embed page.css
var pageStyle string

var pageTemplate = template.Must(template.New("page").Funcs(template.FuncMap{
	"words": words, "given": given, "plain": report.Escape,
	"breakable": func(text string) template.HTML { return breakable(words(text)) },
	"blank":     func(text string) bool { return strings.Contains(text, "___") },
	"worksheet": func(lines []report.WorkLine, bears map[int]bool, caption string) worksheet {
		return worksheet{caption, bears != nil, lines, bears}
	},
	"refs":        func(lines []int) template.HTML { return cell{Refs: lines}.Lines() },
	"itemCaption": func(number int) string { return fmt.Sprintf("Workings of item %d", number) },
}).Parse(pageText))

// words sets a text of the program: a rule's sentence, workings, a fact's meaning.
// Names from the design may stand in it.
func words(text string) string { return report.Escape(report.Typeset(text)) }

// given sets a text from the design, whatever direction it is written in.
func given(text string) template.HTML {
	return template.HTML("<bdi>" + template.HTMLEscapeString(report.Escape(text)) + "</bdi>")
}

// page is all that the template shows.
type page struct {
	Style     template.CSS
	Version   string
	Name      string
	Revision  string
	File      string
	Date      string
	Digest    string
	Verdict   string // one sentence
	Grade     verdict.Grade
	Counts    string
	Caution   string
	Problems  []problem
	Key       []*table
	Findings  []finding
	OneLine   []picture // narrow and wide
	Folded    string    // what paper leaves out
	Headroom  *limits   // those with little left, and all that are broken or unproven
	Roomy     *limits   // the others
	Pictures  []picture
	Clipping  []*table
	Settings  *section
	Parts     *table
	Wires     []*table
	Labels    *table
	Plan      *plan
	Assumed   []string
	Waivers   *table
	Met       *table
	Apart     *table // verdicts that do not apply
	Workings  []report.WorkLine
	Bears     map[int]bool // lines that a finding rests on; never nil
	Codebooks *table
	Settled   *table // parameters
	Sources   []string
	Inputs    *table
}

// picture is one diagram with the same in words and figures.
type picture struct {
	Name, Title string
	Class       string
	SVG         template.HTML
	Words       string
	Table       *table
}

// worksheet is some of the numbered lines. Where Anchor is set they are what
// references lead to. Lines that bear a finding are on paper in any case.
type worksheet struct {
	Caption string
	Anchor  bool
	Lines   []report.WorkLine
	Bears   map[int]bool
}

// problem is an error in what was read.
type problem struct{ Where, Block, Message, Hint string }

// Write writes the sheet of one design of a run. The design could be read, if
// perhaps not all of it: its System is not nil. The commissioning sheet tells what
// meters should show at the moment's light and warmth, where they are given. Errors
// are those of w, or of a picture.
func Write(w io.Writer, r *lint.Result, d *lint.DesignResult, moment commission.Conditions) error {
	if d.System == nil {
		return fmt.Errorf("making the sheet of %s: the design could not be read", d.File)
	}
	p, err := pageOf(r, d, moment)
	if err != nil {
		return fmt.Errorf("making the sheet of %s: %w", d.File, err)
	}
	var b bytes.Buffer
	if err := pageTemplate.Execute(&b, p); err != nil {
		return fmt.Errorf("making the sheet of %s: %w", d.File, err)
	}
	_, err = w.Write(b.Bytes())
	return err
}

// Told says in one line what a run made of the design, for people who see only
// that a file was written.
func Told(r *lint.Result, d *lint.DesignResult) string {
	sentence, _ := report.Summary(d, r.Problems)
	return fmt.Sprintf("exit status %d. %s", r.Exit, sentence)
}

func pageOf(r *lint.Result, d *lint.DesignResult, moment commission.Conditions) (*page, error) {
	sentence, grade := report.Summary(d, r.Problems)
	p := &page{
		Style: template.CSS(plot.Colors + plot.Style + pageStyle), Version: r.Version,
		Name: d.Name, Revision: d.Revision, File: d.File, Date: r.Date, Digest: d.Digest,
		Verdict: sentence, Grade: grade, Counts: report.Counts(&r.Summary), Caution: report.Caution,
		Assumed: report.Assumptions(d), Bears: map[int]bool{},
	}
	p.headroom(d)
	p.problems(r, d)
	p.key(d)
	p.verdicts(d)
	p.clipping(d)
	p.lists(d)
	p.commissioning(d, moment)
	p.sources(r, d)
	p.Folded = p.folded()
	return p, p.pictures(d)
}
