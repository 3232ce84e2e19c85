package main

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"strconv"
	"strings"

	"stringline/lint/survey"
)

// revision is a commit of a repository.
type revision struct {
	git    git
	ctx    context.Context
	top    string // of the working tree, absolute, "/" between folders
	folder string // the same as the system writes it
	word   string // as the commit was named
	commit string // its full name
	files  *commitTree
}

// openRevision finds a commit of the repository that a folder lies in and lists
// its files. Close it.
func openRevision(ctx context.Context, g git, dir, word string) (*revision, error) {
	r := &revision{git: g, ctx: ctx, word: word}
	top, err := g.output(ctx, dir, "rev-parse", "--show-toplevel")
	if err != nil {
		return nil, noRepository(err)
	}
	r.folder = strings.TrimSuffix(strings.TrimSuffix(string(top), "\n"), "\r")
	r.top = path.Clean(slashed(r.folder))
	if r.commit, err = r.resolve(word); err != nil {
		return nil, err
	}
	return r, r.list()
}

// noRepository says in our words why there is no repository to read.
func noRepository(err error) error {
	var from *gitError
	if !errors.As(err, &from) {
		return err
	}
	switch {
	case strings.Contains(from.said, "not a git repository"):
		return errors.New("the folder lies in no git repository; two files or folders can be compared without one: stringline compare OLD NEW")
	case strings.Contains(from.said, "must be run in a work tree"):
		return errors.New("the repository has no working tree (it is bare); clone it and compare there")
	case strings.Contains(from.said, "dubious ownership"):
		return fmt.Errorf("git refuses to read a repository that belongs to somebody else: %w", err)
	}
	return fmt.Errorf("reading the repository: %w", err)
}

// resolve gives the full name of a commit.
func (r *revision) resolve(word string) (string, error) {
	switch {
	case word == "":
		return "", errors.New("the commit's name is empty")
	case strings.HasPrefix(word, "-") || strings.ContainsAny(word, "\x00\n"):
		return "", fmt.Errorf("%q is no name of a commit", word)
	}
	name, err := r.git.output(r.ctx, r.folder, "rev-parse", "--verify", "--quiet", word+"^{commit}")
	if err == nil {
		return strings.TrimSpace(string(name)), nil
	}
	if r.ctx.Err() != nil {
		return "", r.ctx.Err()
	}
	if shallow, err := r.git.output(r.ctx, r.folder, "rev-parse", "--is-shallow-repository"); err == nil && strings.TrimSpace(string(shallow)) == "true" {
		return "", fmt.Errorf("there is no commit %q here, and this clone is shallow: it holds only the end of the history. "+
			"Fetch the rest with git fetch --unshallow, or some of it with git fetch --deepen=100; for a branch git fetch origin BRANCH:refs/remotes/origin/BRANCH. "+
			"A CI host has a setting for the depth of its checkout: 0 stands for all", word)
	}
	if _, err := r.git.output(r.ctx, r.folder, "rev-parse", "--verify", "--quiet", "HEAD^{commit}"); err != nil {
		return "", errors.New("the repository has no commit yet")
	}
	return "", fmt.Errorf("there is no commit %q in this repository; a branch of another repository is fetched first: git fetch", word)
}

// list reads which files the commit has.
func (r *revision) list() error {
	text, err := r.git.output(r.ctx, r.folder, "ls-tree", "-r", "-l", "-z", "--full-tree", r.commit)
	if err != nil { // a partial clone may not know the sizes
		text, err = r.git.output(r.ctx, r.folder, "ls-tree", "-r", "-z", "--full-tree", r.commit)
	}
	if err != nil {
		return fmt.Errorf("listing the files of %s: %w", r.word, err)
	}
	r.files = newCommitTree(r.ctx, r.git, r.folder)
	for len(text) > 0 {
		entry, rest, _ := bytes.Cut(text, []byte{0})
		text = rest
		about, name, ok := strings.Cut(string(entry), "\t")
		fields := strings.Fields(about)
		if !ok || len(fields) < 3 || !fs.ValidPath(name) {
			return fmt.Errorf("listing the files of %s: git gave %q", r.word, entry)
		}
		mode, err := strconv.ParseUint(fields[0], 8, 32)
		var size int64
		if len(fields) > 3 {
			size, _ = strconv.ParseInt(fields[3], 10, 64) // "-" for a submodule
		}
		if err != nil {
			return fmt.Errorf("listing the files of %s: git gave mode %q", r.word, fields[0])
		}
		r.files.add(name, uint32(mode), fields[2], size)
	}
	return nil
}

func (r *revision) close() { r.files.close() }

// inside gives a name below the top as the commit's tree has it; ok is false for
// what lies elsewhere.
func (r *revision) inside(name string) (string, bool) {
	if name == r.top {
		return ".", true
	}
	return strings.CutPrefix(name, strings.TrimSuffix(r.top, "/")+"/")
}

// Root opens a folder as it was in the commit.
func (r *revision) Root(dir string) (fs.FS, error) {
	name, ok := r.inside(dir)
	if !ok {
		return nil, &fs.PathError{Op: "open", Path: dir, Err: errors.New("it lies outside the repository")}
	}
	return r.files.sub(name)
}

// Stat tells about a file as it was in the commit. A workshop file above the
// repository is in force and in no commit: it is refused, since what it said then
// cannot be known.
func (r *revision) Stat(name string) (fs.FileInfo, error) {
	inside, ok := r.inside(name)
	if ok {
		return fs.Stat(r.files, inside)
	}
	if path.Base(name) == survey.WorkshopFile {
		if _, err := (disk{}).Stat(name); err == nil {
			return nil, &fs.PathError{Op: "stat", Path: name, Err: errors.New("it lies outside the repository, so no commit tells what it was")}
		}
	}
	return nil, &fs.PathError{Op: "stat", Path: name, Err: fs.ErrNotExist}
}

// physical gives an absolute path without symbolic links among its folders, as git
// shows paths. The last name stays: it may be a link that git keeps.
func physical(dir, name string) string {
	name = native(name)
	if !filepath.IsAbs(name) {
		name = filepath.Join(native(dir), name)
	}
	if info, err := os.Stat(name); err == nil && info.IsDir() {
		if real, err := filepath.EvalSymlinks(name); err == nil {
			return slashed(real)
		}
	}
	for parent, rest := filepath.Dir(name), filepath.Base(name); ; parent, rest = filepath.Dir(parent), filepath.Join(filepath.Base(parent), rest) {
		if real, err := filepath.EvalSymlinks(parent); err == nil {
			return slashed(filepath.Join(real, rest))
		}
		if parent == filepath.Dir(parent) {
			return slashed(name)
		}
	}
}

// folderOf gives the nearest folder at or above a path that is there.
func folderOf(name string) string {
	for {
		if info, err := os.Stat(native(name)); err == nil && info.IsDir() {
			return native(name)
		}
		if name == path.Dir(name) {
			return native(name)
		}
		name = path.Dir(name)
	}
}
