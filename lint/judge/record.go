package judge

import (
	"fmt"
	"slices"
	"strings"
	"unicode"

	"github.com/open-policy-agent/opa/v1/ast"

	"stringline/schema/source"
)

// record is one decoded record of a rule. It holds no value of a design and is
// shared by all designs of one structure.
type record struct {
	about, which string
	relation     string // at_most, at_least, equals, between, all_equal, is_true; "" of does_not_apply
	is           *formula
	limits       []*formula
	because      string // of is_true and, where given, all_equal: why it breaks; of does_not_apply the reason
	when         *formula
	otherwise    string
	say, remedy  string
	also         []*formula
	fault        *fault // the record cannot be used; about is set where it could be read
}

// relations are those that go with "is".
var relations = []string{"at_most", "at_least", "equals", "between"}

// heads are the keys of which a record has one: they say what it does.
var heads = []string{"is", "all_equal", "is_true", "does_not_apply"}

var recordKeys = []string{
	"about", "which", "is", "at_most", "at_least", "equals", "between", "all_equal", "is_true", "because",
	"does_not_apply", "when", "otherwise", "say", "remedy", "also",
}

// Bounds on what a record carries.
const (
	longestWords = 500
	mostFormulas = 50
)

// record decodes a term strictly: unknown keys, wrong types, two relations and a
// missing `because` are faults of that record. It never panics, whatever the term.
func (r *reader) record(t *ast.Term) record {
	at := rangeOf(t.Location)
	if !at.Valid() {
		at = r.rule
	}
	o, ok := t.Value.(ast.Object)
	if !ok {
		return record{fault: faultAt(at, "a record is an object, not %s", termKind(t))}
	}
	d := &decoding{reader: r, at: at, keys: map[string]*ast.Term{}}
	o.Foreach(func(k, v *ast.Term) {
		s, ok := k.Value.(ast.String)
		if !ok || !slices.Contains(recordKeys, string(s)) {
			hint := ""
			if near := source.Nearest(string(s), recordKeys); near != "" {
				hint = " (did you mean " + quote(near) + "?)"
			}
			d.bad("a record has no key %s%s", keyText(k), hint)
			return
		}
		d.keys[string(s)] = v
	})
	rec := record{about: d.text("about"), which: d.text("which")}
	if rec.about == "" {
		d.bad("a record names the subject that it is about")
	}
	d.relation(&rec)
	d.condition(&rec)
	rec.say, rec.remedy = d.template("say"), d.template("remedy")
	if d.keys["also"] != nil {
		rec.also = d.list("also", 1)
	}
	rec.fault = d.fault
	return rec
}

func keyText(k *ast.Term) string {
	if s, ok := k.Value.(ast.String); ok {
		return quote(string(s))
	}
	return termKind(k)
}

type decoding struct {
	*reader
	at    source.Range
	keys  map[string]*ast.Term
	fault *fault // the first one
}

func (d *decoding) bad(format string, args ...any) {
	d.fault = firstFault(d.fault, faultAt(d.at, format, args...))
}

func (d *decoding) text(key string) string {
	t := d.keys[key]
	if t == nil {
		return ""
	}
	s, ok := t.Value.(ast.String)
	switch {
	case !ok:
		d.bad("%s is a text, not %s", key, termKind(t))
	case s == "":
		d.bad("%s is empty", key)
	case len(s) > longestWords:
		d.bad("%s is longer than %d bytes", key, longestWords)
	case unshowable(string(s), "") != "":
		d.bad("%s holds %s", key, unshowable(string(s), ""))
	default:
		return string(s)
	}
	return ""
}

// unshowable names what a text of a codebook may not hold: it would write on a
// terminal, break a line, run backwards or take no room. allowed may stand there
// besides.
func unshowable(s, allowed string) string {
	for _, c := range s {
		switch {
		case unicode.IsPrint(c), c == '\u00a0', strings.ContainsRune(allowed, c):
		case unicode.IsControl(c):
			return "a control character"
		default:
			return fmt.Sprintf("a character that cannot be shown (U+%04X)", c)
		}
	}
	return ""
}

// template is a text in which {is}, {limit} and {about} are filled in.
func (d *decoding) template(key string) string {
	s := d.text(key)
	if unfilled(s) {
		d.bad("%s: only {is}, {limit} and {about} are filled in", key)
	}
	return s
}

func (d *decoding) formula(key string) *formula {
	f, wrong := d.reader.formula(d.keys[key], d.at, 0)
	if wrong != nil {
		d.fault = firstFault(d.fault, wrong)
		return nil
	}
	if f.kind == list {
		d.bad("%s: %s is a list: only fact.one_of takes it", key, f.id)
		return nil
	}
	return f
}

func (d *decoding) list(key string, least int) []*formula {
	a, ok := d.keys[key].Value.(*ast.Array)
	if !ok {
		d.bad("%s is a list of formulas, not %s", key, termKind(d.keys[key]))
		return nil
	}
	if a.Len() < least || a.Len() > mostFormulas {
		if a.Len() == 0 {
			d.bad("%s: the list is empty", key)
		} else {
			d.bad("%s holds %d to %d formulas, not %d", key, least, mostFormulas, a.Len())
		}
		return nil
	}
	var of []*formula
	for i := range a.Len() {
		f, wrong := d.reader.formula(a.Elem(i), d.at, 0)
		if wrong != nil {
			d.fault = firstFault(d.fault, wrong)
			return nil
		}
		of = append(of, f)
	}
	return of
}

// relation reads what is compared with what.
func (d *decoding) relation(rec *record) {
	if wrong := wrongKeys(d.keys); len(wrong) > 0 {
		d.bad("%s", wrong[0])
		return
	}
	head, given := "", ""
	for _, k := range heads {
		if d.keys[k] != nil {
			head = k
		}
	}
	for _, k := range relations {
		if d.keys[k] != nil {
			given = k
		}
	}
	switch head {
	case "does_not_apply":
		rec.because = d.text("does_not_apply")
	case "is_true":
		rec.relation, rec.because = "is_true", d.text("because")
		if rec.is = d.formula("is_true"); rec.is != nil && rec.is.kind != yesNo {
			d.bad("is_true takes a yes/no, not %s", rec.is.describe())
		}
	case "all_equal":
		rec.relation, rec.because = "all_equal", d.text("because")
		if of := d.list("all_equal", 1); of != nil {
			rec.is, rec.limits = of[0], of[1:]
		}
	case "is":
		rec.relation = given
		rec.is = d.formula("is")
		if given == "between" {
			rec.limits = d.list("between", 2)
			if len(rec.limits) > 2 {
				d.bad("between takes two limits, not %d", len(rec.limits))
			}
		} else if f := d.formula(given); f != nil {
			rec.limits = []*formula{f}
		}
	}
	d.comparable(rec)
}

// comparable holds both sides of a comparison to one kind and dimension.
func (d *decoding) comparable(rec *record) {
	if rec.is == nil || d.fault != nil {
		return
	}
	for _, l := range rec.limits {
		if why := unlikeSides(rec.relation, rec.is, l); why != "" {
			d.bad("%s", why)
		}
	}
}

// unlikeSides says why two formulas cannot stand in a comparison, or "".
func unlikeSides(relation string, is, l *formula) string {
	equality := relation == "equals" || relation == "all_equal"
	switch {
	case l.kind == list || is.kind == list:
		return relation + ": a list cannot be compared"
	case !equality && (is.kind != number || l.kind != number):
		return fmt.Sprintf("%s compares numbers, not %s with %s", relation, is.describe(), l.describe())
	case is.kind != l.kind, l.kind == number && is.unit.Dimension != l.unit.Dimension:
		return fmt.Sprintf("%s: %s cannot be compared with %s", relation, is.describe(), l.describe())
	}
	return ""
}

func (d *decoding) condition(rec *record) {
	rec.otherwise = d.text("otherwise")
	if d.keys["when"] == nil {
		return
	}
	if rec.when = d.formula("when"); rec.when != nil && rec.when.kind != yesNo {
		d.bad("when takes a yes/no, not %s", rec.when.describe())
	}
}
