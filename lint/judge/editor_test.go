package judge_test

import (
	"bytes"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/santhosh-tekuri/jsonschema/v6"

	"stringline/lint/judge"
	"stringline/schema/codebook"
	"stringline/schema/design"
)

// TestEditorFiles puts what is written for editors to those who read it: the
// engine's own reader of capabilities, and a validator of JSON Schema.
func TestEditorFiles(t *testing.T) {
	book := &codebook.Codebook{Name: "small"}
	book.Attributes = append(book.Attributes, codebook.Attribute{Of: "banks", Attribute: design.Attribute{Name: "vented"}})
	book.Parameters = append(book.Parameters, codebook.Parameter{Name: "spare"})
	own, err := judge.EditorFiles(book)
	if err != nil {
		t.Fatal(err)
	}
	plain, err := judge.EditorFiles(nil)
	if err != nil {
		t.Fatal(err)
	}

	for _, c := range []struct{ file, call, want string }{
		{"capabilities.json", `startswith("ab", "a")`, ""},
		{"capabilities.json", `fact.one_of(input.bank.chemistry, ["agm"])`, ""},
		{"capabilities.json", `http.send({"method": "get", "url": "x"})`, "undefined function http.send"},
		{"capabilities.json", `object.get(input, "x", 1)`, "undefined function object.get"},
		{"capabilities.json", `input.bank.voltage < {"a": 1}`, "invalid argument"},
		{"capabilities.tests.json", `object.get(input, "x", 1)`, ""},
		{"capabilities.tests.json", `time.now_ns()`, "undefined function time.now_ns"},
	} {
		known, err := ast.LoadCapabilitiesJSON(bytes.NewReader(own[c.file]))
		if err != nil {
			t.Fatalf("%s: %v", c.file, err)
		}
		if known.AllowNet == nil {
			t.Errorf("%s allows every host", c.file)
		}
		m, err := ast.ParseModuleWithOpts("x.rego", "package x\n\np if "+c.call+"\n", ast.ParserOptions{RegoVersion: ast.RegoV1, Capabilities: known})
		if err != nil {
			t.Fatalf("%s: %v", c.call, err)
		}
		compiler := ast.NewCompiler().WithCapabilities(known)
		compiler.Compile(map[string]*ast.Module{"x.rego": m})
		got := ""
		if compiler.Failed() {
			got = compiler.Errors.Error()
		}
		if (c.want == "") != (got == "") || !strings.Contains(got, c.want) {
			t.Errorf("%s by %s: got %q, want %q", c.call, c.file, got, c.want)
		}
	}

	for _, c := range []struct {
		schema []byte
		input  string
		fits   bool
	}{
		{plain["input.schema.json"], `{"site": {"id": "site", "albedo": {"id": "site.albedo", "unit": ""}}}`, true},
		{plain["input.schema.json"], `{"site": {"id": "site", "albeod": {"id": "site.albedo", "unit": ""}}}`, false},
		{plain["input.schema.json"], `{"params": {"spare": {"id": "x", "unit": "V"}}}`, false},
		{own["input.schema.json"], `{"params": {"spare": {"id": "x", "unit": "V"}}}`, true},
		{own["input.schema.json"], `{"banks": [{"id": "bank.a", "declared": {"vented": {"id": "x", "unit": ""}}}]}`, true},
		{plain["input.schema.json"], `{"banks": [{"id": "bank.a", "declared": {"vented": {"id": "x", "unit": ""}}}]}`, false},
		{own["input.schema.json"], `{"params": {"spear": {"id": "x", "unit": "V"}}}`, false},
	} {
		doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(c.schema))
		if err != nil {
			t.Fatal(err)
		}
		compiler := jsonschema.NewCompiler()
		if err := compiler.AddResource("input.schema.json", doc); err != nil {
			t.Fatal(err)
		}
		schema, err := compiler.Compile("input.schema.json")
		if err != nil {
			t.Fatal(err)
		}
		input, err := jsonschema.UnmarshalJSON(strings.NewReader(c.input))
		if err != nil {
			t.Fatal(err)
		}
		if err := schema.Validate(input); (err == nil) != c.fits {
			t.Errorf("%s: %v, want it to fit: %t", c.input, err, c.fits)
		}
	}
}
