package facts

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"hash"
	"io"
	"maps"
	"slices"
)

// Structure gives a fingerprint of what a rule can see without values: which
// subjects there are, in order, how they are linked, and which codebooks'
// questions they answer. Two designs with the same fingerprint give a rule the
// same input.
func (s *System) Structure() string {
	h := sha256.New()
	for _, c := range Collections() {
		put(h, "collection", c.Name)
		for _, subject := range s.subjects[c.Name] {
			put(h, "subject", subject.id)
			for _, l := range c.Links {
				put(h, "link", l.Name)
				for _, to := range subject.links[l.Name] {
					put(h, "to", to.id)
				}
			}
			if subject.block == nil {
				continue
			}
			for _, book := range slices.Sorted(maps.Keys(subject.block.Declared)) {
				put(h, "book", book)
				for _, name := range slices.Sorted(maps.Keys(subject.block.Declared[book])) {
					put(h, "answer", name)
				}
			}
		}
	}
	return hex.EncodeToString(h.Sum(nil))
}

// put writes one item with its length, so that no two lists of items run into
// the same bytes.
func put(h hash.Hash, kind, text string) {
	_, _ = io.WriteString(h, fmt.Sprintf("%s %d %s\n", kind, len(text), text))
}
