package report

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"stringline/lint"
	"stringline/lint/facts"
	"stringline/lint/verdict"
)

// workLine is one numbered line of a worksheet.
type workLine struct {
	number int
	work   *facts.Work
	inputs []int // numbers of the lines that it is made of
}

// worksheetOf numbers the workings of facts: what a line is made of stands above
// it, each fact itself last.
func worksheetOf(roots ...*facts.Work) []workLine {
	var lines []workLine
	number := map[*facts.Work]int{}
	var visit func(*facts.Work)
	visit = func(w *facts.Work) {
		if _, done := number[w]; done {
			return
		}
		number[w] = 0
		var inputs []int
		for _, in := range w.Inputs {
			visit(in)
			inputs = append(inputs, number[in])
		}
		number[w] = len(lines) + 1
		lines = append(lines, workLine{len(lines) + 1, w, inputs})
	}
	for _, root := range roots {
		visit(root)
	}
	return lines
}

// Worksheet writes how one fact came about: numbered lines down to the
// attributes, each with its origin at the right; below them the method, where it
// comes from and which rules use the fact. It fails where the design has no
// such fact.
func Worksheet(w io.Writer, d *lint.DesignResult, id string, opts Page) error {
	if d.System == nil {
		return unknownFact(id)
	}
	root, ok := d.System.Work(id)
	if !ok {
		return unknownFact(id)
	}
	p := newPage(opts)
	p.pair(p.line(), "WORKSHEET "+id, d.File)
	if root.Entry.Means != "" {
		p.line().wrap(root.Entry.Means, plain)
	}
	p.blank()
	lines := worksheetOf(root)
	values := 0
	for _, l := range lines {
		if n := columns(Escape(factEntry(&l.work.Fact, l.work.Entry.Attribute))); n <= 16 {
			values = max(values, n)
		}
	}
	for _, l := range lines {
		p.workLine(&l, lines, values)
	}
	p.blank()
	p.method(d, lines)
	return p.flush(w)
}

// workLine writes one line: number, value, what it is, where it comes from; and
// below a derived one its formula.
func (p *page) workLine(l *workLine, lines []workLine, values int) {
	f := &l.work.Fact
	column := p.labels() + values + 2
	out := p.line().put(fmt.Sprintf("line %d", l.number), plain)
	with := plain
	if !f.Known {
		with = inkSupply
	}
	if text := factEntry(f, l.work.Entry.Attribute); columns(Escape(text)) <= values {
		out.right(p.labels()+values, text, with)
	} else {
		out.to(p.labels()).put(text, with)
	}
	switch {
	case p.narrow():
		out.end()
		column = p.labels()
		out = p.line().to(column)
	case max(out.at+1, column)+columns(Escape(f.ID)) > p.width: // a list for a value
		out.end()
		out = p.line().to(column)
	default:
		out.to(column)
	}
	p.pair(out, f.ID, origin(l))
	if formula := refer(l, lines); formula != "" && formula != origin(l) {
		p.line().to(column).wrap(formula, plain)
	}
	if f.Says != "" && f.Known && !l.work.Entry.Attribute {
		p.line().to(column).wrap("= "+f.Says, plain)
	}
	if f.AtLeast != nil {
		p.line().to(column).wrap("at least "+showSI(*f.AtLeast, f.Unit)+" from what is known", plain)
	}
	if l.work.Note != "" && !inherited(l.work) {
		p.line().to(column).wrap(l.work.Note, plain)
	}
}

// inherited reports an unknown whose note is that of a line above it.
func inherited(w *facts.Work) bool {
	return !w.Fact.Known && slices.ContainsFunc(w.Inputs, func(in *facts.Work) bool {
		return !in.Fact.Known && in.Note != "" && strings.HasSuffix(w.Note, in.Note)
	})
}

// origin says where a line's value comes from.
func origin(l *workLine) string {
	w := l.work
	switch {
	case w.At.Valid():
		return w.At.String()
	case slices.Contains(w.Fact.Assumed, w.Fact.ID):
		return strings.TrimPrefix(numbers(l.inputs)+", assumed", ", ")
	case w.Entry.Attribute && len(l.inputs) == 0:
		return "not given"
	}
	return numbers(l.inputs)
}

func numbers(lines []int) string {
	if len(lines) == 0 {
		return ""
	}
	words := make([]string, len(lines))
	for i, n := range lines {
		words[i] = fmt.Sprint(n)
	}
	if len(words) == 1 {
		return "line " + words[0]
	}
	return "lines " + strings.Join(words, ", ")
}

// refer writes a derived line's formula with the numbers of the lines in the
// place of the facts' names, as worksheets do: line 4 x (1 + line 5 x line 3).
func refer(l *workLine, lines []workLine) string {
	formula := l.work.Entry.Formula
	if formula == "" || l.work.Entry.Attribute {
		return ""
	}
	byName := map[string][]int{}
	for _, n := range l.inputs {
		_, name := subjectOf(lines[n-1].work.Fact.ID)
		byName[name] = append(byName[name], n)
		byName[lines[n-1].work.Fact.ID] = []int{n}
		if i := strings.LastIndexByte(name, '.'); i >= 0 {
			byName[name[i+1:]] = append(byName[name[i+1:]], n)
		}
	}
	var b strings.Builder
	for len(formula) > 0 {
		end := 0
		for end < len(formula) && nameByte(formula[end]) {
			end++
		}
		if end == 0 {
			b.WriteByte(formula[0])
			formula = formula[1:]
			continue
		}
		word := formula[:end]
		formula = formula[end:]
		key := strings.TrimSuffix(word, ".")
		switch found := byName[key]; len(found) {
		case 0:
			b.WriteString(word)
		case 1:
			b.WriteString(numbers(found) + word[len(key):])
		default:
			b.WriteString(key + " (" + numbers(found) + ")" + word[len(key):])
		}
	}
	return b.String()
}

func nameByte(c byte) bool {
	return c == '_' || c == '.' || c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || c >= 0x80
}

// method writes what stands below the lines: the method and its source, what it
// assumes, what to supply, and which rules use the fact.
func (p *page) method(d *lint.DesignResult, lines []workLine) {
	root := lines[len(lines)-1].work
	if root.Entry.Formula != "" {
		p.foot("Method", root.Entry.Formula, plain)
	}
	if sources := sourcesOf(lines); len(sources) > 0 {
		p.foot("Source", strings.Join(sources, "; "), plain)
	}
	var assumed []string
	for _, id := range root.Fact.Assumed {
		text := id
		if value := assumedValue(d.System, id); value != "" {
			text += " " + value
		}
		assumed = append(assumed, text)
	}
	if len(assumed) > 0 {
		p.foot("Assumed", strings.Join(assumed, "; "), plain)
	}
	if len(root.Fact.Missing) > 0 {
		p.foot("Supply", strings.Join(supplies(root.Fact.Missing), "; "), inkSupply)
	}
	if root.Fact.Because != "" {
		p.foot("Because", root.Fact.Because, plain)
	}
	for i, v := range uses(d, root.Fact.ID) {
		word := "Use"
		if i > 0 {
			word = ""
		}
		p.foot(word, useWords(v), plain)
	}
}

func (p *page) foot(word, text string, with ink) { p.line().put(word, plain).to(9).wrap(text, with) }

// sourcesOf lists the methods' sources with the lines that rest on each.
func sourcesOf(lines []workLine) []string {
	var order []string
	byText := map[string][]int{}
	for _, l := range lines {
		if text := l.work.Entry.Source; text != "" && !l.work.Entry.Attribute {
			if len(byText[text]) == 0 {
				order = append(order, text)
			}
			byText[text] = append(byText[text], l.number)
		}
	}
	for i, text := range order {
		order[i] = text + " (" + numbers(byText[text]) + ")"
	}
	return order
}

// uses gives the verdicts that measure or compare with a fact.
func uses(d *lint.DesignResult, id string) []*verdict.Verdict {
	var found []*verdict.Verdict
	for i := range d.Verdicts {
		v := &d.Verdicts[i]
		hit := v.Is != nil && mentions(v.Is, id)
		for j := range v.Limits {
			hit = hit || mentions(&v.Limits[j], id)
		}
		if hit {
			found = append(found, v)
		}
	}
	return found
}

// mentions reports whether a side of a comparison is the fact or a formula that
// names it.
func mentions(m *verdict.Measured, id string) bool {
	if m.ID == id {
		return true
	}
	for rest := m.Formula; ; {
		i := strings.Index(rest, id)
		if i < 0 {
			return false
		}
		end := i + len(id)
		before := i == 0 || !nameByte(rest[i-1]) && rest[i-1] != '-'
		after := end == len(rest) || !nameByte(rest[end]) && rest[end] != '-'
		if before && after {
			return true
		}
		rest = rest[end:]
	}
}

func useWords(v *verdict.Verdict) string {
	words := fmt.Sprintf("%s on %s: %s", v.Rule, subject(v), strings.ReplaceAll(string(v.Outcome), "_", " "))
	if v.Headroom != nil {
		words += ", headroom " + percent(*v.Headroom)
	}
	return words
}
