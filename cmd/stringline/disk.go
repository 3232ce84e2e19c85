package main

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"sync"
	"syscall"
)

// disk is the file system as the pipeline sees it: trees that no name and no
// link leads out of. Names are absolute with "/" between folders; on Windows
// the drive stands behind the first "/".
type disk struct {
	mutex sync.Mutex
	roots []*os.Root
}

// errIrregular is what opening anything but a file or a folder gives: a pipe
// or a device might never end.
var errIrregular = errors.New("not a regular file")

// Root opens a folder as a confined tree.
func (d *disk) Root(dir string) (fs.FS, error) {
	root, err := os.OpenRoot(native(dir))
	if err != nil {
		return nil, err
	}
	d.mutex.Lock()
	d.roots = append(d.roots, root)
	d.mutex.Unlock()
	return tree{root}, nil
}

// Stat follows links, as a person naming a path expects.
func (d *disk) Stat(name string) (fs.FileInfo, error) { return os.Stat(native(name)) }

// close lets all trees go.
func (d *disk) close() {
	d.mutex.Lock()
	defer d.mutex.Unlock()
	for _, root := range d.roots {
		_ = root.Close() // opened for reading: nothing can be lost
	}
	d.roots = nil
}

// tree is an opened root that gives regular files and folders alone.
type tree struct{ root *os.Root }

// Open never waits: a pipe is opened without blocking, then refused.
func (t tree) Open(name string) (fs.File, error) {
	if !fs.ValidPath(name) {
		return nil, &fs.PathError{Op: "open", Path: name, Err: fs.ErrInvalid}
	}
	f, err := t.root.OpenFile(filepath.FromSlash(name), os.O_RDONLY|syscall.O_NONBLOCK, 0)
	if err != nil {
		return nil, err
	}
	info, err := f.Stat()
	if err != nil {
		return nil, errors.Join(err, f.Close())
	}
	if !info.Mode().IsRegular() && !info.IsDir() {
		return nil, errors.Join(&fs.PathError{Op: "open", Path: name, Err: errIrregular}, f.Close())
	}
	return f, nil
}

// Stat tells about a file without opening it.
func (t tree) Stat(name string) (fs.FileInfo, error) {
	if !fs.ValidPath(name) {
		return nil, &fs.PathError{Op: "stat", Path: name, Err: fs.ErrInvalid}
	}
	return t.root.Stat(filepath.FromSlash(name))
}

// ReadDir lists a folder, sorted by name.
func (t tree) ReadDir(name string) ([]fs.DirEntry, error) { return fs.ReadDir(t.root.FS(), name) }

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
