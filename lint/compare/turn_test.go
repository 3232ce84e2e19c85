package compare

import (
	"testing"

	"pgregory.net/rapid"

	"stringline/lint"
	"stringline/lint/verdict"
)

func one(o verdict.Outcome, g verdict.Grade) *verdict.Verdict {
	return &verdict.Verdict{Rule: "limits.x", About: "bank.house", Outcome: o, Grade: g}
}

func with(v *verdict.Verdict, headroom float64) *verdict.Verdict {
	v.Headroom = &headroom
	return v
}

// TestDirections states for every kind of turn which way it is told to go.
func TestDirections(t *testing.T) {
	const stop, fix = verdict.Stop, verdict.Fix
	here := &lint.DesignResult{Books: []string{"limits"}}
	elsewhere := &lint.DesignResult{Books: []string{"practice"}}
	limit := 0.05
	for _, c := range []struct {
		name     string
		was, now *verdict.Verdict
		wasIn    *lint.DesignResult // nil: a new design
		nowIn    *lint.DesignResult
		want     Direction
	}{
		{"met, broken", one(verdict.Meets, stop), one(verdict.Breaks, stop), here, here, Worse},
		{"met, unproven", one(verdict.Meets, stop), one(verdict.Unproven, stop), here, here, Worse},
		{"met, void", one(verdict.Meets, stop), one(verdict.Void, stop), here, here, Worse},
		{"waived, broken", one(verdict.Waived, fix), one(verdict.Breaks, fix), here, here, Worse},
		{"not applying, broken", one(verdict.DoesNotApply, fix), one(verdict.Breaks, fix), here, here, Worse},
		{"unproven, broken", one(verdict.Unproven, fix), one(verdict.Breaks, fix), here, here, Worse},
		{"unproven, void", one(verdict.Unproven, fix), one(verdict.Void, fix), here, here, Worse},
		{"broken fix, broken stop", one(verdict.Breaks, fix), one(verdict.Breaks, stop), here, here, Worse},
		{"broken fix, unproven stop", one(verdict.Breaks, fix), one(verdict.Unproven, stop), here, here, Worse},
		{"further past", with(one(verdict.Breaks, fix), -0.1), with(one(verdict.Breaks, fix), -0.2), here, here, Worse},
		{"nothing, broken", nil, one(verdict.Breaks, fix), here, here, Worse},
		{"new design, broken", nil, one(verdict.Breaks, fix), nil, here, Worse},
		{"new codebook, broken", nil, one(verdict.Breaks, fix), elsewhere, here, Worse},
		{"below the margin", with(one(verdict.Meets, fix), 0.06), with(one(verdict.Meets, fix), 0.0499), here, here, Worse},
		{"on the margin", with(one(verdict.Meets, fix), 0.06), with(one(verdict.Meets, fix), 0.05), here, here, Lost},
		{"below before, and more now", with(one(verdict.Meets, fix), 0.01), with(one(verdict.Meets, fix), 0.02), here, here, Won},
		{"waived, with less", with(one(verdict.Waived, fix), -0.1), with(one(verdict.Waived, fix), -0.2), here, here, Lost},

		{"broken, met", one(verdict.Breaks, stop), one(verdict.Meets, stop), here, here, Better},
		{"unproven, met", one(verdict.Unproven, stop), one(verdict.Meets, stop), here, here, Better},
		{"broken, not applying", one(verdict.Breaks, stop), one(verdict.DoesNotApply, stop), here, here, Better},
		{"broken, gone with its subject", one(verdict.Breaks, stop), nil, here, here, Better},
		{"less far past", with(one(verdict.Breaks, fix), -0.2), with(one(verdict.Breaks, fix), -0.1), here, here, Better},

		{"broken, waived", one(verdict.Breaks, stop), one(verdict.Waived, stop), here, here, Turned},
		{"met, waived", one(verdict.Meets, stop), one(verdict.Waived, stop), here, here, Turned},
		{"broken, unproven", one(verdict.Breaks, stop), one(verdict.Unproven, stop), here, here, Turned},
		{"broken stop, broken fix", one(verdict.Breaks, stop), one(verdict.Breaks, fix), here, here, Turned},
		{"broken, codebook dropped", one(verdict.Breaks, stop), nil, here, elsewhere, Turned},
		{"met, not applying", one(verdict.Meets, stop), one(verdict.DoesNotApply, stop), here, here, Turned},
		{"met fix, met stop", one(verdict.Meets, fix), one(verdict.Meets, stop), here, here, Turned},

		{"met, gone", one(verdict.Meets, stop), nil, here, here, Left},
		{"met, codebook dropped", one(verdict.Meets, stop), nil, here, elsewhere, Left},
		{"nothing, met", nil, one(verdict.Meets, stop), here, here, Came},
		{"new design, met", nil, one(verdict.Meets, stop), nil, here, ""},
		{"less headroom", with(one(verdict.Meets, fix), 0.5), with(one(verdict.Meets, fix), 0.4), here, here, Lost},
		{"more headroom", with(one(verdict.Meets, fix), 0.4), with(one(verdict.Meets, fix), 0.5), here, here, Won},
		{"rounding", with(one(verdict.Meets, fix), 0.4), with(one(verdict.Meets, fix), 0.4-slight/2), here, here, ""},
		{"beyond rounding", with(one(verdict.Meets, fix), 0.4), with(one(verdict.Meets, fix), 0.4-slight*2), here, here, Lost},
		{"the same", with(one(verdict.Breaks, fix), -0.4), with(one(verdict.Breaks, fix), -0.4), here, here, ""},
		{"not applying still", one(verdict.DoesNotApply, fix), one(verdict.DoesNotApply, fix), here, here, ""},
	} {
		turn := Turn{Was: c.was, Now: c.now}
		got, why := turn.judge(c.wasIn, c.nowIn, &Options{HeadroomBelow: &limit})
		if got != c.want {
			t.Errorf("%s: %q (%s), want %q", c.name, got, why, c.want)
		}
	}
}

// TestThereAndBack: nothing is worse in both directions, what is worse one way is
// not passed over the other way, and what is the same is told neither way.
func TestThereAndBack(t *testing.T) {
	here := &lint.DesignResult{Books: []string{"limits"}}
	rapid.Check(t, func(t *rapid.T) {
		draw := func(name string) *verdict.Verdict {
			v := one(rapid.SampledFrom([]verdict.Outcome{verdict.Meets, verdict.Breaks, verdict.Unproven, verdict.Waived, verdict.Void, verdict.DoesNotApply}).Draw(t, name),
				rapid.SampledFrom([]verdict.Grade{verdict.Stop, verdict.Fix, verdict.Advise}).Draw(t, name+" grade"))
			if rapid.Bool().Draw(t, name+" measured") {
				with(v, rapid.Float64Range(-2, 2).Draw(t, name+" headroom"))
			}
			return v
		}
		a, b := draw("was"), draw("now")
		there, back := Turn{Was: a, Now: b}, Turn{Was: b, Now: a}
		d1, _ := there.judge(here, here, &Options{})
		d2, _ := back.judge(here, here, &Options{})
		if d1 == Worse && d2 == Worse || d1 == Better && d2 == Better {
			t.Fatalf("%s both ways", d1)
		}
		if d1 == Worse && d2 == "" {
			t.Fatalf("worse there, and nothing back")
		}
		if !a.Finding() && b.Finding() && d1 != Worse {
			t.Fatalf("a finding that was none is %s", d1)
		}
		same := Turn{Was: a, Now: a}
		if d, _ := same.judge(here, here, &Options{}); d != "" {
			t.Fatalf("the same is %s", d)
		}
	})
}

// TestNames follows ids through renamed blocks.
func TestNames(t *testing.T) {
	n := &names{to: map[string]string{"charger.main": "charger.roof", "array.south": "array.meadow", "string.south.a": "string.meadow.east", "bank.house": "bank.cellar"}}
	for id, want := range map[string]string{
		"charger.main": "charger.roof", "charger.main.settings.float": "charger.roof.settings.float", "charger.mainly": "charger.mainly",
		"pv_input.main.1.voc_cold": "pv_input.roof.1.voc_cold", "cable_run.charger.main.length": "cable_run.charger.roof.length",
		"string.south.a.voc": "string.meadow.east.voc", "string.south.b.voc": "string.meadow.b.voc", "cable_run.string.south.a": "cable_run.string.meadow.east",
		"protection.bank.house.each.rating": "protection.bank.cellar.each.rating", "charger.main.load_terminals": "charger.roof.load_terminals",
		"site.coldest": "site.coldest", "system": "system", "": "", "string.south": "string.meadow", "param.limits.x": "param.limits.x",
	} {
		if got := n.id(id); got != want {
			t.Errorf("%s: %s, want %s", id, got, want)
		}
	}
	if got := n.words("limits.x on bank.house"); got != "limits.x on bank.cellar" {
		t.Errorf("words: %s", got)
	}
}
