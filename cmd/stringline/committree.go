package main

import (
	"bytes"
	"cmp"
	"context"
	"errors"
	"io"
	"io/fs"
	"maps"
	"path"
	"slices"
	"strings"
	"sync"
	"time"
)

// commitTree is the files of one commit as a file system. Contents are read when
// they are asked for. Symbolic links are followed inside the tree and never out of
// it; submodules are empty folders.
type commitTree struct {
	root    *commitNode
	base    []string // names from root to the folder that this tree begins at
	content *commitContent
}

// commitContent reads the contents of a commit's files; it begins when first asked.
type commitContent struct {
	once  sync.Once
	open  func() (gitObjects, error)
	files gitObjects
	err   error
}

type commitNode struct {
	name     string
	kind     fs.FileMode // type bits
	object   string
	size     int64
	children map[string]*commitNode // of a folder
}

// Modes of git's trees.
const (
	gitLink      = 0o120000
	gitSubmodule = 0o160000
)

// largestObject bounds what is read of one file, in bytes: more than any file of
// a workshop may have.
const largestObject = 64 << 20

// Links are followed so many times, and no further than a path may be long.
const (
	mostLinks   = 40
	longestLink = 4096
)

var (
	errEscapes   = errors.New("path escapes from parent: a symbolic link leads out of the folder")
	errManyLink  = errors.New("too many levels of symbolic links")
	errNoLink    = errors.New("a symbolic link whose target is no path")
	errTooLarge  = errors.New("the file is larger than 64 MiB")
	errElsewhere = errors.New("the commit holds a pointer in its place, as for large files that are kept elsewhere")
)

func newCommitTree(ctx context.Context, g git, dir string) *commitTree {
	return &commitTree{root: folderNode("."), content: &commitContent{open: func() (gitObjects, error) { return g.objects(ctx, dir) }}}
}

func folderNode(name string) *commitNode {
	return &commitNode{name: name, kind: fs.ModeDir, children: map[string]*commitNode{}}
}

// add puts a file into the tree.
func (t *commitTree) add(name string, mode uint32, object string, size int64) {
	at := t.root
	names := strings.Split(name, "/")
	for _, folder := range names[:len(names)-1] {
		next, ok := at.children[folder]
		if !ok || next.children == nil {
			next = folderNode(folder)
			at.children[folder] = next
		}
		at = next
	}
	last := names[len(names)-1]
	n := &commitNode{name: last, object: object, size: size}
	switch mode {
	case gitLink:
		n.kind = fs.ModeSymlink
	case gitSubmodule:
		n = folderNode(last)
	}
	at.children[last] = n
}

func (t *commitTree) close() {
	t.content.once.Do(func() { t.content.err = fs.ErrClosed })
	if t.content.files != nil {
		t.content.files.close()
	}
}

func (c *commitContent) read(n *commitNode) ([]byte, error) {
	if n.size > largestObject {
		return nil, errTooLarge
	}
	c.once.Do(func() { c.files, c.err = c.open() })
	if c.err != nil {
		return nil, c.err
	}
	text, err := c.files.read(n.object)
	if err == nil && len(text) < 1024 && bytes.HasPrefix(text, []byte("version https://")) && bytes.Contains(text, []byte("\noid sha256:")) {
		return nil, errElsewhere
	}
	return text, err
}

// sub gives the tree that begins at a folder.
func (t *commitTree) sub(dir string) (*commitTree, error) {
	walk, err := t.find("open", dir)
	if err != nil {
		return nil, err
	}
	if walk.last().children == nil {
		return nil, &fs.PathError{Op: "open", Path: dir, Err: errors.New("not a folder")}
	}
	s := &commitTree{root: t.root, content: t.content}
	for _, n := range walk[1:] {
		s.base = append(s.base, n.name)
	}
	return s, nil
}

// trail is the folders from the root to a node.
type trail []*commitNode

func (w trail) last() *commitNode { return w[len(w)-1] }

// find walks to a name, following symbolic links that stay below the base.
func (t *commitTree) find(op, name string) (trail, error) {
	fail := func(err error) (trail, error) { return nil, &fs.PathError{Op: op, Path: name, Err: err} }
	if !fs.ValidPath(name) {
		return fail(fs.ErrInvalid)
	}
	at := trail{t.root}
	for _, folder := range t.base {
		at = append(at, at.last().children[folder])
	}
	floor := len(at)
	var steps []string
	if name != "." {
		steps = strings.Split(name, "/")
	}
	for links := 0; len(steps) > 0; {
		step := steps[0]
		steps = steps[1:]
		switch step {
		case "", ".":
			continue
		case "..":
			if len(at) <= floor {
				return fail(errEscapes)
			}
			at = at[:len(at)-1]
			continue
		}
		next, ok := at.last().children[step]
		if !ok {
			return fail(fs.ErrNotExist)
		}
		if next.kind != fs.ModeSymlink {
			at = append(at[:len(at):len(at)], next)
			continue
		}
		if links++; links > mostLinks {
			return fail(errManyLink)
		}
		target, err := t.content.read(next)
		switch {
		case err != nil:
			return fail(err)
		case len(target) > longestLink:
			return fail(errNoLink)
		case path.IsAbs(string(target)):
			return fail(errEscapes)
		}
		steps = append(strings.Split(string(target), "/"), steps...)
	}
	return at, nil
}

// Open gives a file's content, or a folder to list.
func (t *commitTree) Open(name string) (fs.File, error) {
	walk, err := t.find("open", name)
	if err != nil {
		return nil, err
	}
	n := walk.last()
	info := commitInfo{n, path.Base(name)}
	if n.children != nil {
		return &commitFolder{commitInfo: info, left: n.list()}, nil
	}
	text, err := t.content.read(n)
	if err != nil {
		return nil, &fs.PathError{Op: "open", Path: name, Err: err}
	}
	return &commitFile{info, bytes.NewReader(text)}, nil
}

// Stat tells about a file without reading it.
func (t *commitTree) Stat(name string) (fs.FileInfo, error) {
	walk, err := t.find("stat", name)
	if err != nil {
		return nil, err
	}
	return commitInfo{walk.last(), path.Base(name)}, nil
}

// ReadDir lists a folder, sorted by name.
func (t *commitTree) ReadDir(name string) ([]fs.DirEntry, error) {
	walk, err := t.find("readdir", name)
	if err != nil {
		return nil, err
	}
	if walk.last().children == nil {
		return nil, &fs.PathError{Op: "readdir", Path: name, Err: errors.New("not a folder")}
	}
	return walk.last().list(), nil
}

func (n *commitNode) list() []fs.DirEntry {
	entries := make([]fs.DirEntry, 0, len(n.children))
	for _, name := range slices.SortedFunc(maps.Keys(n.children), cmp.Compare[string]) {
		entries = append(entries, fs.FileInfoToDirEntry(commitInfo{n.children[name], name}))
	}
	return entries
}

// commitInfo is what is known of a file. Commits keep no times of files.
type commitInfo struct {
	node *commitNode
	name string
}

func (i commitInfo) Name() string       { return i.name }
func (i commitInfo) Size() int64        { return i.node.size }
func (i commitInfo) ModTime() time.Time { return time.Time{} }
func (i commitInfo) IsDir() bool        { return i.node.children != nil }
func (i commitInfo) Sys() any           { return nil }
func (i commitInfo) Mode() fs.FileMode {
	if i.IsDir() {
		return fs.ModeDir | 0o555
	}
	return i.node.kind | 0o444
}

type commitFile struct {
	commitInfo
	*bytes.Reader
}

func (f *commitFile) Size() int64                { return f.commitInfo.Size() }
func (f *commitFile) Stat() (fs.FileInfo, error) { return f.commitInfo, nil }
func (f *commitFile) Close() error               { return nil }

type commitFolder struct {
	commitInfo
	left []fs.DirEntry
}

func (f *commitFolder) Stat() (fs.FileInfo, error) { return f.commitInfo, nil }
func (f *commitFolder) Close() error               { return nil }
func (f *commitFolder) Read([]byte) (int, error) {
	return 0, &fs.PathError{Op: "read", Path: f.name, Err: errors.New("is a folder")}
}

// ReadDir gives the next n entries, all that are left where n is not positive.
func (f *commitFolder) ReadDir(n int) ([]fs.DirEntry, error) {
	if n <= 0 {
		all := f.left
		f.left = nil
		return all, nil
	}
	if len(f.left) == 0 {
		return nil, io.EOF
	}
	n = min(n, len(f.left))
	some := f.left[:n]
	f.left = f.left[n:]
	return some, nil
}
