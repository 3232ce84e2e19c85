package facts_test

import (
	"math"
	"slices"
	"strings"
	"testing"
)

// sheeted gives the hut with its controller's efficiency, and changes.
func sheeted(edits ...string) string {
	text := strings.Replace(hut, "  derate               = \"2 %/K\"\n", "  derate               = \"2 %/K\"\n  efficiency           = \"97 %\"\n", 1)
	for i := 0; i < len(edits); i += 2 {
		if !strings.Contains(text, edits[i]) {
			panic("the hut does not hold " + edits[i])
		}
		text = strings.Replace(text, edits[i], edits[i+1], 1)
	}
	return text
}

const unlikeString = "  string \"b\" {\n    panels = { \"slate-410\" = 1, \"dusk-380\" = 1 }\n"

// Like panels lose nothing: their input's maximum is the panels' own, and its
// voltage the sum of theirs, as the data sheet has them.
func TestLikePanelsOnAnInput(t *testing.T) {
	s := load(t, sheeted(unlikeString, "  string \"b\" {\n    panels = { \"slate-410\" = 2 }\n"))
	pmp := number(t, s, "panel.slate-410.vmp") * number(t, s, "panel.slate-410.imp")
	for id, want := range map[string]float64{
		"pv_input.main.1.mpp_stc": 6 * pmp, "pv_input.main.1.mismatch_loss": 0, "pv_input.main.1.reverse_current": 0, "array.south.mpp_stc": 6 * pmp,
	} {
		if got := number(t, s, id); math.Abs(got-want) > 1e-3*want+1e-6 {
			t.Errorf("%s is %v, want %v", id, got, want)
		}
	}
	hot, cold := number(t, s, "pv_input.main.1.mpp_hot"), number(t, s, "pv_input.main.1.vmp_cold")
	if hot >= 6*pmp || cold <= 2*number(t, s, "panel.slate-410.vmp") {
		t.Errorf("hot cells give %v W, cold ones %v V", hot, cold)
	}
	// By coefficients Vmp falls with heat by what the power loses and the current
	// gains, at most: a lower bound, and a close one.
	warm := 2 * number(t, s, "panel.slate-410.vmp") * (1 - (0.0034+0.0005)*(number(t, s, "pv_input.main.1.cell_hot")-25))
	if got := number(t, s, "pv_input.main.1.vmp_hot"); got < warm || got > 1.03*warm {
		t.Errorf("hot cells have their maximum at %v V; by coefficients at about %v V", got, warm)
	}
	// 60 A is set; 6 x 410 W would give more than the bank's 8 x 3.35 V can take of it.
	if got := number(t, s, "charger.main.charge_current_expected"); !near(got, 60, 1e-12) {
		t.Errorf("charge current expected %v A", got)
	}
	small := load(t, sheeted(unlikeString, "  string \"b\" {\n    panels = { \"slate-410\" = 2 }\n", "parallel = 2\n  }\n  string", "parallel = 1\n  }\n  string", `charge_current           = "60 A"`, `charge_current           = "70 A"`))
	if got, want := number(t, small, "charger.main.charge_current_expected"), 0.97*4*pmp/(8*3.35); want < 70 && math.Abs(got-want) > 1e-3*want {
		t.Errorf("charge current expected %v A, want %v A", got, want)
	}
}

// Unlike panels in one string lose to each other what D5 of the check values
// shows; here that they lose something, that bypass diodes are then asked for,
// and that a contradicting sheet is told with its residual.
func TestUnlikePanelsOnAnInput(t *testing.T) {
	s := load(t, sheeted())
	if base, v := number(t, s, "cable_run.string.south.b.voltage_base"), number(t, s, "pv_input.main.1.vmp_stc"); base != v {
		t.Errorf("drops are shares of %v V, the input's maximum is at %v V", base, v)
	}
	loss := number(t, s, "pv_input.main.1.mismatch_loss")
	if loss <= 0 || loss > 20 {
		t.Errorf("mismatch_loss is %v", loss)
	}
	if back := number(t, s, "pv_input.main.1.reverse_current"); back <= 0 {
		t.Errorf("strings of unlike voltage drive %v A", back)
	}
	silent := load(t, sheeted("  bypass_diodes      = 3\n", ""))
	if f := get(t, silent, "pv_input.main.1.mpp_stc"); f.Known || !slices.Contains(f.Missing, "panel.slate-410.bypass_diodes") {
		t.Errorf("without the number of bypass diodes: %+v", f)
	}
	wrong := load(t, sheeted(`vmp                = "31.4 V"`, `vmp                = "37.0 V"`))
	f := get(t, wrong, "pv_input.main.1.mismatch_loss")
	if f.Known || !strings.Contains(f.Says, "residual") || !strings.HasPrefix(f.Because, "panel.slate-410.model: ") || len(f.Missing) > 0 {
		t.Errorf("a sheet that contradicts itself: %+v", f)
	}
	film := load(t, sheeted(`technology         = "mono_si"`, `technology         = "thin_film"`))
	if f := get(t, film, "panel.slate-410.model"); f.Known || !strings.Contains(f.Says, "thin film") {
		t.Errorf("thin film: %+v", f)
	}
}

// A PWM controller ties the array to the bank: its current is the array's at the
// bank's voltage, near short circuit where that is far below.
func TestArrayAtBankVoltage(t *testing.T) {
	s := load(t, sheeted(`kind                 = "mppt"`, `kind                 = "pwm"`, unlikeString, "  string \"b\" {\n    panels = { \"slate-410\" = 2 }\n"))
	got, short := number(t, s, "charger.main.charge_current_expected"), number(t, s, "pv_input.main.1.isc_stc")
	if got > short || got < 0.97*short {
		t.Errorf("%v A at the bank's voltage, %v A short-circuited", got, short)
	}
}

// A reading is held against the curve at the recorded conditions. Voc of a
// string is its panels' own, brought to 41 degC and 820 W/m2: a second way is
// IEC 60891 procedure 1 (from memory), Voc + a T terms, within 1 %.
func TestReadingsExpected(t *testing.T) {
	recorded := "  value = \"72.1 V\"\n  cell_temperature = \"41 degC\"\n  irradiance       = \"820 W/m2\"\n"
	s := load(t, sheeted("  value = \"72.1 V\"\n", recorded))
	due := number(t, s, "reading.a-open.expected")
	voc := 2 * 37.4 * (1 - 0.0026*(41-25))
	byHand := voc + 2*54*0.0257*(314.15/298.15)*math.Log(0.82)
	if math.Abs(due/byHand-1) > 0.01 {
		t.Errorf("expected %v V, by hand %v V", due, byHand)
	}
	if got := number(t, s, "reading.a-open.difference"); math.Abs(got-(72.1-due)) > 1e-6 {
		t.Errorf("difference %v V", got)
	}
	if got := number(t, s, "reading.a-open.difference_share"); math.Abs(got-100*(72.1-due)/due) > 1e-6 {
		t.Errorf("share %v", got)
	}
	dark := load(t, sheeted())
	if f := get(t, dark, "reading.a-open.expected"); f.Known || !slices.Equal(f.Missing, []string{"reading.a-open.cell_temperature"}) {
		t.Errorf("without conditions: %+v", f)
	}
	// Without the light a voltage is due in the middle of what it is at 200 and at
	// 1000 W/m2; a current hangs on the light alone.
	warm := "  value = \"72.1 V\"\n  cell_temperature = \"41 degC\"\n"
	s = load(t, sheeted("  value = \"72.1 V\"\n", warm))
	byHand = voc + 2*54*0.0257*(314.15/298.15)*math.Log(0.2)/2
	if due := number(t, s, "reading.a-open.expected"); math.Abs(due/byHand-1) > 0.01 || get(t, s, "reading.a-open.with_irradiance").Yes {
		t.Errorf("without irradiance: expected %v V, by hand %v V", due, byHand)
	}
	unlit := strings.NewReplacer("  value = \"72.1 V\"\n", strings.Replace(warm, "72.1 V", "11 A", 1), "string.south.a.voc", "string.south.a.isc").Replace(sheeted())
	if f := get(t, load(t, unlit), "reading.a-open.expected"); f.Known || !slices.Equal(f.Missing, []string{"reading.a-open.irradiance"}) {
		t.Errorf("a current without irradiance: %+v", f)
	}
	amps := strings.NewReplacer("  value = \"72.1 V\"\n", strings.Replace(recorded, "72.1 V", "11 A", 1), "string.south.a.voc", "string.south.a.isc").Replace(sheeted())
	f := get(t, load(t, amps), "reading.a-open.expected")
	if f.Unit != "A" || math.Abs(f.SI/(0.82*number(t, s, "panel.slate-410.isc"))-1) > 0.01 {
		t.Errorf("a short-circuit current, of one of two like strings: %+v", f)
	}
	bank := strings.NewReplacer("  value = \"72.1 V\"\n", strings.Replace(recorded, "72.1 V", "26 V", 1), "string.south.a.voc", "bank.house.voltage").Replace(sheeted())
	if f := get(t, load(t, bank), "reading.a-open.expected"); f.Known {
		t.Errorf("a bank's voltage has no curve: %+v", f)
	}
}

// Energy of a day, by hand: lights 60 W x 6 h; radio 24 W x 10 h through 92 % and
// 24 h of 1 W; pump 700 W x 0.5 h through 90 % and 24 h of 14 W; fan 22 W x 2 h
// and 24 h of the controller's 1.5 W.
func TestDailyLoad(t *testing.T) {
	text := strings.NewReplacer(
		"  power       = \"60 W\"\n", "  power       = \"60 W\"\n  hours_per_day = 6\n",
		"  power = \"24 W\"\n", "  power = \"24 W\"\n  hours_per_day = 10\n",
		"  power = \"700 W\"\n", "  power = \"700 W\"\n  hours_per_day = 0.5\n",
		"  power = \"22 W\"\n", "  power = \"22 W\"\n  daily_energy = \"44 Wh\"\n",
		"  ac_voltage = \"230 V\"\n", "  ac_voltage = \"230 V\"\n  idle = \"14 W\"\n",
		"  current    = \"20 A\"\n", "  current    = \"20 A\"\n  idle = \"1 W\"\n",
		"  derate               = \"2 %/K\"\n", "  derate               = \"2 %/K\"\n  idle = \"1.5 W\"\n",
		"  capacity              = \"200 Ah\"\n", "  capacity              = \"200 Ah\"\n  usable = \"80 %\"\n",
	).Replace(hut)
	s := load(t, text)
	want := 60*6 + 240/0.92 + 24 + 350/0.9 + 24*14 + 44 + 24*1.5
	if got := number(t, s, "bank.house.daily_load"); !near(got, want, 1e-8) {
		t.Errorf("daily_load is %v Wh, want %v Wh", got, want)
	}
	if got := number(t, s, "system.daily_load"); !near(got, want, 1e-8) {
		t.Errorf("the system's is %v Wh", got)
	}
	usable := 25.6 * 400 * 0.8
	if got := number(t, s, "bank.house.usable_energy"); !near(got, usable, 1e-9) {
		t.Errorf("usable_energy is %v Wh", got)
	}
	if got := number(t, s, "bank.house.autonomy"); !near(got, usable/want, 1e-8) {
		t.Errorf("autonomy is %v d, want %v d", got, usable/want)
	}
	// What is known of a sum is a lower bound of it.
	part := load(t, strings.Replace(text, "  hours_per_day = 6\n", "", 1))
	f := get(t, part, "bank.house.daily_load")
	if f.Known || f.AtLeast == nil || !near(*f.AtLeast/3600, want-360, 1e-9) || !slices.Contains(f.Missing, "load.lights.hours_per_day") {
		t.Errorf("without the lights' hours: %+v", f)
	}
}

// Thin film has no single-diode curve. Strings that are alike lose nothing to
// each other all the same, and their voltage and power follow from the sheet's
// coefficients (common practice); unlike ones stay unknown.
func TestThinFilm(t *testing.T) {
	like := []string{unlikeString, "  string \"b\" {\n    panels = { \"slate-410\" = 2 }\n", `technology         = "mono_si"`, `technology         = "thin_film"`}
	s := load(t, sheeted(like...))
	warmer := number(t, s, "pv_input.main.1.cell_hot") - 25
	for id, want := range map[string]float64{
		"pv_input.main.1.vmp_stc": 2 * 31.4, "pv_input.main.1.vmp_hot": 2 * 31.4 * (1 - 0.0039*warmer), "pv_input.main.1.mpp_stc": 6 * 31.4 * 13.06,
		"pv_input.main.1.mpp_hot": 6 * 31.4 * 13.06 * (1 - 0.0034*warmer), "pv_input.main.1.mismatch_loss": 0, "pv_input.main.1.reverse_current": 0,
	} {
		if got := number(t, s, id); !near(got, want, 1e-8) {
			t.Errorf("%s is %v, want %v", id, got, want)
		}
	}
	unlike := load(t, sheeted(like[2:]...))
	for _, id := range []string{"pv_input.main.1.vmp_hot", "pv_input.main.1.reverse_current", "pv_input.main.1.mismatch_loss"} {
		if f := get(t, unlike, id); f.Known {
			t.Errorf("unlike strings of thin film: %+v", f)
		}
	}
}

// Like strings of arrays that get unequally hot drive current into each other:
// the cooler one has the higher voltage.
func TestLikeStringsOfUnlikeArrays(t *testing.T) {
	s := load(t, sheeted(unlikeString, "  string \"b\" {\n    panels = { \"slate-410\" = 2 }\n", "ac_output \"cabin\"",
		"array \"flush\" {\n  charger = \"main\"\n  mounting = \"roof_flush\"\n  string \"c\" {\n    panels = { \"slate-410\" = 2 }\n  }\n}\n\nac_output \"cabin\""))
	if got := number(t, s, "pv_input.main.1.reverse_current"); got <= 0.1 || got > 13.9 {
		t.Errorf("reverse current %v A", got)
	}
	if got := number(t, s, "pv_input.main.1.mismatch_loss"); got > 1e-6 {
		t.Errorf("at 25 degC all are alike, and lose %v %%", got)
	}
}
