package report

import (
	"io"

	"stringline/lint"
)

// The document that [BookTestsJSON] writes. Within a format keys are added,
// never removed or retyped; every key is present.
type bookTestsDocument struct {
	Format    int             `json:"format"`
	Tool      toolEntry       `json:"tool"`
	Codebooks []bookTestEntry `json:"codebooks"`
	Exit      int             `json:"exit"`
}

type bookTestEntry struct {
	Asked    string          `json:"asked"` // as it was named on the command line
	Name     *string         `json:"name"`
	Version  *string         `json:"version"`
	Embedded bool            `json:"embedded"`
	Rules    int             `json:"rules"`
	Tests    []bookTestCase  `json:"tests"`
	Mutants  []mutantEntry   `json:"mutants"`
	Summary  mutantSummary   `json:"summary"`
	Coverage []coverageEntry `json:"coverage"`
	Errors   []errorEntry    `json:"errors"`
}

type bookTestCase struct {
	Rule    string      `json:"rule"`
	Name    string      `json:"name"`
	Passed  bool        `json:"passed"`
	Message *string     `json:"message"`
	At      *placeEntry `json:"at"`
}

type mutantEntry struct {
	Rule    string      `json:"rule"`
	Name    string      `json:"name"`
	Noticed *string     `json:"noticed"` // load, example, rego_test; null for nobody
	Detail  *string     `json:"detail"`
	Reason  *string     `json:"equivalent"` // why it means the same as the rule
	At      *placeEntry `json:"at"`
}

type mutantSummary struct {
	Mutants    int `json:"mutants"`
	Load       int `json:"load"`
	Example    int `json:"example"`
	RegoTest   int `json:"rego_test"`
	Equivalent int `json:"equivalent"`
	Survived   int `json:"survived"`
}

type coverageEntry struct {
	Rule    string        `json:"rule"`
	Reached int           `json:"reached"`
	Total   int           `json:"total"`
	Missed  []*placeEntry `json:"missed"`
}

// BookTestsJSON writes what testing codebooks came to, for scripts.
func BookTestsJSON(w io.Writer, books []lint.TestedBook, version string) error {
	d := bookTestsDocument{Format: Format, Tool: toolEntry{ToolName, version}, Codebooks: make([]bookTestEntry, 0, len(books)), Exit: lint.ExitOfBooks(books)}
	for i := range books {
		d.Codebooks = append(d.Codebooks, bookTestEntryOf(&books[i]))
	}
	return writeJSON(w, d)
}

func bookTestEntryOf(b *lint.TestedBook) bookTestEntry {
	e := bookTestEntry{Asked: b.Asked, Embedded: b.Embedded, Tests: []bookTestCase{}, Mutants: []mutantEntry{}, Coverage: []coverageEntry{}, Errors: errorEntries(b.Problems)}
	r := b.Report
	if r == nil {
		return e
	}
	e.Name, e.Version, e.Rules, e.Summary = filled(r.Book), filled(r.Version), r.Rules, mutantTally(r)
	for i := range r.Results {
		t := &r.Results[i]
		e.Tests = append(e.Tests, bookTestCase{t.Rule, t.Name, t.Passed, filled(t.Message), place(t.At)})
	}
	for i := range r.Mutants {
		m := &r.Mutants[i]
		noticed := m.Caught
		if noticed == "Rego test" {
			noticed = "rego_test"
		}
		e.Mutants = append(e.Mutants, mutantEntry{m.Rule, m.Name, filled(noticed), filled(m.Detail), filled(m.Reason), place(m.At)})
	}
	for i := range r.Coverage {
		c := &r.Coverage[i]
		entry := coverageEntry{Rule: c.Rule, Reached: c.Reached, Total: c.Total, Missed: make([]*placeEntry, 0, len(c.Missed))}
		for _, m := range c.Missed {
			entry.Missed = append(entry.Missed, place(m))
		}
		e.Coverage = append(e.Coverage, entry)
	}
	return e
}
