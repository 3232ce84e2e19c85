//go:build unix

package main

import (
	"errors"
	"io/fs"
	"path/filepath"
	"syscall"
	"testing"
)

// TestPipeIsNotWaitedFor: opening a pipe that nobody writes to returns at once.
func TestPipeIsNotWaitedFor(t *testing.T) {
	dir := t.TempDir()
	if err := syscall.Mkfifo(filepath.Join(dir, "pipe.design.hcl"), 0o644); err != nil {
		t.Skip("no pipes here")
	}
	tree, err := disk{}.Root(slashed(dir))
	if err != nil {
		t.Fatal(err)
	}
	if _, err := fs.ReadFile(tree, "pipe.design.hcl"); !errors.Is(err, errIrregular) {
		t.Errorf("a pipe: %v", err)
	}
}
