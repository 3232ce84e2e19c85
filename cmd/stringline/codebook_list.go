package main

import (
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"stringline/lint"
	"stringline/lint/report"
)

func (s *streams) codebookList(code *int) *cobra.Command {
	c := &cobra.Command{
		Use:   "list [PATH]",
		Short: "which codebooks are in force here",
		Long: "Lists the codebooks in force for a design, or for any design in a folder (the\n" +
			"working folder where none is named): version, edition, digest, the parameters\n" +
			"and where each was set, the rules with their grades and where one was changed.\n\n" +
			"Exit status 2 where something could not be read.",
		Example: "  stringline codebook list\n" +
			"  stringline codebook list --as json huts/larch-col.design.hcl",
		Args: func(_ *cobra.Command, args []string) error {
			if len(args) > 1 {
				return fmt.Errorf("list takes one PATH: found %q beside it", args[1])
			}
			return nil
		},
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
		o, err := s.shelfOptions(c)
		if err != nil {
			return err
		}
		o.Path = "."
		if len(args) == 1 {
			o.Path = slashed(args[0])
		}
		shelf, err := lint.ListBooks(c.Context(), o)
		if err != nil {
			return err
		}
		*code = s.write(shelf.Exit(), func(w io.Writer) error {
			if form == "json" {
				return report.ShelfJSON(w, shelf, programVersion)
			}
			return report.Shelf(w, shelf, opts)
		})
		return nil
	}
	return c
}

func (s *streams) shelfOptions(c *cobra.Command) (o lint.ShelfOptions, err error) {
	if o.BookOptions, err = s.bookOptions(); err != nil {
		return o, err
	}
	var r request
	if err = r.outside(c); err != nil {
		return o, err
	}
	o.Trust = r.trust
	if r.apart != nil { // a nil pointer in an interface would not be nil
		o.Isolation = r.apart
	}
	return o, nil
}
