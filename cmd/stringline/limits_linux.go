package main

import (
	"fmt"
	"os"
	"time"

	"golang.org/x/sys/unix"

	"stringline/lint"
)

// newIsolation gives what runs codebooks apart, nil where the system has no
// limit on memory.
func newIsolation(most time.Duration, memory uint64) lint.Isolation {
	// The very program that runs, even where another was put in its place.
	program := "/proc/self/exe"
	if _, err := os.Stat(program); err != nil {
		if program, err = os.Executable(); err != nil {
			return nil
		}
	}
	return isolation{program: program, time: most, memory: memory}
}

// limitWorker takes from this process all but the given memory, and the means to
// open a file or a connection, to write a file, or to leave a core behind.
func limitWorker(memory uint64) error {
	for _, l := range []struct {
		resource int
		most     uint64
	}{
		// The address space would be no measure: much of it is reserved and
		// never used.
		{unix.RLIMIT_DATA, memory},
		// Above the three pipes no number is free: open and socket fail.
		{unix.RLIMIT_NOFILE, 3},
		{unix.RLIMIT_FSIZE, 0},
		{unix.RLIMIT_CORE, 0},
	} {
		if err := unix.Setrlimit(l.resource, &unix.Rlimit{Cur: l.most, Max: l.most}); err != nil {
			return fmt.Errorf("limiting a worker: %w", err)
		}
	}
	return nil
}
