package design

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"stringline/schema/hcltext"
	"stringline/schema/source"
)

// resolve follows every name to the block it names. A value that names nothing
// is Bad from then on, so nobody follows it again.
func (l *loader) resolve() {
	for _, b := range l.design.Blocks {
		l.resolveIn(b)
	}
	l.chains()
}

func (l *loader) resolveIn(b *Block) {
	for i := range b.Kind.Attributes {
		a := &b.Kind.Attributes[i]
		v, given := b.Values[a.Name]
		if !given || v.Bad || a.RefersTo == "" {
			continue
		}
		if a.Form == PanelCounts {
			l.panelsOf(b, v)
			continue
		}
		target := l.named(a.RefersTo, v.Text)
		if target == nil {
			v.Bad = true
			l.noSuch(b, a.Name, a.RefersTo, v.Text, v.At)
			continue
		}
		if target.Kind.Part {
			l.take(target)
		}
		if a.Name == a.RefersTo && isPlaced(b.Kind.Name) {
			l.standIn(b, target, v)
		}
	}
	switch b.Kind.Name {
	case "load":
		l.source(b, "from", "bank", "ac_output", "supply", "charger")
	case "supply":
		l.source(b, "from", "bank", "supply")
	case "reading":
		l.readingOf(b)
	}
	for _, inner := range b.Blocks {
		l.resolveIn(inner)
	}
}

// isPlaced tells the kinds inside which a part may be named instead of spelled
// out.
func isPlaced(kind string) bool { return kind == "cable_run" || kind == "fuse" || kind == "breaker" }

// named finds a part or a top-level block.
func (l *loader) named(kind, name string) *Block {
	if KindOf(kind).Part {
		return l.shelf[kind][name]
	}
	return l.index[kind+" "+name]
}

// refers follows one attribute of a block to the block that it names.
func (l *loader) refers(b *Block, attribute string) *Block {
	v := b.known(attribute)
	if v == nil {
		return nil
	}
	return l.named(v.Attribute.RefersTo, v.Text)
}

// namesOf lists what may be named; it is asked for after all files are read.
func (l *loader) namesOf(kind string) []string {
	if names, ok := l.names[kind]; ok {
		return names
	}
	l.names[kind] = l.listNames(kind)
	return l.names[kind]
}

func (l *loader) listNames(kind string) []string {
	var names []string
	if KindOf(kind).Part {
		for name := range l.shelf[kind] {
			names = append(names, name)
		}
		slices.Sort(names)
		return names
	}
	for _, b := range l.design.Blocks {
		if b.Kind.Name == kind {
			names = append(names, b.Name)
		}
	}
	return names
}

// noSuch reports a name that names nothing, unless what it names may stand in
// a file or block that could not be read.
func (l *loader) noSuch(b *Block, attribute, kind, name string, at source.Range) {
	if l.incomplete || l.refused[kind+" "+name] {
		return
	}
	names := l.namesOf(kind)
	expected := "the name of a " + kind
	switch {
	case len(names) == 0:
		expected += ", of which there is none"
	case len(names) <= 8:
		expected += ": " + strings.Join(names, ", ")
	}
	l.say(b, source.Problem{
		Kind:     "unknown_name",
		Message:  fmt.Sprintf("%s: there is no %s %s", attribute, kind, strconv.Quote(hcltext.Shorten(name))),
		Expected: expected,
		Found:    name,
		Near:     l.Near(name, names),
		At:       at,
	})
}

func (l *loader) panelsOf(b *Block, v *Value) {
	for _, p := range v.Panels {
		part := l.named("panel", p.Panel)
		if part == nil {
			v.Bad = true
			l.noSuch(b, v.Attribute.Name, "panel", p.Panel, p.At)
			continue
		}
		l.take(part)
	}
}

// standIn lets a named part answer for what the block leaves out. What both
// give is a problem, and unknown: which one was meant cannot be told.
func (l *loader) standIn(b, part *Block, name *Value) {
	b.Part = part
	for i := range b.Kind.Attributes {
		a := &b.Kind.Attributes[i]
		own, both := b.Values[a.Name]
		if !both {
			continue
		}
		theirs, given := part.Values[a.Name]
		if !given {
			continue
		}
		own.Bad = true
		l.say(b, source.Problem{
			Kind: "duplicate",
			Message: fmt.Sprintf("%s is given here and by %s %q at %s; beside the name of a part stands only what the part leaves out",
				a.Name, part.Kind.Name, part.Name, theirs.NameAt),
			Expected: "one of the two",
			Found:    "both",
			At:       own.NameAt,
		})
	}
}

// source checks what feeds a load or a supply: "bank.house", "ac_output.cabin",
// "supply.twelve" or "charger.main.load_terminals".
func (l *loader) source(b *Block, attribute string, feeders ...string) {
	v, given := b.Values[attribute]
	if !given || v.Bad {
		return
	}
	kind, name, _ := strings.Cut(v.Text, ".")
	terminals := false
	if kind == "charger" {
		name, terminals = strings.CutSuffix(name, ".load_terminals")
	}
	a := v.Attribute
	if !slices.Contains(feeders, kind) || name == "" || kind == "charger" && !terminals || strings.Contains(name, ".") {
		v.Bad = true
		expected := strings.TrimPrefix(a.Means, "what feeds it: ")
		p := source.Problem{Kind: "reference", Message: fmt.Sprintf("%s: expected %s, found %s", a.Name, expected, strconv.Quote(hcltext.Shorten(v.Text))),
			Expected: expected, Found: v.Text, At: v.At}
		if kind == "charger" && slices.Contains(feeders, kind) && !strings.Contains(name, ".") && name != "" {
			p.Near = v.Text + ".load_terminals"
		} else if near := l.Near(kind, feeders); near != "" && name != "" {
			p.Near = near + "." + name
		}
		l.say(b, p)
		return
	}
	if l.named(kind, name) == nil {
		v.Bad = true
		l.noSuch(b, attribute, kind, name, v.At)
	}
}

// chains refuses a supply that hangs on another one: a converter's circuit is
// reckoned from its bank. Where the chain comes round to itself it says so.
func (l *loader) chains() {
	for _, b := range l.design.Blocks {
		v, given := b.Values["from"]
		if b.Kind.Name != "supply" || !given || v.Bad || !strings.HasPrefix(v.Text, "supply.") {
			continue
		}
		p := source.Problem{Kind: "structure", Message: fmt.Sprintf("from: a supply hangs on a bank, not on %s", v.Text), Expected: "bank.NAME", Found: v.Text, At: v.At}
		if loop := l.loop(b); loop != "" {
			p.Message = "from: the supplies feed each other in a circle: " + loop
		}
		l.say(b, p)
	}
	for _, b := range l.design.Blocks {
		if v, given := b.Values["from"]; b.Kind.Name == "supply" && given && strings.HasPrefix(v.Text, "supply.") {
			v.Bad = true
		}
	}
}

// loop follows the chain of supplies from b; "" where it ends.
func (l *loader) loop(b *Block) string {
	const most = 20 // longer circles are refused one by one all the same
	way := b.ID()
	at := b
	for range most {
		v, given := at.Values["from"]
		if !given || !strings.HasPrefix(v.Text, "supply.") {
			return ""
		}
		way += " <- " + v.Text
		if v.Text == b.ID() {
			return way
		}
		if at = l.named("supply", strings.TrimPrefix(v.Text, "supply.")); at == nil {
			return ""
		}
	}
	return ""
}
