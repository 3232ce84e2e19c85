package report

import (
	"stringline/lint/commission"
)

// planEntryOf turns a plan into its JSON.
func planEntryOf(plan *commission.Plan, version string, exit int) planEntry {
	h, st := &plan.Head, &plan.Standing
	e := planEntry{
		Format: Format, Tool: toolEntry{ToolName, version}, Date: h.Date, Columns: "code_points",
		File: h.File, Workshop: filled(h.Workshop), Name: h.Design, Revision: filled(h.Revision), Digest: h.Digest,
		Codebooks: []planBook{}, Waivers: []planWaiver{}, Findings: []planFinding{}, Sections: []planSection{}, Tables: []planTable{},
		Now: planNow{CellTemperature: number(plan.Now.CellTemperature), Irradiance: number(plan.Now.Irradiance),
			Missing: list(plan.Now.Missing), Note: filled(plan.Now.Note)},
		Energize: st.Energize, Standing: st.Says, Errors: errorEntries(st.Problems), Hazards: list(plan.Hazards),
		Serials: planBlanks(h.Serials), Blanks: planBlanks(h.Blanks), Signatures: planBlanks(plan.Signatures),
		Exit: exit, Summary: planSummary(plan.Summary),
	}
	for _, b := range h.Codebooks {
		e.Codebooks = append(e.Codebooks, planBook{b.Name, filled(b.Version), filled(b.Edition), filled(b.Digest)})
	}
	for _, w := range h.Waivers {
		e.Waivers = append(e.Waivers, planWaiver(w))
	}
	for _, f := range st.Findings {
		e.Findings = append(e.Findings, planFinding{gradeWord(f.Grade), outcomeWord(f.Verdict), f.Rule, f.About, filled(f.Which), f.Says, list(f.Missing)})
	}
	for i := range plan.Sections {
		s := &plan.Sections[i]
		section := planSection{Key: sectionWord(s.Key), Title: s.Title, Cautions: list(s.Cautions), Lines: []planLine{}}
		for j := range s.Lines {
			section.Lines = append(section.Lines, planLineOf(&s.Lines[j]))
		}
		e.Sections = append(e.Sections, section)
	}
	for i := range plan.Tables {
		t := &plan.Tables[i]
		e.Tables = append(e.Tables, planTable{ID: t.ID, About: t.About, Name: t.Name, Unit: t.Unit, Over: overEntry{t.Over, rounded(t.At)},
			Values: rounded(t.Values), Constant: t.Constant, Missing: list(t.Missing), Because: filled(t.Because), Assumed: list(t.Assumed)})
	}
	return e
}

func planBlanks(all []commission.Blank) []planBlank {
	entries := make([]planBlank, 0, len(all))
	for _, b := range all {
		entries = append(entries, planBlank{filled(b.About), b.What, b.Count})
	}
	return entries
}

func planLineOf(l *commission.Line) planLine {
	e := planLine{
		Number: l.Number, Key: l.Key, Kind: lineKindWord(l.Kind), About: l.About, With: list(l.With), Says: l.Says, Caution: filled(l.Caution),
		Expect: []planExpected{}, Of: filled(l.Of), Unit: l.Unit, Due: l.Due, Found: number(l.Found), Readings: []planReading{},
		Remains: l.Remains, State: lineStateWord(l.State), Because: filled(l.Because),
	}
	for i := range l.Expect {
		e.Expect = append(e.Expect, planExpectedOf(&l.Expect[i]))
	}
	for i := range l.Readings {
		r := &l.Readings[i]
		e.Readings = append(e.Readings, planReading{
			ID: r.ID, Title: filled(r.Title), Taken: filled(r.Taken), Of: r.Of, Value: number(r.Value), Unit: r.Unit,
			CellTemperature: number(r.CellTemperature), Irradiance: number(r.Irradiance), Expected: number(r.Expected),
			Low: number(r.Low), High: number(r.High), Tolerance: number(r.Tolerance), Difference: number(r.Difference),
			AtCold: number(r.AtCold), Limit: number(r.Limit), State: lineStateWord(r.State), Because: filled(r.Because),
			Missing: list(r.Missing), At: place(r.At),
		})
	}
	return e
}

func planExpectedOf(x *commission.Expected) planExpected {
	e := planExpected{
		ID: filled(x.ID), Name: x.Name, Relation: expectWord(x.Relation), Unit: x.Unit, Low: number(x.Low), High: number(x.High),
		Tolerance: number(x.Tolerance), Says: filled(x.Says), Missing: list(x.Missing), Supply: filled(x.Supply), Assumed: list(x.Assumed), Source: filled(x.Source),
	}
	switch {
	case x.Word != "":
		e.Value = scalar{x.Word}
	case x.Yes != nil:
		e.Value = scalar{*x.Yes}
	case x.Value != nil:
		if v := number(x.Value); v != nil {
			e.Value = scalar{*v}
		}
	}
	return e
}

// rounded gives numbers as machine output has them.
func rounded(all []float64) []float64 {
	values := make([]float64, 0, len(all))
	for i := range all {
		if v := number(&all[i]); v != nil {
			values = append(values, *v)
		}
	}
	return values
}
