package main

import (
	"bytes"
	"crypto/rand"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"

	"stringline/schema/source"
)

// Files are written whole or not at all: a new text stands complete beside the
// old one, on the disk, before it takes its name. Writing never follows a symbolic
// link, and never goes over what it does not know.

// replace puts a new text in the place of a file that held old. The file keeps its
// mode. One that is a link, is not writable, or changed since old was read is left
// alone with an error, which does not name the file.
func replace(name string, old, text []byte) error {
	folder, base := filepath.Split(name)
	root, err := os.OpenRoot(filepath.Clean(folder + "."))
	if err != nil {
		return writeFault(err)
	}
	defer root.Close() // opened for its entries: nothing can be lost
	info, err := root.Lstat(base)
	switch {
	case err != nil:
		return writeFault(err)
	case info.Mode()&os.ModeSymlink != 0:
		return errors.New("a symbolic link: name the file that it stands for")
	case !info.Mode().IsRegular():
		return errIrregular
	case info.Mode().Perm()&0o200 == 0:
		return errors.New("the file is not to be written (its mode says so)")
	}
	beside, err := writeBeside(root, base, text, info.Mode().Perm())
	if err != nil {
		return err
	}
	if now, err := readRoot(root, base); err != nil || !bytes.Equal(now, old) {
		return errors.Join(errors.New("the file was changed meanwhile"), root.Remove(beside))
	}
	if err := root.Rename(beside, base); err != nil {
		return errors.Join(writeFault(err), root.Remove(beside))
	}
	return nil
}

// create writes a file that must not be there yet, whole or not at all.
func create(name string, text []byte) error {
	folder, base := filepath.Split(name)
	root, err := os.OpenRoot(filepath.Clean(folder + "."))
	if err != nil {
		return writeFault(err)
	}
	defer root.Close() // opened for its entries: nothing can be lost
	beside, err := writeBeside(root, base, text, 0o644)
	if err != nil {
		return err
	}
	// A link, unlike a new name, is not given where the name is taken.
	if err := root.Link(beside, base); err != nil {
		if _, there := root.Lstat(base); there == nil {
			err = errors.New("it is there already; nothing is written over")
		} else if _, taken := root.Lstat(base); errors.Is(taken, os.ErrNotExist) { // a disk that knows no links
			if err = root.Rename(beside, base); err == nil {
				return nil
			}
		}
		return errors.Join(writeFault(err), root.Remove(beside))
	}
	return root.Remove(beside)
}

// writeBeside writes a text under a name of its own in the folder and gives that
// name. Where it cannot be written whole, nothing stays.
func writeBeside(root *os.Root, base string, text []byte, mode os.FileMode) (name string, err error) {
	name = fmt.Sprintf(".%s.%s", base, rand.Text()[:10])
	f, err := root.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
	if err != nil {
		return "", writeFault(err)
	}
	_, err = f.Write(text)
	if err == nil {
		err = f.Chmod(mode) // what the process's mask took away
	}
	if err == nil {
		err = f.Sync()
	}
	if err = errors.Join(err, f.Close()); err != nil {
		return "", errors.Join(writeFault(err), root.Remove(name))
	}
	return name, nil
}

func readRoot(root *os.Root, base string) (text []byte, err error) {
	f, err := root.Open(base)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	return io.ReadAll(io.LimitReader(f, source.MaxBytes+1))
}

// writeFault keeps the cause of an error and drops the path, which is one of this
// machine and stands in the message already.
func writeFault(err error) error {
	var at *fs.PathError
	var link *os.LinkError
	switch {
	case err == nil:
		return nil
	case errors.Is(err, fs.ErrPermission):
		return errors.New("not allowed to write there")
	case errors.Is(err, fs.ErrNotExist):
		return errors.New("no such file or folder")
	case errors.As(err, &at):
		return at.Err
	case errors.As(err, &link):
		return link.Err
	}
	return err
}
