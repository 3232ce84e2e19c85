// Package survey finds designs: which files under the paths that a person named
// are designs, and which workshop each belongs to.
//
// It sees the file system only through a [Disk] that it is handed. A tree that
// a Disk opens is confined: no path and no symbolic link leads out of it.
package survey

import (
	"cmp"
	"errors"
	"fmt"
	"io/fs"
	"path"
	"slices"
	"strings"

	"stringline/schema/source"
)

// Names of files that the survey tells apart.
const (
	DesignSuffix = ".design.hcl"
	PartsSuffix  = ".parts.hcl"
	WorkshopFile = "workshop.hcl"
	CodebookFile = "codebook.hcl"
)

// Disk is the file system as the command hands it down. Names are absolute,
// cleaned, with "/" between folders.
type Disk interface {
	// Root opens the folder as a tree that nothing leads out of.
	Root(dir string) (fs.FS, error)
	// Stat follows links, as a person naming a path expects.
	Stat(name string) (fs.FileInfo, error)
}

// Workshop is one tree of designs: the folder of a workshop.hcl, or, where
// there is none at or above a design, the design's own folder.
type Workshop struct {
	Dir     string                   // absolute
	Tree    fs.FS                    // confined to Dir
	File    string                   // "workshop.hcl", or "" where there is none
	Designs []string                 // relative to Dir, sorted
	Show    func(name string) string // a name in Tree as shown to people
}

// Find lists the workshops of all designs under the paths, ordered by folder.
// A path is a design, a folder (searched; folders of codebooks, folders whose
// name begins with a dot and links to folders are passed over), or another file of a
// workshop, which stands for all the workshop's designs. What lies in a codebook's
// folder is never taken for a design, named or not. Paths are absolute or
// relative to workingDir. What cannot be read is a problem, never silence.
func Find(disk Disk, workingDir string, paths []string) ([]*Workshop, source.Problems) {
	s := newSearch(disk, workingDir)
	for _, p := range paths {
		s.path(p)
	}
	found := make([]*Workshop, 0, len(s.workshops))
	for _, w := range s.workshops {
		slices.Sort(w.Designs)
		w.Designs = slices.Compact(w.Designs)
		if len(w.Designs) > 0 {
			found = append(found, w)
		}
	}
	slices.SortFunc(found, func(a, b *Workshop) int { return cmp.Compare(a.Dir, b.Dir) })
	return found, s.problems
}

// Home gives the workshop that a design lying in dir (absolute) would belong
// to, with no designs listed. It serves a design from standard input.
func Home(disk Disk, workingDir, dir string) (*Workshop, error) {
	return newSearch(disk, workingDir).workshopOf(dir)
}

type search struct {
	disk       Disk
	workingDir string
	workshops  map[string]*Workshop
	above      map[string]home
	problems   source.Problems
}

// home is where the nearest workshop file at or above a folder lies.
type home struct {
	dir string // "" for none
	err error  // something of that name is there and is no readable file
}

func newSearch(disk Disk, workingDir string) *search {
	return &search{disk: disk, workingDir: workingDir, workshops: map[string]*Workshop{}, above: map[string]home{}}
}

func (s *search) problem(name, kind, message string) {
	s.problems = append(s.problems, source.Problem{Kind: kind, Message: message, At: source.Range{File: name}})
}

func (s *search) path(given string) {
	name := given
	if !path.IsAbs(name) {
		name = path.Join(s.workingDir, name)
	}
	name = path.Clean(name)
	if given == "" { // joined it would stand for the working folder
		s.problem(given, "path", "looking for designs: the path is empty")
		return
	}
	info, err := s.disk.Stat(name)
	if err != nil {
		s.problem(given, "path", "looking for designs: "+cause(err))
		s.meant(given, name, err)
		return
	}
	switch {
	case s.inCodebook(name):
		s.problem(given, "no_design", "no design here: it lies in a codebook's folder, whose designs are examples of its rules")
	case info.IsDir():
		if before := len(s.problems); s.folder(name, given) == 0 && len(s.problems) == before {
			s.problem(given, "no_design", "no design here: nothing under it is named *"+DesignSuffix)
		}
	case !info.Mode().IsRegular():
		s.problem(given, "path", "looking for designs: not a regular file")
	case strings.HasSuffix(name, DesignSuffix):
		s.design(name)
	case strings.HasSuffix(name, PartsSuffix) || path.Base(name) == WorkshopFile:
		w, err := s.workshopOf(path.Dir(name))
		if err != nil {
			s.problem(given, "path", "looking for designs: "+cause(err))
			return
		}
		if before := len(s.problems); s.folder(w.Dir, given) == 0 && len(s.problems) == before {
			s.problem(given, "no_design", "no design belongs to this file's workshop")
		}
	default:
		s.problem(given, "path", fmt.Sprintf("not a design: a design's name ends in %s", DesignSuffix))
	}
}

// folder adds all designs under dir and says how many there were.
func (s *search) folder(dir, given string) int {
	tree, err := s.disk.Root(dir)
	if err != nil {
		s.problem(given, "path", "opening the folder: "+cause(err))
		return 0
	}
	count := 0
	_ = fs.WalkDir(tree, ".", func(name string, entry fs.DirEntry, err error) error {
		if err != nil {
			s.problem(s.show(path.Join(dir, name)), "path", "looking for designs: "+cause(err))
			if entry != nil && entry.IsDir() {
				return fs.SkipDir
			}
			return nil
		}
		if entry.IsDir() {
			if name != "." && strings.HasPrefix(entry.Name(), ".") {
				return fs.SkipDir
			}
			if _, err := fs.Stat(tree, path.Join(name, CodebookFile)); err == nil {
				return fs.SkipDir
			}
			return nil
		}
		if strings.HasSuffix(name, DesignSuffix) {
			// A link counts as a design: whoever reads it through the
			// confined tree gets an error where it leads out.
			if kind := entry.Type(); kind != 0 && kind != fs.ModeSymlink {
				s.problem(s.show(path.Join(dir, name)), "path", "not a regular file, so not read")
				return nil
			}
			count++
			s.design(path.Join(dir, name))
		}
		return nil
	})
	return count
}

// inCodebook tells whether a folder above name holds a codebook file. (For one in
// the folder name itself, see folder.)
func (s *search) inCodebook(name string) bool {
	for dir := path.Dir(name); ; dir = path.Dir(dir) {
		if _, err := s.disk.Stat(path.Join(dir, CodebookFile)); err == nil {
			return true
		}
		if dir == path.Dir(dir) {
			return false
		}
	}
}

func (s *search) design(name string) {
	w, err := s.workshopOf(path.Dir(name))
	if err != nil {
		s.problem(s.show(name), "path", "finding the workshop: "+cause(err))
		return
	}
	w.Designs = append(w.Designs, strings.TrimPrefix(strings.TrimPrefix(name, w.Dir), "/"))
}

func (s *search) workshopOf(dir string) (*Workshop, error) {
	nearest, file := s.nearest(dir), WorkshopFile
	if nearest.err != nil {
		return nil, nearest.err
	}
	home := nearest.dir
	if home == "" {
		home, file = dir, ""
	}
	if w, ok := s.workshops[home]; ok {
		return w, nil
	}
	tree, err := s.disk.Root(home)
	if err != nil {
		return nil, err
	}
	w := &Workshop{Dir: home, Tree: tree, File: file}
	w.Show = func(name string) string { return s.show(path.Join(home, name)) }
	s.workshops[home] = w
	return w, nil
}

// nearest finds the folder at or above dir that holds a workshop file. One that
// is there and cannot be read is an error: without it a design might be judged by
// fewer rules than the workshop wants.
func (s *search) nearest(dir string) home {
	if h, ok := s.above[dir]; ok {
		return h
	}
	var h home
	switch info, err := s.disk.Stat(path.Join(dir, WorkshopFile)); {
	case err == nil && info.Mode().IsRegular():
		h.dir = dir
	case err == nil:
		h.err = fmt.Errorf("%s: not a regular file", s.show(path.Join(dir, WorkshopFile)))
	case !errors.Is(err, fs.ErrNotExist):
		h.err = fmt.Errorf("%s: %s", s.show(path.Join(dir, WorkshopFile)), cause(err))
	case path.Dir(dir) != dir:
		h = s.nearest(path.Dir(dir))
	}
	s.above[dir] = h
	return h
}

// show gives an absolute name relative to the working folder, climbing with
// ".." where it must.
func (s *search) show(name string) string { return Relative(s.workingDir, name) }

// Relative gives name as seen from the folder base; both are absolute and
// cleaned, with "/" between folders.
func Relative(base, name string) string {
	if base == name {
		return "."
	}
	up := ""
	for b := base; ; b = path.Dir(b) {
		prefix := strings.TrimSuffix(b, "/") + "/"
		if rest, ok := strings.CutPrefix(name, prefix); ok {
			return up + rest
		}
		if b == name {
			return strings.TrimSuffix(up, "/")
		}
		if b == "/" || path.Dir(b) == b {
			return name
		}
		up += "../"
	}
}

// cause gives the reason of a file error without its path, which the problem
// names already.
func cause(err error) string {
	var at *fs.PathError
	if errors.As(err, &at) {
		return at.Err.Error()
	}
	return err.Error()
}
