package judge

import (
	"encoding/json"
	"fmt"

	"github.com/open-policy-agent/opa/v1/ast"

	"stringline/schema/codebook"
)

// EditorFiles gives what tools for Rego in editors want to know, as JSON by file
// name: the schema of what rules see as `input`, and which functions rules and
// their tests may call. A nil codebook leaves out what one declares of its own.
func EditorFiles(book *codebook.Codebook) (map[string][]byte, error) {
	if book == nil {
		book = &codebook.Codebook{}
	}
	rules, err := stated(capabilities(false))
	if err != nil {
		return nil, err
	}
	tests, err := stated(capabilities(true))
	if err != nil {
		return nil, err
	}
	files := map[string][]byte{}
	for name, v := range map[string]any{
		"input.schema.json":       inputSchema(book),
		"capabilities.json":       rules,
		"capabilities.tests.json": tests,
	} {
		text, err := json.MarshalIndent(v, "", "  ")
		if err != nil {
			return nil, fmt.Errorf("writing %s: %w", name, err)
		}
		files[name] = append(text, '\n')
	}
	return files, nil
}

// stated gives capabilities as JSON has them. The engine leaves out an empty list
// of hosts, which its reader then takes for every host.
func stated(c *ast.Capabilities) (map[string]any, error) {
	text, err := json.Marshal(c)
	if err != nil {
		return nil, fmt.Errorf("writing the capabilities: %w", err)
	}
	all := map[string]any{}
	if err := json.Unmarshal(text, &all); err != nil {
		return nil, fmt.Errorf("writing the capabilities: %w", err)
	}
	all["allow_net"] = append([]string{}, c.AllowNet...)
	return all, nil
}
