package report

import (
	"fmt"
	"io"
	"strings"

	"stringline/lint"
)

// Shelf writes which codebooks are in force at one place, for people: of each its
// version, edition and digest, its parameters and where each was set, its rules
// with their grades and where one was changed.
func Shelf(w io.Writer, s *lint.Shelf, opts Page) error {
	p := newPage(opts)
	where := s.Design
	if where == "" {
		where = s.Workshop
	}
	p.pair(p.line(), "CODEBOOKS IN FORCE, "+fmt.Sprint(len(s.Books)), where)
	if len(s.Problems) > 0 {
		p.blank()
		p.errors(s.Problems)
	}
	for i := range s.Books {
		p.shelved(&s.Books[i])
	}
	if len(s.AtHand) > 0 {
		p.blank()
		p.line().put("At hand, not in force:", plain).gap().wrap(strings.Join(s.AtHand, ", "), plain)
	}
	return p.flush(w)
}

func (p *page) shelved(b *lint.BookInUse) {
	p.blank()
	origin := "a workshop's own"
	if b.Embedded {
		origin = "comes with the program"
	}
	p.pair(p.line(), "CODEBOOK "+b.Name+" "+b.Version, origin)
	if b.Edition != "" {
		p.foot("Edition", b.Edition, plain)
	}
	of := "of its files"
	if b.Archive {
		of = "of the archive"
	}
	p.foot("Digest", b.Digest+" "+of, plain)
	names, values := 0, 0
	for i := range b.Parameters {
		names = max(names, columns(Escape(b.Parameters[i].Name)))
		values = max(values, columns(Escape(parameterText(&b.Parameters[i]))))
	}
	for i := range b.Rules {
		names = max(names, columns(Escape(ruleWithin(b, &b.Rules[i]))))
	}
	if len(b.Parameters) > 0 {
		p.line().put("Parameters", plain).end()
	}
	for i := range b.Parameters {
		x := &b.Parameters[i]
		l := p.line().to(2).put(x.Name, plain).to(2+names+2).put(parameterText(x), plain).to(2 + names + 2 + values + 2)
		if x.SetAt.Valid() {
			l.wrap("set at "+x.SetAt.String(), plain)
		} else {
			l.wrap("the codebook's own", plain)
		}
	}
	p.line().put("Rules", plain).end()
	for i := range b.Rules {
		r := &b.Rules[i]
		l := p.line().to(2).put(ruleWithin(b, r), plain).to(2+names+2).put(string(r.Grade), gradeInk(r.Grade))
		if r.GradeAt.Valid() {
			l.to(2+names+2+8).wrap("instead of "+string(r.BookGrade)+", set at "+r.GradeAt.String(), plain)
			continue
		}
		l.end()
	}
}

// ruleWithin is a rule's name in its codebook.
func ruleWithin(b *lint.BookInUse, r *lint.RuleInUse) string {
	return strings.TrimPrefix(r.ID, b.Name+".")
}

func parameterText(x *lint.ParameterInUse) string {
	switch {
	case x.Value != nil && x.Text == "":
		value, unit := forPeople(*x.Value, x.Unit)
		return strings.TrimSpace(digits(value) + " " + unit)
	case x.Value == nil && x.Word == "" && x.Yes == nil:
		return "unknown"
	case x.Yes != nil && *x.Yes:
		return "yes"
	case x.Yes != nil:
		return "no"
	}
	return x.Text
}

// The document that [ShelfJSON] writes.
type shelfDocument struct {
	Format    int            `json:"format"`
	Tool      toolEntry      `json:"tool"`
	Workshop  *string        `json:"workshop"`
	Design    *string        `json:"design"`
	Codebooks []shelvedEntry `json:"codebooks"`
	AtHand    []string       `json:"at_hand"`
	Errors    []errorEntry   `json:"errors"`
	Exit      int            `json:"exit"`
}

type shelvedEntry struct {
	codebookEntry
	Rules []shelvedRule `json:"rules"`
}

type shelvedRule struct {
	Rule      string      `json:"rule"`
	Title     string      `json:"title"`
	Grade     string      `json:"grade"`
	BookGrade string      `json:"book_grade"`
	ChangedAt *placeEntry `json:"changed_at"`
}

// ShelfJSON writes which codebooks are in force, for scripts.
func ShelfJSON(w io.Writer, s *lint.Shelf, version string) error {
	d := shelfDocument{Format: Format, Tool: toolEntry{ToolName, version}, Workshop: filled(s.Workshop), Design: filled(s.Design),
		Codebooks: make([]shelvedEntry, 0, len(s.Books)), AtHand: append([]string{}, s.AtHand...), Errors: errorEntries(s.Problems), Exit: s.Exit()}
	for i := range s.Books {
		b := &s.Books[i]
		e := shelvedEntry{codebookEntry: codebookEntryOf(b), Rules: make([]shelvedRule, 0, len(b.Rules))}
		for j := range b.Rules {
			r := &b.Rules[j]
			e.Rules = append(e.Rules, shelvedRule{r.ID, r.Title, string(r.Grade), string(r.BookGrade), place(r.GradeAt)})
		}
		d.Codebooks = append(d.Codebooks, e)
	}
	return writeJSON(w, d)
}
