//go:build !unix

package main

import (
	"io/fs"
	"os"
)

// keepOwner does nothing where files have no owner and group in their modes.
func keepOwner(*os.File, fs.FileInfo) (group bool) { return true }
