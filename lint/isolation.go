package lint

import (
	"context"

	"stringline/lint/judge"
)

// Isolation runs codebooks from outside apart from this process, in a [Worker]
// each, with limits on time and memory. What it starts calls [ServeCodebook].
type Isolation = judge.Isolation

// Worker is one process apart that [Isolation] started.
type Worker = judge.Worker

// LongestMessage bounds what passes between this process and a worker, in bytes.
const LongestMessage = judge.LongestMessage

// ServeCodebook is what a worker does: it runs one codebook that it is sent, and
// has nothing else than the messages. It returns the error of receive or send.
func ServeCodebook(ctx context.Context, receive func() ([]byte, error), send func([]byte) error) error {
	return judge.Serve(ctx, receive, send)
}
