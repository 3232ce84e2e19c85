package lint

import (
	"context"
	"runtime"
	"sync"
	"sync/atomic"
)

// Spread does n jobs, by their numbers from 0, on a bounded number of workers; 0
// workers are one a processor. After an error no job is begun any more, and the
// first error is given; else the context's. Where there is none, all jobs were done.
func Spread(ctx context.Context, workers, n int, do func(i int) error) error {
	if workers <= 0 {
		workers = runtime.GOMAXPROCS(0)
	}
	ctx, stop := context.WithCancelCause(ctx)
	defer stop(nil)
	var next atomic.Int64
	var group sync.WaitGroup
	for range min(workers, n) {
		group.Go(func() {
			for ctx.Err() == nil {
				i := int(next.Add(1)) - 1
				if i >= n {
					return
				}
				if err := do(i); err != nil {
					stop(err) // the first cause stays
				}
			}
		})
	}
	group.Wait()
	return context.Cause(ctx)
}
