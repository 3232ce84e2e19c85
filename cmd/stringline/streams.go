package main

import (
	"io"
	"os"
	"sync/atomic"
	"time"

	"github.com/mattn/go-isatty"
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
	width       int  // of the terminal in columns, 0 where it is not known
	env         func(name string) string
	dir         func() (string, error)
	now         func() time.Time
	disk        disk
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
	return s
}
