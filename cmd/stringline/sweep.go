package main

import (
	"fmt"
	"io"
	"strings"

	"github.com/spf13/cobra"

	"stringline/lint"
	"stringline/lint/report"
	"stringline/lint/report/plot"
	"stringline/lint/sweep"
)

func (s *streams) sweep(code *int) *cobra.Command {
	c := &cobra.Command{
		Use:   "sweep DESIGN",
		Short: "facts and verdicts as one or two values vary",
		Long: "Gives an attribute of the design, or of a part that it uses, one value after\n" +
			"another and shows what becomes of the facts that rules limit. Where a verdict\n" +
			"differs between two points, the value at which it turns is found by bisection.\n" +
			"Attributes are named as facts and workings name them; how many of a panel stand\n" +
			"in series is string.ARRAY.NAME.panels.PANEL; a codebook's parameter is\n" +
			"param.BOOK.NAME, an answer to its question SUBJECT.declared.BOOK.NAME. --over\n" +
			"may stand twice.\n" +
			"- reads the design from standard input.\n\n" +
			"Exit status 0, whatever the verdicts: a sweep asks what would be. 2: something\n" +
			"could not be read.",
		Example: "  stringline sweep hut.design.hcl --over site.coldest=-40degC..0degC/5K\n" +
			"  stringline sweep hut.design.hcl --over string.south.a.panels.slate-410=1..4/1\n" +
			"  stringline sweep hut.design.hcl --over array.south.mounting=open_rack,roof_flush\n" +
			"  stringline sweep hut.design.hcl --over param.practice.voltage_drop_max=1%..5%/0.5%\n" +
			"  stringline sweep hut.design.hcl --over site.coldest=-40degC..0degC/5K --as svg > cold.svg",
		Args: arguments("DESIGN"),
	}
	option := c.Flags()
	option.String("as", "text", "`FORM` of the output: text, json, csv or svg")
	option.StringArray("over", nil, "vary `ID=FROM..TO/STEP`, or ID=VALUE,VALUE")
	option.String("facts", "", "show these `IDS`, parted by commas")
	option.Bool("without-year", false, "leave out what needs a year of sun: quicker")
	option.String("date", "", "`DAY` that ends waivers, as 2026-05-02; default today")
	outsideOptions(c)
	c.RunE = func(c *cobra.Command, args []string) error {
		form, err := oneOf(c, "as", "text", "json", "csv", "svg")
		if err != nil {
			return err
		}
		page, err := s.page(c)
		if err != nil {
			return err
		}
		o, err := sweepOptions(c)
		if err != nil {
			return err
		}
		return s.onBench(c, args[0], "judging points", func(bench *lint.Bench, progress func(done, total int)) (func() (int, error), error) {
			o.Progress = progress
			r, err := sweep.Run(c.Context(), bench, o)
			return func() (int, error) {
				return s.write(r.Exit(), func(w io.Writer) error {
					switch form {
					case "json":
						return report.SweepJSON(w, r, bench.Version(), bench.Date())
					case "csv":
						return report.SweepCSV(w, r)
					case "svg":
						return plot.Sweep(w, r)
					}
					return report.Sweep(w, r, page)
				}), nil
			}, err
		}, code)
	}
	return c
}

// sweepOptions reads what is varied and shown.
func sweepOptions(c *cobra.Command) (o sweep.Options, err error) {
	over, err := names(c, "over")
	if err != nil {
		return o, err
	}
	if len(over) == 0 {
		return o, fmt.Errorf("sweep needs --over ID=FROM..TO/STEP, such as site.coldest=-40degC..0degC/5K")
	}
	for _, text := range over {
		one, err := sweep.ParseOver(text)
		if err != nil {
			return o, fmt.Errorf("--over: %w", err)
		}
		o.Over = append(o.Over, one)
	}
	list, err := c.Flags().GetString("facts")
	if err != nil {
		return o, fmt.Errorf("reading --facts: %w", err)
	}
	if c.Flags().Changed("facts") {
		for part := range strings.SplitSeq(list, ",") {
			o.Facts = append(o.Facts, strings.TrimSpace(part))
		}
	}
	o.WithoutYear, err = c.Flags().GetBool("without-year")
	return o, err
}
