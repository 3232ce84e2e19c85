package judge

import (
	"errors"
	"fmt"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/topdown"

	"stringline/schema/source"
)

// engineFault turns an error of an evaluation into a fault at its place.
func engineFault(err error, rule source.Range) *fault {
	var e *topdown.Error
	if errors.As(err, &e) {
		at := rule
		if e.Location != nil && e.Location.File != "" {
			at = rangeOf(e.Location)
		}
		message := strings.Join(strings.Fields(e.Message), " ")
		if e.Code == topdown.ConflictErr {
			message = "two definitions of one function give different results: " + message
		}
		return faultAt(at, "%s", message)
	}
	return faultAt(rule, "evaluating the rule: %v", err)
}

// engineProblems turns the engine's errors of parsing and compiling into ours.
func engineProblems(err error, file string) source.Problems {
	var several ast.Errors
	if !errors.As(err, &several) {
		var one *ast.Error
		if !errors.As(err, &one) {
			return source.Problems{{Kind: "rule", Message: err.Error(), At: source.Range{File: file, Start: source.Position{Line: 1, Column: 1}}}}
		}
		several = ast.Errors{one}
	}
	var problems source.Problems
	told := map[source.Range]bool{}
	for _, e := range several {
		p := source.Problem{Kind: "rule", Message: e.Message, At: rangeOf(e.Location)}
		if e.Code == ast.ParseErr {
			if told[p.At] { // the parser tells one mistake for each thing that it tried
				continue
			}
			told[p.At] = true
			p.Kind = "syntax"
			if yaml, ok := strings.CutPrefix(p.Message, "yaml: "); ok {
				p.Message = "METADATA cannot be read: " + yaml
			}
			if strings.HasPrefix(e.Message, "unexpected some keyword") {
				p.Message += "; within brackets write [(a * b) | some a in list]: without the round ones | joins two sets"
			}
		}
		if p.At.File == "" {
			p.At = source.Range{File: file, Start: source.Position{Line: 1, Column: 1}}
		}
		explain(&p, e)
		problems = append(problems, p)
	}
	return problems
}

// explain adds near names and what was due to the engine's type errors.
func explain(p *source.Problem, e *ast.Error) {
	switch d := e.Details.(type) {
	case *ast.RefErrInvalidDetail:
		if d.Pos < 0 || d.Pos >= len(d.Ref) {
			return
		}
		at := d.Ref[d.Pos]
		if at.Location != nil && at.Location.File != "" {
			p.At = rangeOf(at.Location)
		}
		if s, ok := at.Value.(ast.String); ok {
			var known []string
			for _, v := range d.OneOf {
				if k, ok := v.(ast.String); ok {
					known = append(known, string(k))
				}
			}
			p.Found, p.Near = string(s), source.Nearest(string(s), known)
			p.Message = fmt.Sprintf("%v has no %q", d.Ref[:d.Pos], string(s))
		}
	case *ast.RefErrUnsupportedDetail:
		p.Message = fmt.Sprintf("%v is not a subject or group: nothing stands below it", d.Ref[:min(d.Pos+1, len(d.Ref))])
	case *ast.ArgErrDetail:
		name, _, _ := strings.Cut(e.Message, ":")
		p.Message = fmt.Sprintf("%s cannot be called with that: %s", name, operandWords(name))
	default:
		if name, ok := strings.CutPrefix(e.Message, "undefined function "); ok {
			var known []string
			for i := range functions {
				known = append(known, functions[i].name)
			}
			if strings.HasPrefix(name, "test.") {
				known = []string{testFacts.Name, testVerdicts.Name}
			}
			p.Message, p.Found, p.Near = "there is no function "+name+" for rules", name, source.Nearest(name, known)
		}
	}
}

// operandWords says what a function takes.
func operandWords(name string) string {
	switch name {
	case "fact.times", "fact.plus", "fact.largest", "fact.smallest":
		return "it takes a list of facts, formulas or plain numbers"
	case "fact.all", "fact.any":
		return "it takes a list of yes/no facts or formulas"
	case "fact.minus", "fact.ratio", "fact.more_than", "fact.at_least":
		return "it takes two facts, formulas or plain numbers"
	case "fact.one_of":
		return "it takes a fact and a list of plain words or numbers"
	case "fact.lookup", "fact.interpolate":
		return "it takes a table's name and a list of facts or formulas, one an axis"
	case "fact.either":
		return "it takes a yes/no and two formulas"
	case "fact.no":
		return "it takes a yes/no fact or formula"
	case "fact.number":
		return "it takes a plain number and a unit's symbol"
	case "fact.value":
		return "it takes one fact or formula"
	case "gt", "gte", "lt", "lte", "equal", "neq":
		return "only plain numbers and texts can be compared here; facts are compared in the record, by fact.more_than, fact.at_least and fact.one_of"
	case "count":
		return "it counts a list or a set"
	}
	return "its operands have other types"
}
