// Command engine is the rule engine's own command line with the fact.* functions
// registered. It exists to compare whole-process times with: see ../compare.
package main

import (
	"os"

	"github.com/open-policy-agent/opa/cmd"
	"github.com/open-policy-agent/opa/v1/rego"

	"stringline/lint/judge"
)

func main() {
	for _, f := range judge.EngineFunctions() {
		rego.RegisterBuiltinDyn(f.Function, f.Build)
	}
	if err := cmd.RootCommand.Execute(); err != nil {
		os.Exit(2)
	}
}
