package report

import (
	"cmp"
	"slices"
	"strings"

	"stringline/lint"
	"stringline/lint/verdict"
)

// readingRule begins the ids under which errors are told: reading/unit and so on; no rule of a codebook can be called that.
const readingRule = "reading/"

// ruleOf gives the id of the rule that a notice belongs to.
func ruleOf(n *notice) string {
	if n.problem != nil {
		return readingRule + cmp.Or(Escape(n.problem.Kind), "error")
	}
	return cmp.Or(Escape(n.verdict.Rule), "-")
}

// sarifRules are the tool's components: an extension for each codebook in use (twice
// where two workshops grade its rules differently), and in the driver what belongs to
// no codebook. Of its rules a component holds those that have a result: the standard
// asks for no more (3.19.23, number from memory), hosts show a rule beside its results only, and the
// words of some 150 rules would be nine tenths of the file. How many are in force is
// a property of the component.
type sarifRules struct {
	driver     sarifComponent
	extensions []sarifComponent
	at         map[ruleKey]sarifRuleReference
	told       map[string]bool // rules that have a result
}

// ruleKey names a rule as it is graded; any stands for every grade.
type ruleKey struct {
	id    string
	grade verdict.Grade
}

const anyGrade = verdict.Grade("")

func newSarifRules(r *lint.Result, notices []notice) *sarifRules {
	s := &sarifRules{at: map[ruleKey]sarifRuleReference{}, extensions: []sarifComponent{}, told: map[string]bool{}}
	for i := range notices {
		s.told[ruleOf(&notices[i])] = true
	}
	s.driver = sarifComponent{
		Name: ToolName, Version: r.Version, Rules: []sarifRule{},
		ShortDescription: &sarifText{"judges designs of small battery-based solar systems"}, FullDescription: &sarifText{cautionWords},
	}
	for i := range r.Books {
		s.book(&r.Books[i])
	}
	for i := range notices {
		n := &notices[i]
		if _, known := s.find(n); known {
			continue
		}
		rule := lint.RuleInUse{ID: ruleOf(n), Grade: verdict.Stop}
		if n.problem != nil {
			rule.Title = "What was written could not be read: " + strings.ReplaceAll(strings.TrimPrefix(rule.ID, readingRule), "_", " ")
			rule.Description = "What an error touches is not judged, and what rests on it is unproven. Nothing of a default takes its place."
			rule.Remedy = "correct what is written at that place"
		} else {
			v := n.verdict
			rule.Title, rule.Remedy, rule.Source, rule.Grade = v.Title, v.Remedy, v.Source, v.Grade
		}
		s.add(&s.driver, &rule, nil)
	}
	return s
}

func (s *sarifRules) book(b *lint.BookInUse) {
	component := sarifComponent{
		Name: cmp.Or(Escape(b.Name), "-"), Version: Escape(b.Version), Rules: []sarifRule{},
		Properties: &sarifComponentBag{Edition: filled(Escape(b.Edition)), Digest: Escape(b.Digest), Embedded: b.Embedded, InForce: len(b.Rules)},
	}
	reference := &sarifComponentReference{Name: component.Name, Index: len(s.extensions)}
	for i := range b.Rules {
		if s.told[cmp.Or(Escape(b.Rules[i].ID), "-")] {
			s.add(&component, &b.Rules[i], reference)
		}
	}
	s.extensions = append(s.extensions, component)
}

func (s *sarifRules) add(to *sarifComponent, rule *lint.RuleInUse, reference *sarifComponentReference) {
	id := cmp.Or(Escape(rule.ID), "-")
	at := sarifRuleReference{ID: id, Index: len(to.Rules), Component: reference}
	for _, key := range []ruleKey{{id, rule.Grade}, {id, anyGrade}} {
		if _, there := s.at[key]; !there {
			s.at[key] = at
		}
	}
	book, _, _ := strings.Cut(id, ".")
	level, severity := "note", "recommendation"
	switch rule.Grade {
	case verdict.Stop:
		level, severity = "error", "error"
	case verdict.Fix:
		level, severity = "warning", "warning"
	}
	plain := func(text string) string { return atMost(sarifMessage(text).Text, mostDescription) }
	title := cmp.Or(rule.Title, rule.ID)
	help := sarifHelp{}
	var words, marked []string
	for _, part := range [][2]string{{"Remedy", rule.Remedy}, {"Source", rule.Source}, {"Grade", string(rule.Grade)}} {
		if strings.TrimSpace(part[1]) != "" {
			words = append(words, stopped(part[0]+": "+part[1]))
			marked = append(marked, "**"+part[0]+"** "+mark(part[1]))
		}
	}
	marked = append(marked, "_"+mark(cautionWords)+"_")
	help.Text = plain(strings.Join(append(words, cautionWords), " "))
	help.Markdown = strings.Join(marked, "\n\n")
	to.Rules = append(to.Rules, sarifRule{
		ID: id, ShortDescription: sarifText{plain(title)}, FullDescription: sarifText{plain(cmp.Or(strings.TrimSpace(rule.Description), title))},
		Help: help, Default: sarifConfiguration{level},
		Properties: sarifRuleBag{Tags: slices.Compact([]string{"solar", cmp.Or(book, "-")}), Severity: severity, Grade: string(rule.Grade)},
	})
}

func (s *sarifRules) find(n *notice) (sarifRuleReference, bool) {
	id := ruleOf(n)
	if n.verdict != nil {
		if at, known := s.at[ruleKey{id, n.verdict.Grade}]; known {
			return at, true
		}
	}
	at, known := s.at[ruleKey{id, anyGrade}]
	return at, known
}

// reference gives the rule of a notice; every notice has one.
func (s *sarifRules) reference(n *notice) sarifRuleReference {
	at, _ := s.find(n)
	return at
}
