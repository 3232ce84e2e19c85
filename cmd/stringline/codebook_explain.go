package main

import (
	"fmt"
	"io"
	"time"

	"github.com/spf13/cobra"

	"stringline/lint"
	"stringline/lint/report"
)

func (s *streams) codebookExplain(code *int) *cobra.Command {
	c := &cobra.Command{
		Use:   "explain RULE|BOOK [DESIGN]",
		Short: "a rule or a whole codebook as a page",
		Long: "Tells about one rule, or every rule of a codebook: why it is there, its grade,\n" +
			"where it comes from and how that was read, its parameters and tables, its Rego.\n" +
			"With a design: how the rule judged it, with the workings, and why it did not\n" +
			"apply. A codebook is named by its name, or by its folder (with a / in it).\n\n" +
			"Exit status 2 where something could not be read or a verdict is void.",
		Example: "  stringline codebook explain limits.cold_voltage\n" +
			"  stringline codebook explain limits.cold_voltage huts/larch-col.design.hcl\n" +
			"  stringline codebook explain --as markdown limits > limits.md",
		Args: func(c *cobra.Command, args []string) error {
			if len(args) < 1 || len(args) > 2 {
				return fmt.Errorf("explain takes RULE or BOOK and, where wanted, DESIGN: stringline codebook %s", c.Use)
			}
			return nil
		},
	}
	c.Flags().String("as", "text", "`FORM` of the output: text or markdown")
	outsideOptions(c)
	c.RunE = func(c *cobra.Command, args []string) error {
		form, err := oneOf(c, "as", "text", "markdown")
		if err != nil {
			return err
		}
		opts, err := s.page(c)
		if err != nil {
			return err
		}
		o := lint.ExplainOptions{Subject: slashed(args[0]), Date: s.now().Format(time.DateOnly)}
		if o.ShelfOptions, err = s.shelfOptions(c); err != nil {
			return err
		}
		o.Path = "."
		if len(args) == 2 {
			o.Path, o.Design = slashed(args[1]), true
		}
		e, err := lint.Explain(c.Context(), o)
		if err != nil {
			return err
		}
		*code = s.write(e.Exit(), func(w io.Writer) error {
			if form == "markdown" {
				return report.ExplainMarkdown(w, e)
			}
			return report.Explain(w, e, opts)
		})
		return nil
	}
	return c
}
