package main

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"stringline/lint"
	"stringline/lint/commission"
	"stringline/lint/report"
	"stringline/lint/verdict"
	"stringline/schema/quantity"
)

func (s *streams) commission(code *int) *cobra.Command {
	c := &cobra.Command{
		Use:   "commission DESIGN",
		Short: "order of connection, and what each meter should read",
		Long: "Lays out how a design that is built is tested and brought into use: checks\n" +
			"while it is dead, batteries, strings of panels, order of connection, settings,\n" +
			"checks while it works, labels. Says what each meter should read at the light\n" +
			"and warmth given, and judges the readings that the design records. What was\n" +
			"not measured says so. - reads the design from standard input.\n\n" +
			"Without --cell-temperature and --irradiance what is due in light stays an\n" +
			"empty entry, and tables say what to expect over warmth and light.\n\n" +
			"Exit status 0: nothing found at or above the grade to reject, and no recorded\n" +
			"reading outside its band. 1: findings, or such a reading, or one that cannot\n" +
			"be judged. 2: something could not be read, or a verdict is void.",
		Example: "  stringline commission huts/larch-col.design.hcl\n" +
			"  stringline commission huts/larch-col.design.hcl --cell-temperature 41degC --irradiance 820W/m2\n" +
			"  stringline commission huts/larch-col.design.hcl --as json > sheet.json",
		Args: arguments("DESIGN"),
	}
	option := c.Flags()
	option.String("as", "text", "`FORM` of the output: text or json")
	option.String("cell-temperature", "", "`TEMPERATURE` of the cells, as measured: 41degC")
	option.String("irradiance", "", "`LIGHT` in the plane of the array, as measured: 820W/m2")
	option.String("reject-from", "fix", "least `GRADE` with exit status 1: stop, fix or advise")
	option.String("date", "", "`DAY` that ends waivers, as 2026-05-02; default today")
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
		var at commission.Conditions
		// The ranges are those of a reading's own attributes.
		if at.CellTemperature, err = measuredOption(c, "cell-temperature", "degC", -60, 120); err != nil {
			return err
		}
		if at.Irradiance, err = measuredOption(c, "irradiance", "W/m2", 0, 1600); err != nil {
			return err
		}
		r, d, err := s.designToCommission(c, args[0])
		if err != nil {
			return err
		}
		at.Date, at.Books = r.Date, r.Books
		plan := commission.Of(d, at)
		exit := r.Exit
		if exit == 0 && plan.Findings() {
			exit = 1
		}
		*code = s.write(exit, func(w io.Writer) error {
			if form == "json" {
				return report.CommissionJSON(w, plan, r.Version, exit)
			}
			return report.Commission(w, plan, opts)
		})
		return nil
	}
	return c
}

// designToCommission judges exactly one design. What is wrong beside the design,
// which the plan cannot tell, is said on standard error.
func (s *streams) designToCommission(c *cobra.Command, path string) (*lint.Result, *lint.DesignResult, error) {
	reject, err := oneOf(c, "reject-from", string(verdict.Stop), string(verdict.Fix), string(verdict.Advise))
	if err != nil {
		return nil, nil, err
	}
	one := request{paths: []string{path}, rejectFrom: verdict.Grade(reject)}
	if err := one.outside(c); err != nil {
		return nil, nil, err
	}
	if one.date, err = s.date(c); err != nil {
		return nil, nil, err
	}
	r, err := s.judge(c.Context(), one)
	if err != nil {
		return nil, nil, err
	}
	if len(r.Designs) != 1 {
		if len(r.Problems) > 0 {
			return nil, nil, r.Problems
		}
		return nil, nil, fmt.Errorf("%s holds %d designs; name one", path, len(r.Designs))
	}
	d := &r.Designs[0]
	if d.System == nil {
		return nil, nil, fmt.Errorf("%s could not be read:\n%w", d.File, slices.Concat(r.Problems, d.Problems))
	}
	if len(r.Problems) > 0 {
		s.say(r.Problems.Error())
	}
	return r, d, nil
}

// measuredOption reads a quantity that was measured, in SI; nil where it is not
// given. least and most are in the unit.
func measuredOption(c *cobra.Command, name, unit string, least, most float64) (*float64, error) {
	text, err := c.Flags().GetString(name)
	if err != nil {
		return nil, fmt.Errorf("reading --%s: %w", name, err)
	}
	if !c.Flags().Changed(name) {
		return nil, nil
	}
	q, err := quantity.ParseAs(text, unit)
	if err != nil {
		example := map[string]string{"degC": "41degC", "W/m2": "820W/m2"}[unit]
		return nil, fmt.Errorf("--%s: %s; an example is %s", name, strings.TrimPrefix(err.Error(), "reading a quantity: "), example)
	}
	if v := quantity.MustLookup(unit).FromSI(q.SI); v < least || v > most {
		return nil, fmt.Errorf("--%s %q is not between %g and %g %s", name, text, least, most, unit)
	}
	return &q.SI, nil
}
