package report

import (
	"bytes"
	"encoding/json"
	"fmt"
	"reflect"

	"github.com/google/jsonschema-go/jsonschema"

	"stringline/lint/verdict"
)

// schemaOf makes the JSON Schema (draft 2020-12) of a document from its Go type.
func schemaOf[T any](title string) ([]byte, error) {
	words := func(list ...any) *jsonschema.Schema { return &jsonschema.Schema{Type: "string", Enum: list} }
	schema, err := jsonschema.For[T](&jsonschema.ForOptions{TypeSchemas: map[reflect.Type]*jsonschema.Schema{
		reflect.TypeFor[scalar](): {Types: []string{"number", "string", "boolean", "null"}},
		reflect.TypeFor[outcomeWord](): words(string(verdict.Meets), string(verdict.Breaks), string(verdict.Unproven),
			string(verdict.Waived), string(verdict.Void), string(verdict.DoesNotApply)),
		reflect.TypeFor[gradeWord]():    words(string(verdict.Stop), string(verdict.Fix), string(verdict.Advise)),
		reflect.TypeFor[relationWord](): words("at_most", "at_least", "equals", "between", "all_equal", "is_true"),
		reflect.TypeFor[columnUnit]():   words("code_points"),
		reflect.TypeFor[stateWord]():    words("meets", "after_changes", "waits", "stopped"),
	}})
	if err != nil {
		return nil, fmt.Errorf("making the schema: %w", err)
	}
	schema.Schema = "https://json-schema.org/draft/2020-12/schema"
	schema.Title = title
	tighten(schema)
	text, err := json.Marshal(schema)
	if err != nil {
		return nil, fmt.Errorf("writing the schema: %w", err)
	}
	var b bytes.Buffer
	if err := json.Indent(&b, text, "", "  "); err != nil {
		return nil, fmt.Errorf("laying out the schema: %w", err)
	}
	b.WriteByte('\n')
	return b.Bytes(), nil
}
