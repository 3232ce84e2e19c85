package main

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"syscall"
)

// disk is the file system as the pipeline sees it: trees that no name and no
// link leads out of. Names are absolute with "/" between folders; on Windows
// the drive stands behind the first "/".
type disk struct{}

var (
	// errIrregular is what opening anything but a file or a folder gives: a pipe
	// or a device might never end.
	errIrregular = errors.New("not a regular file")
	// errDangling is not fs.ErrNotExist: a name is there, and what it stood for
	// must not be taken for nothing.
	errDangling = errors.New("a symbolic link that leads nowhere")
)

// Root opens a folder as a confined tree.
func (disk) Root(dir string) (fs.FS, error) {
	t := tree(native(dir))
	return t, t.within(func(*os.Root) error { return nil })
}

// Stat follows links, as a person naming a path expects.
func (disk) Stat(name string) (fs.FileInfo, error) {
	info, err := os.Stat(native(name))
	if errors.Is(err, fs.ErrNotExist) {
		if _, there := os.Lstat(native(name)); there == nil {
			err = &fs.PathError{Op: "stat", Path: name, Err: errDangling}
		}
	}
	return info, err
}

// tree is a folder that gives regular files and folders alone. It is opened anew
// for each of them, so that a run over thousands of folders keeps none open.
type tree string

// within calls f with the opened folder.
func (t tree) within(f func(*os.Root) error) error {
	root, err := os.OpenRoot(string(t))
	if err != nil {
		return err
	}
	defer root.Close() // opened for reading: nothing can be lost
	return f(root)
}

// Open never waits: a pipe is opened without blocking, then refused.
func (t tree) Open(name string) (f fs.File, err error) {
	if !fs.ValidPath(name) {
		return nil, &fs.PathError{Op: "open", Path: name, Err: fs.ErrInvalid}
	}
	err = t.within(func(root *os.Root) error {
		opened, err := root.OpenFile(filepath.FromSlash(name), os.O_RDONLY|syscall.O_NONBLOCK, 0)
		if err != nil {
			return err
		}
		info, err := opened.Stat()
		if err == nil && !info.Mode().IsRegular() && !info.IsDir() {
			err = &fs.PathError{Op: "open", Path: name, Err: errIrregular}
		}
		if err != nil {
			return errors.Join(err, opened.Close())
		}
		f = opened
		return nil
	})
	return f, err
}

// Stat tells about a file without opening it.
func (t tree) Stat(name string) (info fs.FileInfo, err error) {
	if !fs.ValidPath(name) {
		return nil, &fs.PathError{Op: "stat", Path: name, Err: fs.ErrInvalid}
	}
	err = t.within(func(root *os.Root) error {
		info, err = root.Stat(filepath.FromSlash(name))
		return err
	})
	return info, err
}

// ReadDir lists a folder, sorted by name.
func (t tree) ReadDir(name string) (entries []fs.DirEntry, err error) {
	err = t.within(func(root *os.Root) error {
		entries, err = fs.ReadDir(root.FS(), name)
		return err
	})
	return entries, err
}

// slashed turns a path as a person writes it into the pipeline's form.
func slashed(name string) string {
	name = filepath.ToSlash(name)
	if runtime.GOOS == "windows" && filepath.VolumeName(name) != "" {
		return "/" + name
	}
	return name
}

// native undoes slashed.
func native(name string) string {
	if runtime.GOOS == "windows" {
		if rest := strings.TrimPrefix(name, "/"); filepath.VolumeName(rest) != "" {
			name = rest
		}
	}
	return filepath.FromSlash(name)
}
