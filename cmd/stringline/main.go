// Stringline judges designs of small battery-based solar systems: what is
// unsafe, what is too tight, what cannot be known yet, and by how much
// everything else meets its limit.
package main

import (
	"context"
	"os"
	"os/signal"
	"runtime/debug"
	"syscall"
)

func main() {
	// A run is short and allocates most in its first tenth of a second, while
	// codebooks compile: collecting rarely saves a fifth of that. What it keeps
	// is bounded (one window of designs), and the limit makes the collector
	// work again should a run grow all the same.
	if os.Getenv("GOGC") == "" {
		debug.SetGCPercent(400)
		debug.SetMemoryLimit(256 << 20)
	}
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	// A reader that closes the pipe early is no fault of the run: writing then
	// gives an error, which the terminal knows, instead of a signal that kills.
	signal.Ignore(brokenPipe...)
	code := run(ctx, os.Args[1:], processStreams())
	stop()
	os.Exit(code)
}
