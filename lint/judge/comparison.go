package judge

import (
	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"

	"stringline/lint/facts"
)

// EngineFunction is one fact.* function as the engine sees it. A comparison build
// of the engine's own command line (in .ci/tools) registers these, so that both
// programs run the same books on the same input.
type EngineFunction struct {
	Function *rego.Function
	Build    rego.BuiltinDyn
}

// EngineFunctions lists all fact.* functions.
func EngineFunctions() []EngineFunction {
	e := &engine{}
	all := make([]EngineFunction, len(functions))
	for i := range functions {
		all[i] = EngineFunction{&rego.Function{Name: functions[i].name, Decl: functions[i].decl}, e.function(functions[i].name)}
	}
	return all
}

// EngineInput gives a design's structure as a book's rules see it, as plain JSON
// values.
func EngineInput(b *Book, s *facts.System) (any, error) {
	return ast.JSON(buildStructure(b.codebook, s).input)
}
