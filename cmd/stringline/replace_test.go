package main

import (
	"bytes"
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"stringline/schema/source"
)

// onlyFile holds that the folder has one entry: no half-written file stays behind.
func onlyFile(t *testing.T, dir, want string) {
	t.Helper()
	entries, err := os.ReadDir(dir)
	if err != nil || len(entries) != 1 {
		t.Fatalf("the folder holds %v (%v), want one file", entries, err)
	}
	if text, err := os.ReadFile(filepath.Join(dir, entries[0].Name())); err != nil || string(text) != want {
		t.Errorf("the file holds %q (%v), want %q", text, err, want)
	}
}

func TestReplace(t *testing.T) {
	dir := t.TempDir()
	name := filepath.Join(dir, "a.design.hcl")
	if err := os.WriteFile(name, []byte("old"), 0o600); err != nil {
		t.Fatal(err)
	}
	if err := replace(name, []byte("old"), []byte("new")); err != nil {
		t.Fatal(err)
	}
	onlyFile(t, dir, "new")
	if info, err := os.Stat(name); err != nil || info.Mode().Perm() != 0o600 {
		t.Errorf("the mode is %v (%v)", info.Mode(), err)
	}
	// Somebody saved the file while its layout was made: theirs stays.
	if err := replace(name, []byte("old"), []byte("newer")); err == nil || !strings.Contains(err.Error(), "changed meanwhile") {
		t.Errorf("a file that changed: %v", err)
	}
	onlyFile(t, dir, "new")
	if err := replace(filepath.Join(dir, "none"), nil, nil); err == nil {
		t.Error("a file that is not there was replaced")
	}
	onlyFile(t, dir, "new")
}

func TestCreate(t *testing.T) {
	dir := t.TempDir()
	name := filepath.Join(dir, "a.parts.hcl")
	if err := create(name, []byte("one")); err != nil {
		t.Fatal(err)
	}
	if err := create(name, []byte("two")); err == nil || !strings.Contains(err.Error(), "there already") {
		t.Errorf("over a file: %v", err)
	}
	onlyFile(t, dir, "one")
	if err := os.Remove(name); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink("nowhere", name); err != nil {
		t.Skip(err)
	}
	if err := create(name, []byte("two")); err == nil {
		t.Error("written over, or through, a link")
	}
	if entries, err := os.ReadDir(dir); err != nil || len(entries) != 1 {
		t.Errorf("left behind: %v (%v)", entries, err)
	}
}

// A file that is written over keeps its mode, and what is no plain file stays as it is.
func TestWriteOver(t *testing.T) {
	dir := t.TempDir()
	name := filepath.Join(dir, "sheet.html")
	for _, text := range []string{"one", "two"} {
		if err := writeOver(name, []byte(text)); err != nil {
			t.Fatal(err)
		}
		onlyFile(t, dir, text)
		if err := os.Chmod(name, 0o600); err != nil {
			t.Fatal(err)
		}
	}
	if err := writeOver(name, []byte("three")); err != nil {
		t.Fatal(err)
	}
	if info, err := os.Stat(name); err != nil || info.Mode().Perm() != 0o600 {
		t.Errorf("the mode is %v (%v)", info.Mode(), err)
	}
	if err := os.Chmod(name, 0o400); err != nil {
		t.Fatal(err)
	}
	if err := writeOver(name, []byte("four")); err == nil || !strings.Contains(err.Error(), "not to be written") {
		t.Errorf("over a file that is kept from writing: %v", err)
	}
	onlyFile(t, dir, "three")
	if err := writeOver(dir, []byte("four")); err == nil {
		t.Error("written over a folder")
	}
	if err := os.Remove(name); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink("elsewhere", name); err != nil {
		t.Skip(err)
	}
	if err := writeOver(name, []byte("four")); err == nil {
		t.Error("written over, or through, a link")
	}
}

// Longer texts than a design may have are compared whole: a baseline is one.
func TestReplaceLong(t *testing.T) {
	dir := t.TempDir()
	name := filepath.Join(dir, "accepted.csv")
	old := bytes.Repeat([]byte("a line of a baseline\n"), 2*source.MaxBytes/20)
	if err := os.WriteFile(name, old, 0o644); err != nil {
		t.Fatal(err)
	}
	if err := replace(name, old, []byte("new")); err != nil {
		t.Fatal(err)
	}
	onlyFile(t, dir, "new")
	if err := replace(name, []byte("ne"), nil); err == nil {
		t.Error("a file that grew was replaced")
	}
}

// Of several files all are written or none, and no folder stays that was made for them.
func TestCreateAll(t *testing.T) {
	dir := t.TempDir()
	files := []newFile{{path: "a/b/one.txt", text: []byte("one")}, {path: "hook", text: []byte("#!/bin/sh\n"), run: true}, {path: "two.txt", text: []byte("two")}}
	if err := os.WriteFile(filepath.Join(dir, "two.txt"), []byte("theirs"), 0o644); err != nil {
		t.Fatal(err)
	}
	if err := createAll(dir, files); err == nil || !strings.Contains(err.Error(), "two.txt: it is there already") {
		t.Errorf("over a file: %v", err)
	}
	onlyFile(t, dir, "theirs")
	if err := os.Remove(filepath.Join(dir, "two.txt")); err != nil {
		t.Fatal(err)
	}
	if err := createAll(dir, files); err != nil {
		t.Fatal(err)
	}
	for _, f := range files {
		name := filepath.Join(dir, filepath.FromSlash(f.path))
		text, err := os.ReadFile(name)
		if err != nil || !bytes.Equal(text, f.text) {
			t.Errorf("%s holds %q (%v)", f.path, text, err)
		}
		if info, err := os.Stat(name); err == nil && info.Mode().Perm()&0o100 != 0 != f.run {
			t.Errorf("%s has the mode %v", f.path, info.Mode())
		}
	}
}

// On a disk without links names are given as well, and none that is taken. What
// cannot be written whole leaves nothing behind.
func TestCreateAllWithoutLinks(t *testing.T) {
	noLinks := func(string, string) error { return errors.ErrUnsupported }
	dir := t.TempDir()
	files := []newFile{{path: "a/one.txt", text: []byte("one")}, {path: "hook", text: []byte("#!/bin/sh\n"), run: true}, {path: "two.txt", text: []byte("two")}}
	put := func() error {
		stage, err := stageAll(dir, files)
		if err != nil {
			t.Fatal(err)
		}
		return errors.Join(settleAll(stage, dir, files, noLinks), os.RemoveAll(stage))
	}
	if err := os.WriteFile(filepath.Join(dir, "two.txt"), []byte("theirs"), 0o644); err != nil {
		t.Fatal(err)
	}
	if err := put(); err == nil || !strings.Contains(err.Error(), "two.txt: it is there already") {
		t.Errorf("over a file: %v", err)
	}
	onlyFile(t, dir, "theirs")
	if err := os.Remove(filepath.Join(dir, "two.txt")); err != nil {
		t.Fatal(err)
	}
	if err := put(); err != nil {
		t.Fatal(err)
	}
	for _, f := range files {
		name := filepath.Join(dir, filepath.FromSlash(f.path))
		text, err := os.ReadFile(name)
		if err != nil || !bytes.Equal(text, f.text) {
			t.Errorf("%s holds %q (%v)", f.path, text, err)
		}
		if info, err := os.Stat(name); err == nil && info.Mode().Perm()&0o100 != 0 != f.run {
			t.Errorf("%s has the mode %v", f.path, info.Mode())
		}
	}
	// The last of them cannot be written: no file has its name, no folder stays.
	empty := filepath.Join(dir, "deep", "er")
	if err := createAll(empty, append(slices.Clone(files), newFile{path: "hook/below.txt"})); err == nil {
		t.Error("a file below a file was written")
	}
	if _, err := os.Lstat(filepath.Join(dir, "deep")); !errors.Is(err, fs.ErrNotExist) {
		t.Errorf("a folder stays: %v", err)
	}
}

// Another group than the file had may do no more than anybody.
func TestGroupAsOthers(t *testing.T) {
	for mode, want := range map[fs.FileMode]fs.FileMode{0o640: 0o600, 0o644: 0o644, 0o664: 0o644, 0o660: 0o600, 0o755: 0o755, 0o604: 0o604, 0o666: 0o666, 0o750: 0o700} {
		if got := groupAsOthers(mode); got != want {
			t.Errorf("%o: %o, want %o", mode, got, want)
		}
	}
}
