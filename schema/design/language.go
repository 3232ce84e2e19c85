package design

import "slices"

// Kinds gives every kind of block of the language in the order of the
// reference page: the system's blocks from the site to the waiver, then the
// parts. The table is shared and must not be changed.
func Kinds() []*Kind { return kinds }

// KindOf gives a kind of block by its keyword, nil where there is none.
func KindOf(name string) *Kind { return kindByName[name] }

var (
	kinds      = slices.Concat(systemKinds(), circuitKinds(), recordKinds(), partKinds())
	kindByName = indexKinds(kinds)
)

func indexKinds(all []*Kind) map[string]*Kind {
	index := make(map[string]*Kind, len(all))
	for _, k := range all {
		index[k.Name] = k
	}
	return index
}

// Default gives the documented default of an attribute that the block does
// not give, in the same text as a person would write. ok is false where the
// language documents none, and where an attribute that the default hangs on is
// itself unknown.
//
// The strand of a cable run depends on how its size is written: metric sizes
// are class 5 of IEC 60228, AWG and kcmil sizes are stranded (class_2).
func (b *Block) Default(name string) (text string, ok bool) {
	a, found := b.Kind.Attribute(name)
	if !found || a.Default == "" {
		return "", false
	}
	if b.Kind.Name == "cable_run" && name == "strand" {
		size, given := b.Value("size")
		if !given || size.Bad {
			return "", false
		}
		switch size.Written.Symbol {
		case "AWG", "kcmil":
			return "class_2", true
		}
		return "class_5", true
	}
	return a.Default, true
}

// A few constructors keep the table below readable: one line an attribute,
// name first, meaning last.

// within declares a quantity with both ends of its range allowed.
func within(name, unit string, least, most float64, means string) Attribute {
	return Attribute{Name: name, Form: Quantity, Unit: unit, Min: least, Max: most, Means: means}
}

// above declares a quantity whose least value is itself an error.
func above(name, unit string, least, most float64, means string) Attribute {
	a := within(name, unit, least, most, means)
	a.Exclusive = true
	return a
}

func number(name string, least, most float64, means string) Attribute {
	return Attribute{Name: name, Form: Number, Min: least, Max: most, Means: means}
}

func count(name string, least, most float64, means string) Attribute {
	return Attribute{Name: name, Form: Count, Min: least, Max: most, Means: means}
}

// word declares one of a closed list of words, or any one where none is listed.
func word(name, means string, words ...string) Attribute {
	return Attribute{Name: name, Form: Word, Words: words, Means: means}
}

func text(name, means string) Attribute { return Attribute{Name: name, Form: Text, Means: means} }

func yesNo(name, means string) Attribute { return Attribute{Name: name, Form: YesNo, Means: means} }

// refers declares the name of another block.
func refers(name, kind, means string) Attribute {
	return Attribute{Name: name, Form: Word, RefersTo: kind, Means: means}
}

func (a Attribute) required() Attribute { a.Required = true; return a }

func (a Attribute) byDefault(text string) Attribute { a.Default = text; return a }

func (a Attribute) placed() Attribute { a.Placed = true; return a }

func (a Attribute) accepts(units ...string) Attribute { a.Accepts = units; return a }

func (a Attribute) asList() Attribute { a.Form = QuantityList; return a }
