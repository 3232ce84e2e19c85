package lint

import (
	"cmp"
	"fmt"
	"maps"
	"slices"
	"strings"

	"stringline/lint/judge"
	"stringline/lint/verdict"
	"stringline/schema/codebook"
	"stringline/schema/design"
	"stringline/schema/quantity"
	"stringline/schema/source"
)

// kept tells whether a selection of rules and codebooks holds a rule.
func kept(selection []string, rule string) bool {
	book, _, _ := strings.Cut(rule, ".")
	return len(selection) == 0 || slices.Contains(selection, rule) || slices.Contains(selection, book)
}

// waiversOf turns a design's waivers into what verdicts are put to. A waiver of
// a rule that is not in force is a problem: nothing would ever match it.
func waiversOf(d *design.Design, books []*judge.Book, selection []string) ([]verdict.WaiverInput, source.Problems) {
	var waivers []verdict.WaiverInput
	var problems source.Problems
	for _, w := range d.Waivers {
		if problem := unknownRule(w.Rule, books, w.Block.Header, "waiver."+w.Rule); problem != nil {
			problems = append(problems, *problem)
			continue
		}
		if !kept(selection, w.Rule) {
			continue
		}
		waivers = append(waivers, verdict.WaiverInput{
			Rule: w.Rule, On: w.On, OnAt: w.OnAt, Reason: w.Reason, ApprovedBy: w.ApprovedBy, Expires: w.Expires, At: w.Block.Header,
		})
	}
	return waivers, problems
}

// rooms lists the workshops of the jobs, each once, in their order.
func rooms(jobs []job) []*room {
	var all []*room
	listed := map[*room]bool{}
	for _, j := range jobs {
		if !listed[j.room] {
			listed[j.room] = true
			all = append(all, j.room)
		}
	}
	return all
}

func roomProblems(jobs []job) source.Problems {
	var all source.Problems
	told := map[source.Problem]bool{}
	for _, r := range rooms(jobs) {
		for _, p := range r.problems {
			if !told[p] {
				told[p] = true
				all = append(all, p)
			}
		}
	}
	return all
}

// unknownRules checks a selection against the rules that judged. A selection
// that keeps nothing must not look like a clean run. What is wrong with a codebook
// that was named and could not be used is told already.
func unknownRules(selection []string, jobs []job) source.Problems {
	var problems source.Problems
	known, unusable := map[string]bool{}, map[string]bool{}
	for i, r := range rooms(jobs) {
		for name := range r.outside {
			unusable[name] = true
		}
		if i > 0 { // all rooms of a run have one library
			continue
		}
		for name, s := range r.shelves() {
			if s.book == nil {
				unusable[name] = true // an outside one is among those above
				continue
			}
			known[s.book.Name()] = true
			for _, rule := range s.book.Rules() {
				known[rule.ID] = true
			}
		}
	}
	names := slices.Sorted(maps.Keys(known))
	for _, wanted := range selection {
		book, _, _ := strings.Cut(wanted, ".")
		if known[wanted] || unusable[book] && !known[book] {
			continue
		}
		p := source.Problem{
			Kind: "unknown_rule", Message: fmt.Sprintf("no rule or codebook in force is named %q", wanted),
			Expected: "a rule or a codebook in force", Found: wanted,
		}
		suggest(&p, names)
		problems = append(problems, p)
	}
	return problems
}

// booksInUse lists the codebooks that judged, by name, with their parameters as
// they stood. Where workshops set a parameter differently, each variant stands.
func booksInUse(jobs []job) []BookInUse {
	var used []BookInUse
	for _, r := range rooms(jobs) {
		seen := map[*judge.Book]bool{}
		for _, j := range r.judges {
			for _, b := range j.Books() {
				if seen[b] {
					continue
				}
				seen[b] = true
				in := bookInUse(b, r)
				same := func(o BookInUse) bool {
					return o.Name == in.Name && o.Digest == in.Digest && slices.EqualFunc(o.Parameters, in.Parameters, sameParameter) && slices.Equal(o.Rules, in.Rules)
				}
				if !slices.ContainsFunc(used, same) {
					used = append(used, in)
				}
			}
		}
	}
	slices.SortStableFunc(used, func(a, b BookInUse) int {
		return cmp.Or(cmp.Compare(a.Name, b.Name), cmp.Compare(a.Digest, b.Digest), cmp.Compare(setAt(a), setAt(b)))
	})
	return used
}

func setAt(b BookInUse) string {
	var places []string
	for _, p := range b.Parameters {
		places = append(places, p.SetAt.String())
	}
	return strings.Join(places, " ")
}

func sameParameter(a, b ParameterInUse) bool {
	return a.Name == b.Name && a.SetAt == b.SetAt && a.Word == b.Word && a.Text == b.Text
}

func bookInUse(b *judge.Book, r *room) BookInUse {
	own := b.Codebook()
	in := BookInUse{Name: b.Name(), Version: own.Version, Edition: own.Edition, Digest: b.Digest(), Embedded: b.Embedded()}
	if p := r.parcels[b.Name()]; p != nil && !in.Embedded {
		in.Archive = p.digest != ""
	}
	for i := range own.Parameters {
		p := &own.Parameters[i]
		set, ok := r.parameters[b.Name()][p.Name]
		if !ok {
			set.Value = p.Default
		}
		in.Parameters = append(in.Parameters, parameterInUse(p, set))
	}
	for _, rule := range b.Rules() {
		grade, changed := rule.Grade, source.Range{}
		if g, ok := r.grades[rule.ID]; ok {
			grade, changed = g, r.gradeAt(rule.ID)
		}
		in.Rules = append(in.Rules, RuleInUse{
			ID: rule.ID, Title: rule.Title, Description: rule.Description, Source: rule.Source, Remedy: rule.Remedy,
			Grade: grade, BookGrade: rule.Grade, GradeAt: changed,
		})
	}
	return in
}

// gradeAt gives the place where the workshop changes a rule's grade.
func (r *room) gradeAt(id string) source.Range {
	for _, g := range r.workshop.Grades {
		if g.Rule == id {
			return g.At
		}
	}
	return source.Range{}
}

func parameterInUse(p *codebook.Parameter, set judge.Setting) ParameterInUse {
	v := set.Value
	in := ParameterInUse{Name: p.Name, Unit: p.Unit, Text: v.Text, SetAt: set.SetAt}
	if p.Kind != "quantity" {
		in.Unit = p.Kind
	}
	if set.Bad {
		return in // what was set could not be read: no value stands in its place
	}
	switch p.Kind {
	case "word":
		in.Word, in.Text = v.Word, v.Word
	case "yes_no":
		yes := v.Yes
		in.Yes = &yes
	default:
		if unit, ok := quantity.DocumentUnit(p.Unit); ok {
			value := quantity.Round(unit.FromSI(v.SI))
			in.Value = &value
		}
	}
	return in
}

// counter counts what a run did as its designs come in, so that none of them
// need be kept.
type counter struct {
	reject  verdict.Grade
	summary Summary
	rules   map[string]bool // that gave a verdict
	unread  bool            // a design could not be read, or nothing judged it
	exit    int             // of the findings alone

	baseline           bool // there is one
	held, worse, fresh int  // findings that it accepts, that got worse, that it does not list
}

func (c *counter) add(d *DesignResult) {
	if c.rules == nil {
		c.rules = map[string]bool{}
	}
	s := &c.summary
	s.Designs++
	for i := range d.Verdicts {
		v := &d.Verdicts[i]
		c.rules[v.Rule] = true
		switch {
		case !c.baseline:
		case v.Held():
			c.held++
		case v.Accepted != nil:
			c.worse++
		case v.Finding() && v.Outcome != verdict.Void:
			c.fresh++
		}
		switch v.Outcome {
		case verdict.Meets:
			s.Meets++
		case verdict.Breaks:
			s.Breaks++
		case verdict.Unproven:
			s.Unproven++
		case verdict.Waived:
			s.Waived++
		case verdict.Void:
			s.Void++
		case verdict.DoesNotApply:
			s.DoesNotApply++
		}
	}
	if len(d.Problems) > 0 || len(d.Verdicts) == 0 {
		c.unread = true
	}
	if worst := d.Worst(); worst != "" && worst.Rank() <= c.reject.Rank() {
		c.exit = 1
	}
}

// end gives the summary and the exit status of a run whose designs were added:
// 2 where a design, a codebook or an option could not be read, a verdict is
// void, or nothing was judged at all; 1 where there are findings of the grade to
// reject or worse; else 0. Of r it reads what belongs to no one design.
func (c *counter) end(r *Result) (Summary, int) {
	s := c.summary
	s.Accepted = c.held
	known := map[string]bool{}
	for _, b := range r.Books {
		for _, rule := range b.Rules {
			known[rule.ID] = true
		}
	}
	for rule := range c.rules { // a finding about waivers is no codebook's rule
		if known[rule] {
			s.Rules++
		}
	}
	s.Judgements = s.Meets + s.Breaks + s.Unproven + s.Waived + s.Void
	if len(r.Problems) > 0 || s.Void > 0 || s.Designs == 0 || s.Rules == 0 || c.unread {
		return s, 2
	}
	return s, c.exit
}

// brokenOff says why a run ended before its end, and how far it came.
func brokenOff(err error, judged, of int) source.Problem {
	p := interrupted(judged, of)
	p.Kind, p.Message = "failure", err.Error()+"; "+strings.TrimPrefix(p.Message, "interrupted: ")
	return p
}

// interrupted says how far a run came that was called off.
func interrupted(judged, of int) source.Problem {
	designs := "designs were"
	if of == 1 {
		designs = "design was"
	}
	return source.Problem{
		Kind: "interrupted", Message: fmt.Sprintf("interrupted: %d of %d %s judged; of the rest nothing is known", judged, of, designs),
	}
}
