package survey

import (
	"io/fs"
	"path"
	"slices"
	"strings"

	"stringline/schema/source"
)

// Texts is what [Files] found.
type Texts struct {
	Names []string // absolute, sorted, each once
	Links []string // symbolic links under a folder, which are passed over
}

// IsText tells whether a file is one of the language, by its name: a design, a
// parts file, a workshop's or a codebook's file.
func IsText(name string) bool {
	base := path.Base(name)
	return strings.HasSuffix(base, DesignSuffix) || strings.HasSuffix(base, PartsSuffix) || base == WorkshopFile || base == CodebookFile
}

// Files lists every file of the language under the paths, codebooks with their
// examples included. A path is a file or a folder; folders whose name begins with a
// dot are passed over, and so are symbolic links, for what they lead to is either
// found by its own name or not of this folder. Paths are absolute or relative to
// workingDir. A path that holds nothing is a problem, never silence.
func Files(disk Disk, workingDir string, paths []string) (Texts, source.Problems) {
	s := newSearch(disk, workingDir)
	var found Texts
	for _, given := range paths {
		if given == "" { // joined it would stand for the working folder
			s.problem(given, "path", "looking for files: the path is empty")
			continue
		}
		name := given
		if !path.IsAbs(name) {
			name = path.Join(workingDir, name)
		}
		name = path.Clean(name)
		info, err := disk.Stat(name)
		switch {
		case err != nil:
			s.problem(given, "path", "looking for files: "+cause(err))
			s.meant(given, name, err)
		case info.IsDir():
			names, problems := len(found.Names), len(s.problems)
			s.texts(name, &found)
			if len(found.Names) == names && len(s.problems) == problems {
				s.problem(given, "no_file", "no file of the language here: nothing under it is named *"+DesignSuffix+", *"+PartsSuffix+", "+WorkshopFile+" or "+CodebookFile)
			}
		case !info.Mode().IsRegular():
			s.problem(given, "path", "looking for files: not a regular file")
		case !IsText(name):
			s.problem(given, "path", "not a file of the language: its name would end in "+DesignSuffix+" or "+PartsSuffix+", or be "+WorkshopFile+" or "+CodebookFile)
		default:
			found.Names = append(found.Names, name)
		}
	}
	slices.Sort(found.Names)
	found.Names = slices.Compact(found.Names)
	slices.Sort(found.Links)
	found.Links = slices.Compact(found.Links)
	return found, s.problems
}

func (s *search) texts(dir string, found *Texts) {
	tree, err := s.disk.Root(dir)
	if err != nil {
		s.problem(s.show(dir), "path", "opening the folder: "+cause(err))
		return
	}
	_ = fs.WalkDir(tree, ".", func(name string, entry fs.DirEntry, err error) error {
		full := path.Join(dir, name)
		switch {
		case err != nil:
			s.problem(s.show(full), "path", "looking for files: "+cause(err))
			if entry != nil && entry.IsDir() {
				return fs.SkipDir
			}
		case entry.IsDir():
			if name != "." && strings.HasPrefix(entry.Name(), ".") {
				return fs.SkipDir
			}
		case !IsText(name):
		case entry.Type() == fs.ModeSymlink:
			found.Links = append(found.Links, full)
		case entry.Type() != 0:
			s.problem(s.show(full), "path", "not a regular file, so not read")
		default:
			found.Names = append(found.Names, full)
		}
		return nil
	})
}
