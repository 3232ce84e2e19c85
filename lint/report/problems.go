package report

import (
	"fmt"
	"strings"

	"stringline/schema/source"
)

// errors writes what could not be read: the place, the block, what was expected
// and what was found.
func (p *page) errors(problems source.Problems) {
	p.line().put(fmt.Sprintf("ERRORS, %d: what they touch is not judged", len(problems)), inkFix).end()
	for i := range problems {
		p.problem(i+1, &problems[i])
	}
}

func (p *page) problem(number int, problem *source.Problem) {
	p.pair(p.line().put(fmt.Sprintf("Error %d", number), plain).to(9), problem.Block, problem.At.String())
	p.line().to(p.labels()).wrap(problem.Message, plain)
	for _, row := range []struct{ label, text string }{
		{"expected", problem.Expected}, {"found", problem.Found},
	} {
		if row.text != "" && !says(problem.Message, row.text) {
			p.label(row.label).wrap(row.text, plain)
		}
	}
	if problem.Near != "" {
		p.label("near").wrap("did you mean "+quoted(problem.Near)+"?", inkSupply)
	}
}

// says reports a message that tells what was expected or found already: in quotes,
// or in several words.
func says(message, text string) bool {
	return strings.Contains(message, quoted(text)) || strings.Contains(text, " ") && strings.Contains(message, text)
}

func quoted(text string) string { return `"` + text + `"` }
