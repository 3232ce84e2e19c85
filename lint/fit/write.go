package fit

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"stringline/schema/design"
	"stringline/schema/hcltext"
	"stringline/schema/rewrite"
)

// The text of an arrangement: the design's own, changed where the strings, the
// banks and their set-points stand. Everything else keeps its bytes.

// before is the line above what no longer counts.
const before = "Of the arrangement before, kept as a comment:"

// text gives the design's text with the arrangement in it. careful holds the
// result against what was meant; without it the text is for a trial alone.
func (f *finder) text(c candidate, careful bool) ([]byte, error) {
	d := f.text0.Fresh()
	for i := range f.places {
		if err := f.writePlace(d, &f.places[i], c.groups[i]); err != nil {
			return nil, fmt.Errorf("array %s: %w", f.places[i].name, err)
		}
	}
	for _, w := range f.wirings[c.wiring] {
		if err := f.writeBank(d, &w); err != nil {
			return nil, fmt.Errorf("bank %s: %w", w.Bank, err)
		}
	}
	for _, b := range f.oldReadings(c) {
		if err := d.Silence(d.At(b.Header.Start.Byte), before); err != nil {
			return nil, fmt.Errorf("%s: %w", b.ID(), err)
		}
	}
	if careful {
		return d.Text()
	}
	return d.Splice(), nil
}

// oldReadings are what was measured on inputs that are strung otherwise now.
func (f *finder) oldReadings(c candidate) []*design.Block {
	moved := map[string]bool{}
	for i := range f.places {
		if p := &f.places[i]; !sameGroups(c.groups[i], p.asIs) {
			moved[inputKey(p.charger, p.input)] = true
		}
	}
	var old []*design.Block
	for _, b := range f.bench.Design().Blocks {
		of, ok := b.Values["of"]
		if b.Kind.Name != "reading" || !ok {
			continue
		}
		subject, _, _, _ := design.ReadingOf(of.Text)
		kind, name, _ := strings.Cut(subject, ".")
		for i := range f.places {
			p := &f.places[i]
			array, _, _ := strings.Cut(name, ".")
			on := kind == "pv_input" && name == inputKey(p.charger, p.input) || (kind == "array" || kind == "string") && array == p.array.Name && !p.copied
			if on && moved[inputKey(p.charger, p.input)] {
				old = append(old, b)
				break
			}
		}
	}
	return old
}

// writePlace strings an array: one that is there, or a copy of it.
func (f *finder) writePlace(d *rewrite.Document, p *place, groups []group) error {
	array := d.At(p.array.Header.Start.Byte)
	switch {
	case !p.copied && sameGroups(groups, p.asIs):
		return nil
	case !p.copied && len(groups) == 0:
		return d.Silence(array, before)
	case !p.copied:
		return f.writeStrings(d, array, groups, p.asIs, false)
	case len(groups) == 0:
		return nil
	}
	alone, problems := rewrite.Open("a copy of array "+p.array.Name, []byte(d.Copy(array)+"\n"))
	if len(problems) > 0 {
		return problems
	}
	own := &alone.Body().Blocks[0]
	err := alone.Replace(own.Labels[0].At, strconv.Quote(p.name))
	if err == nil {
		err = alone.Set(own, "charger", strconv.Quote(p.charger))
	}
	if err == nil {
		err = alone.Set(own, "pv_input", strconv.Itoa(p.input))
	}
	if err == nil {
		err = f.writeStrings(alone, own, groups, nil, true)
	}
	if err != nil {
		return err
	}
	return d.InsertAfter(array, strings.TrimRight(string(alone.Splice()), "\n"))
}

// writeStrings puts groups in place of an array's strings. A group takes over the
// string with the same kinds of panel, else the next; what stands in it besides
// (its run, its fuse) stays. In a copy, strings that are not needed vanish.
func (f *finder) writeStrings(d *rewrite.Document, array *hcltext.Block, groups, asIs []group, copied bool) error {
	var there []*hcltext.Block
	for i := range array.Body.Blocks {
		if b := &array.Body.Blocks[i]; b.Keyword == "string" {
			there = append(there, b)
		}
	}
	if len(there) == 0 {
		return fmt.Errorf("it has no string to go by")
	}
	takes := f.match(there, groups)
	names := map[string]bool{}
	for _, b := range there {
		names[b.Labels[0].Text] = true
	}
	for i, b := range there {
		n := slices.Index(takes, i)
		switch {
		case n < 0 && copied:
			if err := d.Replace(b.Whole, ""); err != nil {
				return err
			}
		case n < 0:
			if err := d.Silence(b, before); err != nil {
				return err
			}
		case asIs != nil && i < len(asIs) && groups[n].same(&asIs[i]):
		default:
			if err := f.writeString(d, b, &groups[n]); err != nil {
				return err
			}
		}
	}
	for n, i := range takes {
		if i >= 0 {
			continue
		}
		like := there[0]
		for m, j := range takes {
			if j >= 0 && groups[m].series[f.firstKind(&groups[n])] > 0 {
				like = there[j]
			}
		}
		name := freeName(names)
		alone, problems := rewrite.Open("a copy of a string", []byte(d.Copy(like)+"\n"))
		if len(problems) > 0 {
			return problems
		}
		own := &alone.Body().Blocks[0]
		err := alone.Replace(own.Labels[0].At, strconv.Quote(name))
		if err == nil {
			err = f.writeString(alone, own, &groups[n])
		}
		if err != nil {
			return err
		}
		if err := d.InsertAfter(there[len(there)-1], strings.TrimRight(string(alone.Splice()), "\n")); err != nil {
			return err
		}
	}
	return nil
}

// match gives each group the place of the string block that it takes over, -1
// for a new one.
func (f *finder) match(there []*hcltext.Block, groups []group) []int {
	takes := make([]int, len(groups))
	taken := make([]bool, len(there))
	for n := range groups {
		takes[n] = -1
		for i, b := range there {
			if !taken[i] && f.sameKinds(b, &groups[n]) {
				takes[n], taken[i] = i, true
				break
			}
		}
	}
	for n := range groups {
		for i := range there {
			if takes[n] < 0 && !taken[i] {
				takes[n], taken[i] = i, true
			}
		}
	}
	return takes
}

// sameKinds tells that a string block holds just the kinds of a group.
func (f *finder) sameKinds(b *hcltext.Block, g *group) bool {
	held := map[string]bool{}
	for _, a := range b.Body.Attributes {
		if a.Name == "panels" {
			for _, p := range a.Value.Pairs {
				held[p.Key] = true
			}
		}
	}
	kinds := 0
	for i, n := range g.series {
		if n > 0 {
			kinds++
			if !held[f.kinds[i].name] {
				return false
			}
		}
	}
	return kinds == len(held)
}

func (f *finder) firstKind(g *group) int {
	return max(0, slices.IndexFunc(g.series, func(n int) bool { return n > 0 }))
}

// freeName gives the first letter that no string has, then numbers.
func freeName(names map[string]bool) string {
	for n := 0; ; n++ {
		name := string(rune('a' + n%26))
		if n >= 26 {
			name = "s" + strconv.Itoa(n)
		}
		if !names[name] {
			names[name] = true
			return name
		}
	}
}

// writeString gives a string block its panels.
func (f *finder) writeString(d *rewrite.Document, b *hcltext.Block, g *group) error {
	var parts []string
	for i, n := range g.series {
		if n > 0 {
			parts = append(parts, fmt.Sprintf("%q = %d", f.kinds[i].name, n))
		}
	}
	if err := d.Set(b, "panels", "{ "+strings.Join(parts, ", ")+" }"); err != nil {
		return err
	}
	given := slices.ContainsFunc(b.Body.Attributes, func(a hcltext.Attribute) bool { return a.Name == "parallel" })
	if g.parallel == 1 && !given {
		return nil
	}
	return d.Set(b, "parallel", strconv.Itoa(g.parallel))
}

// writeBank wires a bank and puts in its set-points.
func (f *finder) writeBank(d *rewrite.Document, w *BankWiring) error {
	if w.AsIs {
		return nil
	}
	for _, b := range f.bench.Design().Blocks {
		if b.Kind.Name != "bank" || b.Name != w.Bank {
			continue
		}
		own := d.At(b.Header.Start.Byte)
		if err := d.Set(own, "series", strconv.Itoa(w.Series)); err != nil {
			return err
		}
		if err := d.Set(own, "parallel", strconv.Itoa(w.Parallel)); err != nil {
			return err
		}
	}
	for _, s := range w.Settings {
		block, attribute, ok := f.base.System.Attribute(s.ID)
		if !ok || block == nil {
			return fmt.Errorf("%s stands nowhere", s.ID)
		}
		if err := d.Set(d.At(block.Header.Start.Byte), attribute.Name, strconv.Quote(s.Now)); err != nil {
			return err
		}
	}
	return nil
}
