package main

import (
	"maps"
	"path"
	"slices"

	"stringline/lint/survey"
	"stringline/schema/design"
	"stringline/schema/source"
)

// found is a design of a side that nobody has judged yet.
type found struct {
	path  string        // absolute
	title func() string // of its design block; "" where that cannot be read
}

// designsOf lists a side's designs, without judging them, by the names that pair
// them.
func (s *streams) designsOf(at *side) (map[string]found, source.Problems) {
	designs := map[string]found{}
	dir, err := at.dir, error(nil)
	if dir == "" {
		if dir, err = s.workingDir(); err != nil {
			return designs, nil // judging will say it
		}
	}
	if at.absent || slices.Contains(at.paths, "-") {
		return designs, nil
	}
	var on survey.Disk = s.disk
	if at.disk != nil {
		on = at.disk
	}
	paths := make([]string, len(at.paths))
	for i, p := range at.paths {
		paths[i] = slashed(p)
	}
	workshops, problems := survey.Find(on, dir, paths)
	for _, w := range workshops {
		for _, file := range w.Designs {
			name := w.Show(file)
			if at.name != nil {
				name = at.name(name)
			}
			designs[name] = found{path: native(path.Join(w.Dir, file)), title: func() string {
				text, err := design.ReadFile(w.Tree, file)
				if err != nil {
					return "" // judging will say it
				}
				return design.Title(text)
			}}
		}
	}
	return designs, problems
}

// part is some designs of either side.
type part struct{ was, now []string }

// inParts deals out designs, atOnce of a side at most, so that those which belong
// together are in one part: those of one name; and of those that one side alone has
// by name, those whose title no other of them has on either side, since that is a
// file that has moved. The rest is alone, and parts of it hold one side only, so
// that nothing is taken for moved that has its like in another part.
func inParts(was, now map[string]found) []part {
	var pairs [][2]string
	var gone, fresh []found
	for _, name := range slices.Sorted(maps.Keys(was)) {
		if other, ok := now[name]; ok {
			pairs = append(pairs, [2]string{was[name].path, other.path})
		} else {
			gone = append(gone, was[name])
		}
	}
	for _, name := range slices.Sorted(maps.Keys(now)) {
		if _, ok := was[name]; !ok {
			fresh = append(fresh, now[name])
		}
	}
	var alone part
	before, after := byTitle(gone), byTitle(fresh)
	for i, title := range after.titles {
		at := before.only[title]
		if title == "" || at == 0 || after.only[title] == 0 {
			alone.now = append(alone.now, fresh[i].path)
			continue
		}
		pairs = append(pairs, [2]string{gone[at-1].path, fresh[i].path})
	}
	for i, title := range before.titles {
		if title == "" || before.only[title] == 0 || after.only[title] == 0 {
			alone.was = append(alone.was, gone[i].path)
		}
	}
	var parts []part
	for some := range slices.Chunk(pairs, atOnce) {
		p := part{}
		for _, pair := range some {
			p.was, p.now = append(p.was, pair[0]), append(p.now, pair[1])
		}
		parts = append(parts, p)
	}
	for some := range slices.Chunk(alone.was, atOnce) {
		parts = append(parts, part{was: some})
	}
	for some := range slices.Chunk(alone.now, atOnce) {
		parts = append(parts, part{now: some})
	}
	return parts
}

// titled are the titles of some designs, and of a title that one alone has the place
// of that design, from 1.
type titled struct {
	titles []string
	only   map[string]int
}

func byTitle(all []found) titled {
	t := titled{titles: make([]string, len(all)), only: map[string]int{}}
	times := map[string]int{}
	for i, f := range all {
		t.titles[i] = f.title()
		times[t.titles[i]]++
		t.only[t.titles[i]] = i + 1
	}
	for title, n := range times {
		if n > 1 {
			delete(t.only, title)
		}
	}
	return t
}
