package report

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"stringline/lint"
	"stringline/lint/verdict"
	"stringline/schema/source"
)

// What the outputs for code hosts (SARIF, JUnit, annotations) have in common:
// which verdicts they tell, how loud each is, and in which words.

// notice is one thing that such an output tells: a verdict or an error.
type notice struct {
	verdict *verdict.Verdict
	problem *source.Problem
	file    string // of the design; "" for what belongs to no one design
	number  int    // in the order in which notices came
}

// loudness orders notices, worst first: what could not be read or judged, then
// findings by grade, then what is put up with.
const (
	loudError = iota
	loudStop
	loudFix
	loudAdvise
	loudAccepted
	loudWaived
)

func (n *notice) loudness() int {
	switch {
	case n.problem != nil, n.verdict.Outcome == verdict.Void:
		return loudError
	case n.verdict.Outcome == verdict.Waived:
		return loudWaived
	case n.verdict.Held():
		return loudAccepted
	}
	return loudStop + min(n.verdict.Grade.Rank(), 2)
}

// noticesOf gives what is to be told of a design: all but what is met or does not
// apply. A design that nothing judged is an error too.
func noticesOf(d *lint.DesignResult) []notice {
	var all []notice
	for i := range d.Problems {
		all = append(all, notice{problem: &d.Problems[i], file: d.File})
	}
	if tallyOf(d).judged == 0 && len(d.Problems) == 0 {
		all = append(all, notice{problem: notJudged(d), file: d.File})
	}
	for i := range d.Verdicts {
		switch v := &d.Verdicts[i]; v.Outcome {
		case verdict.Meets, verdict.DoesNotApply:
		default:
			all = append(all, notice{verdict: v, file: d.File})
		}
	}
	return all
}

func notJudged(d *lint.DesignResult) *source.Problem {
	return &source.Problem{Kind: "not_judged", Message: "not judged: no rule in force applies to what this design holds", At: source.Range{File: d.File}}
}

// worst keeps the loudest notices of a run and counts the rest, so that what is
// kept stays small however long the run is.
type worst struct {
	most  int
	kept  []notice
	taken int
	cut   int // that were let go
}

func (w *worst) take(n notice) {
	n.number = w.taken
	w.taken++
	// A copy: a pointer into a design's verdicts would keep all of them.
	if n.verdict != nil {
		v := *n.verdict
		n.verdict = &v
	}
	if n.problem != nil {
		p := *n.problem
		n.problem = &p
	}
	w.kept = append(w.kept, n)
	if len(w.kept) > 2*w.most {
		w.trim()
	}
}

// trim orders what is kept, worst first and then as it came, and lets the rest go.
func (w *worst) trim() {
	slices.SortFunc(w.kept, func(a, b notice) int {
		return cmp.Or(cmp.Compare(a.loudness(), b.loudness()), cmp.Compare(a.number, b.number))
	})
	if len(w.kept) > w.most {
		w.cut += len(w.kept) - w.most
		clear(w.kept[w.most:])
		w.kept = w.kept[:w.most]
	}
}

// heading names a notice in a few words: its grade, its rule and its subject.
func (n *notice) heading() string {
	if n.problem != nil {
		words := "ERROR " + strings.ReplaceAll(n.problem.Kind, "_", " ")
		if n.problem.Block != "" {
			words += " in " + n.problem.Block
		}
		return words
	}
	v := n.verdict
	words := strings.ToUpper(cmp.Or(string(v.Grade), "finding"))
	switch {
	case v.Outcome == verdict.Unproven:
		words += " UNPROVEN"
	case v.Outcome == verdict.Void:
		words += " VOID"
	}
	return words + " " + v.Rule + " on " + subject(v)
}

// lineWords tell the line of a design from standard input, which no host can show.
func (n *notice) lineWords() string {
	if at := n.place(); at.File == "-" && at.Valid() {
		return fmt.Sprintf("At line %d, column %d.", at.Start.Line, at.Start.Column)
	}
	return ""
}

// sentences say what a notice is about, one thing each: what is wrong, what was
// found and allowed, what to do. They are not escaped yet.
func (n *notice) sentences() []string {
	if n.problem != nil {
		return problemSentences(n.problem)
	}
	v := n.verdict
	said := []string{sentence(v)}
	switch v.Outcome {
	case verdict.Unproven:
		said[0] = "Unproven: " + said[0]
	case verdict.Void:
		said[0] = "Void: " + said[0]
		if v.Fault != nil {
			fault := "The rule failed: " + v.Fault.Message
			if v.Fault.At.Valid() {
				fault += ", at " + v.Fault.At.String()
			}
			return append(said, stopped(fault))
		}
		return said
	}
	var compared []string
	for _, m := range measures(v) {
		words := strings.TrimSpace(m.label + " " + m.value)
		if m.note != "" && m.note != m.value {
			words += " (" + m.note + ")"
		}
		compared = append(compared, words)
	}
	if len(compared) > 0 {
		said = append(said, stopped(capital(strings.Join(compared, "; "))))
	}
	if words := reason(v); words != "" {
		said = append(said, stopped("Because "+words))
	}
	switch {
	case v.Outcome == verdict.Unproven:
		for _, words := range supplies(v.Missing) {
			said = append(said, stopped("Supply "+words))
		}
	case v.Outcome == verdict.Breaks && v.Remedy != "":
		said = append(said, stopped("Remedy: "+v.Remedy))
	case v.Outcome == verdict.Waived && v.Waiver != nil:
		said = append(said, stopped("Waived until "+v.Waiver.Expires+by(v.Waiver)))
	}
	switch {
	case v.Held():
		said = append(said, "Accepted on "+v.Accepted.Was.Since+".")
	case v.Accepted != nil:
		said = append(said, "Accepted on "+v.Accepted.Was.Since+", and worse now: "+stopped(v.Accepted.Worse))
	}
	return said
}

func by(w *verdict.Waiver) string {
	words := ""
	if w.ApprovedBy != "" {
		words += ", approved by " + w.ApprovedBy
	}
	if w.Reason != "" {
		words += ": " + w.Reason
	}
	return words
}

func problemSentences(p *source.Problem) []string {
	said := []string{stopped(capital(p.Message))}
	if p.Expected != "" {
		said = append(said, stopped("Expected "+p.Expected))
	}
	if p.Found != "" {
		said = append(said, stopped("Found "+p.Found))
	}
	if p.Near != "" {
		said = append(said, "Did you mean "+quoted(p.Near)+"?")
	}
	return said
}

// stopped ends a sentence.
func stopped(text string) string {
	if text = strings.TrimRight(text, " "); strings.HasSuffix(text, ".") || strings.HasSuffix(text, "?") || strings.HasSuffix(text, "!") {
		return text
	}
	return text + "."
}

// capital begins a sentence.
func capital(text string) string {
	return strings.TrimSuffix(sentence(&verdict.Verdict{Message: text}), ".")
}

// place gives where a notice stands, for a host to show it there: the subject's
// block, the waiver's finding, the problem's line; of a design that has no such
// place the design itself.
func (n *notice) place() source.Range {
	if n.problem != nil {
		if n.problem.At.File == "" {
			return source.Range{File: n.file}
		}
		return n.problem.At
	}
	for _, at := range n.verdict.At {
		if at.Valid() {
			return at
		}
	}
	return source.Range{File: n.file}
}

// oneLine cuts a place to its first line: a host shows a remark on a change only
// where the change has all of its lines. The end is one past the last column; 0
// where it is not known.
func oneLine(r source.Range) (line, column, end int) {
	line, column = r.Start.Line, max(r.Start.Column, 1)
	if r.End.Line == line && r.End.Column > column {
		end = r.End.Column
	}
	return line, column, end
}

// endings of a text that is cut.
const cutMark = " ..."

// atMost cuts a text to some code points.
func atMost(text string, points int) string {
	runes := []rune(text)
	if len(runes) <= points {
		return text
	}
	return string(runes[:points-len(cutMark)]) + cutMark
}

// cutWords tell of what an output does not hold.
func cutWords(cut, most int, what string) string {
	return fmt.Sprintf("%d %s are not told here: only the %d worst are. stringline check --as text, or as json, tells all.", cut, what, most)
}
