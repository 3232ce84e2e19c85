package design

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"stringline/schema/hcltext"
	"stringline/schema/source"
)

// decoder turns plain blocks into the language's. It knows the table and
// nothing about other blocks: references are resolved afterwards.
type decoder struct {
	*hcltext.Collector
	declares func(book string) (map[string][]Attribute, bool)
	// broken says that the file's syntax had errors: what is not there may
	// merely not have been read, so nothing is said to be missing.
	broken bool
	// refused holds labels that were written but cannot be used, so that a
	// reference to one does not add a second problem.
	refused map[string]bool
}

func (d *decoder) say(block *Block, p source.Problem) {
	if block != nil && p.Block == "" {
		p.Block = block.ID()
	}
	d.Add(p)
}

// place says where a block stands: in another one, at a design's top level or
// at that of a parts file.
type place struct {
	parent *Block
	parts  bool
}

func (p place) allows(k *Kind) bool {
	switch {
	case p.parent != nil:
		return slices.Contains(p.parent.Kind.Blocks, k.Name) || k.Name == "declared" && p.parent.Kind.Declares && !p.dataSheet()
	case p.parts:
		return k.Part
	}
	return k.Top
}

// dataSheet tells a fuse or breaker that is a part: codebooks ask about those
// in circuits alone.
func (p place) dataSheet() bool {
	b := p.parent
	return b.Parent == nil && (b.Kind.Name == "fuse" || b.Kind.Name == "breaker")
}

// single tells whether a kind may stand here once only. Fuses and breakers are
// one a circuit, but as many as there are as parts.
func (p place) single(k *Kind) bool { return k.Single && (p.parent != nil || !k.Part) }

// names lists the keywords that may stand here.
func (p place) names() []string {
	var names []string
	for _, k := range kinds {
		if p.allows(k) {
			names = append(names, k.Name)
		}
	}
	return names
}

func (p place) String() string {
	switch {
	case p.parent != nil:
		return "a " + p.parent.Kind.Name + " block"
	case p.parts:
		return "a parts file"
	}
	return "the top level of a design"
}

// blocks decodes what stands in one place and reports two of one kind and name.
func (d *decoder) blocks(from []hcltext.Block, in place) []*Block {
	var list []*Block
	first := make(map[string]*Block, len(from))
	for i := range from {
		b := d.block(&from[i], in)
		if b == nil {
			continue
		}
		key := b.Kind.Name
		if !in.single(b.Kind) {
			key += " " + b.Name
		}
		// A rule may have several waivers, on different subjects.
		if before, twice := first[key]; twice && b.Kind.Name != "waiver" {
			d.twice(b, before, in)
			continue
		}
		first[key] = b
		list = append(list, b)
	}
	return list
}

func (d *decoder) twice(b, before *Block, in place) {
	message := fmt.Sprintf("%s %q is declared twice, first at %s", b.Kind.Name, b.Name, before.Header)
	if in.single(b.Kind) {
		message = fmt.Sprintf("a second %s block in %s, the first is at %s", b.Kind.Name, in, before.Header)
	}
	d.say(b, source.Problem{Kind: "duplicate", Message: message, Expected: "one", Found: "a second one", At: b.Header})
}

// block decodes one block. It gives nil for one that cannot be kept: an
// unknown keyword, a wrong place, an unusable label. What stands inside is
// still looked through, for its own problems.
func (d *decoder) block(from *hcltext.Block, in place) *Block {
	kind := KindOf(from.Keyword)
	if kind == nil || !in.allows(kind) {
		d.unknownBlock(from, kind, in)
		return nil
	}
	b := &Block{Kind: kind, Parent: in.parent, Values: map[string]*Value{}, Header: from.Header, Whole: from.Whole}
	usable := d.label(b, from, in)
	if kind.Name == "declared" {
		if usable {
			d.declared(b, from)
		}
		return nil
	}
	d.attributes(b, from)
	b.Blocks = d.blocks(from.Body.Blocks, place{parent: b})
	d.ordered(b)
	if kind.Name == "panel" {
		d.coefficients(b)
	}
	if !usable {
		return nil
	}
	return b
}

func (d *decoder) unknownBlock(from *hcltext.Block, kind *Kind, in place) {
	p := source.Problem{Kind: "unknown_block", Found: from.Keyword, At: from.KeywordAt, Expected: "one of " + strings.Join(in.names(), ", ")}
	what, refused := notYet(from.Keyword)
	switch {
	case kind != nil:
		p.Kind = "structure"
		p.Expected = kind.home()
		p.Message = fmt.Sprintf("a %s block does not stand in %s; it stands in %s", kind.Name, in, kind.home())
	case refused:
		p.Kind = "later"
		p.Message = fmt.Sprintf("%s: %s", from.Keyword, what)
	case in.parent != nil && hasAttribute(in.parent.Kind, from.Keyword):
		p.Message = fmt.Sprintf("%s is an attribute of %s: write %s = …", from.Keyword, in.parent.Kind.Name, from.Keyword)
	default:
		p.Message = fmt.Sprintf("unknown block %s in %s%s", strconv.Quote(hcltext.Shorten(from.Keyword)), in, oddLetters(from.Keyword))
		p.Near = d.Near(from.Keyword, in.names())
	}
	d.say(in.parent, p)
}

// home says where a kind of block belongs, for messages.
func (k *Kind) home() string {
	if k.Name == "declared" {
		return "the block that it is about"
	}
	var homes []string
	if k.Part && k.Top {
		homes = append(homes, "the top level of a design or a parts file")
	} else if k.Top {
		homes = append(homes, "the top level of a design")
	}
	var in []string
	for _, other := range kinds {
		if slices.Contains(other.Blocks, k.Name) {
			in = append(in, other.Name)
		}
	}
	if len(in) > 0 {
		homes = append(homes, strings.Join(in, ", "))
	}
	return strings.Join(homes, ", or in ")
}

func hasAttribute(k *Kind, name string) bool {
	_, ok := k.Attribute(name)
	return ok
}

// oddLetters points out a letter that looks like one of a–z and is none.
func oddLetters(name string) string {
	for _, r := range name {
		if r > 0x7f {
			return fmt.Sprintf(": the letter %q (U+%04X) is not one of a to z", r, r)
		}
	}
	return ""
}

// label checks how many labels there are and what they look like.
func (d *decoder) label(b *Block, from *hcltext.Block, in place) bool {
	labeled := b.Kind.Labeled
	device := b.Kind.Name == "fuse" || b.Kind.Name == "breaker"
	if device && in.parent != nil {
		labeled = false
	}
	if !labeled {
		if len(from.Labels) == 0 {
			return true
		}
		message := fmt.Sprintf("a %s block has no label", b.Kind.Name)
		if device {
			message = fmt.Sprintf("a %s in a circuit has no label; write %s = %q inside it to name a part", b.Kind.Name, b.Kind.Name, from.Labels[0].Text)
		}
		d.say(in.parent, source.Problem{Kind: "label", Message: message, Expected: "no label", Found: strconv.Quote(hcltext.Shorten(from.Labels[0].Text)), At: from.Labels[0].At})
		return true
	}
	if len(from.Labels) != 1 {
		d.say(in.parent, source.Problem{Kind: "label", Message: fmt.Sprintf("a %s block has one label, its name in quotes", b.Kind.Name),
			Expected: "one label", Found: fmt.Sprintf("%d labels", len(from.Labels)), At: from.Header})
		return false
	}
	l := from.Labels[0]
	b.Name = l.Text
	expected := ""
	switch b.Kind.Name {
	case "design":
		if strings.TrimSpace(l.Text) != "" && len(l.Text) <= 200 && !strings.ContainsAny(l.Text, "\n\t") {
			return true
		}
		expected = "a title of one line"
	case "waiver":
		if rulePattern.MatchString(l.Text) && len(l.Text) <= 2*maxLabel {
			return true
		}
		expected = "a rule id, such as codebook.rule"
	default:
		if ValidLabel(l.Text) {
			return true
		}
		expected = fmt.Sprintf("small letters, digits, - and _, at most %d", maxLabel)
	}
	p := source.Problem{Kind: "label", Message: fmt.Sprintf("the name %s of a %s: expected %s%s", strconv.Quote(hcltext.Shorten(l.Text)), b.Kind.Name, expected, oddLetters(l.Text)),
		Expected: expected, Found: strconv.Quote(hcltext.Shorten(l.Text)), At: l.At}
	if lower := strings.ToLower(l.Text); lower != l.Text && ValidLabel(lower) {
		p.Near = lower
	}
	d.say(in.parent, p)
	d.refused[b.Kind.Name+" "+l.Text] = true
	return false
}

func (d *decoder) attributes(b *Block, from *hcltext.Block) {
	placed := b.Parent != nil
	for _, a := range from.Body.Attributes {
		declared, ok := b.Kind.Attribute(a.Name)
		switch {
		case !ok:
			d.unknownAttribute(b, a)
		case declared.Placed && !placed:
			d.say(b, source.Problem{Kind: "unknown_attribute", Message: fmt.Sprintf("%s says how a %s is placed in a circuit; it does not belong into its data sheet", a.Name, b.Kind.Name),
				Found: a.Name, At: a.NameAt})
		default:
			b.Values[a.Name] = d.reader(b).read(declared, a)
		}
	}
	if d.broken {
		return
	}
	for i := range b.Kind.Attributes {
		a := &b.Kind.Attributes[i]
		if _, given := b.Values[a.Name]; a.Required && !given {
			d.say(b, source.Problem{Kind: "missing", Message: fmt.Sprintf("%s is missing: %s", a.Name, a.Means), Expected: a.Name, Found: "nothing", At: b.Header})
		}
	}
}

func (d *decoder) reader(b *Block) *valueReader {
	return &valueReader{
		report: func(p source.Problem) { d.say(b, p) },
		near:   d.Near,
	}
}

func (d *decoder) unknownAttribute(b *Block, a hcltext.Attribute) {
	var names []string
	for _, known := range b.Kind.Attributes {
		names = append(names, known.Name)
	}
	p := source.Problem{Kind: "unknown_attribute", Expected: "one of " + strings.Join(names, ", "), Found: a.Name, At: a.NameAt}
	what, refused := notYet(a.Name)
	kind := KindOf(a.Name)
	switch {
	case refused:
		p.Kind = "later"
		p.Message = fmt.Sprintf("%s: %s", a.Name, what)
	case kind != nil && slices.Contains(b.Kind.Blocks, a.Name):
		p.Message = fmt.Sprintf("%s is a block: write %s { … } without the equals sign", a.Name, a.Name)
	default:
		p.Message = fmt.Sprintf("unknown attribute %s of %s%s", strconv.Quote(hcltext.Shorten(a.Name)), b.Kind.Name, oddLetters(a.Name))
		p.Near = d.Near(a.Name, names)
		if len(names) == 0 {
			p.Expected = "no attribute"
		}
	}
	d.say(b, p)
}

// declared reads the answers to a codebook's own questions into the parent.
func (d *decoder) declared(b *Block, from *hcltext.Block) {
	parent := b.Parent
	if _, twice := parent.Declared[b.Name]; twice {
		d.say(parent, source.Problem{Kind: "duplicate", Message: fmt.Sprintf("a second declared %q in one block", b.Name), Expected: "one", Found: "a second one", At: b.Header})
		return
	}
	if parent.Declared == nil {
		parent.Declared = map[string]map[string]*Value{}
	}
	values := map[string]*Value{}
	parent.Declared[b.Name] = values
	for _, inner := range from.Body.Blocks {
		d.say(b, source.Problem{Kind: "structure", Message: "a declared block holds attributes only", Expected: "an attribute", Found: inner.Keyword, At: inner.KeywordAt})
	}
	var asked map[string][]Attribute
	known := false
	if d.declares != nil {
		asked, known = d.declares(b.Name)
	}
	if !known {
		d.say(parent, source.Problem{Kind: "reference", Message: fmt.Sprintf("no codebook %q is in force here, so nothing asks for these answers", b.Name),
			Expected: "a codebook in force", Found: b.Name, At: b.Header})
		return
	}
	questions := asked[parent.Kind.Name]
	var names []string
	for _, q := range questions {
		names = append(names, q.Name)
	}
	for _, a := range from.Body.Attributes {
		i := slices.Index(names, a.Name)
		if i < 0 {
			p := source.Problem{Kind: "unknown_attribute", Expected: "one of " + strings.Join(names, ", "), Found: a.Name, At: a.NameAt,
				Message: fmt.Sprintf("codebook %q does not ask for %q of a %s%s", b.Name, hcltext.Shorten(a.Name), parent.Kind.Name, oddLetters(a.Name)),
				Near:    d.Near(a.Name, names)}
			if len(names) == 0 {
				p.Expected = "nothing"
			}
			d.say(b, p)
			continue
		}
		values[a.Name] = d.reader(b).read(&questions[i], a)
	}
}
