package facts

import (
	"bytes"
	"encoding/json"
	"io"
	"maps"
	"slices"
	"strings"
)

// documentFormat is the number of the facts document's format. Within a format
// keys are added, never removed or retyped.
const documentFormat = 1

// WriteDocument writes the facts document (`facts --as json`): the head, then the
// tree of all subjects with all their facts, links as ids. It derives every fact.
// The same design gives the same bytes. Errors are those of w.
func (s *System) WriteDocument(w io.Writer) error {
	_, err := w.Write(s.Document())
	return err
}

// Document gives the bytes that WriteDocument writes.
func (s *System) Document() []byte {
	d := object{{"format", documentFormat}, {"file", s.design.File}, {"design", s.design.Name}}
	for _, c := range Collections() {
		all := make([]any, 0, len(s.subjects[c.Name]))
		for _, subject := range s.subjects[c.Name] {
			all = append(all, subject.document())
		}
		if c.Single {
			d = append(d, member{c.Name, all[0]})
		} else {
			d = append(d, member{c.Name, all})
		}
	}
	return encode(d)
}

// document gives a subject as the document shows it.
func (s *Subject) document() object {
	o := object{{"id", s.id}}
	for _, l := range s.collection.Links {
		ids := make([]any, 0, len(s.links[l.Name]))
		for _, to := range s.links[l.Name] {
			ids = append(ids, to.id)
		}
		if l.Many {
			o = append(o, member{l.Name, line{ids}})
		} else {
			o = append(o, member{l.Name, ids[0]})
		}
	}
	for _, e := range s.collection.Entries {
		leaf := line{s.work(e.Name).Fact.leaf(e.Over)}
		if e.group == "" {
			o = append(o, member{e.Name, leaf})
			continue
		}
		if last := &o[len(o)-1]; last.key == e.group {
			last.value = append(last.value.(object), member{e.shown(), leaf})
		} else {
			o = append(o, member{e.group, object{{e.shown(), leaf}}})
		}
	}
	if s.collection.Declares {
		o = append(o, member{"declared", s.answersDocument()})
	}
	return o
}

// answersDocument gives the answers to codebooks' questions, by book and name.
func (s *Subject) answersDocument() object {
	o := object{}
	if s.block == nil {
		return o
	}
	for _, book := range slices.Sorted(maps.Keys(s.block.Declared)) {
		answers := object{}
		for _, name := range slices.Sorted(maps.Keys(s.block.Declared[book])) {
			answers = append(answers, member{name, line{s.answer(book, name).Fact.leaf("")}})
		}
		o = append(o, member{book, answers})
	}
	return o
}

// shown is the last part of an entry's name, within its group.
func (e *Entry) shown() string {
	_, name := splitName(e.Name)
	return name
}

// leaf gives a fact as the document shows it; over is the unit of a series' axis.
func (f Fact) leaf(over string) object {
	o := object{{"id", f.ID}, {"value", f.Value()}, {"unit", f.Unit}}
	if f.Kind == Series && f.Known {
		o = append(o, member{"over", object{{"unit", over}, {"values", inUnits(f.Over, over)}}})
	}
	if !f.Known {
		if f.AtLeast != nil {
			o = append(o, member{"at_least", InUnit(*f.AtLeast, f.Unit)})
		}
		o = append(o, member{"missing", texts(f.Missing)})
		if f.Because != "" {
			o = append(o, member{"because", f.Because})
		}
	}
	if len(f.Assumed) > 0 {
		o = append(o, member{"assumed", texts(f.Assumed)})
	}
	return o
}

func texts(ids []string) []any {
	all := make([]any, len(ids))
	for i, id := range ids {
		all[i] = id
	}
	return all
}

// object is a JSON object whose keys keep their order; line is a value that is
// written on one line.
type (
	object []member
	member struct {
		key   string
		value any
	}
	line struct{ value any }
)

// encode writes JSON with two spaces of indentation and a final line feed.
func encode(v any) []byte {
	var b bytes.Buffer
	write(&b, v, "\n")
	b.WriteByte('\n')
	return b.Bytes()
}

// write writes a value; next is what separates members: a line feed and the
// indentation, or a space within a line.
func write(b *bytes.Buffer, v any, next string) {
	switch v := v.(type) {
	case line:
		write(b, v.value, " ")
	case object:
		writeAll(b, '{', '}', len(v), next, func(i int, next string) {
			writeScalar(b, v[i].key)
			b.WriteString(": ")
			write(b, v[i].value, next)
		})
	case []any:
		writeAll(b, '[', ']', len(v), next, func(i int, next string) { write(b, v[i], next) })
	case []float64:
		writeAll(b, '[', ']', len(v), " ", func(i int, _ string) { writeScalar(b, v[i]) })
	default:
		writeScalar(b, v)
	}
}

func writeAll(b *bytes.Buffer, open, shut byte, n int, next string, one func(i int, next string)) {
	inner := next
	if strings.HasPrefix(next, "\n") {
		inner = next + "  "
	}
	b.WriteByte(open)
	for i := range n {
		if i > 0 {
			b.WriteByte(',')
		}
		if inner != " " || i > 0 {
			b.WriteString(inner)
		}
		one(i, inner)
	}
	if n > 0 && inner != " " {
		b.WriteString(next)
	}
	b.WriteByte(shut)
}

// writeScalar writes what encoding/json writes, without escapes for HTML. Numbers
// are finite: nothing else becomes a known fact.
func writeScalar(b *bytes.Buffer, v any) {
	e := json.NewEncoder(b)
	e.SetEscapeHTML(false)
	if err := e.Encode(v); err != nil {
		b.WriteString("null\n")
	}
	b.Truncate(b.Len() - 1) // Encode ends with a line feed
}
