package main

import (
	"context"
	"fmt"
	"slices"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"stringline/lint"
	"stringline/lint/report"
	"stringline/lint/survey"
	"stringline/lint/verdict"
	"stringline/schema/source"
)

func (s *streams) check(code *int) *cobra.Command {
	c := &cobra.Command{
		Use:   "check [PATH...]",
		Short: "judge designs against every rule in force",
		Long: "Judges every design under the paths (the working folder where none is named;\n" +
			"- reads one design from standard input). Shows deficiencies, what could not be\n" +
			"judged and why, the headroom of every limit, and what was assumed.\n\n" +
			"Exit status 0: nothing found at or above the grade to reject. 1: findings.\n" +
			"2: something could not be read, a verdict is void, no design was found, or a\n" +
			"rule that is named anywhere is not known. --rule and --trust may be repeated.\n\n" +
			"--as json follows schema/check.schema.json. For CI and code hosts: sarif (SARIF\n" +
			"2.1.0), junit (test reports), annotations (log commands ::error file=...::).\n\n" +
			"--baseline goes by a file of findings that were accepted at a date: new ones and\n" +
			"worse ones count, accepted ones are shown and do not, gone ones are told.\n" +
			"--accept writes that file anew. No stop can be accepted.",
		Example: "  stringline check\n" +
			"  stringline check --reject-from stop huts/larch-col.design.hcl\n" +
			"  stringline check --as json designs > findings.json\n" +
			"  stringline check --baseline accepted.csv --accept",
	}
	option := c.Flags()
	option.String("as", "text", "`FORM` of the output: "+strings.Join(checkForms, ", "))
	option.String("reject-from", "fix", "least `GRADE` with exit status 1: stop, fix or advise")
	option.String("date", "", "`DAY` that ends waivers, as 2026-05-02; default today")
	option.String("baseline", "", "go by `FILE`, a list of findings that were accepted")
	option.Bool("accept", false, "accept what is found: write the baseline anew")
	option.StringArray("rule", nil, "judge by this `RULE` alone, such as limits.cold_voltage")
	outsideOptions(c)
	c.RunE = func(c *cobra.Command, args []string) error {
		form, err := oneOf(c, "as", checkForms...)
		if err != nil {
			return err
		}
		page, err := s.page(c)
		if err != nil {
			return err
		}
		request, err := s.checkRequest(c, args)
		if err != nil {
			return err
		}
		*code = s.checked(c.Context(), form, page, request)
		return nil
	}
	return c
}

// checkForms are the outputs of check.
var checkForms = []string{"text", "json", "sarif", "junit", "annotations"}

// checkRequest reads the options of check.
func (s *streams) checkRequest(c *cobra.Command, paths []string) (request, error) {
	reject, err := oneOf(c, "reject-from", string(verdict.Stop), string(verdict.Fix), string(verdict.Advise))
	if err != nil {
		return request{}, err
	}
	r := request{paths: paths, rejectFrom: verdict.Grade(reject)}
	if r.rules, err = names(c, "rule"); err != nil {
		return r, err
	}
	if err = r.outside(c); err != nil {
		return r, err
	}
	if r.date, err = s.date(c); err != nil {
		return r, err
	}
	return r, s.baseline(c, &r)
}

// checked judges and writes. An output grows as designs are judged, where its form
// allows it; where findings are accepted it is written once that is done.
func (s *streams) checked(ctx context.Context, form string, page report.Page, r request) int {
	out := s.grow()
	var sink report.Sink
	switch form {
	case "json":
		sink = report.NewJSON(out, programVersion, r.date)
	case "sarif":
		sink = report.NewSARIF(out)
	case "junit":
		sink = report.NewJUnit(out, r.rejectFrom)
	case "annotations":
		sink = report.NewAnnotations(out)
	default:
		sink = report.NewText(out, page)
	}
	if !r.accept {
		r.each = sink.Design
		r.quiet = s.outTerminal && (form == "json" || form == "junit") // which write on the same terminal meanwhile
	}
	result, err := s.judge(ctx, r)
	s.closing.Store(true)
	if result == nil {
		s.say(err.Error())
		if form == "text" {
			return 2
		}
		// A reader of the output finds it whole, with what was wrong in it.
		result = &lint.Result{Version: programVersion, Date: r.date, RejectFrom: r.rejectFrom, Exit: 2,
			Problems: source.Problems{{Kind: "failure", Message: err.Error()}}}
		if sink.End(result) != nil { // what cannot be written is said already
			return 2
		}
		return out.end(2)
	}
	for _, p := range result.Problems {
		if p.Kind == "interrupted" || p.Kind == "failure" {
			s.say(p.Message)
		}
	}
	if r.accept {
		if err := s.accept(result, r); err != nil {
			s.fail(err)
			result.Exit = 2
		}
		for i := range result.Designs {
			if err := sink.Design(&result.Designs[i]); err != nil {
				return s.fail(err)
			}
		}
	}
	if err := sink.End(result); err != nil {
		return s.fail(err)
	}
	return out.end(result.Exit)
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
	baseline   *lint.Baseline // nil where there is none
	file       string         // of the baseline, as it was named
	accept     bool           // write the baseline anew
	each       func(*lint.DesignResult) error
	quiet      bool        // no progress
	disk       survey.Disk // nil: the process's own
	dir        string      // that paths are seen from, absolute; "" for the working folder
}
