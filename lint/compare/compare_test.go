package compare_test

import (
	"fmt"
	"io/fs"
	"math"
	"os"
	"path"
	"slices"
	"strings"
	"testing"

	"stringline/lint"
	"stringline/lint/compare"
	"stringline/lint/linttest"
	"stringline/lint/verdict"
	"stringline/rules"
	"stringline/schema/source"
)

// workshop gives the texts of an example, by name.
func workshop(t testing.TB, name string) map[string]string {
	t.Helper()
	texts := map[string]string{}
	root := os.DirFS("../../examples/" + name)
	err := fs.WalkDir(root, ".", func(file string, e fs.DirEntry, err error) error {
		if err != nil || e.IsDir() || strings.HasSuffix(file, "-broken.design.hcl") {
			return err
		}
		text, err := fs.ReadFile(root, file)
		texts[path.Join("w", file)] = string(text)
		return err
	})
	if err != nil || len(texts) < 3 {
		t.Fatalf("reading the example %s: %d files, %v", name, len(texts), err)
	}
	return texts
}

// edit replaces one place of a text, which must be there.
func edit(t testing.TB, texts map[string]string, file, old, text string) map[string]string {
	t.Helper()
	out := map[string]string{}
	for name := range texts {
		out[name] = texts[name]
	}
	file = path.Join("w", file)
	if !strings.Contains(out[file], old) {
		t.Fatalf("%s does not hold %q", file, old)
	}
	out[file] = strings.ReplaceAll(out[file], old, text)
	return out
}

// judged remembers the last runs: many cases begin from the same texts.
var judged = map[string]*lint.Result{}

func judge(t *testing.T, texts map[string]string) *lint.Result {
	t.Helper()
	key := fmt.Sprint(texts)
	if r, ok := judged[key]; ok {
		return r
	}
	r, err := lint.Run(t.Context(), lint.Options{Disk: linttest.NewDisk(texts), Embedded: rules.Books, WorkingDir: "/w", Paths: []string{"/w"}, Date: "2026-05-02", Version: "0.1.0"})
	if err != nil {
		t.Fatal(err)
	}
	judged[key] = r
	return r
}

func runs(t *testing.T, was, now map[string]string) *compare.Comparison {
	t.Helper()
	return compare.Runs(compare.Options{
		Was: compare.Run{Label: "was", Result: judge(t, was)}, Now: compare.Run{Label: "now", Result: judge(t, now)}, RejectFrom: verdict.Advise})
}

func turnOf(d *compare.Design, rule, about string) *compare.Turn {
	for i := range d.Turns {
		v := d.Turns[i].Now
		if v == nil {
			v = d.Turns[i].Was
		}
		if v.Rule == rule && v.About == about {
			return &d.Turns[i]
		}
	}
	return nil
}

func factOf(d *compare.Design, id string) *compare.Fact {
	for i := range d.Facts {
		if d.Facts[i].ID == id {
			return &d.Facts[i]
		}
	}
	return nil
}

// The open-circuit voltage on the coldest morning by the coefficient of the data
// sheet, as IEC 62548-1 and NEC 690.7(A) have it: n x Voc x (1 + b x (25 - T)).
func cold(n, voc, percentPerKelvin, coldest float64) float64 {
	return n * voc * (1 + percentPerKelvin/100*(25-coldest))
}

// TestSwappedPanel: another panel in one string. What moved is held against the
// closed form; the cause of all of it is that string.
func TestSwappedPanel(t *testing.T) {
	was := workshop(t, "hut")
	c := runs(t, was, edit(t, was, "hut.design.hcl", `{ "slate-410" = 2 }`, `{ "dusk-335" = 2 }`))
	d := &c.Designs[0]
	if c.Exit != 1 || d.State != compare.Changed || len(d.Renamed) > 0 {
		t.Fatalf("exit %d, state %s, renamed %v", c.Exit, d.State, d.Renamed)
	}
	f := factOf(d, "string.south.a.voc_cold")
	if f == nil {
		t.Fatal("the coldest voltage of the string did not move")
	}
	// From parts/panels.parts.hcl: 37.4 V at -0.26 %/K, 36.9 V at -0.27 %/K.
	for _, s := range []struct{ got, want float64 }{{f.Was.SI, cold(2, 37.4, 0.26, -27)}, {f.Now.SI, cold(2, 36.9, 0.27, -27)}} {
		if math.Abs(s.got-s.want) > 1e-9 {
			t.Errorf("voc_cold %g V, the closed form gives %g V", s.got, s.want)
		}
	}
	for i := range d.Facts {
		if !slices.Equal(d.Facts[i].Causes, []string{"string.south.a"}) {
			t.Errorf("%s: moved by %v", d.Facts[i].ID, d.Facts[i].Causes)
		}
	}
	if d.Facts[0].Causes == nil || !d.Facts[0].Judged {
		t.Errorf("the first fact is %s, which no worse verdict is about", d.Facts[0].ID)
	}
	// The panels' series fuse rating is 20 A now, the fuse still 25 A.
	if turn := turnOf(d, "limits.string_fuse", "string.south.a"); turn == nil || turn.Direction != compare.Worse || turn.Now.Outcome != verdict.Breaks {
		t.Errorf("string fuse: %+v", turn)
	}
	if d.Turns[0].Direction != compare.Worse || d.Turns[0].Grade() != verdict.Stop {
		t.Errorf("the worst does not come first: %+v", d.Turns[0])
	}
	// The other way round it is better, and the exit status 0.
	c = runs(t, edit(t, was, "hut.design.hcl", `{ "slate-410" = 2 }`, `{ "dusk-335" = 2 }`), was)
	if turn := turnOf(&c.Designs[0], "limits.string_fuse", "string.south.a"); c.Exit != 0 || turn == nil || turn.Direction != compare.Better {
		t.Errorf("put right: exit %d, %+v", c.Exit, turn)
	}
}

// block takes the stretch from a line on to the next line that begins a block.
func block(t *testing.T, text, from string) (before, taken, after string) {
	t.Helper()
	before, rest, ok := strings.Cut(text, "\n"+from)
	end := strings.Index(rest, "\n}\n")
	if !ok || end < 0 {
		t.Fatalf("no block %q", from)
	}
	return before + "\n", from + rest[:end+3], rest[end+3:]
}

func TestMovedBlockIsNoChange(t *testing.T) {
	was := workshop(t, "hut")
	before, taken, after := block(t, was["w/hut.design.hcl"], "site {")
	now := edit(t, was, "hut.design.hcl", was["w/hut.design.hcl"], before+after+"\n"+taken)
	c := runs(t, was, now)
	if d := &c.Designs[0]; c.Exit != 0 || d.State != compare.Same {
		t.Errorf("exit %d, state %s, changes %v, %d turns, %d facts", c.Exit, d.State, d.Changes, len(d.Turns), len(d.Facts))
	}
	// So is a value that is written otherwise and means the same.
	c = runs(t, was, edit(t, was, "hut.design.hcl", `"200 mm"`, `"0.2 m"`))
	if d := &c.Designs[0]; d.State != compare.Same {
		t.Errorf("0.2 m for 200 mm: %v", d.Changes)
	}
}

func TestRenamedBlocks(t *testing.T) {
	was := workshop(t, "hut")
	for _, r := range []struct {
		was, now string
		texts    []string // old and new: the label, and the ids that readings and loads name
	}{
		{"charger.main", "charger.roof", []string{`"main"`, `"roof"`}},
		{"array.south", "array.meadow", []string{`"south"`, `"meadow"`, "string.south.", "string.meadow."}},
		{"ac_output.cabin", "ac_output.kitchen", []string{`"cabin"`, `"kitchen"`, "ac_output.cabin", "ac_output.kitchen"}},
		{"string.south.a", "string.south.east", []string{`string "a"`, `string "east"`, "string.south.a.", "string.south.east."}},
	} {
		now := edit(t, was, "hut.design.hcl", r.texts[0], r.texts[1])
		now["w/hut.design.hcl"] = strings.NewReplacer(r.texts...).Replace(now["w/hut.design.hcl"])
		c := runs(t, was, now)
		d := &c.Designs[0]
		if len(d.Problems) > 0 {
			t.Fatalf("%s: %v", r.was, d.Problems)
		}
		if len(d.Renamed) != 1 || d.Renamed[0].Was != r.was || d.Renamed[0].Now != r.now || !d.Renamed[0].At.Valid() {
			t.Errorf("%s: renamed %+v", r.was, d.Renamed)
		}
		if c.Exit != 0 || len(d.Changes)+len(d.Turns)+len(d.Facts) > 0 {
			t.Errorf("%s: exit %d, changes %+v, %d turns, %d facts", r.was, c.Exit, d.Changes, len(d.Turns), len(d.Facts))
		}
	}
	// A part that has another name and the same data is renamed; the numbers of a
	// sister of the same series are those of another part.
	now := edit(t, was, "hut.design.hcl", `"dusk-335"`, `"dawn-335"`)
	now = edit(t, now, "parts/panels.parts.hcl", `"dusk-335"`, `"dawn-335"`)
	if d := runs(t, was, now).Designs[0]; len(d.Renamed) != 1 || d.Renamed[0].Now != "panel.dawn-335" || len(d.Changes) > 0 {
		t.Errorf("a renamed part: %+v, changes %+v", d.Renamed, d.Changes)
	}
}

func TestParameterGradeAndPart(t *testing.T) {
	was := workshop(t, "hut")
	set := `parts = ["parts/*.parts.hcl"]`
	now := edit(t, was, "workshop.hcl", set, set+"\n\ncodebook \"practice\" {\n  params {\n    voltage_drop_max = \"1 %\"\n  }\n}\n\ngrade \"limits.passcode\" {\n  as = \"stop\"\n}\n")
	c := runs(t, was, now)
	if len(c.Books) != 2 || c.Books[0].Name != "limits" || len(c.Books[0].Grades) != 1 || c.Books[1].Name != "practice" || len(c.Books[1].Parameters) != 1 {
		t.Fatalf("books: %+v", c.Books)
	}
	p := c.Books[1].Parameters[0]
	if p.Name != "voltage_drop_max" || *p.Was.Value != 3 || *p.Now.Value != 1 || p.Was.SetAt.Valid() || p.Now.SetAt.Start.Line != 7 {
		t.Errorf("parameter: %+v %+v", p.Was, p.Now)
	}
	if g := c.Books[0].Grades[0]; g.Was != verdict.Fix || g.Now != verdict.Stop || !g.At.Valid() {
		t.Errorf("grade: %+v", g)
	}
	// Texts of the design are the same, so no fact can have moved; verdicts have.
	if d := &c.Designs[0]; len(d.Facts)+len(d.Changes) > 0 || c.Exit != 1 || d.Turns[0].Direction != compare.Worse {
		t.Errorf("exit %d, %d facts, changes %v, first turn %+v", c.Exit, len(d.Facts), d.Changes, d.Turns[0])
	}
	// A value of a data sheet.
	c = runs(t, was, edit(t, was, "parts/panels.parts.hcl", `"37.4 V"`, `"38.4 V"`))
	d := &c.Designs[0]
	if len(d.Changes) != 1 || d.Changes[0].About != "panel.slate-410" || d.Changes[0].Attribute != "voc" || d.Changes[0].Was != "37.4 V" || d.Changes[0].Now != "38.4 V" {
		t.Errorf("changes %+v", d.Changes)
	}
	if f := factOf(d, "pv_input.main.1.voc_cold"); f == nil || math.Abs(f.Now.SI-cold(2, 38.4, 0.26, -27)) > 1e-9 || !slices.Equal(f.Causes, []string{"panel.slate-410"}) {
		t.Errorf("coldest voltage of the input: %+v", f)
	}
}

// TestCodebookDropped: findings that leave with their codebook are not better.
func TestCodebookDropped(t *testing.T) {
	was := workshop(t, "clinic")
	set := was["w/workshop.hcl"]
	with := edit(t, was, "workshop.hcl", set, set+"\ncodebook \"us_2023\" {}\n")
	c := runs(t, with, was)
	if len(c.Books) != 1 || c.Books[0].Now != nil || c.Books[0].Name != "us_2023" {
		t.Fatalf("books: %+v", c.Books)
	}
	turned := 0
	for i := range c.Designs[0].Turns {
		switch t2 := &c.Designs[0].Turns[i]; t2.Direction {
		case compare.Turned:
			turned++
		case compare.Left:
		default:
			t.Errorf("%s %s: %s", t2.Was.Rule, t2.Was.About, t2.Direction)
		}
	}
	if turned == 0 || c.Exit != 0 {
		t.Errorf("%d findings judged no more, exit %d", turned, c.Exit)
	}
	if c = runs(t, was, with); c.Exit != 1 || c.Designs[0].Turns[0].Direction != compare.Worse {
		t.Errorf("the other way: exit %d", c.Exit)
	}
}

// TestMorePanelsInSeries: how many stand in series is no fact; what it moves is
// moved by the string all the same. Three of 37.4 V by the closed form.
func TestMorePanelsInSeries(t *testing.T) {
	was := workshop(t, "hut")
	d := runs(t, was, edit(t, was, "hut.design.hcl", `{ "slate-410" = 2 }`, `{ "slate-410" = 3 }`)).Designs[0]
	if f := factOf(&d, "string.south.a.voc_cold"); f == nil || math.Abs(f.Now.SI-cold(3, 37.4, 0.26, -27)) > 1e-9 {
		t.Errorf("voc_cold: %+v", f)
	}
	if len(d.Facts) < 20 {
		t.Errorf("only %d facts moved", len(d.Facts))
	}
	for i := range d.Facts {
		if !slices.Equal(d.Facts[i].Causes, []string{"string.south.a"}) {
			t.Errorf("%s: moved by %v", d.Facts[i].ID, d.Facts[i].Causes)
		}
	}
}

func TestHeadroomBelow(t *testing.T) {
	was := workshop(t, "hut")
	now := edit(t, was, "hut.design.hcl", `"-27 degC"`, `"-45 degC"`)
	o := compare.Options{Was: compare.Run{Result: judge(t, was)}, Now: compare.Run{Result: judge(t, now)}, RejectFrom: verdict.Advise}
	headroom := 1 - cold(2, 37.4, 0.26, -45)/150
	direction := func(below float64) compare.Direction {
		o.HeadroomBelow = &below
		return turnOf(&compare.Runs(o).Designs[0], "limits.cold_voltage", "pv_input.main.1").Direction
	}
	if got := direction(headroom + 1e-6); got != compare.Worse {
		t.Errorf("just under what was asked for: %s", got)
	}
	// The sky reads "clear sky" on both sides, and what it holds is colder: what
	// rests on it is moved by the site all the same.
	d := compare.Runs(o).Designs[0]
	for i := range d.Facts {
		if !slices.Equal(d.Facts[i].Causes, []string{"site"}) {
			t.Errorf("%s: moved by %v", d.Facts[i].ID, d.Facts[i].Causes)
		}
	}
	if got := direction(headroom - 1e-6); got != compare.Lost {
		t.Errorf("just above what was asked for: %s", got)
	}
}

// TestDesignsNewGoneAndMoved pairs files.
func TestDesignsNewGoneAndMoved(t *testing.T) {
	was := workshop(t, "hut")
	now := map[string]string{}
	for name, text := range was {
		now[strings.Replace(name, "hut.design.hcl", "col.design.hcl", 1)] = text
	}
	c := runs(t, was, now)
	if len(c.Designs) != 1 || c.Designs[0].File != "col.design.hcl" || c.Designs[0].WasFile != "hut.design.hcl" || c.Designs[0].State != compare.Changed || c.Exit != 0 {
		t.Errorf("a moved file: %+v", c.Designs)
	}
	now["w/new.design.hcl"] = strings.ReplaceAll(strings.ReplaceAll(was["w/hut.design.hcl"], "Larch Col hut", "Second hut"), `"ridge-85"`, `"ford-85"`)
	c = runs(t, was, now)
	if len(c.Designs) != 2 || c.Designs[1].State != compare.New || c.Exit != 1 || c.Summary.New != 1 {
		t.Fatalf("a new design: %+v", c.Summary)
	}
	for i := range c.Designs[1].Turns {
		if turn := &c.Designs[1].Turns[i]; turn.Was != nil || turn.Direction != compare.Worse || !turn.Now.Finding() {
			t.Errorf("of a new design its findings are told: %+v", turn)
		}
	}
	c = runs(t, now, was)
	if len(c.Designs) != 2 || c.Exit != 0 || c.Summary.Gone != 1 {
		t.Errorf("a design that is gone: %+v", c.Summary)
	}
}

// TestUnreadIsTwo: what could not be read on either side is never nothing.
func TestUnreadIsTwo(t *testing.T) {
	was := workshop(t, "hut")
	broken := edit(t, was, "hut.design.hcl", "site {", "<<<<<<< ours\nsite {")
	for _, c := range []*compare.Comparison{runs(t, was, broken), runs(t, broken, was)} {
		d := &c.Designs[0]
		problems := slices.Concat(d.Problems, d.WasProblems)
		if c.Exit != 2 || !slices.ContainsFunc(problems, func(p source.Problem) bool { return p.Kind == "conflict" && p.At.Start.Line > 0 }) {
			t.Errorf("exit %d, %v", c.Exit, problems)
		}
	}
	none := map[string]string{"w/workshop.hcl": ""}
	if c := runs(t, none, none); c.Exit != 2 {
		t.Errorf("nothing to compare: exit %d", c.Exit)
	}
}

// BenchmarkSwappedPanel is the comparison alone: every fact of both sides, a year
// each, without reading and judging.
func BenchmarkSwappedPanel(b *testing.B) {
	was := workshop(b, "hut")
	now := edit(b, was, "hut.design.hcl", `{ "slate-410" = 2 }`, `{ "dusk-335" = 2 }`)
	for b.Loop() {
		b.StopTimer()
		o := compare.Options{RejectFrom: verdict.Advise}
		for side, texts := range map[*compare.Run]map[string]string{&o.Was: was, &o.Now: now} {
			r, err := lint.Run(b.Context(), lint.Options{Disk: linttest.NewDisk(texts), Embedded: rules.Books, WorkingDir: "/w", Paths: []string{"/w"}, Date: "2026-05-02"})
			if err != nil {
				b.Fatal(err)
			}
			side.Result = r
		}
		b.StartTimer()
		compare.Runs(o)
	}
}

// TestJoin: two parts of a comparison together tell what the whole tells.
func TestJoin(t *testing.T) {
	was := workshop(t, "hut")
	was["w/second.design.hcl"] = strings.ReplaceAll(was["w/hut.design.hcl"], "Larch Col hut", "Second hut")
	set := was["w/workshop.hcl"]
	now := edit(t, was, "workshop.hcl", set, set+"\ncodebook \"practice\" {\n  params {\n    voltage_drop_max = \"1 %\"\n  }\n}\n")
	now = edit(t, now, "hut.design.hcl", `"ridge-85"`, `"ford-85"`)
	some := func(r *lint.Result, i int) *lint.Result {
		part := *r
		part.Designs = r.Designs[i : i+1]
		return &part
	}
	w, n := judge(t, was), judge(t, now)
	whole := compare.Runs(compare.Options{Was: compare.Run{Result: w}, Now: compare.Run{Result: n}, RejectFrom: verdict.Advise})
	var parts []*compare.Comparison
	for _, i := range []int{1, 0} {
		parts = append(parts, compare.Runs(compare.Options{Was: compare.Run{Result: some(w, i)}, Now: compare.Run{Result: some(n, i)}, RejectFrom: verdict.Advise}))
	}
	joined := compare.Join(parts...)
	if joined.Summary != whole.Summary || joined.Exit != whole.Exit || whole.Exit != 1 || len(joined.Books) != len(whole.Books) || len(whole.Books) != 1 {
		t.Errorf("joined %+v, exit %d; whole %+v, exit %d; books %d and %d", joined.Summary, joined.Exit, whole.Summary, whole.Exit, len(joined.Books), len(whole.Books))
	}
	for i := range whole.Designs {
		if a, b := whole.Designs[i], joined.Designs[i]; a.File != b.File || len(a.Turns) != len(b.Turns) || len(a.Facts) != len(b.Facts) {
			t.Errorf("%s: %d turns, %d facts; joined %s: %d, %d", a.File, len(a.Turns), len(a.Facts), b.File, len(b.Turns), len(b.Facts))
		}
	}
}
