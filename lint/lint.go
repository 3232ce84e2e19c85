// Package lint is the pipeline on one page: source → design → facts → verdicts.
//
// [Run] finds the designs under some paths, reads each with its workshop and
// parts, computes its facts as far as the rules in force ask for them, and has
// every codebook in force judge it. It prints nothing and decides nothing that
// a report could decide: the [Result] holds all that was found, and the
// packages under lint/report show it.
package lint

import (
	"stringline/lint/facts"
	"stringline/lint/verdict"
	"stringline/schema/source"
)

// BookInUse is one codebook that judged at least one design of the run.
type BookInUse struct {
	Name, Version, Edition, Digest string
	Embedded, Archive              bool // part of the program; read from an archive, whose bytes Digest is over and not its files
	Parameters                     []ParameterInUse
	Rules                          []RuleInUse
}

// ParameterInUse is one parameter of a codebook as it stood in this run.
type ParameterInUse struct {
	Name  string
	Unit  string   // "" for counts, "word" and "yes_no" for the others
	Value *float64 // in Unit; nil for words and yes/no, and where what was set could not be read
	Word  string
	Yes   *bool
	Text  string       // as a person writes it, such as "2 %"
	SetAt source.Range // in workshop.hcl; invalid where the default stands
}

// RuleInUse is a rule's identity for reports.
type RuleInUse struct {
	ID, Title, Description, Source, Remedy string
	Grade, BookGrade                       verdict.Grade
	GradeAt                                source.Range // in workshop.hcl; invalid where the book's own stands
}

// DesignResult is what was found about one design.
type DesignResult struct {
	File           string // as shown to people, "/" between folders; "-" for standard input
	Workshop       string // path of its workshop.hcl, "" where there is none
	Name, Revision string
	Digest         string            // "sha256:…" over the files that were read
	Verdicts       []verdict.Verdict // ordered by verdict.Sort; does_not_apply included
	Problems       source.Problems
	System         *facts.System // nil where the design could not be read at all
	Books          []string      // names of the codebooks that judged it
}

// Worst gives the worst grade of the design's findings, or "" for none.
func (d *DesignResult) Worst() verdict.Grade {
	worst := verdict.Grade("")
	for i := range d.Verdicts {
		v := &d.Verdicts[i]
		if v.Finding() && (worst == "" || v.Grade.Rank() < worst.Rank()) {
			worst = v.Grade
		}
	}
	return worst
}

// Summary counts what a run did. Judgements are the verdicts without those that
// do not apply.
type Summary struct {
	Designs, Rules, Judgements                          int
	Meets, Breaks, Unproven, Waived, Void, DoesNotApply int
	Accepted                                            int // of those that break or are unproven: a baseline accepts them
	NotJudged                                           int // designs that a run which was called off did not come to
}

// Result is all that a run found.
type Result struct {
	Version  string // of this program
	Date     string // yyyy-mm-dd, decides the ends of waivers
	Books    []BookInUse
	Designs  []DesignResult  // ordered by file; none where [Options].Each took them
	Problems source.Problems // of no one design: a path, a workshop file, a codebook
	Summary  Summary
	Baseline *BaselineUse // nil where there is none
	// RejectFrom is the least grade of finding that gave Exit 1.
	RejectFrom verdict.Grade
	// Exit is 2 where a design, a codebook or an option could not be read, a
	// verdict is void, or nothing was judged at all; 1 where there are findings of
	// the grade to reject or worse; else 0.
	Exit int

	from string // the working folder, absolute
}
