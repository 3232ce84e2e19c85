package lint

import (
	"context"
	"fmt"
	"path"
	"slices"
	"strings"

	"stringline/lint/judge"
	"stringline/lint/survey"
	"stringline/schema/design"
	"stringline/schema/source"
)

// Shelf is what codebooks are in force at one place, and which are at hand.
type Shelf struct {
	Workshop string // path of its workshop.hcl, "" where there is none
	Design   string // the design that was named, or ""
	Books    []BookInUse
	AtHand   []string // codebooks that come with the program and are not in force
	Problems source.Problems
}

// Exit is 2 where something could not be read or no codebook is in force.
func (s *Shelf) Exit() int {
	if len(s.Problems) > 0 || len(s.Books) == 0 {
		return 2
	}
	return 0
}

// ShelfOptions says where, and which outside codebooks may be loaded.
type ShelfOptions struct {
	BookOptions
	Path      string // a design, a folder or a workshop file
	Trust     []string
	Isolation Isolation // as in [Options]
}

// ListBooks tells which codebooks are in force for a design, or for any design in
// a folder. The error is about the path.
func ListBooks(ctx context.Context, o ShelfOptions) (*Shelf, error) {
	r, d, err := openShelf(ctx, o)
	if err != nil {
		return nil, err
	}
	defer r.close()
	books, problems := r.inForce(d)
	s := &Shelf{Problems: slices.Concat(r.problems, d.Problems, problems)}
	if r.workshop != nil {
		s.Workshop = r.workshop.File
	}
	if strings.HasSuffix(o.Path, survey.DesignSuffix) {
		s.Design = o.Path
	}
	for _, b := range books {
		s.Books = append(s.Books, bookInUse(b, r))
	}
	for _, name := range r.embedded {
		if !slices.ContainsFunc(books, func(b *judge.Book) bool { return b.Name() == name }) {
			s.AtHand = append(s.AtHand, name)
		}
	}
	s.Problems.Sort()
	return s, nil
}

// openShelf opens the workshop of a path, and reads the design where it is one.
func openShelf(ctx context.Context, o ShelfOptions) (*room, *design.Design, error) {
	if o.Path == "" {
		return nil, nil, fmt.Errorf("looking for a workshop: the path is empty")
	}
	full := o.Path
	if !path.IsAbs(full) {
		full = path.Join(o.WorkingDir, full)
	}
	full = path.Clean(full)
	info, err := o.Disk.Stat(full)
	if err != nil {
		return nil, nil, fmt.Errorf("looking for a workshop: %s: there is no such file or folder", o.Path)
	}
	dir, file := full, ""
	if !info.IsDir() {
		dir, file = path.Dir(full), path.Base(full)
	}
	if file != "" && file != survey.WorkshopFile && !strings.HasSuffix(file, survey.DesignSuffix) {
		return nil, nil, fmt.Errorf("looking for a workshop: %s is no folder, no design and no %s", o.Path, survey.WorkshopFile)
	}
	place, err := survey.Home(o.Disk, o.WorkingDir, dir)
	if err != nil {
		return nil, nil, fmt.Errorf("looking for a workshop: %w", err)
	}
	shelf := newLibrary(ctx, Options{Disk: o.Disk, Embedded: o.Embedded, WorkingDir: o.WorkingDir, Trust: o.Trust, Isolation: o.Isolation, Version: o.Version})
	r := openWorkshop(shelf, place)
	d := &design.Design{}
	if strings.HasSuffix(file, survey.DesignSuffix) {
		name := survey.Relative(place.Dir, full)
		d = design.Load(design.Options{Files: place.Tree, Path: name, Show: place.Show, Parts: r.parts(), Declares: r.declares, Cache: &r.cache})
	}
	return r, d, nil
}
