package report

import (
	"bytes"
	"encoding/json"
	"fmt"
	"reflect"
	"slices"

	"github.com/google/jsonschema-go/jsonschema"

	"stringline/lint/verdict"
)

// CheckSchema gives the JSON Schema (draft 2020-12) of what [JSON] writes. It
// is made from the Go types; a test holds schema/check.schema.json to it.
func CheckSchema() ([]byte, error) {
	schema, err := jsonschema.For[document](&jsonschema.ForOptions{TypeSchemas: wordSchemas()})
	if err != nil {
		return nil, fmt.Errorf("making the schema of a check: %w", err)
	}
	schema.Title = "what stringline check --as json writes, format 1"
	return schemaText(schema)
}

// schemaText writes a schema that was made from Go types.
func schemaText(schema *jsonschema.Schema) ([]byte, error) {
	schema.Schema = "https://json-schema.org/draft/2020-12/schema"
	tighten(schema)
	text, err := json.Marshal(schema)
	if err != nil {
		return nil, fmt.Errorf("writing the schema, %s: %w", schema.Title, err)
	}
	var b bytes.Buffer
	if err := json.Indent(&b, text, "", "  "); err != nil {
		return nil, fmt.Errorf("laying out the schema, %s: %w", schema.Title, err)
	}
	b.WriteByte('\n')
	return b.Bytes(), nil
}

// wordSchemas gives the schemas of the types that Go's own do not tell in full:
// words from closed lists, and values of several kinds.
func wordSchemas() map[reflect.Type]*jsonschema.Schema {
	words := func(list ...any) *jsonschema.Schema { return &jsonschema.Schema{Type: "string", Enum: list} }
	return map[reflect.Type]*jsonschema.Schema{
		reflect.TypeFor[scalar](): {Types: []string{"number", "string", "boolean", "null"}},
		reflect.TypeFor[outcomeWord](): words(string(verdict.Meets), string(verdict.Breaks), string(verdict.Unproven),
			string(verdict.Waived), string(verdict.Void), string(verdict.DoesNotApply)),
		reflect.TypeFor[gradeWord]():    words(string(verdict.Stop), string(verdict.Fix), string(verdict.Advise)),
		reflect.TypeFor[relationWord](): words("at_most", "at_least", "equals", "between", "all_equal", "is_true"),
		reflect.TypeFor[columnUnit]():   words("code_points"),
	}
}

// tighten says what Go's types cannot: a list is never null here, a null word
// is allowed by its enumeration too, and readers must accept keys that a later
// version adds.
func tighten(s *jsonschema.Schema) {
	if s == nil {
		return
	}
	if slices.Contains(s.Types, "array") {
		s.Type, s.Types = "array", nil
	}
	if len(s.Enum) > 0 && slices.Contains(s.Types, "null") {
		s.Enum = append(s.Enum, nil)
	}
	s.AdditionalProperties = nil
	tighten(s.Items)
	for _, property := range s.Properties {
		tighten(property)
	}
}
