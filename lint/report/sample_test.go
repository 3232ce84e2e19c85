package report

import (
	"bytes"
	"flag"
	"os"
	"path/filepath"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint"
	"stringline/lint/verdict"
	"stringline/schema/source"
)

var update = flag.Bool("update", false, "write the golden files instead of comparing with them")

// golden compares with testdata/name, or writes it with -update.
func golden(t *testing.T, name string, got []byte) {
	t.Helper()
	name = filepath.Join("testdata", name)
	if *update {
		if err := os.WriteFile(name, got, 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	want, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(want), string(got)); diff != "" {
		t.Errorf("%s differs (-want +got):\n%s", name, diff)
	}
}

func text(t *testing.T, r *lint.Result, opts Page) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := Text(&b, r, opts); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func ptr[T any](v T) *T { return &v }

func at(file string, line, column, length int) source.Range {
	return source.Range{File: file,
		Start: source.Position{Line: line, Column: column},
		End:   source.Position{Line: line, Column: column + length}}
}

// hut is the sample of the layout's specification, with its figures. The cold
// voltage is check value A2 of the trade's worked examples: 4 panels of 37.4 V
// at -27 degC with 0.26 %/K make 169.8 V.
func hut() lint.DesignResult {
	const design = "hut.design.hcl"
	verdicts := []verdict.Verdict{
		{
			Rule: "limits.bank_charge", About: "bank.house", Outcome: verdict.Unproven, Grade: verdict.Stop, BookGrade: verdict.Stop,
			Title:   "Bank accepts all its charging sources together",
			Message: "Whether the bank accepts all its charging sources together.", Relation: "at_most",
			Is:      &verdict.Measured{ID: "bank.house.charge_current_total", Unit: "A", Value: ptr(100.0), Says: "charger.main 60 A + charge_source.engine 40 A"},
			Limits:  []verdict.Measured{{ID: "bank.house.charge_current_accepted", Unit: "A", Says: "2 x fell-200 in parallel; charge current not given"}},
			Missing: []string{"battery.fell-200.charge_current_max"}, Waivable: true, Source: "maker's data sheet",
			At: []source.Range{at(design, 14, 1, 12), at("parts/fell.parts.hcl", 1, 1, 18)},
		},
		{
			Rule: "limits.charge_current", About: "charger.main", Outcome: verdict.Meets, Grade: verdict.Stop, BookGrade: verdict.Stop,
			Title: "Charge current within the controller's rating", Message: "Charge current within the controller's rating", Relation: "at_most",
			Is:     &verdict.Measured{ID: "charger.main.settings.charge_current", Unit: "A", Value: ptr(60.0)},
			Limits: []verdict.Measured{{ID: "controller.ridge-70.charge_current_max", Unit: "A", Value: ptr(70.0)}},
			Spare:  &verdict.Spare{Value: 10, Unit: "A"}, Headroom: ptr(1.0 / 7), Source: "maker's data sheet",
			At: []source.Range{at(design, 31, 1, 14)},
		},
		{
			Rule: "limits.cold_voltage", About: "pv_input.main.1", Outcome: verdict.Breaks, Grade: verdict.Stop, BookGrade: verdict.Stop,
			Title:   "Coldest-morning voltage within the controller's limit",
			Message: "The coldest morning takes the array above its controller.", Relation: "at_most",
			Is:     &verdict.Measured{ID: "pv_input.main.1.voc_cold", Unit: "V", Value: ptr(169.82592), Says: "4 x 37.4 V x (1 + 0.26 %/K x 52 K), at -27 degC"},
			Limits: []verdict.Measured{{ID: "controller.ridge-70.pv_voltage_max", Unit: "V", Value: ptr(150.0), Says: "ridge-70, PV voltage"}},
			Spare:  &verdict.Spare{Value: -19.82592, Unit: "V"}, Headroom: ptr(-0.1321728),
			Remedy: "at most 3 in series here: 127.4 V, 15.1 % headroom", Source: "maker's data sheet; method IEC 62548-1",
			At: []source.Range{at(design, 41, 1, 13), at("parts/ridge.parts.hcl", 4, 3, 14)},
		},
		{
			Rule: "practice.take_off", About: "bank.house", Outcome: verdict.Waived, Grade: verdict.Fix, BookGrade: verdict.Fix,
			Title: "Parallel batteries share alike", Message: "Parallel batteries share alike", Relation: "is_true",
			Is: &verdict.Measured{Formula: "take_off is diagonal or busbar", Unit: "yes_no", Yes: ptr(false)}, Because: "one end carries more",
			Waivable: true, Waiver: &verdict.Waiver{Reason: "moved in spring", ApprovedBy: "the owner", Expires: "2027-04-01", At: at(design, 90, 1, 26)},
			Source: "common practice", At: []source.Range{at(design, 14, 1, 12)},
		},
		{
			Rule: "practice.voltage_drop", About: "cable_run.array.south", Outcome: verdict.Meets, Grade: verdict.Fix, BookGrade: verdict.Fix,
			Title: "Drop along one path", Message: "Drop along one path", Relation: "at_most",
			Is:     &verdict.Measured{ID: "cable_run.array.south.path_drop", Unit: "%", Value: ptr(1.91)},
			Limits: []verdict.Measured{{ID: "param.practice.voltage_drop_max", Unit: "%", Value: ptr(2.0)}},
			Spare:  &verdict.Spare{Value: 0.09, Unit: "%"}, Headroom: ptr(0.045),
			Assumed:    []string{"cable_run.array.south.material", "panel.slate-410.bypass_diodes", "cable_run.charger.main.material"},
			Parameters: []verdict.Parameter{{Name: "voltage_drop_max", Value: "2 %", SetAt: at("workshop.hcl", 8, 24, 5)}},
			Waivable:   true, Source: "common practice", At: []source.Range{at(design, 58, 3, 9)},
		},
		{
			Rule: "limits.pwm_window", About: "pv_input.main.1", Outcome: verdict.DoesNotApply, Grade: verdict.Advise, BookGrade: verdict.Advise,
			Title: "PWM window", Message: "PWM window", Because: "the controller is mppt", Source: "common practice",
		},
	}
	verdict.Sort(verdicts)
	return lint.DesignResult{File: design, Workshop: "workshop.hcl", Name: "Larch Col hut", Revision: "C",
		Digest: "sha256:0f", Verdicts: verdicts, Books: []string{"limits", "practice"}}
}

func run(designs ...lint.DesignResult) *lint.Result {
	r := &lint.Result{Version: "0.1.0", Date: "2026-05-02", Designs: designs, Exit: 1,
		Books: []lint.BookInUse{
			{Name: "limits", Version: "0.1.0", Digest: "sha256:11", Embedded: true},
			{Name: "practice", Version: "0.1.0", Edition: "2023", Digest: "sha256:22",
				Parameters: []lint.ParameterInUse{
					{Name: "voltage_drop_max", Unit: "%", Value: ptr(2.0), SetAt: at("workshop.hcl", 8, 24, 5)},
					{Name: "take_off", Unit: "word", Word: "diagonal"},
					{Name: "strict", Unit: "yes_no", Yes: ptr(true)},
				}},
		},
		Summary: lint.Summary{Designs: len(designs), Rules: 6},
	}
	for i := range designs {
		for j := range designs[i].Verdicts {
			s := &r.Summary
			switch designs[i].Verdicts[j].Outcome {
			case verdict.Meets:
				s.Meets++
			case verdict.Breaks:
				s.Breaks++
			case verdict.Unproven:
				s.Unproven++
			case verdict.Waived:
				s.Waived++
			case verdict.Void:
				s.Void++
			case verdict.DoesNotApply:
				s.DoesNotApply++
				continue
			}
			s.Judgements++
		}
	}
	return r
}
