package main

import (
	"fmt"
	"io"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"sync/atomic"
	"testing"
	"time"
)

// TestInParts: what belongs together stays together, what is alone does not meet the
// other side, and no part holds more than is held at once.
func TestInParts(t *testing.T) {
	side := func(names ...string) map[string]found {
		all := map[string]found{}
		for _, n := range names {
			name, title, _ := strings.Cut(n, "=")
			all[name] = found{path: name, title: func() string { return title }}
		}
		return all
	}
	var was, now []string
	for i := range 3 * atOnce {
		was, now = append(was, fmt.Sprintf("was%d=", i)), append(now, fmt.Sprintf("now%d=new %d", i, i))
		was, now = append(was, fmt.Sprintf("both%d=b", i)), append(now, fmt.Sprintf("both%d=b", i))
	}
	was = append(was, "here=mover", "twin1=twin", "twin2=twin", "other=pair")
	now = append(now, "there=mover", "twin3=twin", "pair1=pair", "pair2=pair")
	seen := map[string]int{}
	together := false
	for _, p := range inParts(side(was...), side(now...)) {
		if len(p.was) > atOnce || len(p.now) > atOnce {
			t.Errorf("a part holds %d and %d", len(p.was), len(p.now))
		}
		if len(p.was) > 0 && len(p.now) > 0 && len(p.was) != len(p.now) {
			t.Errorf("what is alone meets the other side: %v %v", p.was, p.now)
		}
		together = together || slices.Contains(p.was, "here") && slices.Contains(p.now, "there")
		for _, name := range slices.Concat(p.was, p.now) {
			seen[name]++
		}
	}
	if !together || len(seen) != 9*atOnce+8 || seen["both7"] != 2 || seen["twin1"] != 1 {
		t.Errorf("together %v, %d names, %d of both7", together, len(seen), seen["both7"])
	}
}

// BenchmarkCompareNew is what a thousand new designs take; designs=100 is what it is
// held against. peak-MB is the most memory in use at once.
func BenchmarkCompareNew(b *testing.B) {
	for _, n := range []int{100, 1000} {
		b.Run(fmt.Sprintf("designs=%d", n), func(b *testing.B) {
			dir := b.TempDir()
			for _, sub := range []string{"old", "new"} {
				if err := os.Mkdir(filepath.Join(dir, sub), 0o755); err != nil {
					b.Fatal(err)
				}
			}
			manyHuts(b, filepath.Join(dir, "new"), n)
			manyHuts(b, filepath.Join(dir, "old"), 1)
			b.ReportAllocs()
			var peak atomic.Uint64
			over := make(chan struct{})
			defer close(over)
			go func() {
				for {
					select {
					case <-over:
						return
					case <-time.After(10 * time.Millisecond):
						var m runtime.MemStats
						runtime.ReadMemStats(&m)
						peak.Store(max(peak.Load(), m.HeapAlloc))
					}
				}
			}()
			for b.Loop() {
				s, _, said := testStreams(nil)
				s.dir = func() (string, error) { return dir, nil }
				s.out = io.Discard
				if code := run(b.Context(), []string{"compare", "old", "new"}, s); code > 1 {
					b.Fatalf("exit status %d: %s", code, said)
				}
			}
			b.ReportMetric(float64(peak.Load())/1e6, "peak-MB")
		})
	}
}
