package report

import (
	"bytes"
	"encoding/json"
	"math"
	"os"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/santhosh-tekuri/jsonschema/v6"

	"stringline/lint"
	"stringline/lint/verdict"
	"stringline/schema/source"
)

// The JSON Schema specification, draft 2020-12, is the outside judge here: a
// validator that knows nothing of our types reads what we write.

const schemaFile = "../../schema/check.schema.json"

func asJSON(t *testing.T, r *lint.Result) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := JSON(&b, r); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func TestCheckSchemaIsFresh(t *testing.T) {
	schema, err := CheckSchema()
	if err != nil {
		t.Fatal(err)
	}
	if *update {
		if err := os.WriteFile(schemaFile, schema, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	committed, err := os.ReadFile(schemaFile)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(committed), string(schema)); diff != "" {
		t.Errorf("schema/check.schema.json is stale (-committed +made): run with -update\n%s", diff)
	}
}

func checkSchema(t *testing.T) *jsonschema.Schema {
	t.Helper()
	text, err := os.ReadFile(schemaFile)
	if err != nil {
		t.Fatal(err)
	}
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	compiler := jsonschema.NewCompiler()
	if err := compiler.AddResource("check.schema.json", doc); err != nil {
		t.Fatal(err)
	}
	schema, err := compiler.Compile("check.schema.json")
	if err != nil {
		t.Fatal(err)
	}
	return schema
}

func TestJSONFitsItsSchema(t *testing.T) {
	schema := checkSchema(t)
	for name, r := range map[string]*lint.Result{
		"sample": run(hut()), "accepted": accepted(), "odd": run(oddities()...), "nothing": {Date: "2026-05-02", Exit: 2, Problems: source.Problems{
			{Kind: "no_design", Message: "no design here", At: source.Range{File: "empty"}}}},
	} {
		t.Run(name, func(t *testing.T) {
			text := asJSON(t, r)
			doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
			if err != nil {
				t.Fatal(err)
			}
			if err := schema.Validate(doc); err != nil {
				t.Errorf("%v\n%s", err, text)
			}
		})
	}
}

// TestSchemaRefuses shows that the schema can tell a wrong document.
func TestSchemaRefuses(t *testing.T) {
	schema := checkSchema(t)
	text := string(asJSON(t, run(hut())))
	for _, change := range [][2]string{
		{`"verdict": "breaks"`, `"verdict": "fails"`},
		{`"grade": "stop"`, `"grade": "error"`},
		{`"missing": []`, `"missing": null`},
		{`"format": 1`, `"format": "1"`},
		{`"headroom": -0.1321728`, `"headroom": "-13 %"`},
		{`"which": null,`, ``},
		{`"relation": "at_most"`, `"relation": "less"`},
	} {
		changed := strings.Replace(text, change[0], change[1], 1)
		if changed == text {
			t.Fatalf("the sample does not hold %s", change[0])
		}
		doc, err := jsonschema.UnmarshalJSON(strings.NewReader(changed))
		if err != nil {
			t.Fatal(err)
		}
		if schema.Validate(doc) == nil {
			t.Errorf("the schema accepts %s", change[1])
		}
	}
}

func TestJSONOfTheSample(t *testing.T) {
	golden(t, "hut.json", asJSON(t, run(hut())))
}

// TestJSONKeys holds the keys that the specification lists, and that each is
// there in every verdict, null or [] where nothing is told.
func TestJSONKeys(t *testing.T) {
	var doc map[string]any
	if err := json.Unmarshal(asJSON(t, run(hut())), &doc); err != nil {
		t.Fatal(err)
	}
	has := func(where string, object any, keys string) {
		t.Helper()
		for _, key := range strings.Fields(keys) {
			if _, ok := object.(map[string]any)[key]; !ok {
				t.Errorf("%s lacks %s", where, key)
			}
		}
		if n := len(object.(map[string]any)); n != len(strings.Fields(keys)) {
			t.Errorf("%s has %d keys, specified %d", where, n, len(strings.Fields(keys)))
		}
	}
	// errors stands beside designs for what belongs to no one design.
	has("the document", doc, "format tool date columns codebooks designs baseline errors exit summary")
	has("summary", doc["summary"], "designs rules judgements meets breaks unproven waived void does_not_apply accepted not_judged")
	has("a codebook", doc["codebooks"].([]any)[0], "name version edition digest embedded params")
	has("a parameter", doc["codebooks"].([]any)[1].(map[string]any)["params"].([]any)[0], "name value unit set_at")
	design := doc["designs"].([]any)[0]
	has("a design", design, "file workshop name revision digest verdicts errors supply")
	for _, v := range design.(map[string]any)["verdicts"].([]any) {
		has("a verdict", v, "key rule about which verdict grade book_grade title message relation is limits spare headroom because missing assumed params waiver fault accepted remedy source at")
		for _, key := range []string{"limits", "missing", "assumed", "params", "at"} {
			if _, ok := v.(map[string]any)[key].([]any); !ok {
				t.Errorf("%s of a verdict is no list", key)
			}
		}
		if is, ok := v.(map[string]any)["is"].(map[string]any); ok {
			has("is", is, "id formula value unit at_least")
		}
	}
}

// TestJSONNumbers: 9 significant digits, and nothing that JSON cannot hold.
func TestJSONNumbers(t *testing.T) {
	for _, c := range []struct {
		value float64
		want  string
	}{
		{169.8259200000001, "169.82592"}, {1.0 / 3, "0.333333333"}, {2, "2"}, {math.NaN(), "null"},
		{math.Inf(1), "null"}, {math.Copysign(0, -1), "0"}, {123456789012, "123456789000"},
	} {
		got, err := json.Marshal(number(&c.value))
		if err != nil || string(got) != c.want {
			t.Errorf("number(%v) = %s, %v; want %s", c.value, got, err, c.want)
		}
	}
}

// TestJSONIsSafeToShow: no character that a terminal acts on leaves unescaped,
// and what comes back from the text is what went in.
func TestJSONIsSafeToShow(t *testing.T) {
	r := run(oddities()...)
	text := asJSON(t, r)
	for _, c := range string(text) {
		if c != '\n' && Escape(string(c)) != string(c) {
			t.Fatalf("%U stands in the JSON", c)
		}
	}
	var doc document2
	if err := json.Unmarshal(text, &doc); err != nil {
		t.Fatal(err)
	}
	if got, want := doc.Designs[0].Name, r.Designs[0].Name; got != want {
		t.Errorf("name came back as %q, want %q", got, want)
	}
	if !bytes.Equal(text, asJSON(t, r)) {
		t.Error("two runs differ")
	}
}

type document2 struct {
	Designs []struct{ Name string }
}

// oddities are designs with whatever a report must be able to show.
func oddities() []lint.DesignResult {
	evil := "hut \x1b[31m\u202e\u200b\u009b\n\U000e0041°"
	void := verdict.Verdict{Rule: "house.gas", About: "bank.house", Outcome: verdict.Void, Grade: verdict.Fix, BookGrade: verdict.Fix,
		Title: "Gas", Message: "The rule itself failed.", Fault: &verdict.Fault{Message: "division by zero", At: at("books/house/gas/rule.rego", 12, 9, 4)}}
	bound := verdict.Verdict{Rule: "limits.bank_charge", About: "bank.house", Outcome: verdict.Breaks, Grade: verdict.Stop, BookGrade: verdict.Stop,
		Title: "Charge", Message: "The bank gets more than it accepts.", Relation: "at_most",
		Is:     &verdict.Measured{ID: "bank.house.charge_current_total", Unit: "A", AtLeast: ptr(160.0)},
		Limits: []verdict.Measured{{ID: "bank.house.charge_current_accepted", Unit: "A", Value: ptr(100.0)}},
		Spare:  &verdict.Spare{Value: -60, Unit: "A"}, Headroom: ptr(-0.6), Missing: []string{"charge_source.engine.charge_current"}}
	cold := verdict.Verdict{Rule: "limits.cold_charge", About: "charger.main", Outcome: verdict.Breaks, Grade: verdict.Stop, BookGrade: verdict.Advise,
		Title: "Cold", Message: "It charges below what the cells bear.", Relation: "at_least",
		Is:     &verdict.Measured{ID: "charger.main.settings.cold_charge_cutoff", Unit: "degC", Value: ptr(-5.0)},
		Limits: []verdict.Measured{{ID: "battery.fell-200.charge_above", Unit: "degC", Value: ptr(0.0)}}, Spare: &verdict.Spare{Value: -5, Unit: "K"}}
	window := verdict.Verdict{Rule: "limits.absorption", About: "charger.main", Which: "absorption", Outcome: verdict.Breaks, Grade: verdict.Fix, BookGrade: verdict.Fix,
		Title: "Absorption", Message: "The setting lies outside the maker's range.", Relation: "between",
		Is:     &verdict.Measured{ID: "charger.main.settings.absorption", Unit: "V", Value: ptr(27.0)},
		Limits: []verdict.Measured{{ID: "a.low", Unit: "V", Value: ptr(28.0)}, {ID: "a.high", Unit: "V", Value: ptr(29.2)}},
		Spare:  &verdict.Spare{Value: -1, Unit: "V"}, Headroom: ptr(-1.0 / 28), Also: []verdict.Measured{{ID: "bank.house.nominal", Unit: "V", Value: ptr(25.6)}}}
	equal := verdict.Verdict{Rule: "limits.one_setting", About: "bank.house", Outcome: verdict.Breaks, Grade: verdict.Advise, BookGrade: verdict.Advise,
		Title: "One profile", Message: "Chargers of one bank are set alike.", Relation: "all_equal",
		Is:     &verdict.Measured{ID: "charger.a.settings.absorption", Unit: "V", Value: ptr(28.4)},
		Limits: []verdict.Measured{{ID: "charger.b.settings.absorption", Unit: "V", Value: ptr(28.8)}}, Because: "they fight each other"}
	words := verdict.Verdict{Rule: "limits.setting_bank", About: "charger.main", Outcome: verdict.Unproven, Grade: verdict.Advise, BookGrade: verdict.Advise,
		Title: "Word", Message: "Whether the chemistry is the controller's.", Relation: "equals",
		Is: &verdict.Measured{ID: "battery.fell-200.chemistry", Unit: "word", Word: ptr("agm")}, Limits: []verdict.Measured{{ID: "x.y.chemistry", Unit: "word"}},
		Missing: []string{"bank.house.declared.county.ventilated", "site.coldest", "string.south.a.panels", "load.pump.power", "cable_run.array.south.ambient"}}
	first := lint.DesignResult{File: "odd.design.hcl", Name: evil, Digest: "sha256:00", Verdicts: []verdict.Verdict{bound, cold, window, void, equal, words}}
	verdict.Sort(first.Verdicts)
	second := lint.DesignResult{File: "dir with space/50%.design.hcl", Name: "", Digest: "sha256:01", Problems: source.Problems{
		{Kind: "unknown_name", Message: `unknown attribute "tiltt"`, Block: "array.south", Expected: "an attribute of array", Found: "tiltt", Near: "tilt", At: at("dir with space/50%.design.hcl", 41, 3, 5)},
		{Kind: "syntax", Message: "conflict markers: " + evil, At: at("dir with space/50%.design.hcl", 50, 1, 7)},
	}}
	clean := lint.DesignResult{File: "clean.design.hcl", Name: "Clean", Digest: "sha256:02", Verdicts: []verdict.Verdict{
		{Rule: "limits.exact", About: "pv_input.main.1", Outcome: verdict.Meets, Grade: verdict.Stop, BookGrade: verdict.Stop, Title: "Exactly at the limit", Relation: "at_most",
			Is: &verdict.Measured{ID: "a.b.c", Unit: "V", Value: ptr(150.0)}, Limits: []verdict.Measured{{ID: "d.e.f", Unit: "V", Value: ptr(150.0)}}, Spare: &verdict.Spare{Unit: "V"}, Headroom: ptr(0.0)},
	}}
	idle := lint.DesignResult{File: "idle.design.hcl", Name: "Idle", Digest: "sha256:03"}
	return []lint.DesignResult{first, second, clean, idle}
}
