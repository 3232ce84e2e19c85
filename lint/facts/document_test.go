package facts_test

import (
	"bytes"
	"encoding/json"
	"flag"
	"os"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/santhosh-tekuri/jsonschema/v6"

	"stringline/lint/facts"
)

var update = flag.Bool("update", false, "write the generated files anew")

// The files made from the table are those that are committed.
func TestGeneratedFilesAreFresh(t *testing.T) {
	for path, want := range map[string][]byte{
		"../../schema/facts.schema.json": facts.DocumentSchema(),
		"REFERENCE.md":                   facts.ReferencePage(),
	} {
		if *update {
			if err := os.WriteFile(path, want, 0o644); err != nil {
				t.Fatal(err)
			}
		}
		got, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(got, want) {
			t.Errorf("%s is stale: run this test with -update", path)
		}
	}
}

func schema(t testing.TB) *jsonschema.Schema {
	t.Helper()
	document, err := jsonschema.UnmarshalJSON(bytes.NewReader(facts.DocumentSchema()))
	if err != nil {
		t.Fatal(err)
	}
	c := jsonschema.NewCompiler()
	if err := c.AddResource("facts.schema.json", document); err != nil {
		t.Fatal(err)
	}
	compiled, err := c.Compile("facts.schema.json")
	if err != nil {
		t.Fatal(err)
	}
	return compiled
}

func TestDocumentsMeetTheSchema(t *testing.T) {
	compiled := schema(t)
	for name, text := range map[string]string{
		"a whole design":     hut,
		"one with unknowns":  without(t, hut, `coldest   = "-27 degC"`, `charge_current = "40 A"`, `bank_voltages `, `equalize `, `mounting `),
		"an empty one":       `design "Empty" {}`,
		"one in amperes":     strings.Replace(hut, `value = "72.1 V"`, `value = "9.3 A"`, 1),
		"one that is broken": `charger "x" {`,
	} {
		t.Run(name, func(t *testing.T) {
			s, _ := loose(text)
			document, err := jsonschema.UnmarshalJSON(bytes.NewReader(s.Document()))
			if err != nil {
				t.Fatal(err)
			}
			if err := compiled.Validate(document); err != nil {
				t.Error(err)
			}
		})
	}
}

// The schema is no rubber stamp.
func TestSchemaRefuses(t *testing.T) {
	compiled := schema(t)
	document := string(load(t, hut).Document())
	for name, change := range map[string][2]string{
		"another unit":         {`"id": "site.coldest", "value": -27, "unit": "degC"`, `"id": "site.coldest", "value": -27, "unit": "K"`},
		"a word for a number":  {`"id": "site.coldest", "value": -27`, `"id": "site.coldest", "value": "cold"`},
		"unknown, not why":     {`"id": "site.coldest", "value": -27`, `"id": "site.coldest", "value": null`},
		"known, with a bound":  {`"id": "site.coldest", "value": -27,`, `"id": "site.coldest", "value": -27, "at_least": -30,`},
		"a fact that is not":   {`"coldest": {`, `"coolest": {`},
		"a fact more":          {`"elevation": {`, `"more": 1, "elevation": {`},
		"another format":       {`"format": 1`, `"format": 2`},
		"a link that is no id": {`"charger": "charger.main"`, `"charger": null`},
	} {
		t.Run(name, func(t *testing.T) {
			if !strings.Contains(document, change[0]) {
				t.Fatalf("the document has no %s", change[0])
			}
			changed, err := jsonschema.UnmarshalJSON(strings.NewReader(strings.Replace(document, change[0], change[1], 1)))
			if err != nil {
				t.Fatal(err)
			}
			if compiled.Validate(changed) == nil {
				t.Error("the schema takes it")
			}
		})
	}
}

// The document is the specification's: its head, its leaves, links as ids.
func TestDocument(t *testing.T) {
	s := load(t, without(t, hut, `charge_current = "40 A"`))
	var document struct {
		Format       int
		File, Design string
		System       map[string]json.RawMessage
		PVInputs     []map[string]json.RawMessage `json:"pv_inputs"`
		Banks        []map[string]json.RawMessage
		Strings      []map[string]json.RawMessage
		Chargers     []map[string]json.RawMessage
		Batteries    []map[string]json.RawMessage
	}
	if err := json.Unmarshal(s.Document(), &document); err != nil {
		t.Fatal(err)
	}
	if document.Format != 1 || document.File != "a.design.hcl" || document.Design != "Hut" {
		t.Errorf("head: %d %q %q", document.Format, document.File, document.Design)
	}
	for _, c := range []struct {
		got  json.RawMessage
		want string
	}{
		{document.PVInputs[0]["voc_cold"], `{"id": "pv_input.main.1.voc_cold", "value": 89.42608, "unit": "V"}`},
		{document.PVInputs[0]["charger"], `"charger.main"`},
		{document.Banks[0]["charge_current_total"], `{"id": "bank.house.charge_current_total", "value": null, "unit": "A", "at_least": 60, "missing": ["charge_source.engine.charge_current"]}`},
		{document.Strings[0]["protections"], `[]`},
		{document.Strings[1]["protections"], `["protection.string.south.b"]`},
		{document.Strings[1]["panels"], `["panel.slate-410", "panel.dusk-380"]`},
		{document.Strings[1]["parallel"], `{"id": "string.south.b.parallel", "value": 1, "unit": "", "assumed": ["string.south.b.parallel"]}`},
		{document.Banks[0]["protections"], `["protection.bank.house", "protection.bank.house.each"]`},
		{document.Strings[0]["declared"], `{}`},
		{document.System["id"], `"system"`},
	} {
		if string(c.got) != c.want {
			t.Errorf("got %s\nwant %s", c.got, c.want)
		}
	}
	var group map[string]json.RawMessage
	if err := json.Unmarshal(document.Chargers[0]["settings"], &group); err != nil {
		t.Fatal(err)
	}
	if got, want := string(group["absorption"]), `{"id": "charger.main.settings.absorption", "value": 28.4, "unit": "V"}`; got != want {
		t.Errorf("got %s\nwant %s", got, want)
	}
}

// Same input, same bytes; also when facts were asked for in another order.
func TestDocumentIsStable(t *testing.T) {
	first := load(t, hut).Document()
	s := load(t, hut)
	get(t, s, "system.dc_voltage_max")
	get(t, s, "cable_run.bank.house.path_drop")
	if diff := cmp.Diff(string(first), string(s.Document())); diff != "" {
		t.Errorf("(-first +second):\n%s", diff)
	}
}
