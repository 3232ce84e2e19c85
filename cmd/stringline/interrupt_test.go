package main

import (
	"context"
	"encoding/json"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"github.com/joshdk/go-junit"
)

// manyHuts writes n copies of the hut below dir.
func manyHuts(t testing.TB, dir string, n int) {
	t.Helper()
	if err := os.CopyFS(dir, os.DirFS("../../examples/hut")); err != nil {
		t.Fatal(err)
	}
	text, err := os.ReadFile(filepath.Join(dir, "hut.design.hcl"))
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{"hut.design.hcl", "hut-broken.design.hcl"} {
		if err := os.Remove(filepath.Join(dir, name)); err != nil {
			t.Fatal(err)
		}
	}
	for i := range n {
		if err := os.WriteFile(filepath.Join(dir, fmt.Sprintf("%04d.design.hcl", i)), text, 0o644); err != nil {
			t.Fatal(err)
		}
	}
}

// TestInterrupt calls a run off when its first piece of output comes: what was
// judged is told, the output can be read, and the exit status is 2.
func TestInterrupt(t *testing.T) {
	dir := t.TempDir()
	const huts = 60
	manyHuts(t, dir, huts)
	for _, form := range []string{"json", "junit"} {
		t.Run(form, func(t *testing.T) {
			ctx, cancel := context.WithCancel(t.Context())
			defer cancel()
			s, out, said := testStreams(nil)
			s.dir = func() (string, error) { return dir, nil }
			s.out = writerFunc(func(p []byte) (int, error) {
				cancel()
				return out.Write(p)
			})
			if code := run(ctx, []string{"check", "--as", form}, s); code != 2 {
				t.Errorf("exit status %d", code)
			}
			var judged, of int
			if _, err := fmt.Sscanf(strings.TrimPrefix(said.String(), "stringline: "), "interrupted: %d of %d designs", &judged, &of); err != nil || of != huts || judged < 1 || judged >= huts {
				t.Fatalf("%q: %v", said, err)
			}
			if form == "junit" {
				suites, err := junit.Ingest(out.Bytes())
				if err != nil || len(suites) != judged+1 || suites[judged].Totals.Error != 2 {
					t.Errorf("%d suites, %v", len(suites), err)
				}
				return
			}
			var doc struct {
				Designs []struct{ File string }
				Errors  []struct{ Kind string }
				Exit    int
				Summary struct {
					Designs   int
					NotJudged int `json:"not_judged"`
				}
			}
			if err := json.Unmarshal(out.Bytes(), &doc); err != nil {
				t.Fatal(err)
			}
			if len(doc.Designs) != judged || doc.Summary.Designs != judged || doc.Summary.NotJudged != huts-judged || doc.Exit != 2 || len(doc.Errors) != 1 || doc.Errors[0].Kind != "interrupted" {
				t.Errorf("%d designs, %+v, exit %d", len(doc.Designs), doc.Summary, doc.Exit)
			}
		})
	}
}

// TestGrowing: an output that cannot be written ends with 2; a reader that has gone
// away changes nothing.
func TestGrowing(t *testing.T) {
	dir := t.TempDir()
	manyHuts(t, dir, 3)
	for _, c := range []struct {
		fail error
		want int
	}{{nil, 0}, {io.ErrShortWrite, 2}, {syscall.EPIPE, 0}} {
		s, _, said := testStreams(nil)
		s.dir = func() (string, error) { return dir, nil }
		s.out = writerFunc(func(p []byte) (int, error) {
			if c.fail != nil {
				return 0, c.fail
			}
			return len(p), nil
		})
		if code := run(t.Context(), []string{"check", "--as", "json"}, s); code != c.want {
			t.Errorf("with %v: exit status %d, said %s", c.fail, code, said)
		}
	}
}

// BenchmarkCheck is the whole command over one folder; designs=1 is what it is
// a ratio to. What it writes is thrown away, but counted.
func BenchmarkCheck(b *testing.B) {
	for _, c := range []struct {
		n     int
		forms []string
	}{{1, checkForms}, {2000, []string{"text", "json"}}} {
		n, dir := c.n, b.TempDir()
		manyHuts(b, dir, n)
		for _, form := range c.forms {
			b.Run(fmt.Sprintf("designs=%d/as=%s", n, form), func(b *testing.B) {
				b.ReportAllocs()
				written := 0
				for b.Loop() {
					s, _, said := testStreams(nil)
					s.dir = func() (string, error) { return dir, nil }
					written = 0
					s.out = writerFunc(func(p []byte) (int, error) {
						written += len(p)
						return len(p), nil
					})
					if code := run(b.Context(), []string{"check", "--as", form}, s); code != 0 {
						b.Fatalf("exit status %d: %s", code, said)
					}
				}
				b.ReportMetric(float64(written)/float64(n), "bytes-out/design")
				b.ReportMetric(float64(b.Elapsed().Microseconds())/1000/float64(b.N*n), "ms/design")
			})
		}
	}
}
