package main

import (
	"bytes"
	"context"
	"encoding/binary"
	"errors"
	"fmt"
	"io"
	"os/exec"
	"strconv"
	"strings"
	"sync"
	"sync/atomic"
	"time"

	"stringline/lint"
)

// isolation starts this same program once for each codebook from outside. A
// worker gets an empty environment, no file and no network, only three pipes, and
// limits on its memory that it puts on itself before it reads anything.
type isolation struct {
	program string
	time    time.Duration // for one request: to load a codebook, or to judge one structure
	memory  uint64        // bytes
}

// Limits of a worker where the command line gives none. A codebook of a hundred
// rules loads in a tenth of a second and some forty megabytes.
const (
	workerTime   = 10 * time.Second
	workerMemory = 512 << 20
)

// worker is the process of one codebook.
type worker struct {
	limits  isolation
	command *exec.Cmd
	in      io.WriteCloser
	out     io.ReadCloser
	said    *head // the beginning of its standard error
	ended   sync.Once
	over    atomic.Bool // it was ended because its time was over
}

// Start starts a worker.
func (i isolation) Start(context.Context) (lint.Worker, error) {
	c := exec.Command(i.program, workerArgument, strconv.FormatUint(i.memory, 10))
	c.Args[0] = "stringline"
	c.Env = []string{} // nil would hand down ours
	c.Dir = "/"
	c.WaitDelay = time.Second
	w := &worker{limits: i, command: c, said: &head{}}
	c.Stderr = w.said
	var err error
	if w.in, err = c.StdinPipe(); err != nil {
		return nil, fmt.Errorf("making a pipe: %w", err)
	}
	if w.out, err = c.StdoutPipe(); err != nil {
		return nil, errors.Join(fmt.Errorf("making a pipe: %w", err), w.in.Close())
	}
	if err = c.Start(); err != nil {
		return nil, fmt.Errorf("starting a worker: %w", err)
	}
	return w, nil
}

// Exchange sends a request and hands on what comes back.
func (w *worker) Exchange(ctx context.Context, request []byte, answer func([]byte) ([]byte, bool, error)) error {
	timer := time.AfterFunc(w.limits.time, func() {
		w.over.Store(true)
		w.kill()
	})
	defer timer.Stop()
	defer context.AfterFunc(ctx, w.kill)()
	for over := false; ; {
		if err := sendMessage(w.in, request); err != nil {
			return w.why(err)
		}
		message, err := receiveMessage(w.out)
		if err != nil {
			return w.why(err)
		}
		if request, over, err = answer(message); err != nil {
			return fmt.Errorf("sent what it may not: %w", err)
		}
		if over {
			return nil
		}
	}
}

// kill ends the process; reads and writes give errors from then on.
func (w *worker) kill() { _ = w.command.Process.Kill() } // it may have ended by itself

// Close ends the process and takes away what is left of it.
func (w *worker) Close() {
	w.ended.Do(func() {
		w.kill()
		_ = w.command.Wait() // says that it was killed
	})
}

// why says in words what ended a worker.
func (w *worker) why(err error) error {
	var size *sizeError
	if errors.As(err, &size) {
		return err
	}
	w.Close()
	said := w.said.String()
	switch state := w.command.ProcessState; {
	case w.over.Load():
		return fmt.Errorf("took longer than %g s", w.limits.time.Seconds())
	case strings.Contains(said, "out of memory"), strings.Contains(said, "cannot allocate memory"), strings.Contains(said, "errno=12"):
		return fmt.Errorf("needed more memory than %d MiB", w.limits.memory>>20)
	case strings.Contains(said, "stack exceeds"):
		return errors.New("needed more depth than there is")
	case state != nil:
		return fmt.Errorf("ended by itself (%v)", state)
	}
	return fmt.Errorf("ended by itself: %w", err)
}

// head keeps the beginning of what is written to it and forgets the rest.
type head struct {
	mutex sync.Mutex
	text  bytes.Buffer
}

const longestHead = 4096

func (h *head) Write(b []byte) (int, error) {
	h.mutex.Lock()
	defer h.mutex.Unlock()
	h.text.Write(b[:min(len(b), longestHead-h.text.Len())])
	return len(b), nil
}

func (h *head) String() string {
	h.mutex.Lock()
	defer h.mutex.Unlock()
	return h.text.String()
}

// sizeError says that a message is longer than any may be.
type sizeError struct{ size uint32 }

func (e *sizeError) Error() string {
	return fmt.Sprintf("sent what it may not: a message of %d bytes", e.size)
}

// sendMessage writes a message behind its length.
func sendMessage(to io.Writer, message []byte) error {
	size := binary.BigEndian.AppendUint32(nil, uint32(len(message))) // at most lint.LongestMessage
	if _, err := to.Write(size); err != nil {
		return err
	}
	_, err := to.Write(message)
	return err
}

// receiveMessage reads a message. What is announced is not believed: memory is
// taken as bytes come.
func receiveMessage(from io.Reader) ([]byte, error) {
	var head [4]byte
	if _, err := io.ReadFull(from, head[:]); err != nil {
		return nil, err
	}
	size := binary.BigEndian.Uint32(head[:])
	if size > lint.LongestMessage {
		return nil, &sizeError{size}
	}
	var message bytes.Buffer
	if _, err := io.CopyN(&message, from, int64(size)); err != nil {
		return nil, fmt.Errorf("reading a message: %w", err)
	}
	return message.Bytes(), nil
}
