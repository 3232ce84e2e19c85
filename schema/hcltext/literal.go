package hcltext

import (
	"fmt"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/hashicorp/hcl/v2/hclsyntax"
)

// value converts an expression. What is no literal becomes Bad, with a problem
// unless the parser has complained there already.
func (c *converter) value(e hclsyntax.Expression) Literal {
	if e == nil {
		return Literal{}
	}
	r := e.Range()
	l := Literal{At: c.at(r)}
	switch e := e.(type) {
	case *hclsyntax.LiteralValueExpr:
		c.keyword(&l, c.text(r))
		return l
	case *hclsyntax.UnaryOpExpr:
		if raw := c.text(r); e.Op == hclsyntax.OpNegate && isNumber(e.Val) && strings.HasPrefix(raw, "-") {
			l.Kind, l.Text = Number, raw // the guard lets no space behind the sign
			return l
		}
	case *hclsyntax.TemplateExpr:
		if c.faulty(r) {
			return l
		}
		if raw := c.text(r); c.plainString(e, raw, &l) {
			return l
		}
	case *hclsyntax.TupleConsExpr:
		l.Kind = List
		for _, item := range e.Exprs {
			l.Items = append(l.Items, c.value(item))
		}
		return l
	case *hclsyntax.ObjectConsExpr:
		l.Kind = Object
		c.pairs(&l, e)
		return l
	}
	if !c.faulty(r) {
		c.notLiteral(l, c.text(r))
	}
	return l
}

func isNumber(e hclsyntax.Expression) bool {
	v, ok := e.(*hclsyntax.LiteralValueExpr)
	return ok && !v.Val.IsNull() && v.Val.Type().FriendlyName() == "number"
}

// keyword tells numbers from true, false and null by the source text: the
// number that HCL made of it is never used.
func (c *converter) keyword(l *Literal, raw string) {
	switch {
	case raw == "true" || raw == "false":
		l.Kind, l.Yes = Bool, raw == "true"
	case raw == "null":
		c.add("value", l.At, "null is no value: leave the attribute out where it is not known", "a value", "null")
	case raw != "" && raw[0] >= '0' && raw[0] <= '9':
		l.Kind, l.Text = Number, raw
	default: // an empty value after a syntax error
		if len(c.faults) == 0 {
			c.add("value", l.At, "no value stands here", "a value", Shorten(raw))
		}
	}
}

func (c *converter) plainString(e *hclsyntax.TemplateExpr, raw string, l *Literal) bool {
	if len(raw) < 2 || raw[0] != '"' || raw[len(raw)-1] != '"' {
		return false
	}
	for _, part := range e.Parts {
		if _, ok := part.(*hclsyntax.LiteralValueExpr); !ok {
			return false
		}
	}
	l.Kind, l.Text = String, c.unquote(raw, l.At.Start.Byte)
	return true
}

func (c *converter) pairs(l *Literal, e *hclsyntax.ObjectConsExpr) {
	first := make(map[string]Pair, len(e.Items))
	for _, item := range e.Items {
		r := item.KeyExpr.Range()
		p := Pair{KeyAt: c.at(r), Value: c.value(item.ValueExpr)}
		raw := c.text(r)
		if hclsyntax.ValidIdentifier(raw) {
			p.Key = raw
		} else if key := c.value(unwrapKey(item.KeyExpr)); key.Kind == String {
			p.Key = key.Text
		} else {
			if key.Kind != Bad {
				c.add("value", p.KeyAt, "a name is due before the equals sign, in quotes", "a string", key.Found())
			}
			l.Kind = Bad
			continue
		}
		if before, ok := first[p.Key]; ok {
			c.add("duplicate", p.KeyAt, fmt.Sprintf("%q stands twice in one object, first at %s", p.Key, before.KeyAt), "one entry a name", "a second one")
			l.Kind = Bad // whichever was meant is not known
			continue
		}
		first[p.Key] = p
		l.Pairs = append(l.Pairs, p)
	}
}

func unwrapKey(e hclsyntax.Expression) hclsyntax.Expression {
	if k, ok := e.(*hclsyntax.ObjectConsKeyExpr); ok {
		return k.Wrapped
	}
	return e
}

// notLiteral reports a bare word, which the guard lets through, for it may as
// well be a key. Of references, calls, operators and templates it is the second
// line: the guard refuses them before the parser sees them.
func (c *converter) notLiteral(l Literal, raw string) {
	raw = Shorten(strings.Join(strings.Fields(raw), " "))
	if hclsyntax.ValidIdentifier(raw) {
		c.add("value", l.At, fmt.Sprintf("a bare word: write %q, in quotes", raw), "a text in quotes", raw)
		return
	}
	c.add("value", l.At, "a value is a text in quotes, a number, true, false, a list or an object; nothing is computed in these files", "a literal value", raw)
}

// unquote reads a quoted string of HCL from its source text. The escapes are
// those of the syntax's specification; a character that no text may hold is a
// problem even where it hides behind an escape.
func (c *converter) unquote(raw string, start int) string {
	inner := strings.TrimSuffix(strings.TrimPrefix(raw, `"`), `"`)
	var b strings.Builder
	for i := 0; i < len(inner); {
		r, size, escaped := readCharacter(inner[i:])
		at := start + 1 + i
		if bad := forbidden(r); bad != "" && escaped {
			c.add("character", c.file.Range(at, at+size), fmt.Sprintf("a text may not hold %s (U+%04X)", bad, r), "", fmt.Sprintf("U+%04X", r))
		}
		b.WriteRune(r)
		i += size
	}
	return b.String()
}

// readCharacter gives the first character of the inside of a quoted string and
// how many bytes it takes there.
func readCharacter(s string) (r rune, size int, escaped bool) {
	switch {
	case strings.HasPrefix(s, "$${"), strings.HasPrefix(s, "%%{"):
		return rune(s[0]), 2, false
	case s[0] == '\\' && len(s) > 1:
		switch s[1] {
		case 'n':
			return '\n', 2, true
		case 'r':
			return '\r', 2, true
		case 't':
			return '\t', 2, true
		case 'u', 'U':
			digits := 4
			if s[1] == 'U' {
				digits = 8
			}
			if len(s) >= 2+digits {
				if n, err := strconv.ParseUint(s[2:2+digits], 16, 32); err == nil {
					if n > unicode.MaxRune || !utf8.ValidRune(rune(n)) {
						return utf8.RuneError, 2 + digits, true
					}
					return rune(n), 2 + digits, true
				}
			}
		}
		return rune(s[1]), 2, true
	}
	r, size = utf8.DecodeRuneInString(s)
	return r, size, false
}

// forbidden names a character that an escape may not smuggle in. Written out
// in the file the guard has refused it before.
func forbidden(r rune) string {
	switch {
	case r == '\n' || r == '\t':
		return ""
	case r == utf8.RuneError:
		return "a character that is none"
	case unicode.IsControl(r):
		return "a control character"
	case unicode.Is(unicode.Bidi_Control, r):
		return "a control for the direction of writing"
	case unicode.Is(unicode.Cf, r):
		return "an invisible character"
	}
	return ""
}
