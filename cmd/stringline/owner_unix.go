//go:build unix

package main

import (
	"io/fs"
	"os"
	"syscall"
)

// keepOwner gives a new file the owner and group of the one that it replaces. It
// tells whether the group is kept: an owner that only the administrator could give
// is left as it is, and who may write a file may replace it.
func keepOwner(f *os.File, was fs.FileInfo) (group bool) {
	old, ok := was.Sys().(*syscall.Stat_t)
	if !ok {
		return false
	}
	info, err := f.Stat()
	if err != nil {
		return false
	}
	now, ok := info.Sys().(*syscall.Stat_t)
	switch {
	case !ok:
		return false
	case now.Uid == old.Uid && now.Gid == old.Gid, f.Chown(int(old.Uid), int(old.Gid)) == nil:
		return true
	}
	return now.Gid == old.Gid || f.Chown(-1, int(old.Gid)) == nil
}
