package hcltext

import (
	"fmt"
	"slices"

	"stringline/schema/source"
)

// Collector collects the problems of several files and keeps a hostile file
// from filling memory with them: beyond keepMost of one file it only counts.
// Make it with [NewCollector]; it serves one goroutine.
type Collector struct {
	problems source.Problems
	kept     map[string]int
	dropped  map[string]int
	compared int // names held against misspelt ones so far
}

const keepMost = 10 * source.MaxProblems

// NewCollector gives an empty collector.
func NewCollector() *Collector {
	return &Collector{kept: map[string]int{}, dropped: map[string]int{}}
}

// Add notes a problem.
func (r *Collector) Add(p source.Problem) {
	if r.kept[p.At.File] >= keepMost {
		r.dropped[p.At.File]++
		return
	}
	r.kept[p.At.File]++
	p.Found, p.Near = Shorten(p.Found), Shorten(p.Near)
	r.problems = append(r.problems, p)
}

// Near is [source.Nearest] until a load has compared more names than an honest
// mistake costs.
func (r *Collector) Near(word string, known []string) string {
	const most = 50_000
	if r.compared += len(known); r.compared > most {
		return ""
	}
	return source.Nearest(word, known)
}

// List gives the problems sorted, at most [source.MaxProblems] a file. Where
// more were found the last one of the file says how many.
func (r *Collector) List() source.Problems {
	r.problems.Sort()
	total := map[string]int{}
	for _, p := range r.problems {
		total[p.At.File]++
	}
	list := make(source.Problems, 0, len(r.problems))
	shown := map[string]int{}
	for _, p := range r.problems {
		file := p.At.File
		all := total[file] + r.dropped[file]
		switch {
		case all <= source.MaxProblems || shown[file] < source.MaxProblems-1:
			list = append(list, p)
		case shown[file] == source.MaxProblems-1:
			list = append(list, source.Problem{
				Kind:    "too_many",
				Message: fmt.Sprintf("%d more problems in this file are not listed", all-source.MaxProblems+1),
				At:      p.At,
			})
		}
		shown[file]++
	}
	return slices.Clip(list)
}

// Each calls f with every problem kept so far, to complete it.
func (r *Collector) Each(f func(p *source.Problem)) {
	for i := range r.problems {
		f(&r.problems[i])
	}
}
