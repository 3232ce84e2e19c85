package main

import (
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"stringline/lint/report"
)

func (s *streams) workings(code *int) *cobra.Command {
	c := &cobra.Command{
		Use:   "workings DESIGN FACT",
		Short: "how one number came about, line by line",
		Long: "Shows how a fact of a design came about: a worksheet of numbered lines down\n" +
			"to file, line and column, with the method, its source and the rules that use\n" +
			"the fact. - reads the design from standard input.",
		Example: "  stringline workings huts/larch-col.design.hcl pv_input.main.1.voc_cold",
		Args:    arguments("DESIGN", "FACT"),
	}
	c.Flags().String("as", "text", "`FORM` of the output: text or json")
	outsideOptions(c)
	c.RunE = func(c *cobra.Command, args []string) error {
		form, err := oneOf(c, "as", "text", "json")
		if err != nil {
			return err
		}
		opts, err := s.page(c)
		if err != nil {
			return err
		}
		d, state, err := s.oneDesign(c, args[0])
		if err != nil {
			return err
		}
		if _, ok := d.System.Work(args[1]); !ok {
			return fmt.Errorf("%s has no fact %q%s", d.File, args[1], nearFact(args[1], report.FactNames(d.System)))
		}
		*code = s.write(state, func(w io.Writer) error {
			if form == "json" {
				return report.WorksheetJSON(w, d, args[1])
			}
			return report.Worksheet(w, d, args[1], opts)
		})
		return nil
	}
	return c
}
