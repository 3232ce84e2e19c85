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
)

// Files are written whole or not at all: a new text stands complete beside the
// old one, on the disk, before it takes its name. Writing never follows a symbolic
// link, and never goes over what it does not know.

// replace puts a new text in the place of a file that held old. The file keeps its
// mode, and its owner and group where the system lets them be kept. One that is a link, is not writable, or changed since old was read is left
// alone with an error, which does not name the file.
func replace(name string, old, text []byte) error {
	return inFolderOf(name, func(root *os.Root, base string) error {
		info, err := root.Lstat(base)
		if err != nil {
			return writeFault(err)
		}
		if err := writable(info); err != nil {
			return err
		}
		beside, err := writeBeside(root, base, text, info)
		if err != nil {
			return err
		}
		if now, err := readRoot(root, base, int64(len(old))+1); err != nil || !bytes.Equal(now, old) {
			return errors.Join(errors.New("the file was changed meanwhile"), root.Remove(beside))
		}
		return take(root, beside, base)
	})
}

// writeOver writes a file whatever it held, or where there was none. A file that was
// there keeps what it keeps in [replace]; only a regular one that may be written is written over.
func writeOver(name string, text []byte) error {
	return inFolderOf(name, func(root *os.Root, base string) error {
		info, err := root.Lstat(base)
		switch {
		case errors.Is(err, fs.ErrNotExist):
			info = nil
		case err != nil:
			return writeFault(err)
		default:
			if err := writable(info); err != nil {
				return err
			}
		}
		beside, err := writeBeside(root, base, text, info)
		if err != nil {
			return err
		}
		return take(root, beside, base)
	})
}

// create writes a file that must not be there yet, whole or not at all.
func create(name string, text []byte) error {
	return inFolderOf(name, func(root *os.Root, base string) error {
		beside, err := writeBeside(root, base, text, nil)
		if err != nil {
			return err
		}
		// A link, unlike a new name, is not given where the name is taken.
		err = root.Link(beside, base)
		if err == nil {
			return root.Remove(beside)
		}
		switch _, there := root.Lstat(base); {
		case there == nil:
			return errors.Join(errors.New("it is there already; nothing is written over"), root.Remove(beside))
		case errors.Is(there, fs.ErrNotExist): // a disk that knows no links
			return take(root, beside, base)
		}
		return errors.Join(writeFault(err), root.Remove(beside))
	})
}

// inFolderOf opens the folder of a file: what happens to the folder's own name meanwhile
// cannot lead elsewhere.
func inFolderOf(name string, do func(root *os.Root, base string) error) error {
	folder, base := filepath.Split(name)
	root, err := os.OpenRoot(filepath.Clean(folder + "."))
	if err != nil {
		return writeFault(err)
	}
	defer root.Close() // opened for its entries: nothing can be lost
	return do(root, base)
}

// writable refuses what is not to be written over.
func writable(info fs.FileInfo) error {
	switch {
	case info.Mode()&os.ModeSymlink != 0:
		return errors.New("a symbolic link: name the file that it stands for")
	case !info.Mode().IsRegular():
		return errIrregular
	case info.Mode().Perm()&0o200 == 0:
		return errors.New("the file is not to be written (its mode says so)")
	}
	return nil
}

// take gives a new text its name.
func take(root *os.Root, beside, base string) error {
	if err := root.Rename(beside, base); err != nil {
		return errors.Join(writeFault(err), root.Remove(beside))
	}
	return nil
}

// writeBeside writes a text under a name of its own in the folder and gives that
// name. It has the mode of the file that it stands for; where there was none, that
// of any new file. Where it cannot be written whole, nothing stays.
func writeBeside(root *os.Root, base string, text []byte, was fs.FileInfo) (name string, err error) {
	name = fmt.Sprintf(".%s.%s", base, rand.Text()[:10])
	mode := fs.FileMode(0o644)
	if was != nil {
		mode = was.Mode().Perm()
	}
	f, err := root.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
	if err != nil {
		return "", writeFault(err)
	}
	_, err = f.Write(text)
	if err == nil && was != nil {
		if !keepOwner(f, was) {
			mode = groupAsOthers(mode)
		}
		err = f.Chmod(mode) // what the process's mask, or a new owner, took away
	}
	if err == nil {
		err = f.Sync()
	}
	if err = errors.Join(err, f.Close()); err != nil {
		return "", errors.Join(writeFault(err), root.Remove(name))
	}
	return name, nil
}

// groupAsOthers lets a group do no more than anybody may: for a file that could not
// be left with its own group, so that another one does not get to read it.
func groupAsOthers(mode fs.FileMode) fs.FileMode {
	return mode&^0o070 | mode&0o070&(mode&0o007<<3)
}

func readRoot(root *os.Root, base string, most int64) (text []byte, err error) {
	f, err := root.Open(base)
	if err != nil {
		return nil, err
	}
	defer f.Close() // opened for reading: nothing can be lost
	return io.ReadAll(io.LimitReader(f, most))
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
