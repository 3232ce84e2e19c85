package main

import (
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"stringline/lint"
	"stringline/lint/report"
	"stringline/rules"
)

func (s *streams) codebookTest(code *int) *cobra.Command {
	c := &cobra.Command{
		Use:   "test [FOLDER | NAME]...",
		Short: "run the own tests of codebooks",
		Long: "Tests codebooks: a folder (the working folder where none is named), or by its\n" +
			"name one that comes with the program or that the workshop names. Each rule's Rego tests are run, its two\n" +
			"example designs judged, every attribute that its verdicts rest on taken out, and\n" +
			"small mistakes put into the rule one at a time: somebody must notice each.\n" +
			"The tests of a folder run inside this program: name only books that you trust.\n\n" +
			"Exit status 0: nothing found. 1: a test failed, or a mutant went unnoticed.\n" +
			"2: a codebook could not be loaded. --rule may be repeated.",
		Example: "  stringline codebook test codebooks/county\n" +
			"  stringline codebook test --rule limits.cold_voltage limits\n" +
			"  stringline codebook test --as json limits practice > tests.json",
	}
	option := c.Flags()
	option.String("as", "text", "`FORM` of the output: text or json")
	option.StringArray("rule", nil, "test this `RULE` alone, such as county.labels")
	option.Bool("quick", false, "leave the mutants out")
	c.RunE = func(c *cobra.Command, args []string) error {
		form, err := oneOf(c, "as", "text", "json")
		if err != nil {
			return err
		}
		opts, err := s.page(c)
		if err != nil {
			return err
		}
		o := lint.TestBooksOptions{Books: args}
		if o.BookOptions, err = s.bookOptions(); err != nil {
			return err
		}
		for i := range o.Books {
			o.Books[i] = slashed(o.Books[i])
		}
		if len(o.Books) == 0 {
			o.Books = []string{"."}
		}
		if o.Rules, err = names(c, "rule"); err != nil {
			return err
		}
		if o.Quick, err = c.Flags().GetBool("quick"); err != nil {
			return fmt.Errorf("reading --quick: %w", err)
		}
		p := s.progress()
		p.what = "trying mutants"
		o.Progress = p.at
		books, err := lint.TestBooks(c.Context(), o)
		p.done()
		if err != nil {
			return err
		}
		*code = s.write(lint.ExitOfBooks(books), func(w io.Writer) error {
			if form == "json" {
				return report.BookTestsJSON(w, books, programVersion)
			}
			return report.BookTests(w, books, opts)
		})
		return nil
	}
	return c
}

// bookOptions hands down what the commands on codebooks may touch.
func (s *streams) bookOptions() (lint.BookOptions, error) {
	dir, err := s.dir()
	if err != nil {
		return lint.BookOptions{}, fmt.Errorf("finding the working folder: %w", err)
	}
	return lint.BookOptions{Disk: s.disk, Embedded: rules.Books, WorkingDir: slashed(dir), Version: programVersion}, nil
}
