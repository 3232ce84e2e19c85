package main

import (
	"bytes"
	"context"
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"
)

func testStreams(env map[string]string) (*streams, *bytes.Buffer, *bytes.Buffer) {
	var out, err bytes.Buffer
	return &streams{
		in: strings.NewReader(""), out: &out, err: &err,
		env: func(name string) string { return env[name] },
		dir: os.Getwd, disk: disk{},
		now: func() time.Time { return time.Date(2026, 5, 2, 23, 59, 0, 0, time.UTC) },
	}, &out, &err
}

// The order is that of the NO_COLOR and CLICOLOR conventions: the option, then
// NO_COLOR (not empty: off), then CLICOLOR_FORCE, then the terminal.
func TestColored(t *testing.T) {
	for _, c := range []struct {
		option   string
		env      map[string]string
		terminal bool
		want     bool
	}{
		{"auto", nil, false, false},
		{"auto", nil, true, true},
		{"auto", map[string]string{"TERM": "dumb"}, true, false},
		{"auto", map[string]string{"NO_COLOR": "1"}, true, false},
		{"auto", map[string]string{"NO_COLOR": ""}, true, true},
		{"auto", map[string]string{"CLICOLOR_FORCE": "1"}, false, true},
		{"auto", map[string]string{"CLICOLOR_FORCE": "0"}, false, false},
		{"auto", map[string]string{"CLICOLOR_FORCE": "1", "NO_COLOR": "1"}, true, false},
		{"always", map[string]string{"NO_COLOR": "1", "TERM": "dumb"}, false, true},
		{"never", map[string]string{"CLICOLOR_FORCE": "1"}, true, false},
	} {
		s, _, _ := testStreams(c.env)
		s.outTerminal = c.terminal
		if got := s.colored(c.option); got != c.want {
			t.Errorf("--color %s, %v, terminal %v: %v", c.option, c.env, c.terminal, got)
		}
	}
}

type failing struct{ err error }

func (f failing) Write([]byte) (int, error) { return 0, f.err }

func TestWrite(t *testing.T) {
	build := func(w io.Writer) error { _, err := io.WriteString(w, "text"); return err }
	s, out, said := testStreams(nil)
	if code := s.write(1, build); code != 1 || out.String() != "text" || said.Len() > 0 {
		t.Errorf("exit status %d, wrote %q, said %q", code, out, said)
	}
	s.out = failing{&os.PathError{Op: "write", Path: "out", Err: syscall.EPIPE}}
	if code := s.write(1, build); code != 1 || said.Len() > 0 {
		t.Errorf("a reader that went away: exit status %d, said %q", code, said)
	}
	s.out = failing{syscall.ENOSPC}
	if code := s.write(0, build); code != 2 || !strings.Contains(said.String(), "writing the output") {
		t.Errorf("a full disk: exit status %d, said %q", code, said)
	}
	said.Reset()
	out.Reset()
	s.out = out
	code := s.write(0, func(w io.Writer) error { _ = build(w); return errors.New("doing it: no") })
	if code != 2 || out.Len() > 0 || said.String() != "stringline: doing it: no\n" {
		t.Errorf("a failing output: exit status %d, wrote %q, said %q", code, out, said)
	}
}

func TestSayEscapes(t *testing.T) {
	s, _, said := testStreams(nil)
	s.say("one\x1b[31m\ntwo\r::error::\u202e")
	if want := "stringline: one\\x1b[31m\nstringline: two\\r::error::\\u202e\n"; said.String() != want {
		t.Errorf("said %q, want %q", said, want)
	}
}

func TestProgressIsLateAndLeavesNothing(t *testing.T) {
	s, _, said := testStreams(nil)
	p := s.progress() // no terminal: no timer, so never shown
	p.at(1, 3)
	p.done()
	if said.Len() > 0 {
		t.Errorf("said %q where nobody watches", said)
	}
	s.errTerminal = true
	p = s.progress()
	p.at(1, 3)
	p.done()
	if said.Len() > 0 {
		t.Errorf("said %q in a short run", said)
	}
	p = s.progress()
	p.timer.Stop()
	p.late = true
	p.at(2, 3)
	p.done()
	p.at(3, 3)
	const line = "judging designs: 2 of 3"
	if want := "\r" + line + "\r" + strings.Repeat(" ", len(line)) + "\r"; said.String() != want {
		t.Errorf("said %q, want %q", said, want)
	}
}

// TestDiskIsConfined: nothing leads out of a tree, and what is no file is not
// waited for.
func TestDiskIsConfined(t *testing.T) {
	dir := t.TempDir()
	inside := filepath.Join(dir, "inside")
	for name, text := range map[string]string{"secret": "x", "inside/file": "y", "inside/sub/file": "z"} {
		name = filepath.Join(dir, name)
		if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	for link, to := range map[string]string{"out": "../secret", "in": "sub/file", "loop": "loop", "gone": "nothing"} {
		if err := os.Symlink(to, filepath.Join(inside, link)); err != nil {
			t.Skip("no symbolic links here")
		}
	}
	tree, err := disk{}.Root(slashed(inside))
	if err != nil {
		t.Fatal(err)
	}
	for name, want := range map[string]string{"file": "y", "sub/file": "z", "in": "z"} {
		if got, err := fs.ReadFile(tree, name); err != nil || string(got) != want {
			t.Errorf("%s: %q, %v", name, got, err)
		}
	}
	for _, name := range []string{"out", "../secret", "loop", "nothing", "/file", "sub/../../secret"} {
		if got, err := fs.ReadFile(tree, name); err == nil {
			t.Errorf("%s gives %q", name, got)
		}
		if _, err := fs.Stat(tree, name); err == nil && name != "loop" {
			t.Errorf("%s can be looked at", name)
		}
	}
	if _, err := (disk{}).Stat(slashed(filepath.Join(inside, "gone"))); !errors.Is(err, errDangling) {
		t.Errorf("a link that leads nowhere: %v", err)
	}
	names, err := fs.ReadDir(tree, ".")
	if err != nil || len(names) < 5 {
		t.Errorf("listing: %v, %v", names, err)
	}
}

// TestRunStopsWhenAsked: a run whose context is over ends with exit status 2, and
// says that nothing was judged.
func TestRunStopsWhenAsked(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	s, out, said := testStreams(nil)
	if code := run(ctx, []string{"check", "../../examples/hut"}, s); code != 2 || !strings.Contains(out.String(), "interrupted: 0 of 2 designs") || !strings.HasPrefix(said.String(), "stringline: interrupted: 0 of 2 designs") {
		t.Errorf("exit status %d, wrote %q, said %q", code, out, said)
	}
}

// COLUMNS sets the width whether or not there is a terminal, which it overrules;
// what is no positive whole number counts for nothing (POSIX, Base Definitions, 8.3).
func TestWidthWanted(t *testing.T) {
	for _, c := range []struct {
		columns        string
		terminal, want int
	}{
		{"", 0, 0}, {"", 132, 132}, {"60", 0, 60}, {"60", 132, 60}, {"0", 132, 132}, {"-5", 132, 132}, {"wide", 90, 90}, {"40.5", 90, 90}, {" 60", 90, 90}, {"99999999999", 90, 90},
	} {
		if got := widthWanted(c.columns, c.terminal); got != c.want {
			t.Errorf("COLUMNS=%q on %d columns: %d, want %d", c.columns, c.terminal, got, c.want)
		}
	}
}
