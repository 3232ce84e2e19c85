//go:build linux

package main

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"sync"
	"testing"
	"time"
	"unicode"

	"github.com/google/go-cmp/cmp"
	"github.com/rogpeppe/go-internal/txtar"

	"stringline/lint"
	"stringline/lint/report"
	"stringline/lint/verdict"
)

// hostileBook is one codebook of testdata/hostile/codebooks: what must be said
// about it, how the run must end, and its files.
type hostileBook struct {
	name  string
	want  []string
	exit  int
	files map[string]string
}

const hostileFolder = "../../testdata/hostile/codebooks"

// The limits that hostile codebooks run into in these tests.
const (
	hostileTime   = 3 * time.Second
	hostileMemory = 256 << 20
)

func readHostile(t *testing.T) []hostileBook {
	t.Helper()
	names, err := filepath.Glob(filepath.Join(hostileFolder, "*.txtar"))
	if err != nil || len(names) < 40 {
		t.Fatalf("found %d hostile codebooks (error: %v)", len(names), err)
	}
	var all []hostileBook
	for _, name := range names {
		archive, err := txtar.ParseFile(name)
		if err != nil {
			t.Fatal(err)
		}
		b := hostileBook{name: strings.TrimSuffix(filepath.Base(name), ".txtar"), exit: 2, files: map[string]string{
			"codebook.hcl": "name    = \"evil\"\nversion = \"1.0.0\"\n"}}
		each, bare := "pv_inputs", false
		for line := range strings.Lines(string(archive.Comment)) {
			key, value, _ := strings.Cut(strings.TrimSpace(line), ": ")
			switch key {
			case "want":
				b.want = append(b.want, value)
			case "each":
				each = value
			case "exit":
				if b.exit, err = strconv.Atoi(value); err != nil {
					t.Fatal(err)
				}
			case "bare":
				bare = true
			}
		}
		if len(b.want) == 0 {
			t.Errorf("%s says nothing of what must be said", name)
		}
		for _, f := range archive.Files {
			b.files[f.Name] = unfold(f.Name, string(f.Data), each, bare)
		}
		all = append(all, b)
	}
	return all
}

var (
	repeats = regexp.MustCompile(`<<(\d+)\*(.)>>`)
	rows    = regexp.MustCompile(`<<rows (\d+)>>`)
)

// unfold makes what is too long to be kept, and gives a rule the beginning that
// it needs to be looked at at all.
func unfold(name, text, each string, bare bool) string {
	text = repeats.ReplaceAllStringFunc(text, func(s string) string {
		m := repeats.FindStringSubmatch(s)
		n, _ := strconv.Atoi(m[1])
		return strings.Repeat(m[2], n)
	})
	text = rows.ReplaceAllStringFunc(text, func(s string) string {
		n, _ := strconv.Atoi(rows.FindStringSubmatch(s)[1])
		list := make([]string, n)
		for i := range list {
			list[i] = fmt.Sprintf("[%d,1]", i)
		}
		return strings.Join(list, ",\n")
	})
	folder, file := filepath.Split(name)
	if file != "rule.rego" || bare {
		return text
	}
	head := "# METADATA\n# title: hostile\n# description: hostile\n# custom:\n#   grade: stop\n#   each: " + each +
		"\n#   source: common practice\n#   remedy: none\n"
	if !strings.HasPrefix(text, "package ") {
		head += "package codebooks.evil." + strings.TrimSuffix(folder, "/") + "\n\n"
	}
	return head + text
}

// watch notes how long exchanges take and how much memory workers have.
type watch struct {
	lint.Isolation
	mutex   sync.Mutex
	longest time.Duration
	most    int // KiB
}

type watched struct {
	lint.Worker
	watch *watch
	stop  chan struct{}
}

func (w *watch) Start(ctx context.Context) (lint.Worker, error) {
	started, err := w.Isolation.Start(ctx)
	if err != nil {
		return nil, err
	}
	in := &watched{Worker: started, watch: w, stop: make(chan struct{})}
	go in.memory(started.(*worker).command.Process.Pid)
	return in, nil
}

func (w *watched) Exchange(ctx context.Context, request []byte, answer func([]byte) ([]byte, bool, error)) error {
	start := time.Now()
	err := w.Worker.Exchange(ctx, request, answer)
	w.watch.mutex.Lock()
	defer w.watch.mutex.Unlock()
	w.watch.longest = max(w.watch.longest, time.Since(start))
	return err
}

func (w *watched) Close() {
	close(w.stop)
	w.Worker.Close()
}

var resident = regexp.MustCompile(`VmHWM:\s+(\d+) kB`)

// memory reads the peak of a process's resident memory until it is gone.
func (w *watched) memory(pid int) {
	tick := time.NewTicker(5 * time.Millisecond)
	defer tick.Stop()
	for {
		select {
		case <-w.stop:
			return
		case <-tick.C:
		}
		status, err := os.ReadFile(fmt.Sprintf("/proc/%d/status", pid))
		if err != nil {
			return
		}
		if m := resident.FindSubmatch(status); m != nil {
			n, _ := strconv.Atoi(string(m[1]))
			w.watch.mutex.Lock()
			w.watch.most = max(w.watch.most, n)
			w.watch.mutex.Unlock()
		}
	}
}

// shop is a workshop with an honest codebook from outside, and room for another.
func shop(t *testing.T, hostile map[string]string) string {
	t.Helper()
	dir := t.TempDir()
	if err := os.CopyFS(dir, os.DirFS("../../examples/growth")); err != nil {
		t.Fatal(err)
	}
	designs, _ := filepath.Glob(filepath.Join(dir, "*.design.hcl"))
	for _, d := range designs {
		if filepath.Base(d) != "growth-24.design.hcl" {
			if err := os.Remove(d); err != nil {
				t.Fatal(err)
			}
		}
	}
	text := "parts = [\"parts/*.parts.hcl\"]\n\ncodebook \"honest\" {\n  path = \"honest\"\n}\n"
	if hostile != nil {
		text += "\ncodebook \"evil\" {\n  path = \"evil\"\n}\n"
	}
	write := func(name, text string) {
		name = filepath.Join(dir, name)
		if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	write("workshop.hcl", text)
	write("honest/codebook.hcl", "name    = \"honest\"\nversion = \"1.0.0\"\n")
	rule := unfold("honest/rule.rego", `check contains {"about": i.id, "is": i.voc_cold, "at_most": i.controller.pv_voltage_max} if some i in input.pv_inputs`+"\n", "pv_inputs", false)
	write("honest/honest/rule.rego", strings.Replace(rule, "codebooks.evil", "codebooks.honest", 1))
	for name, text := range hostile {
		write("evil/"+name, text)
	}
	return dir
}

func judgeShop(t *testing.T, dir string) (*lint.Result, *watch) {
	t.Helper()
	s, _, _ := testStreams(nil)
	s.dir = func() (string, error) { return dir, nil }
	w := &watch{Isolation: newIsolation(hostileTime, hostileMemory)}
	r, err := s.judge(t.Context(), request{apart: w, date: "2026-05-02", rejectFrom: verdict.Fix})
	if err != nil {
		t.Fatal(err)
	}
	return r, w
}

// others gives the verdicts of every codebook but the hostile one.
func others(r *lint.Result) []string {
	var list []string
	for i := range r.Designs {
		for _, v := range r.Designs[i].Verdicts {
			if !strings.HasPrefix(v.Rule, "evil.") {
				list = append(list, fmt.Sprintf("%s|%s|%s %s %v", v.Rule, v.About, v.Which, v.Outcome, v.Headroom != nil))
			}
		}
	}
	return list
}

// said gives all that any output says about the run.
func said(t *testing.T, r *lint.Result) (text, document string) {
	t.Helper()
	var a, b bytes.Buffer
	if err := report.Text(&a, r, report.Page{Width: 80}); err != nil {
		t.Fatal(err)
	}
	if err := report.JSON(&b, r); err != nil {
		t.Fatal(err)
	}
	return a.String(), b.String()
}

// TestHostileCodebooks puts each hostile codebook beside an honest one in a
// workshop and runs the whole pipeline with the real worker. Whatever it does:
// the run ends within the limits, says what is wrong and with what, and every
// other verdict stands.
func TestHostileCodebooks(t *testing.T) {
	if underRace {
		t.Skip("limits on memory do not fit what the race detector takes; scripts run the worker under it")
	}
	clean, _ := judgeShop(t, shop(t, nil))
	if clean.Exit != 0 || !strings.Contains(strings.Join(others(clean), "\n"), "honest.honest|") {
		t.Fatalf("the workshop without a hostile codebook: exit %d, %v", clean.Exit, clean.Problems)
	}
	for _, b := range readHostile(t) {
		t.Run(b.name, func(t *testing.T) {
			r, w := judgeShop(t, shop(t, b.files))
			text, document := said(t, r)
			if r.Exit != b.exit {
				t.Errorf("exit %d, want %d", r.Exit, b.exit)
			}
			if diff := cmp.Diff(others(clean), others(r)); diff != "" {
				t.Errorf("verdicts of other codebooks changed (-without +with):\n%s", diff)
			}
			flat := strings.Join(strings.Fields(text), " ") + "\n" + plainJSON(t, document)
			for _, want := range b.want {
				if !strings.Contains(flat, want) {
					t.Errorf("nothing says %q:\n%s", want, about(flat))
				}
			}
			if !strings.Contains(flat, "evil") {
				t.Error("nothing names the codebook")
			}
			for _, out := range []string{text, document} {
				for i, c := range out {
					if c != '\n' && !unicode.IsPrint(c) {
						t.Fatalf("the output holds %q at %d", c, i)
					}
				}
				for line := range strings.Lines(out) {
					if strings.HasPrefix(strings.TrimSpace(line), "::") {
						t.Errorf("a line begins with a command: %q", line)
					}
				}
			}
			if w.longest > hostileTime+time.Second {
				t.Errorf("a worker outlived its limit: %v", w.longest)
			}
			if most := hostileMemory>>10 + 64<<10; w.most > most { // the program's own text is not data
				t.Errorf("a worker took %d KiB, more than %d", w.most, most)
			}
		})
	}
}

// plainJSON gives a document's strings as they read.
func plainJSON(t *testing.T, document string) string {
	t.Helper()
	var v any
	if err := json.Unmarshal([]byte(document), &v); err != nil {
		t.Fatal(err)
	}
	var list []string
	var walk func(any)
	walk = func(v any) {
		switch v := v.(type) {
		case string:
			list = append(list, v)
		case []any:
			for _, x := range v {
				walk(x)
			}
		case map[string]any:
			for _, x := range v {
				walk(x)
			}
		}
	}
	walk(v)
	return strings.Join(list, "\n")
}

// about keeps the lines that matter to a failure.
func about(text string) string {
	var kept []string
	for line := range strings.Lines(text) {
		if strings.Contains(line, "evil") && len(kept) < 20 {
			kept = append(kept, line[:min(len(line), 400)])
		}
	}
	return strings.Join(kept, "")
}
