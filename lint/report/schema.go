package report

import (
	"bytes"
	"encoding/json"
	"fmt"
	"maps"
	"reflect"
	"slices"

	"github.com/google/jsonschema-go/jsonschema"

	"stringline/lint/verdict"
)

// CheckSchema gives the JSON Schema (draft 2020-12) of what [JSON] writes. It
// is made from the Go types; a test holds schema/check.schema.json to it.
func CheckSchema() ([]byte, error) {
	return schemaOf[document]("what stringline check --as json writes, format 1", nil)
}

// typeSchemas are the schemas of types that Go's own do not tell in full: words from
// closed lists, and values of several kinds.
type typeSchemas = map[reflect.Type]*jsonschema.Schema

// words is the schema of a word from a closed list.
func words[T ~string](list ...T) *jsonschema.Schema {
	s := &jsonschema.Schema{Type: "string"}
	for _, word := range list {
		s.Enum = append(s.Enum, string(word))
	}
	return s
}

// schemaOf makes the JSON Schema (draft 2020-12) of a document from its Go type,
// with the schemas of the types that are its own.
func schemaOf[T any](title string, own typeSchemas) ([]byte, error) {
	types := typeSchemas{
		reflect.TypeFor[scalar]():       {Types: []string{"number", "string", "boolean", "null"}},
		reflect.TypeFor[outcomeWord]():  words(verdict.Meets, verdict.Breaks, verdict.Unproven, verdict.Waived, verdict.Void, verdict.DoesNotApply),
		reflect.TypeFor[gradeWord]():    words(verdict.Stop, verdict.Fix, verdict.Advise),
		reflect.TypeFor[relationWord](): words("at_most", "at_least", "equals", "between", "all_equal", "is_true"),
		reflect.TypeFor[columnUnit]():   words("code_points"),
	}
	maps.Copy(types, own)
	schema, err := jsonschema.For[T](&jsonschema.ForOptions{TypeSchemas: types})
	if err != nil {
		return nil, fmt.Errorf("making the schema of %s: %w", title, err)
	}
	schema.Schema, schema.Title = "https://json-schema.org/draft/2020-12/schema", title
	tighten(schema)
	text, err := json.Marshal(schema)
	if err != nil {
		return nil, fmt.Errorf("writing the schema of %s: %w", title, err)
	}
	var b bytes.Buffer
	if err := json.Indent(&b, text, "", "  "); err != nil {
		return nil, fmt.Errorf("laying out the schema of %s: %w", title, err)
	}
	b.WriteByte('\n')
	return b.Bytes(), nil
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
