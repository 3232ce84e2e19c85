package report

import (
	"slices"

	"stringline/lint"
	"stringline/lint/verdict"
	"stringline/schema/quantity"
)

// AsLaid is what a run of conductors may carry where it lies: ambient, bundling and
// method of laying counted, all conductors of a pole together. The codes in force
// say it, in the limit of their rule.
type AsLaid struct {
	Value   float64 // in Unit; meaningful where Known
	Unit    string
	Rule    string // that sets the least
	Known   bool
	Missing []string // ids of facts that a code's rule lacks
	Asked   bool     // a code in force has a table for it
}

// ampacityRules are the rules of the codes that hold a run's current against its
// ampacity as it lies; the limit of their verdict is that ampacity.
var ampacityRules = []string{"us_2023.conductor_corrected", "iec.conductor_current", "iec.conductor_current_memory", "marine.conductor_current"}

// AmpacityAsLaid finds the ampacity that the codes in force give a run: the least of
// their verdicts.
func AmpacityAsLaid(d *lint.DesignResult, run string) AsLaid {
	var found AsLaid
	for i := range d.Verdicts {
		v := &d.Verdicts[i]
		if v.About != run || !slices.Contains(ampacityRules, v.Rule) || v.Outcome == verdict.DoesNotApply || v.Outcome == verdict.Void || len(v.Limits) != 1 {
			continue
		}
		found.Asked = true
		limit := v.Limits[0]
		if limit.Value == nil {
			found.Missing = append(found.Missing, v.Missing...)
			continue
		}
		if !found.Known || *limit.Value < found.Value {
			found.Value, found.Unit, found.Rule, found.Known = *limit.Value, limit.Unit, v.Rule, true
		}
	}
	return found
}

// Text is the ampacity for people, or its empty entry.
func (a AsLaid) Text() string {
	if !a.Known {
		return empty("A")
	}
	u, _ := quantity.DocumentUnit(a.Unit)
	return quantity.Format(u.ToSI(a.Value), a.Unit)
}
