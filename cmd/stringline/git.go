package main

import (
	"bufio"
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"strconv"
	"strings"
	"sync"
	"time"
)

// git is what is asked of the git program: to read, never to write.
type git interface {
	// output runs git in a folder and gives its standard output.
	output(ctx context.Context, dir string, args ...string) ([]byte, error)
	// objects begins to read objects of the repository that a folder lies in.
	objects(ctx context.Context, dir string) (gitObjects, error)
}

// gitObjects reads the contents of objects by their names.
type gitObjects interface {
	read(name string) ([]byte, error)
	close()
}

// gitProgram runs the git program without a shell. What a repository's settings
// could make it run or write is switched off, and of the environment nothing that
// begins with GIT_ is handed on: inside a hook it would name another index. Who
// may read whose repository stays git's own decision.
type gitProgram struct {
	program string
	env     []string
}

var errNoGit = errors.New("the git program is not on the search path; two files or folders can be compared without it: stringline compare OLD NEW")

// findGit finds the program. environ holds NAME=VALUE.
func findGit(environ []string) (git, error) {
	program, err := exec.LookPath("git")
	if err != nil {
		return nil, errNoGit
	}
	return &gitProgram{program, gitEnvironment(environ)}, nil
}

func gitEnvironment(environ []string) []string {
	var env []string
	for _, e := range environ {
		name, _, _ := strings.Cut(strings.ToUpper(e), "=")
		if !strings.HasPrefix(name, "GIT_") && name != "LC_ALL" && name != "LANGUAGE" && name != "PAGER" {
			env = append(env, e)
		}
	}
	return append(env,
		"LC_ALL=C",                // messages that can be told apart
		"GIT_OPTIONAL_LOCKS=0",    // nothing is written beside
		"GIT_TERMINAL_PROMPT=0",   // nobody is asked for a password
		"GIT_NO_LAZY_FETCH=1",     // what a partial clone lacks is told, not fetched
		"GIT_ALLOW_PROTOCOL=none", // the same for a git that does not know the line above
		"GIT_NO_REPLACE_OBJECTS=1",
	)
}

// gitOptions stand before every command.
var gitOptions = []string{
	"--no-optional-locks", "--no-pager", "--literal-pathspecs",
	"-c", "core.fsmonitor=false", "-c", "core.hooksPath=" + os.DevNull, "-c", "core.pager=cat",
	"-c", "diff.external=", "-c", "protocol.allow=never", "-c", "core.askPass=",
}

func (g *gitProgram) command(ctx context.Context, dir string, args ...string) *exec.Cmd {
	c := exec.CommandContext(ctx, g.program, append(append([]string{}, gitOptions...), args...)...)
	c.Dir, c.Env = dir, g.env
	c.WaitDelay = time.Second
	return c
}

// gitError is what git said when it failed.
type gitError struct{ said string }

func (e *gitError) Error() string { return "git: " + e.said }

func (g *gitProgram) output(ctx context.Context, dir string, args ...string) ([]byte, error) {
	c := g.command(ctx, dir, args...)
	var out bytes.Buffer
	said := &head{}
	c.Stdout, c.Stderr = &out, said
	if err := c.Run(); err != nil {
		return nil, gitFault(ctx, err, said)
	}
	return out.Bytes(), nil
}

func gitFault(ctx context.Context, err error, said *head) error {
	var exit *exec.ExitError
	switch {
	case ctx.Err() != nil:
		return ctx.Err()
	case errors.As(err, &exit):
		return &gitError{strings.TrimSpace(said.String())}
	}
	return fmt.Errorf("running git: %w", err)
}

// batch is one git process that gives object after object.
type batch struct {
	mutex   sync.Mutex
	command *exec.Cmd
	in      io.WriteCloser
	out     *bufio.Reader
	said    *head
	over    bool
}

func (g *gitProgram) objects(ctx context.Context, dir string) (gitObjects, error) {
	b := &batch{command: g.command(ctx, dir, "cat-file", "--batch"), said: &head{}}
	b.command.Stderr = b.said
	var err error
	if b.in, err = b.command.StdinPipe(); err != nil {
		return nil, fmt.Errorf("making a pipe: %w", err)
	}
	out, err := b.command.StdoutPipe()
	if err != nil {
		return nil, errors.Join(fmt.Errorf("making a pipe: %w", err), b.in.Close())
	}
	b.out = bufio.NewReader(out)
	if err = b.command.Start(); err != nil {
		return nil, fmt.Errorf("running git: %w", err)
	}
	return b, nil
}

var errNotInRepository = errors.New("the repository lacks its content, as a partial clone may: fetch it with git fetch --refetch, or clone in full")

// read gives an object whole. Objects come one after another; any goroutine may
// ask.
func (b *batch) read(name string) ([]byte, error) {
	b.mutex.Lock()
	defer b.mutex.Unlock()
	if b.over {
		return nil, errNotInRepository
	}
	text, err := b.exchange(name)
	if err != nil && !errors.Is(err, errTooLarge) && !errors.Is(err, errNotInRepository) {
		b.over = true // what follows on the pipe is not known any more
		if said := strings.TrimSpace(b.said.String()); said != "" {
			err = &gitError{said}
		}
	}
	return text, err
}

func (b *batch) exchange(name string) ([]byte, error) {
	if _, err := io.WriteString(b.in, name+"\n"); err != nil {
		return nil, fmt.Errorf("asking git for an object: %w", err)
	}
	line, err := b.out.ReadString('\n')
	if err != nil {
		b.over = true
		return nil, errNotInRepository // it ended: a partial clone's object cannot be fetched
	}
	fields := strings.Fields(line)
	if len(fields) == 2 && fields[1] == "missing" {
		return nil, errNotInRepository
	}
	if len(fields) != 3 {
		return nil, fmt.Errorf("git gave %q for an object", strings.TrimSpace(line))
	}
	size, err := strconv.ParseInt(fields[2], 10, 64)
	if err != nil || size < 0 {
		return nil, fmt.Errorf("git gave an object of %s bytes", fields[2])
	}
	if size > largestObject {
		if _, err := io.CopyN(io.Discard, b.out, size+1); err != nil {
			return nil, fmt.Errorf("reading an object from git: %w", err)
		}
		return nil, errTooLarge
	}
	text := make([]byte, size+1) // a line feed follows
	if _, err := io.ReadFull(b.out, text); err != nil {
		return nil, fmt.Errorf("reading an object from git: %w", err)
	}
	return text[:size], nil
}

func (b *batch) close() {
	_ = b.in.Close() // git ends when nothing more can come
	if b.command.Process != nil {
		_ = b.command.Process.Kill() // it may have ended by itself
	}
	_ = b.command.Wait() // says that it was killed
}
