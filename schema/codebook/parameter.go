package codebook

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"stringline/schema/design"
	"stringline/schema/hcltext"
	"stringline/schema/quantity"
	"stringline/schema/source"
)

// Parameter is a value that rules use and a workshop may set.
type Parameter struct {
	Name  string
	Kind  string // "quantity", "word", "yes_no"
	Unit  string // of a quantity, one of the documents' units; "" for a bare number
	Means string
	// Default stands where the workshop sets nothing.
	Default Value
	// Min and Max bound a quantity, in SI, both ends allowed; nil: no bound.
	Min, Max *float64
	Words    []string // what a word may be
	At       source.Range
}

// Value is one value of a parameter.
type Value struct {
	SI   float64 // quantity
	Word string
	Yes  bool
	Text string // as written, without quotes
}

// shape is what kind, unit and words say together.
type shape struct {
	kind, unit string
	words      []string
}

// shape reads them and checks that they fit each other.
func (l *loader) shape(b *hcltext.Block, values map[string]*design.Value) (s shape, ok bool) {
	if !good(values, "kind") {
		return s, false
	}
	s.kind = values["kind"].Text
	unit, unitGiven := values["unit"]
	words, wordsGiven := values["words"]
	ok = true
	refuse := func(at source.Range, name string) {
		ok = false
		l.problem("structure", at, id(b), fmt.Sprintf("%s belongs to another kind, not to %q", name, s.kind), "no "+name, name, "")
	}
	if unitGiven && s.kind != "quantity" {
		refuse(unit.NameAt, "unit")
	}
	if wordsGiven && s.kind != "word" {
		refuse(words.NameAt, "words")
	}
	missing := func(name, means string) {
		ok = false
		if !l.broken {
			l.problem("missing", b.Header, id(b), fmt.Sprintf("%s is missing: %s", name, means), name, "nothing", "")
		}
	}
	switch s.kind {
	case "quantity":
		switch {
		case !unitGiven:
			missing("unit", `the unit of a quantity, "" for a count`)
		case unit.Bad:
			ok = false
		default:
			s.unit = unit.Text
			if _, known := quantity.DocumentUnit(s.unit); !known {
				ok = false
				const expected = `one of the documents' units, such as V, A, %, mm2, or "" for a count`
				found := strconv.Quote(hcltext.Shorten(s.unit))
				near := ""
				if u, written := quantity.Lookup(s.unit); written {
					near = u.Dimension.String()
				}
				l.problem("unit", unit.At, id(b), fmt.Sprintf("unit: expected %s, found %s", expected, found), expected, found, near)
			}
		}
	case "word":
		switch {
		case !wordsGiven:
			missing("words", "the words that it may be")
		case words.Bad:
			ok = false
		case len(words.Texts) < 2:
			ok = false
			l.problem("value", words.At, id(b), "words: expected two words or more", "two words or more", strconv.Itoa(len(words.Texts)), "")
		default:
			s.words = words.Texts
		}
	}
	return s, ok
}

// split takes the attributes of the given names out of a list: their literals
// are read by kind.
func split(from []hcltext.Attribute, names ...string) (rest []hcltext.Attribute, taken map[string]hcltext.Attribute) {
	taken = map[string]hcltext.Attribute{}
	for _, a := range from {
		if slices.Contains(names, a.Name) {
			taken[a.Name] = a
			continue
		}
		rest = append(rest, a)
	}
	return rest, taken
}

// fields reads a block whose unit may be the empty text, which stands for a
// bare number.
func (l *loader) fields(k *design.Kind, b *hcltext.Block, from []hcltext.Attribute) map[string]*design.Value {
	rest, taken := split(from, "unit")
	values := design.Fields(k, b.Labels[0].Text, rest, b.Header, l.broken, l.Collector)
	if a, ok := taken["unit"]; ok {
		if a.Value.Kind == hcltext.String {
			values["unit"] = &design.Value{Text: a.Value.Text, At: a.Value.At, NameAt: a.NameAt}
			return values
		}
		values["unit"] = &design.Value{Bad: true, At: a.Value.At, NameAt: a.NameAt}
		if a.Value.Kind != hcltext.Bad {
			l.problem("value", a.Value.At, id(b), "unit: expected a unit in quotes, found "+a.Value.Found(), "a unit in quotes", a.Value.Found(), "")
		}
	}
	return values
}

func (l *loader) parameter(b *hcltext.Block) *Parameter {
	rest, taken := split(b.Body.Attributes, "default", "range")
	values := l.fields(parameterKind, b, rest)
	p := &Parameter{Name: b.Labels[0].Text, At: b.Header}
	s, ok := l.shape(b, values)
	p.Kind, p.Unit, p.Words = s.kind, s.unit, s.words
	if good(values, "means") {
		p.Means = values["means"].Text
	} else {
		ok = false
	}
	standard, given := taken["default"]
	if !given {
		if !l.broken {
			l.problem("missing", b.Header, id(b), "default is missing: the value where the workshop sets none", "default", "nothing", "")
		}
		return nil
	}
	if !ok { // what default and range must look like is not known
		return nil
	}
	if r, bounded := taken["range"]; bounded {
		ok = l.bounds(b, p, r)
	}
	if standard.Value.Kind == hcltext.Bad {
		return nil
	}
	v, problem := p.read("default", standard.Value, standard.Value.At)
	if problem != nil {
		problem.Block = id(b)
		l.Add(*problem)
		return nil
	}
	p.Default = v
	if !ok {
		return nil
	}
	return p
}

// bounds reads range = ["0 %", "10 %"].
func (l *loader) bounds(b *hcltext.Block, p *Parameter, a hcltext.Attribute) bool {
	const expected = "the least and the largest value of a quantity, in [ ]"
	list := a.Value
	if list.Kind == hcltext.Bad {
		return false
	}
	if p.Kind != "quantity" {
		l.problem("structure", a.NameAt, id(b), fmt.Sprintf("range belongs to a quantity, not to %q", p.Kind), "no range", "range", "")
		return false
	}
	if list.Kind != hcltext.List || len(list.Items) != 2 {
		found := list.Found()
		if list.Kind == hcltext.List {
			found = fmt.Sprintf("a list of %d", len(list.Items))
		}
		l.problem("value", list.At, id(b), fmt.Sprintf("range: expected %s, found %s", expected, found), expected, found, "")
		return false
	}
	ends := make([]float64, 2)
	for i, item := range list.Items {
		if item.Kind == hcltext.Bad {
			return false
		}
		v, problem := p.read("range", item, item.At)
		if problem != nil {
			problem.Block = id(b)
			l.Add(*problem)
			return false
		}
		ends[i] = v.SI
	}
	if ends[0] > ends[1] {
		l.problem("range", list.At, id(b), "range: its least value is above its largest", "the least value first", list.Items[0].Text+" before "+list.Items[1].Text, "")
		return false
	}
	p.Min, p.Max = &ends[0], &ends[1]
	return true
}

// read checks a literal against the parameter. name is what messages call it.
func (p *Parameter) read(name string, raw hcltext.Literal, at source.Range) (Value, *source.Problem) {
	refuse := func(kind, expected, found, near, hint string) (Value, *source.Problem) {
		message := fmt.Sprintf("%s: expected %s, found %s", name, expected, found)
		if hint != "" {
			message += "; " + hint
		}
		return Value{}, &source.Problem{Kind: kind, Message: message, Expected: expected, Found: found, Near: near, At: at}
	}
	switch p.Kind {
	case "yes_no":
		if raw.Kind != hcltext.Bool {
			return refuse("value", "true or false, without quotes", raw.Found(), "", "")
		}
		return Value{Yes: raw.Yes, Text: strconv.FormatBool(raw.Yes)}, nil
	case "word":
		expected := "one of " + strings.Join(quoted(p.Words), ", ")
		if raw.Kind != hcltext.String {
			return refuse("value", expected, raw.Found(), "", "")
		}
		if !slices.Contains(p.Words, raw.Text) {
			return refuse("word", expected, strconv.Quote(hcltext.Shorten(raw.Text)), source.Nearest(raw.Text, p.Words), "")
		}
		return Value{Word: raw.Text, Text: raw.Text}, nil
	}
	si, e := p.quantity(raw)
	if e != nil {
		return refuse(e.Kind, e.Expected, e.Found, "", e.Hint)
	}
	if bound, out := p.outside(si); out {
		return refuse("range", bound, strconv.Quote(hcltext.Shorten(raw.Text)), "", "")
	}
	return Value{SI: si, Text: raw.Text}, nil
}

func quoted(words []string) []string {
	list := make([]string, len(words))
	for i, w := range words {
		list[i] = strconv.Quote(w)
	}
	return list
}

func (p *Parameter) quantity(raw hcltext.Literal) (float64, *quantity.Error) {
	due := quantity.WrongUnit(quantity.Quantity{}, p.Unit).Expected
	wrong := func(kind string) *quantity.Error {
		return &quantity.Error{Kind: kind, Expected: due, Found: raw.Found()}
	}
	var si float64
	var err error
	switch {
	case p.Unit == "" && raw.Kind == hcltext.Number:
		si, err = quantity.ParseNumber(raw.Text)
	case p.Unit != "" && raw.Kind == hcltext.String:
		var q quantity.Quantity
		q, err = quantity.ParseAs(raw.Text, p.Unit)
		si = q.SI
	case p.Unit != "" && raw.Kind == hcltext.Number:
		e := wrong("unit")
		e.Hint = fmt.Sprintf("write it with its unit and in quotes, such as %q", raw.Text+" "+p.Unit)
		return 0, e
	default:
		return 0, wrong("value")
	}
	if err != nil {
		var e *quantity.Error
		if errors.As(err, &e) {
			return 0, e
		}
		return 0, wrong("number")
	}
	return si, nil
}

// slack lets a value written in another unit meet the end of a range.
const slack = 1e-9

func (p *Parameter) outside(si float64) (expected string, out bool) {
	if p.Min == nil || p.Max == nil {
		return "", false
	}
	room := slack * max(abs(*p.Min), abs(*p.Max))
	if si >= *p.Min-room && si <= *p.Max+room {
		return "", false
	}
	return quantity.Format(*p.Min, p.Unit) + " to " + quantity.Format(*p.Max, p.Unit), true
}

func abs(x float64) float64 { return max(x, -x) }

// Set checks a value that a workshop sets against the parameter's declaration:
// that there is such a parameter, its unit, its range, its words. at is the
// place of the value, and of the problem. A literal that the workshop's reader
// has already refused gives a problem too: the default must not stand for it.
func (c *Codebook) Set(name string, raw hcltext.Literal, at source.Range) (Value, *source.Problem) {
	p, ok := c.Parameter(name)
	if !ok {
		names := make([]string, len(c.Parameters))
		for i := range c.Parameters {
			names[i] = c.Parameters[i].Name
		}
		expected := "one of " + strings.Join(names, ", ")
		if len(names) == 0 {
			expected = "no parameter"
		}
		return Value{}, &source.Problem{Kind: "unknown_name", Message: fmt.Sprintf("codebook %q has no parameter %s", c.Name, strconv.Quote(hcltext.Shorten(name))),
			Block: "codebook." + c.Name, Expected: expected, Found: name, Near: source.Nearest(name, names), At: at}
	}
	v, problem := p.read(name, raw, at)
	if problem != nil {
		problem.Block = "codebook." + c.Name
	}
	return v, problem
}

// Read reads a value given as in an option, by the same rules as one that a
// workshop sets: unit, range, words. The error says what was expected and found.
func (p *Parameter) Read(text string) (Value, error) {
	raw := hcltext.Literal{Kind: hcltext.String, Text: text}
	switch {
	case p.Kind == "quantity" && p.Unit == "":
		raw.Kind = hcltext.Number
	case p.Kind == "yes_no" && (text == "true" || text == "false"):
		raw.Kind, raw.Yes = hcltext.Bool, text == "true"
	}
	v, problem := p.read(p.Name, raw, source.Range{})
	if problem != nil {
		return Value{}, source.Problems{*problem}
	}
	return v, nil
}

// Attribute is the parameter as an attribute of the language, for who reads and
// writes values of both.
func (p *Parameter) Attribute() *design.Attribute {
	a := &design.Attribute{Name: p.Name, Form: formOf(p.Kind, p.Unit), Unit: p.Unit, Words: p.Words, Means: p.Means}
	if p.Min != nil && p.Max != nil {
		unit := quantity.MustLookup("")
		if u, ok := quantity.DocumentUnit(p.Unit); ok {
			unit = u
		}
		a.Min, a.Max = quantity.Round(unit.FromSI(*p.Min)), quantity.Round(unit.FromSI(*p.Max))
	}
	return a
}

func formOf(kind, unit string) design.Form {
	switch {
	case kind == "word":
		return design.Word
	case kind == "yes_no":
		return design.YesNo
	case unit == "":
		return design.Number
	}
	return design.Quantity
}

func (l *loader) attribute(b *hcltext.Block) *Attribute {
	values := l.fields(attributeKind, b, b.Body.Attributes)
	s, ok := l.shape(b, values)
	if !ok || !good(values, "of", "means") {
		return nil
	}
	a := &Attribute{Of: values["of"].Text, At: b.Header}
	for _, c := range collections {
		if c.name == a.Of {
			a.Kinds = c.kinds
		}
	}
	a.Attribute = design.Attribute{Name: b.Labels[0].Text, Form: formOf(s.kind, s.unit), Unit: s.unit, Words: s.words, Means: values["means"].Text}
	return a
}
