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
	"time"
)

// grace is how long a run may take to stop when it is asked to, and closing how
// many times as long to write what it has found by then. Who cannot wait asks a
// second time, which ends the process at once.
const (
	grace   = time.Second
	closing = 10
)

func main() {
	if isWorker(os.Args) {
		os.Exit(work(os.Args[2]))
	}
	// A run is short and allocates most in its first tenth of a second, while
	// codebooks compile: collecting rarely saves a fifth of that. The limit makes
	// the collector work again where a run over many designs grows.
	if os.Getenv("GOGC") == "" {
		debug.SetGCPercent(400)
		debug.SetMemoryLimit(256 << 20)
	}
	s := processStreams()
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	// Not all work looks at the context (a read of standard input cannot): what
	// does not end by itself soon after the signal is ended.
	forget := context.AfterFunc(ctx, func() {
		stop()
		for n := 0; n == 0 || n < closing && s.closing.Load(); n++ {
			time.Sleep(grace)
		}
		s.say("interrupted: what was being done did not end in time, so nothing more is told of it")
		os.Exit(2)
	})
	// A reader that closes the pipe early is no fault of the run: writing then
	// gives an error, which the terminal knows, instead of a signal that kills.
	signal.Ignore(brokenPipe...)
	code := run(ctx, os.Args[1:], s)
	forget() // or stop would count as a signal, where leaving takes longer than the grace
	stop()
	os.Exit(code)
}
