package lint

import (
	"context"
	"fmt"
	"path"
	"runtime"
	"strings"
	"sync"
)

// ahead is how many designs a worker may be ahead of the oldest that is not
// handed on: one slow design must not stop the others, nor let them pile up.
const ahead = 8

// judgeAll judges the jobs with a bounded number of workers and hands on what
// they found in the order of the jobs, one at a time. It keeps no more than a few
// results a worker. Where the context ends it, what is judged by then is handed
// on, and the error is the context's.
func judgeAll(ctx context.Context, o Options, accepted *against, jobs []job, hand func(*DesignResult) error) error {
	workers := o.Workers
	if workers <= 0 {
		workers = runtime.GOMAXPROCS(0)
	}
	ctx, stop := context.WithCancelCause(ctx)
	defer stop(nil)
	var (
		group sync.WaitGroup
		room  = make(chan struct{}, ahead*workers) // a place for each job that is taken and not handed on
		mutex sync.Mutex
		taken int
		line  = queue{jobs: len(jobs), hand: hand, progress: o.Progress, waiting: map[int]*DesignResult{}}
	)
	take := func() (int, bool) {
		select {
		case <-ctx.Done():
			return 0, false
		case room <- struct{}{}:
		}
		mutex.Lock()
		defer mutex.Unlock()
		taken++
		return taken - 1, taken <= len(jobs) && ctx.Err() == nil
	}
	for range min(workers, len(jobs)) {
		group.Go(func() {
			for {
				i, more := take()
				if !more {
					return
				}
				found, err := safely(ctx, &jobs[i], o, accepted)
				if err != nil {
					stop(err) // the context's own error changes nothing here
					return
				}
				mutex.Lock()
				before := line.next
				err = line.put(i, &found)
				handed := line.next - before
				mutex.Unlock()
				for range handed {
					<-room
				}
				if err != nil {
					stop(err)
					return
				}
			}
		})
	}
	group.Wait()
	if ctx.Err() == nil {
		return nil
	}
	if line.failed == nil {
		line.failed = line.rest()
	}
	switch {
	case line.failed != nil:
		return line.failed
	case line.handed == len(jobs): // called off when it was over
		return nil
	}
	return context.Cause(ctx)
}

// safely judges a job. A failure of the program itself ends the run with an error
// that says where, instead of the process: what was judged by then can still be told,
// and an output be closed so that it can be read.
func safely(ctx context.Context, j *job, o Options, accepted *against) (found DesignResult, err error) {
	defer func() {
		if failure := recover(); failure != nil {
			err = fmt.Errorf("judging %s: the program itself failed: %v, at %s", j.show, failure, failedAt())
		}
	}()
	return j.judge(ctx, o, accepted)
}

// failedAt gives the place in the source that a panic came from. It is asked while
// the panic is recovered.
func failedAt() string {
	var callers [64]uintptr
	frames := runtime.CallersFrames(callers[:runtime.Callers(1, callers[:])])
	panicked := false
	for {
		frame, more := frames.Next()
		inside := strings.HasPrefix(frame.Function, "runtime.")
		if panicked && !inside {
			return fmt.Sprintf("%s:%d", path.Base(frame.File), frame.Line)
		}
		panicked = panicked || frame.Function == "runtime.gopanic"
		if !more {
			return "an unknown place"
		}
	}
}

// queue hands results on in the order of their jobs.
type queue struct {
	jobs, next, handed int
	waiting            map[int]*DesignResult
	hand               func(*DesignResult) error
	progress           func(done, total int)
	failed             error // of hand: nothing is handed on after it
}

// put takes a result in and hands on all that is due.
func (q *queue) put(i int, d *DesignResult) error {
	q.waiting[i] = d
	for d = q.waiting[q.next]; d != nil && q.failed == nil; d = q.waiting[q.next] {
		q.out(q.next, d)
		q.next++
	}
	return q.failed
}

// rest hands on what waits behind a job that will never be done.
func (q *queue) rest() error {
	for i := q.next; i < q.jobs && q.failed == nil; i++ {
		if d := q.waiting[i]; d != nil {
			q.out(i, d)
		}
	}
	return q.failed
}

func (q *queue) out(i int, d *DesignResult) {
	delete(q.waiting, i)
	if q.failed = q.hand(d); q.failed != nil {
		return
	}
	if q.handed++; q.progress != nil {
		q.progress(q.handed, q.jobs)
	}
}
