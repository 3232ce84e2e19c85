package datasheet

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
	"unicode"

	"stringline/schema/design"
	"stringline/schema/hcltext"
	"stringline/schema/source"
)

// part writes one row as a block. ok is false where anything of the row is refused.
func (r *reader) part(one row, shown string) (text string, ok bool) {
	if len(one.cells) != len(r.columns) {
		at := one.at
		if len(one.cells) > len(r.columns) {
			at = one.cells[len(r.columns)].at
		}
		r.refuse("table", at, fmt.Sprintf("the row has %d cells, the headings are %d; a comma inside a cell needs quotes around the cell", len(one.cells), len(r.columns)),
			fmt.Sprintf("%d cells", len(r.columns)), fmt.Sprintf("%d cells", len(one.cells)))
		return "", false
	}
	ok = true
	for _, c := range one.cells {
		if strings.ContainsAny(c.text, "\n\r") {
			r.refuse("value", c.at, "the cell goes over several lines", "one line", "several")
			ok = false
		}
	}
	kind, label, named := r.head(one)
	if !ok || kind == nil {
		return "", false
	}
	if ok = named; !ok {
		label = "x" // the values are looked at all the same: all that is wrong is told at once
	}
	// One attribute a line, so that the reader's problems lead back to cells.
	lines := []string{fmt.Sprintf("%s %q {", kind.Name, label)}
	cells := []cell{{}}
	inner := map[string][]int{}
	for i := range r.columns {
		col, c := &r.columns[i], one.cells[i]
		if col.what != "" || untold(c.text) {
			continue
		}
		a := attributeOf(kind, col)
		if a == nil {
			r.refuse("unknown_name", c.at, fmt.Sprintf("a %s has no attribute %s; leave the cell empty", kind.Name, col.name), "an empty cell", c.text)
			ok = false
			continue
		}
		if col.block != "" {
			inner[col.block] = append(inner[col.block], i)
			continue
		}
		if literal, read := r.literal(a, col, c); read {
			lines, cells = append(lines, a.Name+" = "+literal), append(cells, c)
		} else {
			ok = false
		}
	}
	for _, name := range kind.Blocks {
		if len(inner[name]) == 0 {
			continue
		}
		lines, cells = append(lines, name+" {"), append(cells, cell{})
		for _, i := range inner[name] {
			col := &r.columns[i]
			a := attributeOf(kind, col)
			if literal, read := r.literal(a, col, one.cells[i]); read {
				lines, cells = append(lines, a.Name+" = "+literal), append(cells, one.cells[i])
			} else {
				ok = false
			}
		}
		lines, cells = append(lines, "}"), append(cells, cell{})
	}
	lines, cells = append(lines, "}"), append(cells, cell{})
	if !r.reads(lines, cells, one) || !ok {
		return "", false
	}
	lines[0] = r.origin(one, shown) + ordered(kind, lines)
	return lines[0] + "\n", true
}

// ordered gives a block's lines with its attributes in the order of the language.
func ordered(kind *design.Kind, lines []string) string {
	rank := func(of *design.Kind, line string) int {
		name, _, _ := strings.Cut(line, " ")
		return slices.IndexFunc(of.Attributes, func(a design.Attribute) bool { return a.Name == name })
	}
	by := func(of *design.Kind) func(a, b string) int {
		return func(a, b string) int { return rank(of, a) - rank(of, b) }
	}
	body := slices.Clone(lines[1 : len(lines)-1])
	if open := slices.IndexFunc(body, func(l string) bool { return strings.HasSuffix(l, " {") }); open >= 0 {
		name, _, _ := strings.Cut(body[open], " ")
		slices.SortStableFunc(body[open+1:len(body)-1], by(design.KindOf(name)))
		slices.SortStableFunc(body[:open], by(kind))
	} else {
		slices.SortStableFunc(body, by(kind))
	}
	return strings.Join(append(append([]string{lines[0]}, body...), "}"), "\n")
}

// head reads a row's kind and name.
func (r *reader) head(one row) (kind *design.Kind, label string, ok bool) {
	name := r.cellOf(one, nameWord)
	kindName, at := r.Part, one.at
	if c := r.cellOf(one, partWord); c != nil {
		kindName, at = strings.ToLower(c.text), c.at
	}
	if kind = partKind(kindName); kind == nil {
		r.Add(source.Problem{Kind: "word", Message: fmt.Sprintf("part: expected one of %s, found %q", strings.Join(partKinds(), ", "), hcltext.Shorten(kindName)), Found: kindName, Near: r.Near(kindName, partKinds()), At: at})
		return nil, "", false
	}
	label, problem := labelOf(name.text)
	if problem != "" {
		r.refuse("label", name.at, problem, "a name of letters a to z and digits", name.text)
		return kind, "", false
	}
	key := kind.Name + "." + label
	if before, twice := r.names[key]; twice {
		if before.at != name.at {
			r.refuse("duplicate", name.at, fmt.Sprintf("%s %q is in the table twice, also at %s (%q): which is right is not known", kind.Name, label, before.at, hcltext.Shorten(before.written)), "a name of its own", name.text)
			return kind, label, false
		}
		if before.again.Valid() {
			r.refuse("duplicate", name.at, fmt.Sprintf("%s %q is in the table twice, also at %s: which is right is not known", kind.Name, label, before.again), "a name of its own", name.text)
			return kind, label, false
		}
	}
	return kind, label, true
}

// noteNames looks for names that rows share before any of them is read.
func (r *reader) noteNames(rows []row) {
	for _, one := range rows {
		name := r.cellOf(one, nameWord)
		kindName := r.Part
		if c := r.cellOf(one, partWord); c != nil {
			kindName = strings.ToLower(c.text)
		}
		if name == nil {
			continue
		}
		label, problem := labelOf(name.text)
		if problem != "" {
			continue
		}
		key := kindName + "." + label
		before, twice := r.names[key]
		if !twice {
			r.names[key] = taken{at: name.at, written: name.text}
		} else if !before.again.Valid() {
			before.again = name.at
			r.names[key] = before
		}
	}
}

// cellOf gives a row's cell of a column that is no attribute, nil where there is none.
func (r *reader) cellOf(one row, what string) *cell {
	for i := range r.columns {
		if r.columns[i].what == what && i < len(one.cells) {
			return &one.cells[i]
		}
	}
	return nil
}

var notInLabel = regexp.MustCompile(`[^a-z0-9_]+`)

// labelOf makes a part's name a label: "Slate 410 (half cut)" is slate-410-half-cut.
func labelOf(name string) (label, problem string) {
	for _, c := range name {
		if c >= 0x80 && (unicode.IsLetter(c) || unicode.IsDigit(c)) {
			return "", fmt.Sprintf("%q cannot stand in a label, and what should stand for it is not known", c)
		}
	}
	label = strings.Trim(notInLabel.ReplaceAllString(strings.ToLower(name), "-"), "-_")
	switch {
	case name == "":
		return "", "the part has no name"
	case isFormula(name):
		return "", formulaWords
	case !design.ValidLabel(label):
		return "", fmt.Sprintf("no label can be made of this name: at most 64 letters, digits, _ and - (%q)", hcltext.Shorten(label))
	}
	return label, ""
}

// origin says where a part comes from.
func (r *reader) origin(one row, shown string) string {
	text := fmt.Sprintf("# %s, line %d: %s\n", comment(shown), one.line, comment(r.cellOf(one, nameWord).text))
	for i := range r.columns {
		if r.columns[i].what == noteWord && one.cells[i].text != "" {
			text += "# " + comment(one.cells[i].text) + "\n"
		}
	}
	return text
}

// reads puts a block through the reader of designs, and leads its problems back to
// their cells.
func (r *reader) reads(lines []string, cells []cell, one row) bool {
	const head = "design \"d\" {}\n"
	d := design.Load(design.Options{Path: "row.design.hcl", Text: []byte(head + strings.Join(lines, "\n") + "\n")})
	for _, p := range d.Problems {
		at := one.at
		if i := p.At.Start.Line - 2; i >= 0 && i < len(cells) && cells[i].at.Valid() {
			at = cells[i].at
		}
		p.Block, p.At = "", at
		r.Add(p)
	}
	return len(d.Problems) == 0
}
