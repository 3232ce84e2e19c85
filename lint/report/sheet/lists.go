package sheet

import (
	"strings"
	"time"

	"stringline/lint"
	"stringline/lint/facts"
	"stringline/lint/report"
)

// key fills the figures that people ask for first.
func (p *page) key(d *lint.DesignResult) {
	s := d.System
	heads := []string{"Figure", "Value"}
	whole := &table{Caption: "The system", Class: "key", Heads: heads, Rows: factRows(s, "system",
		"pv_voltage_max", "dc_voltage_max", "daily_load", "yearly_yield", "worst_month", "worst_month_balance", "worst_month_cover", "unserved_hours")}
	for i := range whole.Rows {
		if c := &whole.Rows[i].Cells[1]; whole.Rows[i].Cells[0].Note == "system.worst_month" && c.Kind == "figure" {
			if f, ok := s.Fact("system.worst_month"); ok {
				c.Text = time.Month(f.SI).String()
				whole.Rows[i].Cells[0].Text = "the month that leaves least over"
			}
		}
	}
	p.Key = append(p.Key, whole)
	for _, one := range []struct {
		collection string
		names      []string
	}{
		{"chargers", []string{"pv_power", "overpanel", "power_headroom", "charge_current_limit", "full_power_absorption", "charge_current_expected", "charge_current_expected_hot", "yearly_yield", "clipped_energy", "clipped_hours", "overpanel_gain"}},
		{"banks", []string{"nominal", "capacity", "energy", "usable_energy", "voltage_max", "charge_current_total", "bms_charge_cutoff", "short_circuit_current", "daily_load", "autonomy", "run_time", "refill_time", "full_charge_time"}},
		{"ac_outputs", []string{"load_power", "load_peak", "current"}},
	} {
		for _, about := range s.Subjects(one.collection) {
			p.Key = append(p.Key, &table{Caption: about.ID(), Class: "key", Heads: heads, Rows: factRows(s, about.ID(), one.names...)})
		}
	}
}

// clipping tells for each charger what its controller can use at each bank
// voltage that it supports.
func (p *page) clipping(d *lint.DesignResult) {
	s := d.System
	for _, c := range s.Subjects("chargers") {
		t := &table{Caption: "What " + c.ID() + " can use at each bank voltage", Class: "figures",
			Heads: []string{"Bank", "Full power", "Clipped", "More than from exactly full power", "Yield of a year"}}
		full, ok := s.Fact(c.ID() + ".full_power_by_bank_voltage")
		if !ok || !full.Known || len(full.List) < 2 {
			continue // a controller for one voltage: nothing to choose
		}
		for n, volts := range full.Over {
			line := row{Cells: []cell{said(report.Show(facts.InUnit(volts, "V"), "V"))}}
			for _, name := range []string{"full_power", "clipped_energy", "overpanel_gain", "yearly_yield"} {
				f, _ := s.Fact(c.ID() + "." + name + "_by_bank_voltage")
				if f.Known && n < len(f.List) {
					line.Cells = append(line.Cells, figure(report.Show(facts.InUnit(f.List[n], f.Unit), f.Unit)))
				} else {
					line.Cells = append(line.Cells, figure(report.Empty(f.Unit)))
				}
			}
			t.Rows = append(t.Rows, line)
		}
		p.Clipping = append(p.Clipping, t)
	}
}

// sources tells what the sheet rests on: codebooks with their parameters, the
// methods' sources, and what was read.
func (p *page) sources(r *lint.Result, d *lint.DesignResult) {
	p.Codebooks = &table{Caption: "Codebooks that judged this design", Class: "wide", Heads: []string{"Codebook", "Version", "Edition", "SHA-256"}}
	p.Settled = &table{Caption: "Their parameters", Class: "wide", Heads: []string{"Parameter", "Value", "Set at"}}
	rules := map[string]bool{}
	add := func(source string) {
		if source != "" && !rules[source] {
			rules[source] = true
			p.Sources = append(p.Sources, source)
		}
	}
	for i := range r.Books {
		b := &r.Books[i]
		edition := said(b.Edition)
		if b.Edition == "" {
			edition = cell{Text: "none", Kind: "note"}
		}
		p.Codebooks.add(said(b.Name), said(b.Version), edition, cell{Text: digestWords(b.Digest), Kind: "digest"})
		for _, set := range b.Parameters {
			at := cell{Text: "default", Kind: "note"}
			if set.SetAt.Valid() {
				at = said(set.SetAt.String())
			}
			value := set.Text
			if value == "" && set.Yes != nil {
				value = map[bool]string{true: "yes", false: "no"}[*set.Yes]
			}
			p.Settled.add(said(b.Name+"."+set.Name), figure(value), at)
		}
	}
	for i := range d.Verdicts {
		add(d.Verdicts[i].Source)
	}
	for _, l := range p.Workings {
		add(l.Source)
	}
	p.Settled = p.Settled.or()

	p.Inputs = &table{Caption: "Files that were read", Class: "wide", Heads: []string{"File", "Holds"}}
	read := d.System.Design()
	for n, f := range read.Files {
		holds := "parts"
		if n == 0 {
			holds = "the design"
		}
		p.Inputs.add(told(f.Name), said(holds))
	}
	if d.Workshop != "" {
		p.Inputs.add(told(d.Workshop), said("the workshop"))
	}
	if read.Weather != nil {
		p.Inputs.add(told(read.Weather.File), said("the weather"))
	}
}

// digestWords leaves a digest's method to the head of its column.
func digestWords(digest string) string { return strings.TrimPrefix(digest, "sha256:") }
