package design

import "regexp"

// ID gives the id of what the block describes, as facts, verdicts and problems
// name it: "array.south", "string.south.a", "cable_run.bank.house" (a run in
// the bank's main), "protection.bank.house.each" (a fuse or breaker where it
// is placed), "fuse.t-200" (the part), "charger.main.settings". The design
// block's is "design".
func (b *Block) ID() string {
	switch name := b.Kind.Name; {
	case name == "design":
		return name
	case b.Parent == nil && b.Kind.Labeled:
		return name + "." + b.Name
	case b.Parent == nil:
		return name
	case name == "string":
		return name + "." + b.Parent.Name + "." + b.Name
	case name == "fuse" || name == "breaker":
		return "protection." + b.owner()
	case name == "cable_run" || name == "disconnect":
		return name + "." + b.owner()
	case name == "declared":
		return b.Parent.ID() + ".declared." + b.Name
	default: // each, main, settings, bms
		return b.Parent.ID() + "." + name
	}
}

// owner is the id of the block that a run or device belongs to. The bank's
// main is the bank itself.
func (b *Block) owner() string {
	if b.Parent.Kind.Name == "main" && b.Parent.Parent != nil {
		return b.Parent.Parent.ID()
	}
	return b.Parent.ID()
}

// Find gives the top-level block or the part of a kind and name, nil where
// there is none. Parts are those that the design uses or declares.
func (d *Design) Find(kind, name string) *Block {
	if k := KindOf(kind); k != nil && k.Part {
		return d.Parts[kind][name]
	}
	for _, b := range d.Blocks {
		if b.Kind.Name == kind && b.Name == name {
			return b
		}
	}
	return nil
}

// Refers gives the block that an attribute of b names: the controller of a
// charger, the bank of an ac_output. nil where the attribute is absent, could
// not be read, or names nothing.
func (d *Design) Refers(b *Block, attribute string) *Block {
	v, ok := b.Value(attribute)
	if !ok || v.Bad || v.Attribute.RefersTo == "" || v.Attribute.Form != Word {
		return nil
	}
	return d.Find(v.Attribute.RefersTo, v.Text)
}

var (
	labelPattern = regexp.MustCompile(`^[a-z0-9][a-z0-9_-]*$`)
	rulePattern  = regexp.MustCompile(`^[a-z0-9][a-z0-9_-]*\.[a-z0-9][a-z0-9_-]*$`)
)

// maxLabel bounds a label: ids are printed in tables.
const maxLabel = 64

// ValidLabel tells whether a text may be a label that enters ids.
func ValidLabel(s string) bool { return len(s) <= maxLabel && labelPattern.MatchString(s) }
