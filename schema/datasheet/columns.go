package datasheet

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"stringline/schema/design"
	"stringline/schema/hcltext"
	"stringline/schema/quantity"
	"stringline/schema/source"
)

// Words of a heading or a map that are no attributes.
const (
	nameWord = "name"      // what the part is called; its label is made of it
	partWord = "part"      // the kind of part
	noteWord = "note"      // goes along as a comment
	leftOut  = "leave_out" // the column is not wanted
)

// column says what a column of the table holds.
type column struct {
	heading string
	at      source.Range
	what    string // nameWord, partWord, noteWord, leftOut, or "" for an attribute
	block   string // a block inside the part ("bms"), or ""
	name    string // of the attribute
	unit    string // "" where each cell tells its own
	unitAt  source.Range
}

// heading parts "voc [V]" or "voc (V)" into word and unit.
var heading = regexp.MustCompile(`^(.*?)\s*(?:\[([^\[\]]*)\]|\(([^()]*)\))$`)

var betweenWords = regexp.MustCompile(`[\s-]+`)

// attributes lists the names that a heading may have: those of every kind of part,
// and of the blocks inside them as block.name.
func attributes() []string {
	var names []string
	for _, kind := range partKinds() {
		k := design.KindOf(kind)
		for _, a := range k.Attributes {
			if a.RefersTo == "" && !a.Placed {
				names = append(names, a.Name)
			}
		}
		for _, inner := range k.Blocks {
			for _, a := range design.KindOf(inner).Attributes {
				names = append(names, inner+"."+a.Name)
			}
		}
	}
	slices.Sort(names)
	return slices.Compact(names)
}

// headings reads the line of headings, with the map where there is one.
func (r *reader) headings(first row) bool {
	known := attributes()
	mapped, ok := r.columnMap(first, known)
	if mapped == nil { // without it the headings would be held against nothing
		return false
	}
	seen := map[string]source.Range{}
	for _, c := range first.cells {
		col := column{heading: c.text, at: c.at}
		if m, there := mapped[c.text]; there {
			col = m
			col.heading, col.at = c.text, c.at
		} else if !r.speaks(&col, c, known) {
			ok = false
		}
		key := col.what
		if key == "" {
			key = col.block + "." + col.name
		}
		if before, twice := seen[key]; twice && key != leftOut && key != noteWord && col.name+col.what != "" {
			r.refuse("duplicate", c.at, fmt.Sprintf("the heading %q says what the one at %s says", hcltext.Shorten(c.text), before), "one column for each attribute", "a second one")
			ok = false
		}
		seen[key] = c.at
		r.columns = append(r.columns, col)
	}
	if _, there := seen[nameWord]; !there && ok {
		r.refuse("table", first.at, `no column holds the parts' names: head one "name", or map it`, "a column name", "none")
		ok = false
	}
	_, there := seen[partWord]
	switch {
	case !ok:
	case r.Part == "" && !there:
		r.refuse("table", first.at, `what kind of part the rows are is not told: name it, or head a column "part"`, "one of "+strings.Join(partKinds(), ", "), "none")
		ok = false
	case r.Part != "" && there:
		r.refuse("table", seen[partWord], "the kind of part is told twice, by this column and beside the table", "one of them", "both")
		ok = false
	}
	return ok
}

// speaks reads a heading that speaks for itself.
func (r *reader) speaks(col *column, c cell, known []string) bool {
	word, unit := c.text, ""
	if m := heading.FindStringSubmatch(c.text); m != nil {
		word, unit = m[1], m[2]+m[3]
	}
	if word == "" {
		r.refuse("table", c.at, "a column without a heading: name it, or map it to leave_out", "a heading", "none")
		return false
	}
	return r.means(col, betweenWords.ReplaceAllString(strings.ToLower(word), "_"), unit, c.at, c.at, known)
}

// means fills in what a column holds, from a word and a unit.
func (r *reader) means(col *column, word, unit string, wordAt, unitAt source.Range, known []string) bool {
	switch word {
	case nameWord, partWord, noteWord, leftOut:
		if col.what = word; unit != "" {
			r.refuse("unit", unitAt, word+" has no unit", "no unit", unit)
			return false
		}
		return true
	}
	if !slices.Contains(known, word) {
		r.Add(source.Problem{
			Kind: "unknown_name", Message: fmt.Sprintf("no part has an attribute %q; map the column to one, or to leave_out", hcltext.Shorten(word)),
			Expected: "an attribute of the language, name, part, note or leave_out", Found: word, Near: r.Near(word, known), At: wordAt,
		})
		return false
	}
	if col.name = word; strings.Contains(word, ".") {
		col.block, col.name, _ = strings.Cut(word, ".")
	}
	if unit = strings.Trim(unit, blanks); unit == "" {
		return true
	}
	u, ok := quantity.Lookup(unit)
	if !ok || u.Symbol == "" {
		r.refuse("unit", unitAt, fmt.Sprintf("%q is no unit of the language", hcltext.Shorten(unit)), "a unit such as V, A, W, %/K, degC", unit)
		return false
	}
	col.unit, col.unitAt = u.Symbol, unitAt
	fits := false
	for _, a := range r.declared(col) {
		fits = fits || unitFits(a, u)
	}
	if !fits {
		r.refuse("unit", unitAt, fmt.Sprintf("%s is never in %s", word, u.Symbol), "its unit", u.Symbol)
	}
	return fits
}

// declared gives the attributes that a column can be, one for each kind that has it.
func (r *reader) declared(col *column) []*design.Attribute {
	var all []*design.Attribute
	for _, name := range partKinds() {
		if a := attributeOf(design.KindOf(name), col); a != nil && (r.Part == "" || r.Part == name) {
			all = append(all, a)
		}
	}
	return all
}

// attributeOf gives the attribute that a column is of a part, nil where it has none.
func attributeOf(k *design.Kind, col *column) *design.Attribute {
	if col.block != "" {
		if !slices.Contains(k.Blocks, col.block) {
			return nil
		}
		k = design.KindOf(col.block)
	}
	a, ok := k.Attribute(col.name)
	if !ok || a.RefersTo != "" || a.Placed {
		return nil
	}
	return a
}

// unitFits tells whether an attribute may be written in a unit.
func unitFits(a *design.Attribute, u quantity.Unit) bool {
	if a.Form != design.Quantity && a.Form != design.QuantityList {
		return false
	}
	for _, symbol := range append([]string{a.Unit}, a.Accepts...) {
		if due, ok := quantity.Lookup(symbol); ok && quantity.Fits(u, due) {
			return true
		}
	}
	return false
}

// columnMap reads the map of columns, by heading.
func (r *reader) columnMap(first row, known []string) (mapped map[string]column, ok bool) {
	mapped = map[string]column{}
	if r.Columns == nil {
		return mapped, true
	}
	rows, ok := r.read(r.Columns, 0)
	if !ok {
		return nil, false
	}
	if len(rows) == 0 || len(rows[0].cells) != 3 || rows[0].cells[0].text != "column" || rows[0].cells[1].text != "attribute" || rows[0].cells[2].text != "unit" {
		r.refuse("table", r.Columns.Range(0, 0), "a map of columns begins with the headings column, attribute, unit", "column,attribute,unit", "something else")
		return nil, false
	}
	var headed []string
	for _, c := range first.cells {
		headed = append(headed, c.text)
	}
	for _, one := range rows[1:] {
		if len(one.cells) < 2 || len(one.cells) > 3 {
			r.refuse("table", one.at, fmt.Sprintf("the row has %d cells", len(one.cells)), "column, attribute and unit", fmt.Sprintf("%d cells", len(one.cells)))
			ok = false
			continue
		}
		from, unit := one.cells[0], cell{at: one.cells[1].at}
		if len(one.cells) == 3 {
			unit = one.cells[2]
		}
		if !slices.Contains(headed, from.text) {
			r.Add(source.Problem{Kind: "unknown_name", Message: fmt.Sprintf("the table has no column %q", hcltext.Shorten(from.text)), Near: r.Near(from.text, headed), At: from.at})
			ok = false
			continue
		}
		if before, twice := mapped[from.text]; twice {
			r.refuse("duplicate", from.at, fmt.Sprintf("the column %q is mapped twice, first at %s", hcltext.Shorten(from.text), before.at), "one line a column", "a second one")
			ok = false
			continue
		}
		col := column{at: from.at}
		ok = r.means(&col, one.cells[1].text, unit.text, one.cells[1].at, unit.at, known) && ok
		mapped[from.text] = col
	}
	return mapped, ok
}
