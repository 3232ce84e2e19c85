package main

import (
	"fmt"
	"io"
	"slices"
	"time"

	"github.com/spf13/cobra"

	"stringline/lint"
	"stringline/lint/report"
	"stringline/lint/survey"
	"stringline/lint/verdict"
)

func (s *streams) check(code *int) *cobra.Command {
	c := &cobra.Command{
		Use:   "check [PATH...]",
		Short: "judge designs against every rule in force",
		Long: "Judges every design under the paths (the working folder where none is named;\n" +
			"- reads one design from standard input). Shows deficiencies, what could not be\n" +
			"judged and why, the headroom of every limit, and what was assumed.\n\n" +
			"Exit state 0: nothing found at or above the grade to reject. 1: findings.\n" +
			"2: something could not be read, a verdict is void, no design was found, or a\n" +
			"rule that is named anywhere is not known. --rule and --trust may be repeated.",
		Example: "  stringline check\n" +
			"  stringline check --reject-from stop huts/larch-col.design.hcl\n" +
			"  stringline check --as json designs > findings.json",
	}
	option := c.Flags()
	option.String("as", "text", "`FORM` of the output: text or json")
	option.String("reject-from", "fix", "least `GRADE` with exit state 1: stop, fix or advise")
	option.String("date", "", "`DAY` that ends waivers, as 2026-05-02; default today")
	option.StringArray("rule", nil, "judge by this `RULE` alone, such as limits.cold_voltage")
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
		r, err := s.judgeFor(c, args)
		if err != nil {
			return err
		}
		*code = s.write(r.Exit, func(w io.Writer) error {
			if form == "json" {
				return report.JSON(w, r)
			}
			return report.Text(w, r, opts)
		})
		return nil
	}
	return c
}

// judgeFor runs the pipeline as a command's options ask.
func (s *streams) judgeFor(c *cobra.Command, paths []string) (*lint.Result, error) {
	reject, err := oneOf(c, "reject-from", string(verdict.Stop), string(verdict.Fix), string(verdict.Advise))
	if err != nil {
		return nil, err
	}
	request := request{paths: paths, rejectFrom: verdict.Grade(reject)}
	if request.rules, err = names(c, "rule"); err != nil {
		return nil, err
	}
	if err = request.outside(c); err != nil {
		return nil, err
	}
	if request.date, err = s.date(c); err != nil {
		return nil, err
	}
	return s.judge(c.Context(), request)
}

// names reads an option that may be repeated. An empty name is one that a script
// left empty, and must not widen what is judged.
func names(c *cobra.Command, option string) ([]string, error) {
	list, err := c.Flags().GetStringArray(option)
	if err != nil {
		return nil, fmt.Errorf("reading --%s: %w", option, err)
	}
	// The library gives one empty name back as none.
	if c.Flags().Changed(option) && (len(list) == 0 || slices.Contains(list, "")) {
		return nil, fmt.Errorf("--%s: the name is empty", option)
	}
	return list, nil
}

// date reads --date, or takes today's where it is not given.
func (s *streams) date(c *cobra.Command) (string, error) {
	day, err := c.Flags().GetString("date")
	if err != nil {
		return "", fmt.Errorf("reading --date: %w", err)
	}
	if day == "" {
		return s.now().Format(time.DateOnly), nil
	}
	if parsed, err := time.Parse(time.DateOnly, day); err != nil || parsed.Format(time.DateOnly) != day {
		return "", fmt.Errorf("--date %q is no day; write it as 2026-05-02", day)
	}
	return day, nil
}

// request is what a command wants judged.
type request struct {
	paths      []string
	rules      []string
	trust      []string       // codebooks from outside that may run in this process
	apart      lint.Isolation // runs the others; nil where nothing can
	date       string
	rejectFrom verdict.Grade
	disk       survey.Disk // nil: the process's own
	dir        string      // that paths are seen from, absolute; "" for the working folder
}
