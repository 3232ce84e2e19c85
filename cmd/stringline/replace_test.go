package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
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
