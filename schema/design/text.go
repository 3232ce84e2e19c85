package design

import (
	"strconv"

	"stringline/schema/hcltext"
	"stringline/schema/source"
)

// Literal writes a value, given as in an option ("37.4 V", "2", "true", "Cu"), as
// it stands in a file: numbers and yes/no bare, all else in quotes.
func (a *Attribute) Literal(text string) string {
	switch a.Form {
	case Number, Count, YesNo:
		return text
	}
	return strconv.Quote(text)
}

// Read reads a value given as in an option, by the same rules as one in a file:
// unit, range, words. The error says what was expected and found.
func (a *Attribute) Read(text string) (*Value, error) {
	l := hcltext.Literal{Kind: hcltext.String, Text: text}
	switch a.Form {
	case Number, Count:
		l.Kind = hcltext.Number
	case YesNo:
		l.Kind, l.Yes = hcltext.Bool, text == "true"
		if text != "true" && text != "false" {
			l.Kind = hcltext.String
		}
	}
	var problems source.Problems
	r := &valueReader{
		report: func(p source.Problem) { problems = append(problems, p) },
		near:   source.Nearest,
	}
	v := r.read(a, hcltext.Attribute{Name: a.Name, Value: l})
	if len(problems) > 0 {
		return nil, problems
	}
	return v, nil
}
