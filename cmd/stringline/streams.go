package main

import (
	"io"
	"os"
	"strconv"
	"sync/atomic"
	"time"

	"github.com/mattn/go-isatty"

	"stringline/lint/survey"
)

// streams are all that the program knows of the process around it: what it
// reads and writes, the environment, the folder and the clock. Tests hand in
// their own.
type streams struct {
	in          io.Reader
	out, err    io.Writer
	outTerminal bool // out is a terminal; errTerminal likewise
	errTerminal bool
	inTerminal  bool // a person can be asked
	width       int  // of text for people in columns, 0 where nothing tells
	env         func(name string) string
	dir         func() (string, error)
	now         func() time.Time
	disk        survey.Disk
	git         func() (git, error) // finds the git program; nil: there is none
	closing     atomic.Bool         // the run is over and its output is being written
}

func processStreams() *streams {
	isTerminal := func(f *os.File) bool { return isatty.IsTerminal(f.Fd()) || isatty.IsCygwinTerminal(f.Fd()) }
	s := &streams{
		in: os.Stdin, out: os.Stdout, err: os.Stderr,
		outTerminal: isTerminal(os.Stdout), errTerminal: isTerminal(os.Stderr), inTerminal: isTerminal(os.Stdin) && isTerminal(os.Stderr), // where the questions stand
		env: os.Getenv, dir: os.Getwd, now: time.Now, disk: disk{},
		git: func() (git, error) { return findGit(os.Environ()) },
	}
	if s.outTerminal {
		s.width = terminalWidth(os.Stdout)
	}
	s.width = widthWanted(s.env("COLUMNS"), s.width)
	return s
}

// widthWanted is the width of text for people: COLUMNS, a whole number above nought,
// goes before what a terminal says, and holds where there is none (POSIX, Base
// Definitions, 8.3). Anything else in it counts for nothing.
func widthWanted(columns string, terminal int) int {
	if n, err := strconv.ParseUint(columns, 10, 16); err == nil && n > 0 {
		return int(n)
	}
	return terminal
}
