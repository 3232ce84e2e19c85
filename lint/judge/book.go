package judge

import (
	"context"
	"slices"

	"stringline/schema/codebook"
)

// Book is a loaded codebook, ready to judge. It does not change after [Load] and
// may be used by many goroutines at once.
type Book struct {
	source   Source
	codebook *codebook.Codebook
	digest   string
	rules    []Rule // in order of their ids
	names    []string
	words    *vocabulary
	tables   map[string]*table
	files    map[string]bool // as they are shown
	engine   *engine         // nil where a worker runs the codebook
	remote   *remote         // nil where the engine is here
	// sharedEquivalent lists the mutants of shared/ that mean the same, by file.
	sharedEquivalent map[string][]Equivalent
	byValue          map[string]bool // rules that call fact.value, by name
}

// asker puts rules to structures: an engine here, or a worker.
type asker interface {
	// ask evaluates all rules that read no values. The error is the context's.
	ask(ctx context.Context, b *Book, s *structure) (map[string]answer, error)
	// askOne evaluates one rule; r is nil for one that reads no values, by which
	// a worker is not asked alone.
	askOne(ctx context.Context, b *Book, name string, s *structure, r *reading) (answer, error)
}

func (b *Book) asker() asker {
	if b.remote != nil {
		return b.remote
	}
	return b.engine
}

// Close ends the worker of a codebook that runs apart. The codebook judges
// nothing any more then.
func (b *Book) Close() {
	if b.remote != nil {
		b.remote.close()
	}
}

// Apart tells whether a worker runs the codebook.
func (b *Book) Apart() bool { return b.remote != nil }

// Name is the codebook's name.
func (b *Book) Name() string { return b.codebook.Name }

// Codebook is what codebook.hcl says.
func (b *Book) Codebook() *codebook.Codebook { return b.codebook }

// Rules lists the rules in order of their ids.
func (b *Book) Rules() []Rule { return slices.Clone(b.rules) }

// Digest is "sha256:…" over all files of the codebook's folder, names and
// contents, in order of their paths; for one from an archive, over the archive.
func (b *Book) Digest() string { return b.digest }

// Embedded tells whether the codebook comes with the program.
func (b *Book) Embedded() bool { return b.source.Embedded }
