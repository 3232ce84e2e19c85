package judge

import (
	"encoding/json"
	"fmt"

	"stringline/schema/codebook"
)

// EditorFiles gives what tools for Rego in editors want to know, as JSON by file
// name: the schema of what rules see as `input`, and which functions rules and
// their tests may call. A nil codebook leaves out what one declares of its own.
func EditorFiles(book *codebook.Codebook) (map[string][]byte, error) {
	if book == nil {
		book = &codebook.Codebook{}
	}
	files := map[string][]byte{}
	for name, v := range map[string]any{
		"input.schema.json":       inputSchema(book),
		"capabilities.json":       capabilities(false),
		"capabilities.tests.json": capabilities(true),
	} {
		text, err := json.MarshalIndent(v, "", "  ")
		if err != nil {
			return nil, fmt.Errorf("writing %s: %w", name, err)
		}
		files[name] = append(text, '\n')
	}
	return files, nil
}
