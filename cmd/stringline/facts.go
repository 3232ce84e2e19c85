package main

import (
	"errors"
	"fmt"
	"io"
	"slices"
	"time"

	"github.com/spf13/cobra"

	"stringline/lint"
	"stringline/lint/report"
)

func (s *streams) facts(code *int) *cobra.Command {
	c := &cobra.Command{
		Use:   "facts DESIGN",
		Short: "the computed facts of a design",
		Long: "Shows every fact of one design, subject by subject: what its data sheets and\n" +
			"settings say and what follows from them. An unknown fact is an empty entry\n" +
			"with what to supply. - reads the design from standard input. --series may be\n" +
			"repeated.",
		Example: "  stringline facts huts/larch-col.design.hcl\n" +
			"  stringline facts huts/larch-col.design.hcl --as csv > facts.csv\n" +
			"  stringline facts huts/larch-col.design.hcl --as csv --series pv_input.main.1.curve_cold",
		Args: arguments("DESIGN"),
	}
	c.Flags().String("as", "text", "`FORM` of the output: text, json or csv")
	c.Flags().StringArray("series", nil, "with --as csv: the series `FACT`, a row for each point")
	outsideOptions(c)
	c.RunE = func(c *cobra.Command, args []string) error {
		form, err := oneOf(c, "as", "text", "json", "csv")
		if err != nil {
			return err
		}
		series, err := names(c, "series")
		if err != nil {
			return err
		}
		if len(series) > 0 && form != "csv" {
			return errors.New("--series gives the points of a series as a table: it needs --as csv")
		}
		opts, err := s.page(c)
		if err != nil {
			return err
		}
		d, state, err := s.oneDesign(c, args[0])
		if err != nil {
			return err
		}
		*code = s.write(state, func(w io.Writer) error {
			switch form {
			case "json":
				return report.FactsJSON(w, d)
			case "csv":
				if len(series) > 0 {
					return report.SeriesCSV(w, d.System, series)
				}
				return report.FactsCSV(w, d.System)
			}
			return report.Facts(w, d, opts)
		})
		return nil
	}
	return c
}

// oneDesign judges exactly one design. The exit status is 2 where something of
// it could not be read: facts that rest on it are unknown then.
func (s *streams) oneDesign(c *cobra.Command, path string) (*lint.DesignResult, int, error) {
	one := request{paths: []string{path}, date: s.now().Format(time.DateOnly)}
	if err := one.outside(c); err != nil {
		return nil, 2, err
	}
	r, err := s.judge(c.Context(), one)
	if err != nil {
		return nil, 2, err
	}
	if len(r.Designs) != 1 {
		if len(r.Problems) > 0 {
			return nil, 2, r.Problems
		}
		return nil, 2, fmt.Errorf("%s holds %d designs; name one", path, len(r.Designs))
	}
	d := &r.Designs[0]
	problems := slices.Concat(r.Problems, d.Problems)
	switch {
	case d.System == nil:
		return nil, 2, fmt.Errorf("%s could not be read:\n%w", d.File, problems)
	case len(problems) > 0:
		s.say(problems.Error())
		return d, 2, nil
	}
	return d, 0, nil
}
