package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
)

// newFile is one of several files that are written together.
type newFile struct {
	path string // below their folder, with /
	text []byte
	run  bool // it may be executed
}

// createAll writes files that must not be there yet into a folder, with the folders
// that they need: all of them or none.
func createAll(folder string, files []newFile) (err error) {
	made, err := makeFolders(folder)
	defer func() {
		if err != nil {
			removeEmpty(made)
		}
	}()
	if err != nil {
		return writeFault(err)
	}
	stage, err := stageAll(folder, files)
	if err != nil {
		return err
	}
	defer func() { err = errors.Join(err, os.RemoveAll(stage)) }()
	return settleAll(stage, folder, files, os.Link)
}

// stageAll writes files into a new hidden folder inside the one that they are for, so
// on the same disk: one that is full is noticed before any file has its name. Where
// they cannot all be written nothing stays. Whoever asks for it removes it.
func stageAll(folder string, files []newFile) (stage string, err error) {
	stage, err = os.MkdirTemp(folder, ".new-")
	if err != nil {
		return "", writeFault(err)
	}
	for _, f := range files {
		if err = stageOne(stage, &f); err != nil {
			return "", errors.Join(fmt.Errorf("%s: %w", f.path, err), os.RemoveAll(stage))
		}
	}
	return stage, nil
}

func stageOne(stage string, f *newFile) error {
	name := filepath.Join(stage, filepath.FromSlash(f.path))
	if _, err := makeFolders(filepath.Dir(name)); err != nil {
		return writeFault(err)
	}
	if err := create(name, f.text); err != nil {
		return err
	}
	if !f.run {
		return nil
	}
	info, err := os.Stat(name)
	if err == nil { // who may read it may run it; a disk may know no such mode
		err = os.Chmod(name, info.Mode().Perm()|info.Mode().Perm()&0o444>>2)
	}
	return writeFault(err)
}

// settleAll gives files that were staged their names; none where one of them is
// taken. link is [os.Link].
func settleAll(stage, folder string, files []newFile, link func(from, to string) error) (err error) {
	var made []string // in the order in which they were made
	defer func() {
		if err != nil {
			removeEmpty(made)
		}
	}()
	for _, f := range files {
		from, to := filepath.Join(stage, filepath.FromSlash(f.path)), filepath.Join(folder, filepath.FromSlash(f.path))
		folders, err := makeFolders(filepath.Dir(to))
		if made = append(made, folders...); err != nil {
			return fmt.Errorf("%s: %w", f.path, writeFault(err))
		}
		if err := settleOne(from, to, link); err != nil {
			return fmt.Errorf("%s: %w", f.path, err)
		}
		made = append(made, to)
	}
	return nil
}

// settleOne gives one staged file its name. A link, unlike a new name, is not given
// where the name is taken; a disk may know none.
func settleOne(from, to string, link func(from, to string) error) error {
	if link(from, to) == nil {
		return nil
	}
	switch _, err := os.Lstat(to); {
	case err == nil:
		return errors.New("it is there already; nothing is written over")
	case !errors.Is(err, fs.ErrNotExist):
		return writeFault(err)
	}
	return writeFault(os.Rename(from, to))
}

// removeEmpty takes away what was made, last first: files, and folders as long as
// nobody has put anything into them.
func removeEmpty(made []string) {
	for _, name := range slices.Backward(made) {
		_ = os.Remove(name) // the error that led here is told; a folder that is in use stays
	}
}

// makeFolders makes a folder and those above it, and gives those that were not
// there.
func makeFolders(folder string) (made []string, err error) {
	var missing []string
	for at := filepath.Clean(folder); ; at = filepath.Dir(at) {
		if _, err := os.Stat(at); err == nil || at == filepath.Dir(at) {
			break
		}
		missing = append(missing, at)
	}
	for _, name := range slices.Backward(missing) {
		if err := os.Mkdir(name, 0o755); err != nil {
			return made, err
		}
		made = append(made, name)
	}
	if info, err := os.Stat(folder); err != nil || !info.IsDir() {
		return made, errors.Join(errors.New("it is no folder"), err)
	}
	return made, nil
}
