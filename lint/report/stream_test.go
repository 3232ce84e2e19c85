package report

import (
	"bytes"
	"encoding/json"
	"errors"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// TestJSONAsItGrows: what is written piece by piece is, to the byte, the document
// that the schema is made from.
func TestJSONAsItGrows(t *testing.T) {
	for _, r := range []struct {
		name    string
		designs int
	}{{"none", 0}, {"one", 1}, {"several", 4}} {
		t.Run(r.name, func(t *testing.T) {
			result := run(oddities()[:r.designs]...)
			d := document{Format: Format, Tool: toolEntry{ToolName, result.Version}, Date: result.Date, Columns: "code_points",
				Designs: []designEntry{}, Codebooks: []codebookEntry{}, Errors: errorEntries(result.Problems),
				Exit: result.Exit, Summary: summaryEntry(result.Summary)}
			for i := range result.Designs {
				d.Designs = append(d.Designs, designEntryOf(&result.Designs[i]))
			}
			for i := range result.Books {
				d.Codebooks = append(d.Codebooks, codebookEntryOf(&result.Books[i]))
			}
			var b bytes.Buffer
			encoder := json.NewEncoder(&b)
			encoder.SetEscapeHTML(false)
			encoder.SetIndent("", "  ")
			if err := encoder.Encode(d); err != nil {
				t.Fatal(err)
			}
			if diff := cmp.Diff(string(asciiControls(b.Bytes())), string(asJSON(t, result))); diff != "" {
				t.Errorf("(-whole +as it grows)\n%s", diff)
			}
		})
	}
}

// broken is a writer that takes some bytes and no more.
type broken struct{ left int }

var errBroken = errors.New("no space left")

func (b *broken) Write(p []byte) (int, error) {
	if len(p) > b.left {
		return 0, errBroken
	}
	b.left -= len(p)
	return len(p), nil
}
