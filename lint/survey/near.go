package survey

import (
	"errors"
	"io/fs"
	"path"
	"strings"

	"stringline/schema/source"
)

// meant adds to the last problem, that a path leads nowhere, which one was most
// likely meant.
func (s *search) meant(given, name string, err error) {
	if errors.Is(err, fs.ErrNotExist) {
		s.problems[len(s.problems)-1].Near = s.near(given, name)
	}
}

// near gives the path that was most likely meant by one that leads nowhere, in the
// form in which it was given; "" where none is near. The first part of the path that
// is not there is held against its neighbors, a design without its ending too.
func (s *search) near(given, name string) string {
	dir, missing, rest := path.Dir(name), path.Base(name), ""
	for {
		if info, err := s.disk.Stat(dir); err == nil {
			if !info.IsDir() {
				return ""
			}
			break
		}
		if dir == path.Dir(dir) {
			return ""
		}
		rest = path.Join(missing, rest)
		dir, missing = path.Dir(dir), path.Base(dir)
	}
	found := s.neighbor(dir, missing)
	if found == "" {
		return ""
	}
	meant := path.Join(dir, found)
	if _, err := s.disk.Stat(path.Join(meant, rest)); err == nil {
		meant = path.Join(meant, rest)
	} else if rest != "" {
		if more := s.near("/", path.Join(meant, rest)); more != "" { // a second slip further down
			meant = more
		}
	}
	if path.IsAbs(given) {
		return meant
	}
	return s.show(meant)
}

// neighbor gives the entry of a folder that a name most likely means. The endings
// of designs count for nothing: they would make any two of them alike.
func (s *search) neighbor(dir, missing string) string {
	tree, err := s.disk.Root(dir)
	if err != nil {
		return ""
	}
	entries, err := fs.ReadDir(tree, ".")
	if err != nil {
		return ""
	}
	stem := func(name string) string {
		return strings.TrimSuffix(strings.TrimSuffix(strings.TrimSuffix(name, ".hcl"), ".design"), ".parts")
	}
	wanted, names, stems := stem(missing), []string{}, []string{}
	for _, entry := range entries {
		name := entry.Name()
		if strings.HasPrefix(name, ".") || !entry.IsDir() && !strings.HasSuffix(name, ".hcl") {
			continue
		}
		if stem(name) == wanted {
			return name
		}
		names, stems = append(names, name), append(stems, stem(name))
	}
	meant := source.Nearest(wanted, stems)
	for i := range stems {
		if stems[i] == meant {
			return names[i]
		}
	}
	return ""
}
