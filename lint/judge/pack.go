package judge

import (
	"encoding/binary"
	"encoding/json"
	"errors"
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"github.com/open-policy-agent/opa/v1/ast"

	"stringline/schema/source"
)

// What passes between this process and a worker is packed here: counts, texts,
// places and the engine's terms, one behind the other. Whoever unpacks trusts
// nothing: every length is held against what is left, every tag against those
// that are known.

// packer writes a message.
type packer struct {
	bytes []byte
	// numbers holds what was packed already, texts by themselves and lists and
	// objects by their address, so that the tree of a design, in which subjects
	// stand nested many times, is packed once. nil where nothing is shared.
	numbers map[any]int
}

func (p *packer) count(n int) { p.bytes = binary.AppendUvarint(p.bytes, uint64(n)) }

func (p *packer) text(s string) {
	p.count(len(s))
	p.bytes = append(p.bytes, s...)
}

func (p *packer) texts(list []string) {
	p.count(len(list))
	for _, s := range list {
		p.text(s)
	}
}

func (p *packer) yes(b bool) {
	n := 0
	if b {
		n = 1
	}
	p.count(n)
}

func (p *packer) position(at source.Position) {
	p.count(at.Line)
	p.count(at.Column)
	p.count(at.Byte)
}

func (p *packer) place(at source.Range) {
	p.text(at.File)
	p.position(at.Start)
	p.position(at.End)
}

// The tags of terms.
const (
	tagNull = iota
	tagFalse
	tagTrue
	tagNumber
	tagText
	tagArray
	tagSet
	tagObject
	tagAgain // one that was packed before, by its number
	tagOther // an object that no formula and no record can be: see crossing
)

// shared packs the tree of a structure. Its terms are ours.
func (p *packer) shared(t *ast.Term) {
	key, kept := any(t), false
	switch v := t.Value.(type) {
	case ast.String:
		key, kept = string(v), true
	case *ast.Array, ast.Object:
		kept = true
	}
	if n, ok := p.numbers[key]; ok {
		p.count(tagAgain)
		p.count(n)
		return
	}
	switch v := t.Value.(type) {
	case ast.String:
		p.count(tagText)
		p.text(string(v))
	case ast.Number:
		p.count(tagNumber)
		p.text(string(v))
	case *ast.Array:
		p.count(tagArray)
		p.count(v.Len())
		v.Foreach(p.shared)
	case ast.Object:
		p.count(tagObject)
		p.count(v.Len())
		v.Foreach(func(k, x *ast.Term) {
			p.shared(k)
			p.shared(x)
		})
	}
	if kept {
		p.numbers[key] = len(p.numbers)
	}
}

// Bounds on what a rule may hand over, one record or one formula at a time.
const (
	mostNodes       = 4 * largestFormula
	deepestTerm     = 4 * deepestFormula
	longestCrossing = 4096
	mostKeys        = 32
	longestDigits   = longestConstant + 1 // one more than a formula takes, so that it still is refused
)

// crossing packs one term that a rule made. false: it is larger than any record
// or formula may be, and what was written of it must be dropped. What is too
// long in it is cut to a length that is refused just the same.
func (p *packer) crossing(t *ast.Term) bool {
	left := mostNodes
	return p.cross(t, deepestTerm, &left)
}

func (p *packer) cross(t *ast.Term, depth int, left *int) bool {
	if *left--; depth == 0 || *left < 0 {
		return false
	}
	switch v := t.Value.(type) {
	case ast.Null:
		p.count(tagNull)
	case ast.Boolean:
		p.count(tagFalse)
		if v {
			p.bytes[len(p.bytes)-1] = tagTrue
		}
	case ast.Number:
		p.count(tagNumber)
		s := string(v)
		if len(s) > longestDigits {
			s = fmt.Sprintf("%0*d", longestDigits, 0)
			s = "1" + s[1:]
		}
		p.text(s)
	case ast.String:
		p.count(tagText)
		p.text(clip(string(v), longestCrossing))
	case *ast.Array:
		if v.Len() > *left {
			return false
		}
		p.count(tagArray)
		p.count(v.Len())
		return !v.Until(func(x *ast.Term) bool { return !p.cross(x, depth-1, left) })
	case ast.Set: // nothing that is used is one: that it is a set is all that matters
		p.count(tagSet)
	case ast.Object:
		if v.Len() > mostKeys || v.Until(func(k, _ *ast.Term) bool { _, ok := k.Value.(ast.String); return !ok }) {
			p.count(tagOther)
			return true
		}
		p.count(tagObject)
		p.count(v.Len())
		return !v.Until(func(k, x *ast.Term) bool {
			return !p.cross(k, depth-1, left) || !p.cross(x, depth-1, left)
		})
	default:
		return false
	}
	return true
}

// clip cuts a text to a length in bytes, and leaves out what is no UTF-8.
func clip(s string, longest int) string {
	return strings.ToValidUTF8(s[:min(len(s), longest)], "")
}

// errPacked is what any message that cannot be read gives.
var errPacked = errors.New("the message cannot be read")

// unpacker reads a message. After the first thing that does not fit it gives
// zero values, and wrong is set.
type unpacker struct {
	rest  []byte
	again []*ast.Term // by their numbers, where sharing is allowed
	share bool
	terms int // that were read so far where sharing is not allowed
	wrong error
}

// mostTerms bounds the terms of one message of a worker, which take some sixty
// bytes each here: one of terms of a byte, which no formula is made of, would take
// more than a gigabyte.
const mostTerms = LongestMessage / 4

func (u *unpacker) refuse() {
	u.wrong, u.rest = errPacked, nil
}

// done tells whether everything was read and nothing is left.
func (u *unpacker) done() error {
	if u.wrong == nil && len(u.rest) > 0 {
		u.refuse()
	}
	return u.wrong
}

// count reads a number of at most most.
func (u *unpacker) count(most int) int {
	n, length := binary.Uvarint(u.rest)
	if length <= 0 || n > uint64(most) {
		u.refuse()
		return 0
	}
	u.rest = u.rest[length:]
	return int(n)
}

// length reads how many things follow, each at least one byte long.
func (u *unpacker) length(most int) int { return u.count(min(most, len(u.rest))) }

func (u *unpacker) raw(longest int) []byte {
	n := u.length(longest)
	b := u.rest[:min(n, len(u.rest))]
	u.rest = u.rest[len(b):]
	if len(b) != n {
		u.refuse()
	}
	return b
}

// text reads valid UTF-8 of at most longest bytes.
func (u *unpacker) text(longest int) string {
	b := u.raw(longest)
	if !utf8.Valid(b) {
		u.refuse()
		return ""
	}
	return string(b)
}

func (u *unpacker) texts(most, longest int) []string {
	n := u.length(most)
	var list []string
	for range n {
		list = append(list, u.text(longest))
	}
	return list
}

func (u *unpacker) yes() bool { return u.count(1) == 1 }

// Largest line, column or offset: of a file that a codebook may hold.
const farthest = largestFile + 1

func (u *unpacker) position() source.Position {
	return source.Position{Line: u.count(farthest), Column: u.count(farthest), Byte: u.count(farthest)}
}

func (u *unpacker) place() source.Range {
	return source.Range{File: u.text(longestCrossing), Start: u.position(), End: u.position()}
}

// term reads one term. Where sharing is not allowed a message of a given length
// cannot unfold into more than that length.
func (u *unpacker) term(depth int) *ast.Term {
	if !u.share {
		u.terms++
	}
	if depth == 0 || u.terms > mostTerms {
		u.refuse()
	}
	if u.wrong != nil {
		return ast.NullTerm()
	}
	var t *ast.Term
	switch tag := u.count(tagOther); tag {
	case tagNull:
		return ast.NullTerm()
	case tagFalse, tagTrue:
		return ast.BooleanTerm(tag == tagTrue)
	case tagNumber:
		s := u.text(longestCrossing)
		if !json.Valid([]byte(s)) || s == "" || s[0] != '-' && (s[0] < '0' || s[0] > '9') {
			u.refuse()
			return ast.NullTerm()
		}
		return ast.NumberTerm(json.Number(s))
	case tagText:
		t = ast.StringTerm(u.text(longestCrossing))
	case tagSet:
		return ast.SetTerm()
	case tagArray:
		n := u.length(len(u.rest))
		items := make([]*ast.Term, 0, min(n, 64))
		for i := 0; i < n && u.wrong == nil; i++ {
			items = append(items, u.term(depth-1))
		}
		t = ast.ArrayTerm(items...)
	case tagObject:
		t = u.object(depth)
	case tagAgain:
		n := u.count(len(u.again))
		if !u.share || n >= len(u.again) {
			u.refuse()
			return ast.NullTerm()
		}
		return u.again[n]
	case tagOther:
		return ast.ObjectTerm([2]*ast.Term{ast.StringTerm("?"), ast.NullTerm()})
	}
	if u.share && t != nil {
		u.again = append(u.again, t)
	}
	if t == nil {
		t = ast.NullTerm()
	}
	return t
}

func (u *unpacker) object(depth int) *ast.Term {
	most := mostKeys
	if u.share {
		most = len(u.rest)
	}
	n := u.length(most)
	items := make([][2]*ast.Term, 0, min(n, 64))
	var keys []string
	for i := 0; i < n && u.wrong == nil; i++ {
		k := u.term(depth - 1)
		s, ok := k.Value.(ast.String)
		if !ok || !u.share && slices.Contains(keys, string(s)) {
			u.refuse()
			break
		}
		keys = append(keys, string(s))
		items = append(items, [2]*ast.Term{k, u.term(depth - 1)})
	}
	return ast.ObjectTerm(items...)
}
