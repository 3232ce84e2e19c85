//go:build unix

package main

import (
	"os"
	"path/filepath"
	"syscall"
	"testing"
)

// The administrator who tidies somebody's design leaves it theirs, with its mode.
func TestReplaceKeepsTheOwner(t *testing.T) {
	if os.Geteuid() != 0 {
		t.Skip("only the administrator can give a file away")
	}
	const user, group = 12345, 23456
	name := filepath.Join(t.TempDir(), "a.design.hcl")
	for _, write := range []func() error{
		func() error { return replace(name, []byte("old"), []byte("new")) },
		func() error { return writeOver(name, []byte("newer")) },
	} {
		if err := os.WriteFile(name, []byte("old"), 0o644); err != nil {
			t.Fatal(err)
		}
		if err := os.Chown(name, user, group); err != nil {
			t.Skip("this disk knows no owners: ", err)
		}
		if err := os.Chmod(name, 0o640); err != nil {
			t.Fatal(err)
		}
		if err := write(); err != nil {
			t.Fatal(err)
		}
		info, err := os.Stat(name)
		if err != nil {
			t.Fatal(err)
		}
		if at := info.Sys().(*syscall.Stat_t); at.Uid != user || at.Gid != group || info.Mode().Perm() != 0o640 {
			t.Errorf("owner %d, group %d, mode %v", at.Uid, at.Gid, info.Mode())
		}
		if err := os.Remove(name); err != nil {
			t.Fatal(err)
		}
	}
}
