package judge

import (
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/types"
)

// allowed names the engine's own functions that a rule may call. Everything
// else does not compile: no network, clock, environment or randomness, nothing
// that eats time or memory in one call, and nothing that looks a name up in a
// text (object.get), where a misspelt fact would be silence.
//
// Comparisons, count, max, min and sort are narrowed below, so that a fact, which
// is an object here, cannot be compared or ordered as if it were its number.
var allowed = []string{
	"eq", "assign", "equal", "neq", "gt", "gte", "lt", "lte",
	"internal.member_2", "internal.member_3",
	"plus", "minus", "mul", "div", "rem", "abs", "ceil", "floor", "round",
	"and", "or", "intersection", "union",
	"count", "sum", "product", "max", "min", "sort",
	"array.concat", "array.flatten", "array.reverse", "array.slice",
	"concat", "contains", "startswith", "endswith", "lower", "upper",
	"trim_prefix", "trim_suffix", "trim_space",
}

// allowedInTests may stand in rule_test.rego besides.
var allowedInTests = []string{
	"print", "internal.print", "internal.test_case",
	"object.get", "object.keys", "object.union", "object.remove", "object.filter",
	"is_null", "is_number", "is_string", "is_object", "is_array", "is_set", "is_boolean", "sprintf",
}

// scalar is what == and != may compare: never a fact or a subject.
var (
	scalar  = types.NewAny(types.S, types.N, types.B)
	plain   = types.NewAny(types.S, types.N)
	numbers = types.NewAny(types.NewArray(nil, types.N), types.SetOfNum)
)

var narrowed = map[string]*types.Function{
	"gt":    types.NewFunction(types.Args(types.N, types.N), types.B),
	"gte":   types.NewFunction(types.Args(types.N, types.N), types.B),
	"lt":    types.NewFunction(types.Args(types.N, types.N), types.B),
	"lte":   types.NewFunction(types.Args(types.N, types.N), types.B),
	"equal": types.NewFunction(types.Args(scalar, scalar), types.B),
	"neq":   types.NewFunction(types.Args(scalar, scalar), types.B),
	"max":   types.NewFunction(types.Args(numbers), types.N),
	"min":   types.NewFunction(types.Args(numbers), types.N),
	"sort":  types.NewFunction(types.Args(types.NewAny(types.NewArray(nil, plain), types.NewSet(plain))), types.NewArray(nil, plain)),
	"count": types.NewFunction(types.Args(types.NewAny(types.NewArray(nil, types.A), types.SetOfAny)), types.N),
}

// capabilities gives the allow-list, for rules or for their tests. Tests may
// compare what they like: a silent false fails them.
func capabilities(tests bool) *ast.Capabilities {
	names := allowed
	if tests {
		names = slices.Concat(allowed, allowedInTests)
	}
	c := &ast.Capabilities{
		Features: []string{ast.FeatureRegoV1, ast.FeatureKeywordsInRefs},
		AllowNet: []string{}, // nil would allow every host
	}
	for _, b := range ast.Builtins {
		if !slices.Contains(names, b.Name) {
			continue
		}
		kept := *b
		if decl, ok := narrowed[b.Name]; ok && !tests {
			kept.Decl = decl
		}
		c.Builtins = append(c.Builtins, &kept)
	}
	for i := range functions {
		c.Builtins = append(c.Builtins, &ast.Builtin{Name: functions[i].name, Decl: functions[i].decl})
	}
	if tests {
		c.Builtins = append(c.Builtins,
			&ast.Builtin{Name: testFacts.Name, Decl: testFacts.Decl},
			&ast.Builtin{Name: testVerdicts.Name, Decl: testVerdicts.Decl})
	}
	slices.SortFunc(c.Builtins, func(a, b *ast.Builtin) int {
		return cmpString(a.Name, b.Name)
	})
	return c
}

func cmpString(a, b string) int {
	switch {
	case a < b:
		return -1
	case a > b:
		return 1
	}
	return 0
}
