// Package plot draws a design's series as SVG: the curves of each controller
// input against the controller's window and limits, each charger's power through
// a clear day of June and of December, and the year by month.
//
// A picture has a name: iv.CHARGER.N, day.CHARGER, year. [Draw] writes it to stand
// in a page, [Alone] as a file of its own, [Table] gives the same figures for
// those who read them. Nothing is computed here but where ink goes: every number
// is a fact, and stands beside its path in plain numbers (data-x, data-y and
// their units), so that a picture can be read back.
//
// A picture is 360 units wide and is set in letters of 11 units or more, so that
// it can be read at 320 pixels. Curves differ by their dashes and carry their names; color
// says nothing by itself. Colors are the page's custom properties: --ink, --paper,
// --faint, --stop, --fix, --supply.
package plot

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"stringline/lint/facts"
	"stringline/schema/source"
)

// Names lists the pictures that can be drawn of a design.
func Names(s *facts.System) []string {
	var names []string
	for _, in := range s.Subjects("pv_inputs") {
		names = append(names, "iv."+strings.TrimPrefix(in.ID(), "pv_input."))
	}
	for _, c := range s.Subjects("chargers") {
		if len(inputsOf(s, c)) > 0 {
			names = append(names, "day."+strings.TrimPrefix(c.ID(), "charger."))
		}
	}
	if len(s.Subjects("banks")) > 0 {
		names = append(names, "year")
	}
	return names
}

// inputsOf gives the inputs in use of a charger.
func inputsOf(s *facts.System, charger *facts.Subject) []*facts.Subject {
	var found []*facts.Subject
	for _, in := range s.Subjects("pv_inputs") {
		if slices.Contains(in.Linked("charger"), charger) {
			found = append(found, in)
		}
	}
	return found
}

// UnknownError says that a design has no picture of a name.
type UnknownError struct {
	Name, Near string // Near is the picture that may have been meant, or ""
	Known      []string
}

func (e *UnknownError) Error() string {
	switch {
	case e.Near != "":
		return fmt.Sprintf("no diagram %q; did you mean %q?", e.Name, e.Near)
	case len(e.Known) == 0:
		return fmt.Sprintf("no diagram %q; the design has nothing to draw one of", e.Name)
	}
	return fmt.Sprintf("no diagram %q; there are %s", e.Name, strings.Join(e.Known, ", "))
}

// Unknown makes the error for a name that is none of the known ones.
func Unknown(name string, known []string) error {
	return &UnknownError{Name: name, Near: source.Nearest(name, known), Known: known}
}

// Draw writes a picture as an <svg> element for a page that holds [Style].
// Errors are those of w, or an [UnknownError].
func Draw(w io.Writer, s *facts.System, name string) error { return draw(w, s, name, false) }

// Alone writes a picture as an SVG file that is complete by itself: with its
// styles, a title that can be seen, and a background.
func Alone(w io.Writer, s *facts.System, name string) error { return draw(w, s, name, true) }

func draw(w io.Writer, s *facts.System, name string, alone bool) error {
	f, err := figureOf(s, name, alone)
	if err != nil {
		return err
	}
	_, err = io.WriteString(w, f.svg())
	return err
}

func figureOf(s *facts.System, name string, alone bool) (*figure, error) {
	kind, rest, _ := strings.Cut(name, ".")
	switch kind {
	case "iv":
		if in, ok := s.Subject("pv_input." + rest); ok {
			return curves(s, in, newFigure(name, alone)), nil
		}
	case "day":
		c, ok := s.Subject("charger." + rest)
		if in, isInput := s.Subject("pv_input." + rest); !ok && isInput {
			c, ok = in.Linked("charger")[0], true // an input's day is that of its charger: they share its limit
		}
		if ok && len(inputsOf(s, c)) > 0 {
			return days(s, c, newFigure(name, alone)), nil
		}
	case "year":
		if banks := s.Subjects("banks"); rest == "" && len(banks) > 0 {
			return year(s, banks, newFigure(name, alone)), nil
		}
	}
	return nil, Unknown(name, Names(s))
}

// Row is one line of the table that says what a picture shows.
type Row struct {
	Head   string // what the line is about
	Values []string
}

// Describe gives a picture in words, and as a table: the heads of its columns
// and its lines. Unknown figures are empty entries.
func Describe(s *facts.System, name string) (words string, heads []string, rows []Row, err error) {
	f, err := figureOf(s, name, false)
	if err != nil {
		return "", nil, nil, err
	}
	return strings.Join(f.words, " "), f.heads, f.rows, nil
}
