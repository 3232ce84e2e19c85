package report

import (
	"bytes"
	"context"
	"encoding/json"
	"os"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/santhosh-tekuri/jsonschema/v6"

	"stringline/lint"
	"stringline/lint/fit"
	"stringline/lint/linttest"
	"stringline/rules"
)

// exampleBench opens a design of the examples, its texts changed as asked: file,
// from, to.
func exampleBench(t *testing.T, folder, file string, changes ...[3]string) *lint.Bench {
	t.Helper()
	texts := linttest.Change(t, linttest.WithoutBooks(linttest.Texts(t, os.DirFS("../../examples"), folder)), changes...)
	return linttest.Bench(t, rules.Books, texts, folder+"/"+file)
}

func fitOf(t *testing.T, bench *lint.Bench, o fit.Options) *fit.Result {
	t.Helper()
	r, err := fit.Find(context.Background(), bench, o)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func fitText(t *testing.T, r *fit.Result, p Page) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := Fit(&b, r, p); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func TestFitText(t *testing.T) {
	bench := exampleBench(t, "growth", "growth-24.design.hcl", [3]string{"growth/growth-24.design.hcl", "    passcode_changed         = true\n", "    passcode_changed         = false\n"})
	r := fitOf(t, bench, fit.Options{Panels: []fit.Panels{{Name: "shale-410", Count: 9}}, Years: 5})
	for _, width := range []int{80, 40} {
		text := fitText(t, r, Page{Width: width})
		golden(t, map[int]string{80: "fit.txt", 40: "fit-40.txt"}[width], text)
		for line := range strings.Lines(string(text)) {
			if n := columns(strings.TrimSuffix(line, "\n")); n >= width {
				t.Errorf("at %d columns a line takes %d: %s", width, n, line)
			}
		}
	}
	if painted := fitText(t, r, Page{Style: marks{}}); !bytes.Contains(painted, []byte("<stop STOP>")) || !bytes.Contains(painted, []byte("<fix FIX>")) {
		t.Error("grades are not painted")
	}
	var b bytes.Buffer
	_, a, err := r.Take(context.Background(), len(r.Answers)+1)
	if err != nil {
		t.Fatal(err)
	}
	if err := Taken(&b, a, "growth-48.design.hcl"); err != nil {
		t.Fatal(err)
	}
	golden(t, "fit-taken.txt", b.Bytes())
}

const fitSchemaFile = "../../schema/fit.schema.json"

// freshSchema holds a committed schema to the Go types that it is made of.
func freshSchema(t *testing.T, file string, made []byte, err error) *jsonschema.Schema {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
	if *update {
		if err := os.WriteFile(file, made, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	committed, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(committed), string(made)); diff != "" {
		t.Errorf("%s is stale (-committed +made): run with -update\n%s", file, diff)
	}
	schema, err := jsonschema.NewCompiler().Compile(file)
	if err != nil {
		t.Fatal(err)
	}
	return schema
}

// The JSON fits its schema, which refuses what it should, and holds every
// arrangement that was judged.
func TestFitJSON(t *testing.T) {
	made, err := FitSchema()
	schema := freshSchema(t, fitSchemaFile, made, err)
	bench := exampleBench(t, "growth", "growth-24.design.hcl")
	r := fitOf(t, bench, fit.Options{Panels: []fit.Panels{{Name: "shale-410", Count: 9}}, Years: 5})
	var b bytes.Buffer
	if err := FitJSON(&b, r, bench.Version(), bench.Date()); err != nil {
		t.Fatal(err)
	}
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(b.Bytes()))
	if err != nil {
		t.Fatal(err)
	}
	if err := schema.Validate(doc); err != nil {
		t.Error(err)
	}
	var read fitDocument
	if err := json.Unmarshal(bytes.ReplaceAll(b.Bytes(), []byte(`"value"`), []byte(`"-"`)), &read); err != nil {
		t.Fatal(err)
	}
	if len(read.Arrangements) != r.Judged || read.Exit != 0 || *read.Arrangements[0].Number != 1 || *read.Arrangements[0].YearlyEnergy < 1e5 || read.Arrangements[r.Judged-1].Number != nil {
		t.Errorf("%d arrangements of %d judged; the first %+v", len(read.Arrangements), r.Judged, read.Arrangements[0])
	}
	for _, bad := range []string{`"state": "meets"`, `"judged": `, `"stops": [`} {
		wrong := bytes.Replace(b.Bytes(), []byte(bad), []byte(strings.Replace(strings.Replace(strings.Replace(bad, "meets", "fine", 1), "judged", "judgd", 1), "stops", "stps", 1)), 1)
		doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(wrong))
		if err != nil {
			t.Fatal(err)
		}
		if schema.Validate(doc) == nil {
			t.Errorf("the schema takes a document without %s", bad)
		}
	}
}
