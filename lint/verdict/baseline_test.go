package verdict

import (
	"encoding/csv"
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
	"pgregory.net/rapid"
)

func ptr[T any](v T) *T { return &v }

const headLine = "file,rule,about,which,verdict,grade,found,spare,headroom,accepted\n"

// drop is a finding with headroom, cold one with a distance alone (a temperature
// has no share), gas one that is a yes or no.
func drop(headroom float64) Verdict {
	return Verdict{Rule: "practice.voltage_drop", About: "cable_run.array.south", Outcome: Breaks, Grade: Fix, BookGrade: Fix, Waivable: true,
		Is: &Measured{ID: "x", Unit: "%", Value: ptr(2 - 2*headroom)}, Spare: &Spare{Value: 2 * headroom, Unit: "%"}, Headroom: &headroom}
}

func cold(spare float64) Verdict {
	return Verdict{Rule: "limits.cold_charge", About: "charger.main", Outcome: Breaks, Grade: Fix, BookGrade: Fix, Waivable: true,
		Is: &Measured{ID: "y", Unit: "degC", Value: ptr(spare)}, Spare: &Spare{Value: spare, Unit: "K"}}
}

func gas() Verdict {
	return Verdict{Rule: "practice.gas", About: "bank.house", Which: "room, \"left\"", Outcome: Breaks, Grade: Advise, BookGrade: Advise, Waivable: true,
		Is: &Measured{Formula: "vented", Unit: "yes_no", Yes: ptr(false)}}
}

func unproven(v Verdict) Verdict {
	v.Outcome, v.Is, v.Spare, v.Headroom = Unproven, &Measured{ID: "x", Unit: "%"}, nil, nil
	return v
}

func graded(v Verdict, g Grade) Verdict {
	v.Grade = g
	return v
}

func baselineOf(t *testing.T, lines ...Accepted) *Baseline {
	t.Helper()
	text, err := WriteBaseline(lines)
	if err != nil {
		t.Fatal(err)
	}
	b, problems := ReadBaseline("accepted.csv", text)
	if b == nil {
		t.Fatalf("%v\n%s", problems, text)
	}
	return b
}

// TestWorse: what got worse by more than the tolerance is told, on both sides of
// each bound.
func TestWorse(t *testing.T) {
	for _, c := range []struct {
		name     string
		was, now Verdict
		worse    string
	}{
		{"the same", drop(-0.05), drop(-0.05), ""},
		{"lower within the tolerance", drop(-0.05), drop(-0.05 - 0.999*Tolerance), ""},
		{"lower by more than it", drop(-0.05), drop(-0.05 - 1.001*Tolerance), "headroom -5.1 %, accepted at -5.0 %"},
		{"far lower", drop(-0.05), drop(-0.5), "headroom -50.0 %, accepted at -5.0 %"},
		{"higher", drop(-0.05), drop(-0.01), ""},
		{"a grade that rose", graded(drop(-0.05), Advise), drop(-0.05), "its grade rose from advise to fix"},
		{"a grade that rose to stop", drop(-0.05), graded(drop(-0.05), Stop), "its grade rose from fix to stop"},
		{"a grade that fell", drop(-0.05), graded(drop(-0.05), Advise), ""},
		{"unproven, now known to break", unproven(drop(0)), drop(-0.05), "it was unproven and is now known to break the rule"},
		{"known, now unproven", drop(-0.05), unproven(drop(0)), "it broke the rule by a known figure, and now nothing is known"},
		{"unproven still", unproven(drop(0)), unproven(drop(0)), ""},
		{"a distance within the tolerance", cold(-5), cold(-5 - 5*0.999*Tolerance), ""},
		{"a distance beyond it", cold(-5), cold(-5 - 5*1.001*Tolerance), "-5.005005 K to the limit, accepted at -5 K"},
		{"a yes or no", gas(), gas(), ""},
		{"a share that turned into a distance", drop(-0.05), cold(-5), "it is no longer measured as it was, so nobody can tell that it is no worse"},
	} {
		t.Run(c.name, func(t *testing.T) {
			c.now.Rule, c.now.About, c.now.Which = c.was.Rule, c.was.About, c.was.Which
			b := baselineOf(t, c.was.Accept("hut.design.hcl", "2026-05-02"))
			vs := []Verdict{c.now}
			if stand := b.Compare("hut.design.hcl", vs); !stand[0] || len(stand) != 1 {
				t.Errorf("lines that stand: %v", stand)
			}
			v := vs[0]
			if v.Accepted == nil || v.Accepted.Worse != c.worse {
				t.Fatalf("accepted %+v, want worse %q", v.Accepted, c.worse)
			}
			if v.Finding() == v.Held() || v.Held() != (c.worse == "") {
				t.Errorf("a finding: %v, held: %v", v.Finding(), v.Held())
			}
		})
	}
}

// TestCompare: a line stands for its own finding alone, and is gone where there is
// none; of a void verdict nothing is known.
func TestCompare(t *testing.T) {
	meets, void, waived := drop(0.1), drop(0), drop(-0.1)
	meets.Outcome, void.Outcome, waived.Outcome = Meets, Void, Waived
	other := drop(-0.05)
	other.About = "cable_run.array.north"
	b := baselineOf(t, func() Accepted { v := drop(-0.05); return v.Accept("huts/hut.design.hcl", "2026-05-02") }())
	for _, c := range []struct {
		name   string
		file   string
		v      Verdict
		stands bool
		held   bool
	}{
		{"its own", "huts/hut.design.hcl", drop(-0.05), true, true},
		{"another file", "hut.design.hcl", drop(-0.05), false, false},
		{"another subject", "huts/hut.design.hcl", other, false, false},
		{"met now", "huts/hut.design.hcl", meets, false, false},
		{"waived now", "huts/hut.design.hcl", waived, false, false},
		{"void", "huts/hut.design.hcl", void, true, false},
	} {
		vs := []Verdict{c.v}
		if stand := b.Compare(c.file, vs); stand[0] != c.stands {
			t.Errorf("%s: stands %v", c.name, stand[0])
		}
		if vs[0].Held() != c.held {
			t.Errorf("%s: held %v", c.name, vs[0].Held())
		}
		if c.v.Outcome == Void && !vs[0].Finding() {
			t.Error("a void verdict is no finding any more")
		}
	}
}

func TestAcceptable(t *testing.T) {
	bound := drop(-0.05)
	bound.Waivable = false
	void := drop(0)
	void.Outcome = Void
	for _, c := range []struct {
		v    Verdict
		want string
	}{
		{drop(-0.05), ""}, {graded(drop(-0.05), Advise), ""}, {unproven(drop(0)), ""},
		{graded(drop(-0.05), Stop), "it is a stop"}, {graded(unproven(drop(0)), Stop), "it is a stop"},
		{bound, "nobody may permit a departure from this rule"}, {void, "the rule itself failed"},
	} {
		if got := c.v.Acceptable(); got != c.want {
			t.Errorf("%s %s: %q, want %q", c.v.Grade, c.v.Outcome, got, c.want)
		}
	}
}

// TestRenew: the day stays where nothing got worse, and a finding that got better
// is held at what it reached.
func TestRenew(t *testing.T) {
	for _, c := range []struct {
		name string
		now  float64
		want Accepted
	}{
		{"the same", -0.05 + 0.5*Tolerance, Accepted{Since: "2026-05-02", Headroom: ptr(-0.05)}},
		{"better", -0.02, Accepted{Since: "2026-05-02", Headroom: ptr(-0.02)}},
		{"worse", -0.09, Accepted{Since: "2027-01-01", Headroom: ptr(-0.09)}},
	} {
		was := drop(-0.05)
		b := baselineOf(t, was.Accept("hut.design.hcl", "2026-05-02"))
		vs := []Verdict{drop(c.now)}
		b.Compare("hut.design.hcl", vs)
		got := vs[0].Accepted.Renew(&vs[0], "2027-01-01")
		if got.Since != c.want.Since || *got.Headroom != *c.want.Headroom {
			t.Errorf("%s: since %s, headroom %v", c.name, got.Since, *got.Headroom)
		}
	}
}

// TestBaselineText is the file as people and git see it: sorted whatever the order
// that findings come in, one a line, with the general-purpose reader of RFC 4180
// getting out what went in.
func TestBaselineText(t *testing.T) {
	d, g, c := drop(-0.05), gas(), cold(-5)
	lines := []Accepted{g.Accept("hut.design.hcl", "2026-05-02"), c.Accept("hut.design.hcl", "2026-05-03"), d.Accept("hut.design.hcl", "2026-05-02"), d.Accept("a b/50%.design.hcl", "2026-05-02")}
	text, err := WriteBaseline(lines)
	if err != nil {
		t.Fatal(err)
	}
	want := headLine +
		"a b/50%.design.hcl,practice.voltage_drop,cable_run.array.south,,breaks,fix,2.1 %,-0.1 %,-0.05,2026-05-02\n" +
		"hut.design.hcl,limits.cold_charge,charger.main,,breaks,fix,-5 degC,-5 K,,2026-05-03\n" +
		"hut.design.hcl,practice.gas,bank.house,\"room, \"\"left\"\"\",breaks,advise,no,,,2026-05-02\n" +
		"hut.design.hcl,practice.voltage_drop,cable_run.array.south,,breaks,fix,2.1 %,-0.1 %,-0.05,2026-05-02\n"
	if diff := cmp.Diff(want, string(text)); diff != "" {
		t.Error(diff)
	}
	rows, err := csv.NewReader(strings.NewReader(string(text))).ReadAll()
	if err != nil || len(rows) != 5 || rows[3][3] != `room, "left"` {
		t.Errorf("%v: %q", err, rows)
	}
}

// TestBaselineProblems: each damage is told at its place, and nothing is accepted.
func TestBaselineProblems(t *testing.T) {
	const good = "hut.design.hcl,practice.gas,bank.house,,breaks,advise,no,,,2026-05-02\n"
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"empty", "", []string{"accepted.csv:1:1: reading the baseline: the file is empty"}},
		{"no head", good, []string{"accepted.csv:1:1: reading the baseline: the first line does not name the columns"}},
		{"half a line", headLine + good + "hut.design.hcl,practice\n", []string{"accepted.csv:3:1: reading the baseline: a damaged line: 2 fields, of which there must be 10"}},
		{"an open quote", headLine + `hut.design.hcl,practice.gas,bank.house,"room,breaks,advise,no,,,2026-05-02` + "\n" + good, []string{`accepted.csv:2:75: reading the baseline: a damaged line: extraneous or missing "`}},
		{"a stray quote", headLine + "hut.design.hcl,a\"b,bank.house,,breaks,advise,no,,,2026-05-02\n", []string{"accepted.csv:2:17: reading the baseline: a damaged line: bare \""}},
		{"a merge", headLine + "<<<<<<< HEAD\n" + good + "=======\n>>>>>>> branch\n", []string{"accepted.csv:2:1: ", "accepted.csv:4:1: reading the baseline: a conflict marker of a merge", "accepted.csv:5:1: "}},
		{"the same twice", headLine + good + strings.Replace(good, "-02", "-03", 1), []string{"accepted.csv:3:1: reading the baseline: the same finding as in line 2"}},
		{"a stop", headLine + strings.Replace(good, "advise", "stop", 1), []string{"accepted.csv:2:48: reading the baseline: grade: a stop cannot be accepted"}},
		{"no verdict", headLine + strings.Replace(good, "breaks", "meets", 1), []string{"accepted.csv:2:41: reading the baseline: verdict: "}},
		{"no day", headLine + strings.Replace(good, "05-02", "02-30", 1), []string{"accepted.csv:2:60: reading the baseline: accepted: no day"}},
		{"a path that is absolute", headLine + "/" + good, []string{"accepted.csv:2:1: reading the baseline: file: no such path"}},
		{"a path with backslashes", headLine + `huts\` + good, []string{"accepted.csv:2:1: reading the baseline: file: "}},
		{"a headroom that is none", headLine + strings.Replace(good, "no,,,", "no,,NaN,", 1), []string{"accepted.csv:2:59: reading the baseline: headroom: no number"}},
		{"an empty line", headLine + "\n" + good, []string{"accepted.csv:2:1: reading the baseline: an empty line"}},
		{"a control character", headLine + strings.Replace(good, "no,", "n\x1bo,", 1), []string{"accepted.csv:2:55: reading the baseline: found: holds the character U+001B"}},
		{"columns count code points", headLine + strings.Replace(good, "house", "häuß", 1) + strings.Replace(good, "house,,breaks", "häuß,°,meets", 1),
			[]string{"accepted.csv:3:41: reading the baseline: verdict: "}},
		{"two at once", headLine + strings.Replace(good, "advise", "stop", 1) + "x\n", []string{"accepted.csv:2:48: ", "accepted.csv:3:1: "}},
	} {
		t.Run(c.name, func(t *testing.T) {
			b, problems := ReadBaseline("accepted.csv", []byte(c.text))
			if b != nil || len(problems) != len(c.want) {
				t.Fatalf("baseline %v, problems\n%v", b, problems)
			}
			for i, want := range c.want {
				if !strings.HasPrefix(problems[i].Error(), want) || problems[i].Kind != "baseline" {
					t.Errorf("got  %s\nwant %s", problems[i].Error(), want)
				}
			}
		})
	}
	for name, text := range map[string]string{"CRLF": strings.ReplaceAll(headLine+good, "\n", "\r\n"), "a mark first": "\uFEFF" + headLine + good, "no last end": strings.TrimSuffix(headLine+good, "\n"), "none": headLine} {
		if b, problems := ReadBaseline("accepted.csv", []byte(text)); b == nil || name != "none" && len(b.Lines) != 1 {
			t.Errorf("%s: %v", name, problems)
		}
	}
}

// TestBaselineRefusesWhatCannotStandOnALine: a line end in a name would let it
// write a second line.
func TestBaselineRefusesWhatCannotStandOnALine(t *testing.T) {
	for _, which := range []string{"a\nb", "a\rb", "\u202eab", "a\xffb", "\x1b[31m"} {
		v := gas()
		v.Which = which
		if text, err := WriteBaseline([]Accepted{v.Accept("hut.design.hcl", "2026-05-02")}); err == nil {
			t.Errorf("%q was written: %s", which, text)
		}
	}
}

// TestBaselineRoundTrip: whatever is accepted is read back as it was, and writing
// it again changes nothing.
func TestBaselineRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		word := rapid.StringMatching(`[a-zäé°"' ,;=_./%-]{1,12}`)
		n := rapid.IntRange(0, 8).Draw(t, "n")
		var lines []Accepted
		for i := range n {
			v := Verdict{Rule: "book." + word.Draw(t, "rule"), About: word.Draw(t, "about"), Which: fmt.Sprint(i, word.Draw(t, "which")),
				Outcome: rapid.SampledFrom([]Outcome{Breaks, Unproven}).Draw(t, "outcome"), Grade: rapid.SampledFrom([]Grade{Fix, Advise}).Draw(t, "grade")}
			if rapid.Bool().Draw(t, "measured") {
				value := rapid.Float64().Draw(t, "value")
				v.Is = &Measured{ID: "x", Unit: "V", Value: &value}
				v.Spare, v.Headroom = &Spare{Value: value, Unit: "V"}, &value
			}
			lines = append(lines, v.Accept(fmt.Sprintf("d%d.design.hcl", i%3), "2026-05-02"))
		}
		text, err := WriteBaseline(lines)
		if err != nil {
			t.Fatal(err)
		}
		b, problems := ReadBaseline("accepted.csv", text)
		if b == nil {
			t.Fatalf("%v\n%s", problems, text)
		}
		again, err := WriteBaseline(b.Lines)
		if err != nil || string(again) != string(text) {
			t.Fatalf("%v (-first +again)\n%s", err, cmp.Diff(string(text), string(again)))
		}
		sortAccepted(lines)
		if diff := cmp.Diff(lines, b.Lines, cmpopts.IgnoreFields(Accepted{}, "At", "keyAt"), cmpopts.EquateEmpty(), cmp.AllowUnexported(Accepted{})); diff != "" {
			t.Fatal(diff)
		}
	})
}

// FuzzReadBaseline: no text makes the reader panic, every problem has a place in
// the file, and what is read can be written.
func FuzzReadBaseline(f *testing.F) {
	f.Add([]byte(headLine + "hut.design.hcl,practice.gas,bank.house,,breaks,advise,no,,,2026-05-02\n"))
	f.Add([]byte(headLine + "<<<<<<< x\n\"\n"))
	f.Fuzz(func(t *testing.T, text []byte) {
		b, problems := ReadBaseline("b", text)
		if (b == nil) != (len(problems) > 0) {
			t.Fatalf("%v beside %v", b, problems)
		}
		lines := strings.Count(string(text), "\n") + 1
		for _, p := range problems {
			if !p.At.Valid() || p.At.Start.Line > lines || p.At.Start.Column < 1 {
				t.Fatalf("%+v", p)
			}
		}
		if b != nil {
			if _, err := WriteBaseline(b.Lines); err != nil {
				t.Fatal(err)
			}
		}
	})
}

func TestAcceptKeepsNoNumberThatIsNone(t *testing.T) {
	v := drop(math.Inf(-1))
	if a := v.Accept("f", "2026-05-02"); a.Headroom != nil || a.Spare != nil {
		t.Errorf("%+v", a)
	}
}
