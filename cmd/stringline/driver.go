package main

import (
	"bytes"
	"fmt"
	"io/fs"
	"os"
	"path"
	"slices"
	"strings"
	"time"

	"stringline/lint/survey"
	"stringline/schema/source"
)

// drive compares what git hands to a diff driver: PATH OLD-FILE OLD-HEX OLD-MODE
// NEW-FILE NEW-HEX NEW-MODE, and after a rename two more. git hands on one file
// and not the revision that it comes from, so each side is that file in the
// workshop as it lies there now; --since compares whole revisions. There is
// nothing to compare where a merge has not been settled.
func (s *streams) drive(r request, args []string) (*sides, error) {
	const due = "--driver takes the arguments that git hands to a diff driver: PATH OLD-FILE OLD-HEX OLD-MODE NEW-FILE NEW-HEX NEW-MODE"
	if len(args) == 1 {
		s.say(args[0] + ": the merge has not been settled")
		return nil, nil
	}
	if len(args) < 7 || len(args) > 9 {
		return nil, fmt.Errorf("%s; found %d", due, len(args))
	}
	dir, err := s.workingDir()
	if err != nil {
		return nil, err
	}
	both := &sides{single: true, given: args[0]}
	name := args[0]
	for _, end := range []struct {
		at   *side
		file string
		what string
	}{{&both.was, args[1], "before"}, {&both.now, args[4], "after"}} {
		if end.at == &both.now && len(args) >= 8 {
			name = args[7] // where the file stands after a rename
		}
		text, err := handedOn(end.file)
		if err != nil {
			return nil, err
		}
		r.paths, r.disk = []string{name}, overlay{s.disk, path.Join(dir, slashed(name)), text}
		// A parts file that is not there leaves its workshop's designs to judge.
		*end.at = side{request: r, label: end.what, lenient: true, absent: text == nil && strings.HasSuffix(name, survey.DesignSuffix)}
		if text == nil && !end.at.absent {
			end.at.paths = []string{path.Dir(name)}
		}
	}
	return both, nil
}

// handedOn reads a file that git hands on; nil where that side has none.
func handedOn(name string) ([]byte, error) {
	if name == os.DevNull || name == "/dev/null" {
		return nil, nil
	}
	text, err := readSmall(name, source.MaxBytes+1)
	if err != nil {
		return nil, fmt.Errorf("reading what git hands on: %w", err)
	}
	return text, nil
}

// overlay is the disk with one file's text in place of its own; without that file
// where the text is nil.
type overlay struct {
	disk survey.Disk
	name string // absolute
	text []byte
}

// Root opens a folder.
func (o overlay) Root(dir string) (fs.FS, error) {
	under, err := o.disk.Root(dir)
	if err != nil {
		return nil, err
	}
	inside, ok := strings.CutPrefix(o.name, strings.TrimSuffix(dir, "/")+"/")
	if !ok {
		return under, nil
	}
	return overlaid{under, inside, o.text}, nil
}

// Stat looks at a file or a folder.
func (o overlay) Stat(name string) (fs.FileInfo, error) {
	if name != o.name {
		return o.disk.Stat(name)
	}
	if o.text == nil {
		return nil, &fs.PathError{Op: "stat", Path: name, Err: fs.ErrNotExist}
	}
	return overlayInfo{path.Base(name), int64(len(o.text))}, nil
}

// overlaid is one tree of an overlay.
type overlaid struct {
	under fs.FS
	name  string // inside the tree
	text  []byte
}

// Open gives the text that stands in place of the file, or what lies there.
func (o overlaid) Open(name string) (fs.File, error) {
	switch {
	case name != o.name:
		return o.under.Open(name)
	case o.text == nil:
		return nil, &fs.PathError{Op: "open", Path: name, Err: fs.ErrNotExist}
	}
	return &overlayFile{overlayInfo{path.Base(name), int64(len(o.text))}, bytes.NewReader(o.text)}, nil
}

// Stat tells about a file without opening it.
func (o overlaid) Stat(name string) (fs.FileInfo, error) {
	switch {
	case name != o.name:
		return fs.Stat(o.under, name)
	case o.text == nil:
		return nil, &fs.PathError{Op: "stat", Path: name, Err: fs.ErrNotExist}
	}
	return overlayInfo{path.Base(name), int64(len(o.text))}, nil
}

// ReadDir lists a folder, with the file or without it.
func (o overlaid) ReadDir(name string) ([]fs.DirEntry, error) {
	entries, err := fs.ReadDir(o.under, name)
	if err != nil || name != path.Dir(o.name) {
		return entries, err
	}
	base := path.Base(o.name)
	entries = slices.DeleteFunc(slices.Clone(entries), func(e fs.DirEntry) bool { return e.Name() == base })
	if o.text != nil {
		entries = append(entries, fs.FileInfoToDirEntry(overlayInfo{base, int64(len(o.text))}))
		slices.SortFunc(entries, func(a, b fs.DirEntry) int { return strings.Compare(a.Name(), b.Name()) })
	}
	return entries, nil
}

type overlayInfo struct {
	name string
	size int64
}

func (i overlayInfo) Name() string       { return i.name }
func (i overlayInfo) Size() int64        { return i.size }
func (i overlayInfo) Mode() fs.FileMode  { return 0o444 }
func (i overlayInfo) ModTime() time.Time { return time.Time{} }
func (i overlayInfo) IsDir() bool        { return false }
func (i overlayInfo) Sys() any           { return nil }

type overlayFile struct {
	overlayInfo
	*bytes.Reader
}

func (f *overlayFile) Size() int64                { return f.size }
func (f *overlayFile) Stat() (fs.FileInfo, error) { return f.overlayInfo, nil }
func (f *overlayFile) Close() error               { return nil }
