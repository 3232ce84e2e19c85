package lint_test

import (
	"context"
	"errors"
	"fmt"
	"maps"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint"
	"stringline/lint/linttest"
	"stringline/lint/verdict"
	"stringline/rules"
)

// many is the house with n more designs, each with another charge current.
func many(n int) lint.Options {
	texts := maps.Clone(house)
	for i := range n {
		texts[fmt.Sprintf("shop/more/%03d.design.hcl", i)] = strings.Replace(house["shop/hut.design.hcl"], "50 A", fmt.Sprintf("%d A", 20+i%60), 1)
	}
	return lint.Options{
		Disk: linttest.NewDisk(texts), Embedded: rules.Books, WorkingDir: "/shop", Paths: []string{"."},
		Date: "2026-05-02", RejectFrom: verdict.Fix, Trust: []string{"house"},
	}
}

// TestEach: designs that are handed on are those that a result would hold, in the
// same order, and what is counted of them is the same.
func TestEach(t *testing.T) {
	kept, err := lint.Run(context.Background(), many(50))
	if err != nil {
		t.Fatal(err)
	}
	for _, workers := range []int{1, 2, 7} {
		o := many(50)
		o.Workers = workers
		var handed []lint.DesignResult
		o.Each = func(d *lint.DesignResult) error {
			handed = append(handed, *d)
			return nil
		}
		r, err := lint.Run(context.Background(), o)
		if err != nil || len(r.Designs) > 0 {
			t.Fatalf("%v; %d designs kept", err, len(r.Designs))
		}
		if r.Summary != kept.Summary || r.Exit != kept.Exit {
			t.Errorf("counted %+v, exit %d; of designs that are kept %+v, exit %d", r.Summary, r.Exit, kept.Summary, kept.Exit)
		}
		r.Designs = handed
		if diff := cmp.Diff(told(kept), told(r)); diff != "" {
			t.Errorf("with %d workers (-kept +handed):\n%s", workers, diff)
		}
	}
}

// TestEachFails: what cannot take a design in ends the run with its own error.
func TestEachFails(t *testing.T) {
	full := errors.New("no space left")
	o, calls := many(50), 0
	o.Workers = 2
	o.Each = func(*lint.DesignResult) error {
		if calls++; calls == 10 {
			return full
		}
		return nil
	}
	r, err := lint.Run(context.Background(), o)
	if r != nil || !errors.Is(err, full) || calls != 10 {
		t.Errorf("result %v, error %v after %d calls", r, err, calls)
	}
}

// TestInterrupted: a run that is called off hands on what is judged, in order,
// says how much that is of how much, and is never taken for one that held.
func TestInterrupted(t *testing.T) {
	for _, after := range []int{1, 20, 51} {
		ctx, cancel := context.WithCancel(context.Background())
		defer cancel()
		o := many(50)
		o.Workers = 2
		o.RejectFrom = verdict.Stop
		var files []string
		o.Each = func(d *lint.DesignResult) error {
			if files = append(files, d.File); len(files) == after {
				cancel()
			}
			return nil
		}
		r, err := lint.Run(ctx, o)
		if after == 51 { // it was over when it was called off: nothing is missing
			if err != nil || r.Summary.Designs != 51 || r.Summary.NotJudged != 0 || len(r.Problems) > 0 {
				t.Errorf("called off behind its end: %v, %v", r, err)
			}
			continue
		}
		if !errors.Is(err, context.Canceled) || r == nil {
			t.Fatalf("result %v, error %v", r, err)
		}
		if r.Exit != 2 || r.Summary.Designs != len(files) || r.Summary.NotJudged != 51-len(files) || len(files) < after || len(files) > 50 {
			t.Errorf("after %d: exit %d, %+v, %d handed on", after, r.Exit, r.Summary, len(files))
		}
		want := fmt.Sprintf("interrupted: %d of 51 designs were judged; of the rest nothing is known", len(files))
		if !strings.Contains(r.Problems.Error(), want) {
			t.Errorf("%q is not told: %v", want, r.Problems)
		}
		for i := range files[1:] {
			if files[i] >= files[i+1] {
				t.Errorf("%s before %s", files[i], files[i+1])
			}
		}
	}
}
