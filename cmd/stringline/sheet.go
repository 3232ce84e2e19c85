package main

import (
	"errors"
	"fmt"
	"io"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"stringline/lint"
	"stringline/lint/commission"
	"stringline/lint/report/sheet"
)

func (s *streams) sheet(code *int) *cobra.Command {
	c := &cobra.Command{
		Use:   "sheet DESIGN -o FILE.html",
		Short: "the dossier of a design as one page, or a part of it",
		Long: "Writes what goes to the site and into the file: one HTML page with the one-line\n" +
			"diagram, curves, verdicts with their workings, settings, parts, wires, labels and\n" +
			"the commissioning sheet. It needs no network and no script, and prints on A4 and\n" +
			"Letter. --diagram writes one picture as SVG: oneline, iv.CHARGER.N, day.CHARGER or\n" +
			"year; --parts csv the parts list. - reads the design from standard input; -o -\n" +
			"writes to standard output. A file is written whole or not at all.\n\n" +
			"Exit status as that of check: 1 where something is found against the design, and\n" +
			"the sheet is written all the same and says so.",
		Example: "  stringline sheet huts/larch-col.design.hcl -o larch-col.html\n" +
			"  stringline sheet huts/larch-col.design.hcl --diagram iv.main.1 -o iv.svg\n" +
			"  stringline sheet huts/larch-col.design.hcl --parts csv -o parts.csv",
		Args: arguments("DESIGN"),
	}
	option := c.Flags()
	option.StringP("output", "o", "", "write to `FILE`; - is standard output")
	option.String("diagram", "", "write the picture `NAME` alone, as SVG")
	option.String("parts", "", "write the parts list alone, in `FORM` csv")
	option.String("cell-temperature", "", "`TEMPERATURE` that the meters are expected at: 41degC")
	option.String("irradiance", "", "`LIGHT` that the meters are expected at: 820W/m2")
	option.String("reject-from", "fix", "least `GRADE` with exit status 1: stop, fix or advise")
	option.String("date", "", "`DAY` that ends waivers, as 2026-05-02; default today")
	outsideOptions(c)
	c.RunE = func(c *cobra.Command, args []string) error {
		want, err := sheetRequestOf(c)
		if err != nil {
			return err
		}
		if want.moment.CellTemperature, err = measuredOption(c, "cell-temperature", "degC", -60, 120); err != nil {
			return err
		}
		if want.moment.Irradiance, err = measuredOption(c, "irradiance", "W/m2", 0, 1600); err != nil {
			return err
		}
		r, d, err := s.designToCommission(c, args[0])
		if err != nil {
			return err
		}
		want.moment.Date, want.moment.Books = r.Date, r.Books
		if err := want.known(d); err != nil {
			return err
		}
		*code = s.deliver(want, r, d)
		return nil
	}
	return c
}

// sheetRequest is what is to be written, and where to.
type sheetRequest struct {
	file, diagram, parts string
	moment               commission.Conditions
}

func sheetRequestOf(c *cobra.Command) (*sheetRequest, error) {
	want := &sheetRequest{}
	for _, option := range []struct {
		name string
		to   *string
	}{{"output", &want.file}, {"diagram", &want.diagram}, {"parts", &want.parts}} {
		if err := named(c, option.name, option.to); err != nil {
			return nil, err
		}
	}
	switch {
	case want.parts != "" && want.parts != "csv":
		return nil, fmt.Errorf("--parts %q is not known; %s", want.parts, meant(want.parts, []string{"csv"}))
	case want.parts != "" && want.diagram != "":
		return nil, errors.New("--diagram and --parts are two files: ask for one at a time")
	case want.file == "":
		return nil, errors.New("sheet needs -o FILE to write to, or -o - for standard output")
	}
	return want, want.named()
}

// named holds the output to the ending of its kind. No file that a design reads
// (its parts, workshop, weather, codebooks) ends like that, so none can be
// written over by a slip of the hand.
func (want *sheetRequest) named() error {
	what, endings := "a sheet", []string{".html", ".htm"}
	switch {
	case want.diagram != "":
		what, endings = "a picture", []string{".svg"}
	case want.parts != "":
		what, endings = "a parts list", []string{".csv"}
	}
	if want.file == "-" || slices.Contains(endings, strings.ToLower(filepath.Ext(want.file))) {
		return nil
	}
	return fmt.Errorf("-o %s: the name of %s ends in %s, so that it cannot take the place of a design or of what a design reads", want.file, what, endings[0])
}

// known refuses a picture that the design does not have.
func (want *sheetRequest) known(d *lint.DesignResult) error {
	if want.diagram == "" {
		return nil
	}
	return sheet.Diagram(io.Discard, d, want.diagram)
}

// deliver writes what is asked for and gives the exit status, which it tells.
func (s *streams) deliver(want *sheetRequest, r *lint.Result, d *lint.DesignResult) int {
	build := func(w io.Writer) error {
		switch {
		case want.diagram != "":
			return sheet.Diagram(w, d, want.diagram)
		case want.parts != "":
			return sheet.Parts(w, d)
		}
		return sheet.Write(w, r, d, want.moment)
	}
	if want.file == "-" {
		code := s.write(r.Exit, build)
		if code == r.Exit {
			s.say(sheet.Told(r, d))
		}
		return code
	}
	var b strings.Builder
	if err := build(&b); err != nil {
		return s.fail(err)
	}
	if err := writeOver(want.file, []byte(b.String())); err != nil {
		return s.fail(fmt.Errorf("writing %s: %w", want.file, err))
	}
	s.say(want.file + " written; " + sheet.Told(r, d))
	return r.Exit
}
