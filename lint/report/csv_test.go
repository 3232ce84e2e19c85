package report

import (
	"bytes"
	"encoding/csv"
	"io/fs"
	"math"
	"os"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"stringline/lint"
	"stringline/lint/facts"
	"stringline/schema/design"
)

// record is one record of RFC 4180, section 2: fields parted by commas, quoted
// where they hold a comma, a quote or a line's end, each quote doubled; CR LF ends it.
var record = regexp.MustCompile(`^(?:(?:"(?:[^"]|"")*"|[^",\r\n]*)(?:,|\r\n))+$`)

// TestCSVByTheRFC holds every line to the grammar of RFC 4180, and each to the same
// number of fields (2.4).
func TestCSVByTheRFC(t *testing.T) {
	d := loaded(t, strings.Replace(small, "temp_voc", "# temp_voc", 1))
	var whole, points bytes.Buffer
	if err := FactsCSV(&whole, d.System); err != nil {
		t.Fatal(err)
	}
	if err := SeriesCSV(&points, d.System, seriesOf(d.System)); err != nil {
		t.Fatal(err)
	}
	for _, text := range []string{whole.String(), points.String()} {
		lines := strings.SplitAfter(text, "\r\n")
		if len(lines) < 10 || lines[len(lines)-1] != "" {
			t.Fatalf("%d lines, the last ends in %q", len(lines), lines[len(lines)-1])
		}
		for _, line := range lines[:len(lines)-1] {
			if !record.MatchString(line) {
				t.Errorf("no record of RFC 4180: %q", line)
			}
		}
		if _, err := csv.NewReader(strings.NewReader(text)).ReadAll(); err != nil {
			t.Error(err)
		}
	}
	for _, wrong := range []string{"a,b\n", "a\",b\r\n", "\"a,b\r\n", "a\rb\r\n"} {
		if record.MatchString(wrong) {
			t.Errorf("the grammar takes %q", wrong)
		}
	}
}

func seriesOf(s *facts.System) []string {
	var ids []string
	for _, about := range subjects(s) {
		for _, r := range factsOf(s, about) {
			if r.fact.Kind == facts.Series {
				ids = append(ids, r.fact.ID)
			}
		}
	}
	return ids
}

// hutWithoutLatitude is the example: its curves are known, its year is not.
func hutWithoutLatitude(t *testing.T) *lint.DesignResult {
	t.Helper()
	files := os.DirFS("../../examples/hut")
	text, err := fs.ReadFile(files, "hut.design.hcl")
	if err != nil {
		t.Fatal(err)
	}
	d := design.Load(design.Options{Files: files, Path: "hut.design.hcl", Text: bytes.Replace(text, []byte("  latitude"), []byte("  # latitude"), 1),
		Parts: []design.PartsGlob{{Glob: "parts/*.parts.hcl", From: "."}}})
	return &lint.DesignResult{System: facts.New(d)}
}

// TestSeriesCSV: point by point stands what one field of the whole table holds, to
// 9 significant digits of the fact; what is unknown has a row and what to supply.
func TestSeriesCSV(t *testing.T) {
	d := hutWithoutLatitude(t)
	ids := seriesOf(d.System)
	var b bytes.Buffer
	if err := SeriesCSV(&b, d.System, ids); err != nil {
		t.Fatal(err)
	}
	rows, err := csv.NewReader(&b).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	if got := strings.Join(rows[0], ","); got != "id,over,over_unit,value,unit,missing" {
		t.Error(got)
	}
	known, unknown, next := 0, 0, 1
	for _, id := range ids {
		f, _ := d.System.Fact(id)
		if !f.Known {
			unknown++
			row := rows[next]
			next++
			if row[0] != id || row[1]+row[3] != "" || row[5] == "" {
				t.Errorf("unknown %s: %q", id, row)
			}
			continue
		}
		known++
		for i, si := range f.List {
			row := rows[next]
			next++
			value, err := strconv.ParseFloat(row[3], 64)
			want := inUnit(si, f.Unit)
			if err != nil || row[0] != id || row[4] != f.Unit || math.Abs(value-want) > 1e-8*math.Abs(want) {
				t.Fatalf("%s, point %d: %q, want %v", id, i, row, want)
			}
			over, err := strconv.ParseFloat(row[1], 64)
			if want := inUnit(f.Over[i], row[2]); err != nil || math.Abs(over-want) > 1e-8*math.Abs(want)+1e-9 {
				t.Fatalf("%s, point %d stands at %q, want %v", id, i, row[1:3], want)
			}
		}
	}
	if next != len(rows) || known == 0 || unknown == 0 {
		t.Errorf("%d rows read of %d; %d series known, %d unknown", next, len(rows), known, unknown)
	}
}

func TestSeriesCSVRefuses(t *testing.T) {
	d := loaded(t, small)
	for id, want := range map[string]string{
		"string.south.a.voc_by_cell_temprature": `no fact "string.south.a.voc_by_cell_temprature" in this design; did you mean "string.south.a.voc_by_cell_temperature"?`,
		"pv_input.main.1.voc_cold":              `the fact "pv_input.main.1.voc_cold" is no series: it has one value`,
		"\x1b[31m":                              `no fact "\\x1b[31m" in this design`,
	} {
		var b bytes.Buffer
		if err := SeriesCSV(&b, d.System, []string{id}); err == nil || !strings.HasPrefix(err.Error(), want) || b.Len() > 0 {
			t.Errorf("%q: %v; wrote %q", id, err, b.String())
		}
	}
}
