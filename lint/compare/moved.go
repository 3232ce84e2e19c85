package compare

import (
	"cmp"
	"maps"
	"math"
	"slices"
	"strings"

	"stringline/lint/facts"
	"stringline/lint/verdict"
	"stringline/schema/quantity"
	"stringline/schema/source"
)

// mover finds the facts that moved and why.
type mover struct {
	was, now  *facts.System
	names     *names
	before    map[string]*facts.Subject // by the newer side's id
	moved     map[string]*Fact          // by the newer side's id
	causes    map[string][]string       // of facts, as they are found
	changes   []Change
	atPlace   map[source.Range][]string // the blocks that a changed value's place belongs to
	referrers map[string][]string       // the blocks whose values took a part into use, or let it go
}

// moved derives every fact of both sides and gives those that differ, worst
// first: those that a worse verdict is about, those that became unknown, those
// that other verdicts are about, then by how far they moved.
func moved(was, now *facts.System, n *names, changes []Change, turns []Turn) []Fact {
	m := &mover{
		was: was, now: now, names: n, changes: changes,
		before: map[string]*facts.Subject{}, moved: map[string]*Fact{}, causes: map[string][]string{},
		atPlace: map[source.Range][]string{}, referrers: map[string][]string{},
	}
	for _, c := range changes {
		if c.Attribute == "" {
			continue
		}
		for _, at := range []source.Range{c.WasAt, c.At} {
			if at.Valid() {
				m.atPlace[at] = append(m.atPlace[at], c.About)
			}
		}
		for _, part := range c.refersWas {
			m.referrers[n.id(part)] = append(m.referrers[n.id(part)], c.About)
		}
		for _, part := range c.refersNow {
			m.referrers[part] = append(m.referrers[part], c.About)
		}
	}
	for _, c := range facts.Collections() {
		for _, s := range was.Subjects(c.Name) {
			m.before[n.id(s.ID())] = s
		}
	}
	var order []string
	for _, c := range facts.Collections() {
		for _, s := range now.Subjects(c.Name) {
			if w, ok := m.before[s.ID()]; ok && w.Collection() == s.Collection() {
				order = append(order, m.subject(w, s)...)
			}
		}
	}
	m.rank(turns)
	list := make([]Fact, 0, len(order))
	for _, id := range order {
		f := m.moved[id]
		f.Causes = m.causesOf(id)
		list = append(list, *f)
	}
	slices.SortStableFunc(list, func(a, b Fact) int {
		return cmp.Or(cmp.Compare(a.rank, b.rank), -cmp.Compare(a.size, b.size), cmp.Compare(a.ID, b.ID))
	})
	return list
}

// subject compares the facts of one subject and gives the ids of those that moved.
func (m *mover) subject(was, now *facts.Subject) []string {
	var ids []string
	try := func(wasID, nowID string) {
		w, there := m.was.Work(wasID)
		v, here := m.now.Work(nowID)
		if !there || !here || sameFact(&w.Fact, &v.Fact, m.names) {
			return
		}
		m.moved[nowID] = &Fact{ID: nowID, WasID: wasID, Was: w.Fact, Now: v.Fact, Over: v.Entry.Over, Attribute: v.Entry.Attribute, rank: 3, size: size(&w.Fact, &v.Fact)}
		ids = append(ids, nowID)
	}
	for _, e := range now.Collection().Entries {
		try(was.ID()+"."+e.Name, now.ID()+"."+e.Name)
	}
	for _, book := range m.books(was, now) {
		for _, name := range union(maps.Keys(was.Declared(book)), maps.Keys(now.Declared(book))) {
			try(was.ID()+".declared."+book+"."+name, now.ID()+".declared."+book+"."+name)
		}
	}
	return ids
}

// books lists the codebooks that either subject answers.
func (m *mover) books(subjects ...*facts.Subject) []string {
	var all []string
	for _, s := range subjects {
		if b := s.Block(); b != nil {
			all = slices.AppendSeq(all, maps.Keys(b.Declared))
		}
	}
	slices.Sort(all)
	return slices.Compact(all)
}

// sameFact compares values as machine output shows them, so that what counts as
// moved is what a reader can see. A word may be an id, or a name, of the older
// side.
func sameFact(a, b *facts.Fact, n *names) bool {
	if a.Known != b.Known || a.Unit != b.Unit || a.Kind != b.Kind {
		return false
	}
	if !a.Known {
		return verdict.SameNumber(a.AtLeast, b.AtLeast)
	}
	same := func(x, y float64) bool { return quantity.Round(x) == quantity.Round(y) }
	return same(a.SI, b.SI) && n.id(a.Word) == b.Word && a.Yes == b.Yes &&
		slices.EqualFunc(a.List, b.List, same) && slices.EqualFunc(a.Over, b.Over, same)
}

// size is how far a fact moved, as a share of the larger value; 1 for what is no
// number.
func size(a, b *facts.Fact) float64 {
	if !a.Known || !b.Known || a.Kind != facts.Quantity {
		return 1
	}
	largest := math.Max(math.Abs(a.SI), math.Abs(b.SI))
	if largest == 0 {
		return 0
	}
	return math.Abs(a.SI-b.SI) / largest
}

// rank marks the facts that verdicts are about.
func (m *mover) rank(turns []Turn) {
	for i := range turns {
		t := &turns[i]
		v := t.either()
		ids := make([]string, 0, 1+len(v.Limits))
		if v.Is != nil {
			ids = append(ids, v.Is.ID)
		}
		for j := range v.Limits {
			ids = append(ids, v.Limits[j].ID)
		}
		for _, id := range ids {
			f, ok := m.moved[id]
			if !ok {
				continue
			}
			f.Judged = true
			f.rank = min(f.rank, 2)
			if t.Direction == Worse {
				f.rank = 0
			}
		}
	}
	for _, f := range m.moved {
		if f.Was.Known && !f.Now.Known {
			f.rank = min(f.rank, 1)
		}
	}
}

// causesOf gives the blocks whose change moved a fact: it follows the inputs of
// both sides down, through what moved, to where nothing below moved any more.
func (m *mover) causesOf(id string) []string {
	if found, ok := m.causes[id]; ok {
		return found
	}
	m.causes[id] = nil // facts make no circle; this is for the reader
	f := m.moved[id]
	var found []string
	look := func(w *facts.Work, ok bool, name func(string) string, places func(*facts.Work) bool) {
		if !ok {
			return
		}
		found = append(found, m.atPlace[w.At]...)
		for _, in := range w.Inputs {
			inID := name(in.Fact.ID)
			switch {
			case m.moved[inID] != nil:
				found = append(found, m.causesOf(inID)...)
			case !places(in):
				found = append(found, m.wholeBlock(inID)...)
			}
		}
	}
	v, here := m.now.Work(f.ID)
	w, there := m.was.Work(f.WasID)
	onBoth := func(in *facts.Work) bool { return m.onBothSides(in.Fact.ID) }
	look(v, here, func(id string) string { return id }, onBoth)
	look(w, there, m.names.id, func(in *facts.Work) bool { return m.onBothSides(m.names.id(in.Fact.ID)) })
	if len(found) == 0 { // what moved it passed through facts that read the same
		found = slices.Concat(m.below(v, here), m.below(w, there))
	}
	if len(found) == 0 {
		found = m.within(id)
	}
	if len(found) == 0 { // how many panels stand in series is structure, which no fact tells
		found = m.beside(v, w)
	}
	slices.Sort(found)
	m.causes[id] = slices.Compact(found)
	return m.causes[id]
}

// below names the blocks of all changed values that a fact rests on, however far
// down.
func (m *mover) below(w *facts.Work, ok bool) []string {
	if !ok {
		return nil
	}
	var found []string
	seen := map[*facts.Work]bool{}
	var walk func(*facts.Work)
	walk = func(w *facts.Work) {
		if seen[w] {
			return
		}
		seen[w] = true
		found = append(found, m.atPlace[w.At]...)
		for _, in := range w.Inputs {
			walk(in)
		}
	}
	walk(w)
	return found
}

// beside names the changes of the blocks that a fact's inputs are about.
func (m *mover) beside(now, was *facts.Work) []string {
	var found []string
	if now != nil {
		for _, in := range now.Inputs {
			found = append(found, m.within(in.Fact.ID)...)
		}
	}
	if was != nil {
		for _, in := range was.Inputs {
			found = append(found, m.within(m.names.id(in.Fact.ID))...)
		}
	}
	return found
}

// onBothSides tells whether the subject of a fact (its id as the newer side has
// it) is there on both sides.
func (m *mover) onBothSides(id string) bool {
	for end := strings.LastIndexByte(id, '.'); end > 0; end = strings.LastIndexByte(id[:end], '.') {
		_, now := m.now.Subject(id[:end])
		_, was := m.before[id[:end]]
		if now || was {
			return now && was
		}
	}
	return true
}

// wholeBlock names the change that brought or took the subject of a fact: the
// blocks that began or ceased to use a part, else the block itself.
func (m *mover) wholeBlock(id string) []string {
	for i := range m.changes {
		c := &m.changes[i]
		if c.Attribute != "" || c.wholeBlock == "" || !strings.HasPrefix(id, c.wholeBlock+".") {
			continue
		}
		if by := m.referrers[c.About]; len(by) > 0 {
			return by
		}
		return []string{c.About}
	}
	return nil
}

// within names the changes of the block that a fact is about, of the blocks inside
// it, and, of a part, the blocks that began or ceased to use it.
func (m *mover) within(id string) []string {
	for end := strings.LastIndexByte(id, '.'); end > 0; end = strings.LastIndexByte(id[:end], '.') {
		about := id[:end]
		var found []string
		for i := range m.changes {
			if c := &m.changes[i]; c.About == about || strings.HasPrefix(c.About, about+".") {
				found = append(found, c.About)
			}
		}
		_, whole := m.now.Subject(about)
		if found = append(found, m.referrers[about]...); whole || len(found) > 0 {
			return found
		}
	}
	return nil
}
