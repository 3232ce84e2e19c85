package main

import (
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"stringline/lint"
	"stringline/lint/fit"
	"stringline/lint/report"
	"stringline/lint/survey"
	"stringline/schema/quantity"
)

func (s *streams) fit(code *int) *cobra.Command {
	c := &cobra.Command{
		Use:   "fit DESIGN",
		Short: "how the panels in hand can be strung",
		Long: "Tries the panels in hand (the design's own, or --panels) in series and parallel,\n" +
			"on every array and free input, at every bank voltage that controllers and\n" +
			"batteries allow, and has every rule in force judge each. Lists those that meet\n" +
			"all, best first by energy of a year, headroom and metal; those that also need\n" +
			"other things changed; and what stops the rest. - reads the design from standard\n" +
			"input.\n\n" +
			"--take N writes arrangement N into a copy of the design, comments kept. The copy\n" +
			"stands in the design's folder, since its paths are relative to it. Look at it\n" +
			"with compare; to go on with it, move it into the place of the design.\n\n" +
			"Exit status 0: an arrangement meets every rule (with --take: this one does).\n" +
			"1: none does. 2: something could not be read.",
		Example: "  stringline fit farm.design.hcl\n" +
			"  stringline fit farm.design.hcl --panels \"slate-410=9,dusk-380=2\"\n" +
			"  stringline fit farm.design.hcl --take 2 -o farm-48.design.hcl",
		Args: arguments("DESIGN"),
	}
	option := c.Flags()
	option.String("as", "text", "`FORM` of the output: text or json")
	option.String("panels", "", "panels in `HAND`, as slate-410=9,dusk-380=2; default the design's")
	option.Int("most", fit.MostArrangements, "judge `N` arrangements at most")
	option.Int("years", fit.MostYears, "compute a year of sun for the likeliest `N`")
	option.Int("take", 0, "write arrangement `N` into a copy of the design")
	option.StringP("output", "o", "", "`FILE` of the copy; - for standard output")
	option.String("date", "", "`DAY` that ends waivers, as 2026-05-02; default today")
	outsideOptions(c)
	c.RunE = func(c *cobra.Command, args []string) error {
		form, err := oneOf(c, "as", "text", "json")
		if err != nil {
			return err
		}
		page, err := s.page(c)
		if err != nil {
			return err
		}
		o, take, err := fitOptions(c)
		if err != nil {
			return err
		}
		into, err := s.copyOf(c, args[0], take)
		if err != nil {
			return err
		}
		return s.onBench(c, args[0], "judging arrangements", func(bench *lint.Bench, progress func(done, total int)) (func() (int, error), error) {
			o.Progress = progress
			r, err := fit.Find(c.Context(), bench, o)
			return func() (int, error) {
				if take > 0 {
					return s.takeArrangement(c, r, take, into)
				}
				return s.write(r.Exit(), func(w io.Writer) error {
					if form == "json" {
						return report.FitJSON(w, r, bench.Version(), bench.Date())
					}
					return report.Fit(w, r, page)
				}), nil
			}, err
		}, code)
	}
	return c
}

// fitOptions reads what is looked for.
func fitOptions(c *cobra.Command) (o fit.Options, take int, err error) {
	if o.Most, err = within(c, "most", 1, 100000); err != nil {
		return o, 0, err
	}
	if o.Years, err = within(c, "years", 1, 1000); err != nil {
		return o, 0, err
	}
	if c.Flags().Changed("take") {
		if take, err = within(c, "take", 1, 100000); err != nil {
			return o, 0, err
		}
	}
	hand, err := c.Flags().GetString("panels")
	if err != nil {
		return o, 0, fmt.Errorf("reading --panels: %w", err)
	}
	if c.Flags().Changed("panels") {
		o.Panels, err = panelsInHand(hand)
	}
	return o, take, err
}

// panelsInHand reads "slate-410=9,dusk-380=2".
func panelsInHand(text string) ([]fit.Panels, error) {
	var all []fit.Panels
	for part := range strings.SplitSeq(text, ",") {
		name, number, found := strings.Cut(strings.TrimSpace(part), "=")
		n, err := quantity.ParseNumber(strings.TrimSpace(number))
		if !found || err != nil || n != float64(int(n)) || name == "" {
			return nil, fmt.Errorf("--panels: expected NAME=COUNT, such as slate-410=9, found %q", part)
		}
		all = append(all, fit.Panels{Name: strings.TrimSpace(name), Count: int(n)})
	}
	return all, nil
}

// copyOf checks where a copy of a design may be written: beside the design, under
// a name that nothing has yet. "" where none is asked for.
func (s *streams) copyOf(c *cobra.Command, design string, take int) (string, error) {
	into, err := c.Flags().GetString("output")
	switch {
	case err != nil:
		return "", fmt.Errorf("reading --output: %w", err)
	case take == 0 && into == "":
		return "", nil
	case take == 0:
		return "", fmt.Errorf("--output %s: say with --take N which arrangement is to be written", into)
	case into == "":
		return "", fmt.Errorf("--take %d: say with -o FILE where the copy goes; - is standard output", take)
	case into == "-":
		return into, nil
	case !strings.HasSuffix(into, survey.DesignSuffix):
		return "", fmt.Errorf("--output %s: the name of a design ends in %s", into, survey.DesignSuffix)
	}
	beside := "."
	if design != "-" {
		beside = filepath.Dir(native(design))
	}
	from, err := filepath.Abs(beside)
	if err != nil {
		return "", fmt.Errorf("finding the design's folder: %w", err)
	}
	to, err := filepath.Abs(filepath.Dir(native(into)))
	if err != nil {
		return "", fmt.Errorf("finding the folder of --output: %w", err)
	}
	if from != to {
		return "", fmt.Errorf("--output %s: the copy stands in the design's folder, since its paths are relative to it", into)
	}
	if _, err := os.Lstat(native(into)); err == nil {
		return "", fmt.Errorf("--output %s: there is such a file already, and nothing is written over it", into)
	}
	return native(into), nil
}

// takeArrangement writes an arrangement and says what it is.
func (s *streams) takeArrangement(c *cobra.Command, r *fit.Result, number int, into string) (int, error) {
	text, a, err := r.Take(c.Context(), number)
	if err != nil {
		return 2, err
	}
	state := 0
	if a.State != fit.Meets {
		state = 1
	}
	if into == "-" {
		return s.write(state, func(w io.Writer) error { _, err := w.Write(text); return err }), nil
	}
	if err := create(into, text); err != nil { // what took the name meanwhile stays
		return 2, fmt.Errorf("writing the copy %s: %w", into, err)
	}
	return s.write(state, func(w io.Writer) error { return report.Taken(w, a, filepath.ToSlash(into)) }), nil
}
