package judge

import (
	"strings"

	"stringline/lint/facts"
)

// structureKey writes down all that a design's tree depends on: the subjects,
// what they are linked to, and the unit of a fact that may have several. Two
// designs of one key give the same records.
func structureKey(s *facts.System) string {
	var b strings.Builder
	for _, c := range facts.Collections() {
		b.WriteString(c.Name)
		b.WriteByte('\n')
		for _, subject := range s.Subjects(c.Name) {
			b.WriteString(subject.ID())
			for _, l := range c.Links {
				b.WriteByte('|')
				for _, to := range subject.Linked(l.Name) {
					b.WriteString(to.ID())
					b.WriteByte(',')
				}
			}
			for _, e := range c.Entries {
				if len(e.Units) == 0 {
					continue
				}
				if x, ok := s.Fact(subject.ID() + "." + e.Name); ok {
					b.WriteString(" " + x.Unit)
				}
			}
			b.WriteByte('\n')
		}
	}
	return b.String()
}
