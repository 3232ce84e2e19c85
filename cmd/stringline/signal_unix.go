//go:build unix

package main

import (
	"os"
	"syscall"

	"golang.org/x/sys/unix"
)

var brokenPipe = []os.Signal{syscall.SIGPIPE}

// terminalWidth gives the columns of a terminal, 0 where they are not known.
func terminalWidth(f *os.File) int {
	size, err := unix.IoctlGetWinsize(int(f.Fd()), unix.TIOCGWINSZ)
	if err != nil {
		return 0
	}
	return int(size.Col)
}
