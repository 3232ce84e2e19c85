package facts

import "slices"

// DocumentSchema gives the JSON Schema (draft 2020-12) of the facts document, made
// from the one table. It is committed as schema/facts.schema.json.
func DocumentSchema() []byte {
	properties := object{
		{"format", object{{"const", documentFormat}}},
		{"file", object{{"type", "string"}}},
		{"design", object{{"type", "string"}}},
	}
	definitions := leafSchemas()
	for _, c := range Collections() {
		to := object{{"$ref", "#/$defs/" + c.Name}}
		if !c.Single {
			to = object{{"type", "array"}, {"items", to}}
		}
		properties = append(properties, member{c.Name, line{to}})
		definitions = append(definitions, member{c.Name, c.schema()})
	}
	return encode(object{
		{"$schema", "https://json-schema.org/draft/2020-12/schema"},
		{"title", "stringline facts document"},
		{"description", "The computed facts of one design, made by `stringline facts --as json`. Generated from the fact table: do not edit."},
		{"type", "object"},
		{"properties", properties},
		{"required", required(properties)},
		{"additionalProperties", false},
		{"$defs", definitions},
	})
}

// leafSchemas gives the schemas of a fact, by kind.
func leafSchemas() object {
	some := object{{"type", "array"}, {"items", object{{"type", "string"}}}, {"minItems", 1}}
	ids := line{some}
	due := line{object{{"required", texts([]string{"missing"})}, {"anyOf", []any{
		object{{"required", texts([]string{"because"})}}, object{{"properties", object{{"missing", object{{"minItems", 1}}}}}}}}}}
	leaf := func(means string, value any, more ...member) object {
		properties := append(object{{"id", line{object{{"type", "string"}}}}, {"value", line{value}}, {"unit", line{object{{"type", "string"}}}},
			{"missing", line{some[:2]}}, {"because", line{object{{"type", "string"}, {"minLength", 1}}}}, {"assumed", ids}}, more...)
		unknown := line{object{{"properties", object{{"value", object{{"type", "null"}}}}}}}
		return object{
			{"description", means},
			{"type", "object"},
			{"properties", properties},
			{"required", line{texts([]string{"id", "value", "unit"})}},
			{"additionalProperties", false},
			{"if", unknown},
			{"then", due},
			{"else", line{object{{"properties", object{{"missing", false}, {"because", false}, {"at_least", false}}}}}},
		}
	}
	oneOf := func(kind string) object { return object{{"type", texts([]string{kind, "null"})}} }
	numbers := object{{"type", texts([]string{"array", "null"})}, {"items", object{{"type", "number"}}}}
	return object{
		{"quantity", leaf("A number in its unit; null where it is unknown: missing are the attributes to supply, because is why a method has no answer although all is given. at_least is a bound that holds although it is unknown.",
			oneOf("number"), member{"at_least", line{object{{"type", "number"}}}})},
		{"word", leaf("A word; null where it is unknown.", oneOf("string"))},
		{"yes_no", leaf("True or false; null where it is unknown.", oneOf("boolean"))},
		{"list", leaf("A list of numbers in their unit; null where it is unknown.", numbers)},
		{"series", leaf("A series of numbers in their unit, and what each stands at; null where it is unknown.", numbers,
			member{"over", line{object{{"type", "object"}, {"properties", object{{"unit", object{{"type", "string"}}}, {"values", object{{"type", "array"}, {"items", object{{"type", "number"}}}}}}},
				{"required", texts([]string{"unit", "values"})}, {"additionalProperties", false}}}})},
		{"declared", object{
			{"description", "Answers to codebooks' own questions, by codebook and attribute."},
			{"type", "object"},
			{"additionalProperties", object{{"type", "object"}, {"additionalProperties", object{{"anyOf", []any{
				line{object{{"$ref", "#/$defs/quantity"}}}, line{object{{"$ref", "#/$defs/word"}}}, line{object{{"$ref", "#/$defs/yes_no"}}}}}}}}},
		}},
	}
}

// schema gives the schema of one subject of a collection.
func (c *Collection) schema() object {
	properties := object{{"id", line{object{{"type", "string"}, {"description", c.ID}}}}}
	for _, l := range c.Links {
		to := object{{"type", "string"}, {"description", l.Means}}
		if l.Many {
			to = object{{"type", "array"}, {"items", object{{"type", "string"}}}, {"description", l.Means}}
		}
		properties = append(properties, member{l.Name, line{to}})
	}
	var groups object
	for _, e := range c.Entries {
		if e.group == "" {
			properties = append(properties, member{e.Name, line{e.schema()}})
			continue
		}
		i := slices.IndexFunc(groups, func(m member) bool { return m.key == e.group })
		if i < 0 {
			groups = append(groups, member{e.group, object{}})
			i = len(groups) - 1
		}
		groups[i].value = append(groups[i].value.(object), member{e.shown(), line{e.schema()}})
	}
	for _, g := range groups {
		inner := g.value.(object)
		properties = append(properties, member{g.key, object{
			{"type", "object"}, {"properties", inner}, {"required", required(inner)}, {"additionalProperties", false}}})
	}
	if c.Declares {
		properties = append(properties, member{"declared", line{object{{"$ref", "#/$defs/declared"}}}})
	}
	return object{
		{"description", c.Means},
		{"type", "object"},
		{"properties", properties},
		{"required", required(properties)},
		{"additionalProperties", false},
	}
}

// schema gives the schema of one fact.
func (e *Entry) schema() object {
	kind := map[Kind]string{Quantity: "quantity", Word: "word", YesNo: "yes_no", List: "list", Series: "series"}[e.Kind]
	unit := object{{"const", e.Unit}}
	if len(e.Units) > 0 {
		unit = object{{"enum", texts(append([]string{e.Unit}, e.Units...))}}
	}
	return object{{"$ref", "#/$defs/" + kind}, {"properties", object{{"unit", unit}}}, {"description", e.Means}}
}

// required lists all keys of an object: every fact is there for every subject.
func required(properties object) any {
	keys := make([]string, len(properties))
	for i, p := range properties {
		keys[i] = p.key
	}
	return line{texts(keys)}
}
