package judge

import (
	"strings"

	"stringline/lint/facts"
	"stringline/schema/codebook"
	"stringline/schema/design"
)

// inputSchema is the JSON Schema of what a codebook's rules see as `input`:
// every collection of the fact table, the codebook's own declared attributes
// and its parameters. The engine's type checker reads it; objects in it have
// fixed keys, which is what makes a misspelt fact a load error.
//
// A subject that stands nested carries its links too, but a run, protection or
// disconnect, which carries its facts alone: so the tree ends.
func inputSchema(book *codebook.Codebook) map[string]any {
	definitions := map[string]any{"leaf": closed(map[string]any{
		"id":   map[string]any{"type": "string"},
		"unit": map[string]any{"type": "string"},
	})}
	top := map[string]any{}
	for _, c := range facts.Collections() {
		asked := asks(book, c)
		definitions[c.Name] = subjectSchema(c, asked, true)
		if c.Placed {
			definitions[c.Name+".nested"] = subjectSchema(c, asked, false)
		}
		if c.Single {
			top[c.Name] = pointer(c.Name)
		} else {
			top[c.Name] = listOf(pointer(c.Name))
		}
	}
	if len(book.Parameters) > 0 {
		params := map[string]any{}
		for i := range book.Parameters {
			params[book.Parameters[i].Name] = pointer("leaf")
		}
		top["params"] = closed(params)
	}
	schema := closed(top)
	schema["$schema"] = "http://json-schema.org/draft-07/schema#"
	schema["definitions"] = definitions
	return schema
}

func subjectSchema(c *facts.Collection, asked []design.Attribute, links bool) map[string]any {
	properties := map[string]any{"id": map[string]any{"type": "string"}}
	groups := map[string]map[string]any{}
	for _, e := range c.Entries {
		if !visible(e) {
			continue
		}
		group, name, grouped := strings.Cut(e.Name, ".")
		if !grouped {
			properties[e.Name] = pointer("leaf")
			continue
		}
		if groups[group] == nil {
			groups[group] = map[string]any{}
		}
		groups[group][name] = pointer("leaf")
	}
	for name, leaves := range groups {
		properties[name] = closed(leaves)
	}
	if len(asked) > 0 {
		answers := map[string]any{}
		for i := range asked {
			answers[asked[i].Name] = pointer("leaf")
		}
		properties["declared"] = closed(answers)
	}
	if !links {
		return closed(properties)
	}
	for _, l := range c.Links {
		to := l.To
		if target, ok := facts.CollectionOf(to); ok && target.Placed {
			to += ".nested"
		}
		if l.Many {
			properties[l.Name] = listOf(pointer(to))
		} else {
			properties[l.Name] = pointer(to)
		}
	}
	return closed(properties)
}

// visible tells whether rules see a fact. A series stays out: no formula takes it.
func visible(e *facts.Entry) bool { return e.Kind != facts.Series }

// asks gives the attributes that the codebook declares for a collection.
func asks(book *codebook.Codebook, c *facts.Collection) []design.Attribute {
	var asked []design.Attribute
	for i := range book.Attributes {
		if book.Attributes[i].Of == c.Name {
			asked = append(asked, book.Attributes[i].Attribute)
		}
	}
	return asked
}

func closed(properties map[string]any) map[string]any {
	return map[string]any{"type": "object", "properties": properties, "additionalProperties": false}
}

func listOf(items map[string]any) map[string]any {
	return map[string]any{"type": "array", "items": items}
}

func pointer(name string) map[string]any {
	return map[string]any{"$ref": "#/definitions/" + name}
}

// vocabulary is every name that a rule may use in a path below `input`, for the
// walk over the syntax tree. A name is in leaves where it names a fact
// somewhere, in steps where it names a group, a link or a collection.
type vocabulary struct {
	leaves, steps map[string]bool
	// words holds what a fact of a name can be, where it is a word everywhere
	// and only certain words are allowed.
	words map[string][]string
}

func vocabularyOf(book *codebook.Codebook) *vocabulary {
	v := &vocabulary{leaves: map[string]bool{}, steps: map[string]bool{"id": true, "unit": true}}
	for _, c := range facts.Collections() {
		v.steps[c.Name] = true
		for _, e := range c.Entries {
			if !visible(e) {
				continue
			}
			group, name, grouped := strings.Cut(e.Name, ".")
			if grouped {
				v.steps[group] = true
				v.leaves[name] = true
				v.note(name, e.Kind == facts.Word, e.Words())
				continue
			}
			v.leaves[e.Name] = true
			v.note(e.Name, e.Kind == facts.Word, e.Words())
		}
		for _, l := range c.Links {
			v.steps[l.Name] = true
		}
	}
	for i := range book.Attributes {
		v.steps["declared"] = true
		v.leaves[book.Attributes[i].Name] = true
		v.note(book.Attributes[i].Name, book.Attributes[i].Form == design.Word, book.Attributes[i].Words)
	}
	for i := range book.Parameters {
		v.steps["params"] = true
		v.leaves[book.Parameters[i].Name] = true
		v.note(book.Parameters[i].Name, book.Parameters[i].Kind == "word", book.Parameters[i].Words)
	}
	return v
}

func (v *vocabulary) has(name string) bool { return v.leaves[name] || v.steps[name] }

// names lists the vocabulary in order, for near names.
func (v *vocabulary) names() []string {
	return sortedKeys(v.leaves, v.steps)
}
