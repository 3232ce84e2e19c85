package facts

import (
	"crypto/sha256"
	"encoding/hex"
	"maps"
	"slices"
	"strconv"
)

// Structure gives a fingerprint of what a rule can see without values: which
// subjects there are, in order, how they are linked, which codebooks' questions
// they answer, and the unit of a fact that may have several. Two designs with the
// same fingerprint give a rule the same input.
func (s *System) Structure() string {
	// Each item carries its length, so that no two lists of items run into the
	// same bytes.
	text := make([]byte, 0, 8<<10)
	put := func(kind byte, item string) {
		text = append(text, kind)
		text = strconv.AppendInt(text, int64(len(item)), 10)
		text = append(append(text, ' '), item...)
	}
	for _, c := range Collections() {
		put('c', c.Name)
		for _, subject := range s.subjects[c.Name] {
			put('s', subject.id)
			for _, l := range c.Links {
				put('l', l.Name)
				for _, to := range subject.links[l.Name] {
					put('t', to.id)
				}
			}
			for _, e := range c.Entries {
				if len(e.Units) == 0 {
					continue
				}
				if f, ok := s.Fact(subject.id + "." + e.Name); ok {
					put('u', f.Unit)
				}
			}
			if subject.block == nil {
				continue
			}
			for _, book := range slices.Sorted(maps.Keys(subject.block.Declared)) {
				put('b', book)
				for _, name := range slices.Sorted(maps.Keys(subject.block.Declared[book])) {
					put('a', name)
				}
			}
		}
	}
	sum := sha256.Sum256(text)
	return hex.EncodeToString(sum[:])
}
