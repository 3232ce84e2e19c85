package compare

import (
	"cmp"
	"slices"

	"stringline/lint"
	"stringline/lint/verdict"
	"stringline/schema/source"
)

// BookChange is what became of a codebook. Was or Now is nil where it is not in
// force on that side.
type BookChange struct {
	Name       string
	Was, Now   *lint.BookInUse
	Parameters []ParameterChange
	Grades     []GradeChange
	RulesNew   []string // of a codebook that is in force on both sides
	RulesGone  []string
}

// ParameterChange is a parameter whose value is another; Was or Now is nil where
// that side's codebook has no such parameter.
type ParameterChange struct {
	Name     string
	Was, Now *lint.ParameterInUse
}

// GradeChange is a rule that is taken more, or less, seriously.
type GradeChange struct {
	Rule      string
	Was, Now  verdict.Grade
	WasAt, At source.Range
}

// books compares the codebooks in force. Several workshops may set one codebook
// differently: each of its variants is compared with that of the same workshop
// file.
func books(was, now []lint.BookInUse) []BookChange {
	left := make([]*lint.BookInUse, len(was))
	for i := range was {
		left[i] = &was[i]
	}
	take := func(fits func(*lint.BookInUse) bool) *lint.BookInUse {
		i := slices.IndexFunc(left, func(b *lint.BookInUse) bool { return b != nil && fits(b) })
		if i < 0 {
			return nil
		}
		b := left[i]
		left[i] = nil
		return b
	}
	found := make([]*lint.BookInUse, len(now))
	for i := range now { // first those of one workshop file, then any of the name
		b := &now[i]
		found[i] = take(func(w *lint.BookInUse) bool { return w.Name == b.Name && setIn(w) == setIn(b) })
	}
	var list []BookChange
	for i := range now {
		b := &now[i]
		if found[i] == nil {
			found[i] = take(func(w *lint.BookInUse) bool { return w.Name == b.Name })
		}
		if c, ok := bookChange(found[i], b); ok {
			list = append(list, c)
		}
	}
	for _, w := range left {
		if w != nil {
			list = append(list, BookChange{Name: w.Name, Was: w})
		}
	}
	slices.SortStableFunc(list, func(a, b BookChange) int { return cmp.Compare(a.Name, b.Name) })
	return list
}

// setIn is the workshop file that changes a codebook's figures or grades, "" for
// none.
func setIn(b *lint.BookInUse) string {
	for i := range b.Parameters {
		if at := b.Parameters[i].SetAt; at.Valid() {
			return at.File
		}
	}
	for i := range b.Rules {
		if at := b.Rules[i].GradeAt; at.Valid() {
			return at.File
		}
	}
	return ""
}

// bookChange compares one codebook; ok is false where nothing differs.
func bookChange(was, now *lint.BookInUse) (c BookChange, ok bool) {
	c = BookChange{Name: now.Name, Was: was, Now: now}
	if was == nil {
		return c, true
	}
	for i := range now.Parameters {
		p := &now.Parameters[i]
		j := slices.IndexFunc(was.Parameters, func(w lint.ParameterInUse) bool { return w.Name == p.Name })
		switch {
		case j < 0:
			c.Parameters = append(c.Parameters, ParameterChange{Name: p.Name, Now: p})
		case !sameParameter(&was.Parameters[j], p):
			c.Parameters = append(c.Parameters, ParameterChange{p.Name, &was.Parameters[j], p})
		}
	}
	for i := range was.Parameters {
		w := &was.Parameters[i]
		if !slices.ContainsFunc(now.Parameters, func(p lint.ParameterInUse) bool { return p.Name == w.Name }) {
			c.Parameters = append(c.Parameters, ParameterChange{Name: w.Name, Was: w})
		}
	}
	for i := range now.Rules {
		r := &now.Rules[i]
		j := slices.IndexFunc(was.Rules, func(w lint.RuleInUse) bool { return w.ID == r.ID })
		switch {
		case j < 0:
			c.RulesNew = append(c.RulesNew, r.ID)
		case was.Rules[j].Grade != r.Grade:
			c.Grades = append(c.Grades, GradeChange{r.ID, was.Rules[j].Grade, r.Grade, was.Rules[j].GradeAt, r.GradeAt})
		}
	}
	for i := range was.Rules {
		id := was.Rules[i].ID
		if !slices.ContainsFunc(now.Rules, func(r lint.RuleInUse) bool { return r.ID == id }) {
			c.RulesGone = append(c.RulesGone, id)
		}
	}
	ok = len(c.Parameters)+len(c.Grades)+len(c.RulesNew)+len(c.RulesGone) > 0 ||
		was.Version != now.Version || was.Edition != now.Edition || was.Digest != now.Digest
	return c, ok
}

func sameParameter(a, b *lint.ParameterInUse) bool {
	if (a.Yes == nil) != (b.Yes == nil) || a.Yes != nil && *a.Yes != *b.Yes {
		return false
	}
	return verdict.SameNumber(a.Value, b.Value) && a.Word == b.Word && a.Unit == b.Unit
}
