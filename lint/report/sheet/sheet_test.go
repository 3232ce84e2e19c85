package sheet_test

import (
	"bytes"
	"encoding/csv"
	"io"
	"os"
	"reflect"
	"regexp"
	"strings"
	"testing"
	"unicode"

	"stringline/lint"
	"stringline/lint/commission"
	"stringline/lint/linttest"
	"stringline/lint/report"
	"stringline/lint/report/sheet"
	"stringline/lint/verdict"
	"stringline/rules"
	"stringline/schema/source"
)

// exampleTexts reads the examples by path from the top level.
func exampleTexts(t testing.TB) map[string]string {
	t.Helper()
	return linttest.WithoutBooks(linttest.Texts(t, os.DirFS("../../.."), "examples"))
}

func judged(t testing.TB, texts map[string]string, paths ...string) *lint.Result {
	t.Helper()
	return linttest.Judged(t, rules.Books, texts, paths...)
}

func written(t testing.TB, r *lint.Result, d *lint.DesignResult) string {
	t.Helper()
	var b bytes.Buffer
	if err := sheet.Write(&b, r, d, commission.Conditions{Date: r.Date, Books: r.Books}); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// largest is how many bytes a sheet may have.
const largest = 1_000_000

// Every example's sheet holds every judgement, finding and fact that a verdict
// rests on, is the same each time, asks for nothing from anywhere, and stays small.
func TestSheets(t *testing.T) {
	r := judged(t, exampleTexts(t), "examples")
	if len(r.Designs) < 10 {
		t.Fatalf("only %d designs", len(r.Designs))
	}
	for i := range r.Designs {
		d := &r.Designs[i]
		page := written(t, r, d)
		if len(page) > largest {
			t.Errorf("%s: %d bytes", d.File, len(page))
		}
		if page != written(t, r, d) {
			t.Errorf("%s: differs from itself", d.File)
		}
		words := textOf(page)
		for j := range d.Verdicts {
			v := &d.Verdicts[j]
			for _, what := range []string{v.Rule, report.Typeset(report.Subject(v))} {
				if !strings.Contains(words, what) {
					t.Errorf("%s: %s is nowhere", d.File, what)
				}
			}
			for _, id := range report.Mentioned(d.System, v) {
				if v.Outcome != verdict.DoesNotApply && !strings.Contains(words, id) {
					t.Errorf("%s: the workings lack %s", d.File, id)
				}
			}
		}
		found := report.Findings(d)
		if n := strings.Count(page, `<article class="finding`); n != len(found) {
			t.Errorf("%s: %d findings shown, %d found", d.File, n, len(found))
		}
		for _, v := range found {
			for _, m := range report.Measures(v) {
				if !strings.Contains(words, report.Typeset(m.Value)) {
					t.Errorf("%s: %s %s is nowhere", d.File, m.Label, m.Value)
				}
			}
		}
		sentence, _ := report.Summary(d, r.Problems)
		for _, what := range []string{d.Name, d.Digest, sentence, report.Caution, "stringline 0.1.0", r.Date} {
			if !strings.Contains(words, what) {
				t.Errorf("%s: %q is nowhere", d.File, what)
			}
		}
		for _, foreign := range regexp.MustCompile(`(?i)https?:[^"' <]*|<script|<link|<img|<iframe|javascript:|@import|url\([^#)][^)]*\)`).FindAllString(page, -1) {
			if foreign != "http://www.w3.org/2000/svg" { // the namespace's name: nothing is fetched
				t.Errorf("%s: the page holds %s", d.File, foreign)
			}
		}
	}
}

// textOf strips a page of its markup, so that ids that may break over lines read
// whole.
func textOf(page string) string {
	page = regexp.MustCompile(`<wbr>`).ReplaceAllString(page, "")
	page = regexp.MustCompile(`<[^>]*>`).ReplaceAllString(page, " ")
	return strings.NewReplacer("&#34;", `"`, "&#39;", "'", "&lt;", "<", "&gt;", ">", "&amp;", "&", "&#43;", "+").Replace(page)
}

// hostile holds markup, quotes, an escape sequence, a line break, a character that
// reorders text and Hebrew, which is not hostile and must stay.
const hostile = "<script>alert(1)</script> & \"q\" 'a' \x1b[31m\n\u202eabc {{.}} <!-- ]]> \u05e9\u05dc\u05d5\u05dd"

// poison puts the hostile text behind every text of a value but those that
// words of a closed list stand in.
func poison(v reflect.Value, keep map[string]bool) int {
	n := 0
	switch v.Kind() {
	case reflect.Pointer:
		if !v.IsNil() {
			return poison(v.Elem(), keep)
		}
	case reflect.Struct:
		for i := range v.NumField() {
			if name := v.Type().Field(i).Name; v.Type().Field(i).IsExported() && !keep[name] {
				n += poison(v.Field(i), keep)
			}
		}
	case reflect.Slice:
		for i := range v.Len() {
			n += poison(v.Index(i), keep)
		}
	case reflect.String:
		if v.CanSet() && v.String() != "" {
			v.SetString(v.String() + hostile)
			n++
		}
	}
	return n
}

// Whatever text of a verdict, a problem, a codebook or a design is hostile, it is
// inert on the page and can still be read.
func TestHostileTexts(t *testing.T) {
	texts := exampleTexts(t)
	name := "examples/hut/hut-broken.design.hcl"
	texts[name] = strings.Replace(texts[name], `design "Larch Col hut, as found"`, `design "<script>alert(1)</script> & 'a' שלום"`, 1)
	texts[name] += "\nwaiver \"practice.spare_voltage\" {\n on = [\"pv_input.main.1\"]\n reason = \"<img src=x onerror=alert(2)> & שלום\"\n approved_by = \"<b>me</b>\"\n expires = \"2027-01-01\"\n}\n"
	texts[name] += "\nreading \"x\" {\n title = \"<script>alert(3)</script>\"\n of = \"string.south.a.voc\"\n value = \"72.1 V\"\n taken = \"2026-09-12\"\n}\n"
	r := judged(t, texts, name)
	d := &r.Designs[0]
	if !strings.Contains(d.Name, "<script>") {
		t.Fatalf("the design is called %q: %v", d.Name, d.Problems)
	}
	d.Problems = append(d.Problems, source.Problem{Kind: "x", Message: "m", Block: "b", Expected: "e", Found: "f", Near: "n", At: source.Range{File: "f"}})
	keep := map[string]bool{"Relation": true, "Outcome": true, "Grade": true, "BookGrade": true, "Unit": true, "System": true, "ID": true, "Kind": true}
	n := poison(reflect.ValueOf(d), keep) + poison(reflect.ValueOf(r.Books), keep)
	if n < 500 {
		t.Fatalf("only %d texts were made hostile", n)
	}
	page := written(t, r, d)
	for _, bad := range []string{"<script", "<img", "<b>me", "\x1b", "\u202e", "<!-- ]]", "alert(1)</script>"} {
		if strings.Contains(page, bad) {
			i := strings.Index(page, bad)
			t.Errorf("the page holds %q: …%q", bad, page[max(0, i-120):min(len(page), i+80)])
		}
	}
	for _, r := range page {
		if r != '\n' && !unicode.IsPrint(r) {
			t.Fatalf("the page holds the character %U", r)
		}
	}
	words := textOf(page)
	for _, good := range []string{`<script>alert(1)</script> & "q" 'a' \x1b[31m\n\u202eabc {{.}} <!-- ]]> שלום`, "<img src=x onerror=alert(2)> & שלום"} {
		if !strings.Contains(words, good) {
			t.Errorf("%q cannot be read any more", good)
		}
	}
	if !strings.Contains(page, "<bdi>&lt;script&gt;") {
		t.Error("the design's name is not kept to its own direction")
	}
}

// What could not be read stands on the sheet, and its summary does not pass it over.
func TestProblemsAreShown(t *testing.T) {
	texts := exampleTexts(t)
	name := "examples/hut/hut.design.hcl"
	texts[name] = strings.Replace(texts[name], `coldest   = "-27 degC"`, `coldest   = "-27 V"`, 1)
	r := judged(t, texts, name)
	words := textOf(written(t, r, &r.Designs[0]))
	for _, want := range []string{"Errors in what was read", "examples/hut/hut.design.hcl:13:", "expected a temperature (degC)", "in what was read"} {
		if !strings.Contains(words, want) {
			t.Errorf("%q is nowhere", want)
		}
	}
	if strings.Contains(words, "Nothing found against it") || !strings.Contains(words, "_____ V") || !strings.Contains(words, "coldest of site") {
		t.Error("what is unknown for it is passed over")
	}
}

// A finding that a baseline accepts is no item, and stands on the sheet all the
// same; one that got worse is an item that says so.
func TestAcceptedFindings(t *testing.T) {
	r := judged(t, exampleTexts(t), "examples/hut/hut-broken.design.hcl")
	d := &r.Designs[0]
	before := report.Findings(d)
	before[0].Accepted = &verdict.Acceptance{Was: verdict.Accepted{Since: "2026-01-31"}}
	before[1].Accepted = &verdict.Acceptance{Was: verdict.Accepted{Since: "2026-02-28"}, Worse: "its headroom fell"}
	page := written(t, r, d)
	words := textOf(page)
	if n := strings.Count(page, `<article class="finding`); n != len(before)-1 {
		t.Errorf("%d items, want %d", n, len(before)-1)
	}
	for _, want := range []string{"accepted by a baseline: breaks", "since 2026-01-31", "accepted on 2026-02-28, and worse now: its headroom fell"} {
		if !strings.Contains(words, want) {
			t.Errorf("%q is nowhere", want)
		}
	}
}

// A design that holds next to nothing has a sheet without empty tables.
func TestSmallDesign(t *testing.T) {
	r := judged(t, map[string]string{"a.design.hcl": "design \"Bare\" {}\n"}, "a.design.hcl")
	page := written(t, r, &r.Designs[0])
	if strings.Contains(page, "<tbody role=\"rowgroup\">\n</tbody>") {
		t.Error("a table has no rows")
	}
	if got := sheet.Diagrams(&r.Designs[0]); len(got) != 1 || got[0] != "oneline" {
		t.Errorf("pictures of nothing: %v", got)
	}
	r.Designs[0].System = nil
	if err := sheet.Write(io.Discard, r, &r.Designs[0], commission.Conditions{}); err == nil || !strings.Contains(err.Error(), "could not be read") {
		t.Errorf("a design that could not be read: %v", err)
	}
}

// The commissioning sheet says what meters should show at the moment that is given.
func TestMoment(t *testing.T) {
	r := judged(t, exampleTexts(t), "examples/hut/hut.design.hcl")
	cell, light := 273.15+41, 820.0
	var b bytes.Buffer
	if err := sheet.Write(&b, r, &r.Designs[0], commission.Conditions{CellTemperature: &cell, Irradiance: &light, Date: r.Date, Books: r.Books}); err != nil {
		t.Fatal(err)
	}
	// By hand: 2 x 37.4 V x (1 - 0.26 %/K x 16 K) = 71.69 V at full sun, and a little
	// less at 820 W/m2: n kT/q ln 0.82 for 108 cells, -0.6 V.
	words := textOf(b.String())
	if !regexp.MustCompile(`71\.[01] V \(6[78]\.`).MatchString(words) {
		t.Error("the open circuit at 41 degC and 820 W/m2 is not there")
	}
	if strings.Contains(words, "--cell-temperature 41degC") {
		t.Error("it asks for what it was given")
	}
	if !strings.Contains(textOf(written(t, r, &r.Designs[0])), "--cell-temperature 41degC") {
		t.Error("without it, it does not say how to give it")
	}
}

// The parts list reads back with another reader of CSV (RFC 4180), a row for each
// part of the page's table.
func TestPartsList(t *testing.T) {
	r := judged(t, exampleTexts(t), "examples/clinic/clinic.design.hcl")
	var b bytes.Buffer
	if err := sheet.Parts(&b, &r.Designs[0]); err != nil {
		t.Fatal(err)
	}
	rows, err := csv.NewReader(&b).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	page := written(t, r, &r.Designs[0])
	table := page[strings.Index(page, "<caption>Parts</caption>"):]
	table = table[:strings.Index(table, "</table>")]
	if shown := strings.Count(table, "<tr role=\"row\"><th role=\"rowheader\""); len(rows) < 10 || shown != len(rows)-1 {
		t.Errorf("%d rows in the file with its head, %d on the page", len(rows), shown)
	}
}

func TestDiagrams(t *testing.T) {
	r := judged(t, exampleTexts(t), "examples/clinic/clinic.design.hcl")
	d := &r.Designs[0]
	for _, name := range sheet.Diagrams(d) {
		var b bytes.Buffer
		if err := sheet.Diagram(&b, d, name); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		if !strings.HasPrefix(b.String(), "<svg xmlns=") || !strings.Contains(b.String(), "<style>") {
			t.Errorf("%s does not stand alone: %.80s", name, b.String())
		}
	}
	for name, want := range map[string]string{"onelin": `did you mean "oneline"?`, "zzz": "there are oneline, iv.east.1"} {
		if err := sheet.Diagram(io.Discard, d, name); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// BenchmarkSheet makes the sheet of the example with the largest one, from the
// verdicts on, and from the files on.
func BenchmarkSheet(b *testing.B) {
	texts := exampleTexts(b)
	const name = "examples/clinic/clinic.design.hcl"
	size := 0
	b.Run("from the files on", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			r := judged(b, texts, name)
			size = len(written(b, r, &r.Designs[0]))
		}
		b.ReportMetric(float64(size), "bytes")
	})
	b.Run("page alone", func(b *testing.B) {
		b.ReportAllocs()
		r := judged(b, texts, name)
		for b.Loop() {
			size = len(written(b, r, &r.Designs[0]))
		}
		b.ReportMetric(float64(size), "bytes")
	})
}
