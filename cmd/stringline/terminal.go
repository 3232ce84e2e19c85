package main

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"strings"
	"sync"
	"syscall"
	"time"

	"stringline/lint/report"
)

// This is the only file that prints. The rules:
//   - what was asked for goes to standard output, all of it and nothing else
//   - what is said about the run goes to standard error, one line each, after
//     the program's name, escaped: a path or a design cannot write on the terminal
//   - an output is built in full before it is written, so that a failure leaves
//     no half of it behind; that of a check over many designs grows as they are
//     judged, and one that was called off is closed so that it can be read
//   - a reader that has gone away is no failure; a full disk is

// write puts a finished output on standard output and gives the exit status:
// code, or 2 where writing failed.
func (s *streams) write(code int, build func(io.Writer) error) int {
	var b strings.Builder
	if err := build(&b); err != nil {
		return s.fail(err)
	}
	if _, err := io.WriteString(s.out, b.String()); err != nil && !errors.Is(err, syscall.EPIPE) {
		return s.fail(fmt.Errorf("writing the output: %w", err))
	}
	return code
}

// growing is an output on its way to standard output. What is written is put
// together into larger pieces; a reader that has gone away takes all of it.
type growing struct {
	*bufio.Writer
	s    *streams
	gone bool
}

// pieces is how much of a growing output is written at once.
const pieces = 64 << 10

func (s *streams) grow() *growing {
	g := &growing{s: s}
	g.Writer = bufio.NewWriterSize(writerFunc(func(p []byte) (int, error) {
		if g.gone {
			return len(p), nil
		}
		n, err := s.out.Write(p)
		if errors.Is(err, syscall.EPIPE) {
			g.gone = true
			return len(p), nil
		}
		if err != nil {
			err = fmt.Errorf("writing the output: %w", err)
		}
		return n, err
	}), pieces)
	return g
}

// end writes what is left and gives the exit status: code, or 2 where writing failed.
func (g *growing) end(code int) int {
	if err := g.Flush(); err != nil {
		return g.s.fail(err)
	}
	return code
}

type writerFunc func([]byte) (int, error)

func (f writerFunc) Write(p []byte) (int, error) { return f(p) }

// fail says on standard error what went wrong and gives the exit status 2.
func (s *streams) fail(err error) int {
	s.say(err.Error())
	return 2
}

// say puts lines about the run on standard error. Where even that cannot be
// written there is nobody left to tell.
func (s *streams) say(text string) {
	for line := range strings.Lines(text) {
		_, _ = fmt.Fprintf(s.err, "stringline: %s\n", report.Escape(strings.TrimSuffix(line, "\n")))
	}
}

// prompt puts a question, or what is wrong with its answer, on standard error: what
// was asked for goes to standard output alone.
func (s *streams) prompt(text string) { _, _ = io.WriteString(s.err, text) }

// explain says what is wrong with a command line, then how it is written.
func (s *streams) explain(what, help string) {
	s.say(what)
	_, _ = fmt.Fprintf(s.err, "\n%s", help)
}

// progress shows on standard error how far a run is, from its second second on
// and only on a terminal. done takes the line away again.
type progress struct {
	s     *streams
	mutex sync.Mutex
	timer *time.Timer
	shown bool
	late  bool
	over  bool
	text  string
	what  string // is being done
}

// progressAfter is how long a run may stay silent.
const progressAfter = time.Second

func (s *streams) progress() *progress {
	p := &progress{s: s, what: "judging designs"}
	if s.errTerminal && s.env("TERM") != "dumb" {
		p.timer = time.AfterFunc(progressAfter, func() {
			p.mutex.Lock()
			defer p.mutex.Unlock()
			p.late = true
			if p.text == "" {
				p.text = p.what
			}
			p.show()
		})
	}
	return p
}

// at notes how much of a run is done. Any goroutine may call it.
func (p *progress) at(done, total int) {
	p.mutex.Lock()
	defer p.mutex.Unlock()
	p.text = fmt.Sprintf("%s: %d of %d", p.what, done, total)
	p.show()
}

func (p *progress) show() {
	if p.late && !p.over {
		p.shown = true
		_, _ = fmt.Fprintf(p.s.err, "\r%s", p.text)
	}
}

func (p *progress) done() {
	if p.timer == nil {
		return
	}
	p.timer.Stop()
	p.mutex.Lock()
	defer p.mutex.Unlock()
	p.over = true
	if p.shown {
		_, _ = fmt.Fprintf(p.s.err, "\r%s\r", strings.Repeat(" ", len(p.text)))
	}
}
