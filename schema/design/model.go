// Package design reads designs: HCL text in, blocks of typed values with their
// places out. It checks everything that one design can be checked for without
// computing: names, units, ranges, references. What it cannot read it reports
// as a [source.Problem] and goes on.
//
// Use [Load]. The language itself (which blocks, which attributes, their units,
// ranges and words) is the table in language*.go, reached by [Kinds]; the
// decoder, the facts, the reference page and editors all read that one table.
package design

import (
	"stringline/schema/quantity"
	"stringline/schema/source"
)

// Form says what an attribute's value looks like in a file.
type Form uint8

// The forms. Quantities and lists of them carry a unit; the others do not.
const (
	Quantity     Form = iota // "37.4 V"
	Number                   // 6.5
	Count                    // 2, a whole number
	Word                     // one of Words, or any text where Words is empty
	Text                     // text for people
	YesNo                    // true or false
	Date                     // "2026-05-02"
	QuantityList             // ["12 V", "24 V"]
	NumberList               // twelve factors
	TextList                 // ["../parts/*.parts.hcl"]
	PanelCounts              // { "slate-410" = 2 }
)

// Attribute declares one attribute of a kind of block.
type Attribute struct {
	Name string
	Form Form
	// Unit is the document unit of a Quantity ("V"), "" otherwise. Accepts
	// lists further units of another dimension that may stand instead
	// ("V/K" for a panel's temp_voc, whose Unit is "%/K").
	Unit    string
	Accepts []string
	// Min and Max are the documented range in Unit, both ends included; a
	// value outside it is an error. Exclusive makes Min itself an error.
	Min, Max  float64
	Exclusive bool
	Words     []string
	// RefersTo names the kind of block that a Word names ("controller"),
	// empty where it names none.
	RefersTo string
	Required bool // structure needs it: a block without it cannot be placed
	// Default is the documented default as text ("Cu", "60 degC", "1"),
	// empty where silence stays unknown. Never one where safety hangs on it.
	//
	// The strand of a cable run is the one default that hangs on another
	// attribute (the unit of size); its text says so and [Block.Default]
	// resolves it.
	Default string
	// Placed marks an attribute of a fuse or breaker that belongs to the
	// circuit it stands in; a part of that kind cannot have it.
	Placed bool
	Means  string // one line for the reference page
}

// Kind declares a kind of block.
type Kind struct {
	Name       string // "panel", "cable_run", "settings"
	Part       bool   // a data-sheet block, allowed in parts files
	Labeled    bool   // fuse and breaker: as a part alone; placed in a circuit they carry no label
	Single     bool   // at most one in its parent
	Top        bool   // may stand at the top level of a design
	Attributes []Attribute
	Blocks     []string // kinds of block that may stand inside
	Declares   bool     // may hold declared "BOOK" { … }
	Means      string
}

// Attribute finds a declared attribute by name.
func (k *Kind) Attribute(name string) (*Attribute, bool) {
	for i := range k.Attributes {
		if k.Attributes[i].Name == name {
			return &k.Attributes[i], true
		}
	}
	return nil, false
}

// Value is one attribute as read. SI holds Quantity, Number and Count.
type Value struct {
	Attribute *Attribute
	// Bad marks a value that was written but could not be read (a problem
	// tells why). It is unknown, and no default takes its place.
	Bad     bool
	SI      float64
	Written quantity.Unit // the unit as written: tells "AWG" from "mm2", "V/K" from "%/K"
	Text    string        // Word, Text and Date; of a Quantity the text as written
	Yes     bool
	List    []float64      // QuantityList (SI) and NumberList
	Texts   []string       // TextList
	TextsAt []source.Range // the places of Texts
	Panels  []PanelCount
	At      source.Range // the value
	NameAt  source.Range // the attribute's name
}

// PanelCount is one entry of a string's panels: how many of which in series.
type PanelCount struct {
	Panel string
	Count int
	At    source.Range
}

// Block is one block of a design.
type Block struct {
	Kind   *Kind
	Name   string // its label, "" where the kind has none
	Parent *Block // nil at top level
	Blocks []*Block
	Values map[string]*Value
	// Part is the part that stands for attributes which the block leaves out
	// (cable = "welding-35", fuse = "t-200"); nil where none is named.
	Part *Block
	// Declared holds the answers to codebooks' own questions, by codebook
	// and attribute.
	Declared map[string]map[string]*Value
	Header   source.Range // keyword and label, one line
	Whole    source.Range
}

// Value gives an attribute as written in the block or in the part that it
// names. ok is false where neither has it. A Bad value is returned with ok true.
func (b *Block) Value(name string) (v *Value, ok bool) {
	if v, ok = b.Values[name]; ok {
		return v, true
	}
	if b.Part != nil {
		return b.Part.Value(name)
	}
	return nil, false
}

// Child gives the first block of a kind inside b, or nil.
func (b *Block) Child(kind string) *Block {
	for _, c := range b.Blocks {
		if c.Kind.Name == kind {
			return c
		}
	}
	return nil
}

// Waiver is a waiver block.
type Waiver struct {
	Rule       string
	On         []string
	OnAt       []source.Range
	Reason     string
	ApprovedBy string
	Expires    string // yyyy-mm-dd, in force through that day
	Block      *Block
}

// Weather is a weather file as it is. It is shared between designs and must not be
// changed.
type Weather struct {
	File string // as shown to people
	Text []byte
}

// Design is one design with the parts that it can name.
type Design struct {
	File     string // path as shown to people
	Name     string // the design block's label
	Revision string
	Digest   string   // "sha256:…" over all files that were read, in a fixed order
	Head     *Block   // the design block; nil where it is missing
	Blocks   []*Block // top-level system blocks as they stand in the file
	// Parts are the parts that the design uses or itself declares, by kind
	// and name.
	Parts map[string]map[string]*Block
	// Shelf holds every part of the files that were read, used or not.
	Shelf     map[string]map[string]*Block
	Codebooks []string // the design's own list
	Weather   *Weather // the file that the site names; nil where it names none
	Waivers   []*Waiver
	Files     []*source.File
	Problems  source.Problems
}
