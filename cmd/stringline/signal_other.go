//go:build !unix

package main

import "os"

var brokenPipe []os.Signal

// terminalWidth gives the columns of a terminal, 0 where they are not known.
func terminalWidth(*os.File) int { return 0 }
