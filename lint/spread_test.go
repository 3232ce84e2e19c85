package lint_test

import (
	"context"
	"errors"
	"sync/atomic"
	"testing"

	"stringline/lint"
)

func TestSpread(t *testing.T) {
	var done [100]atomic.Int32
	if err := lint.Spread(t.Context(), 3, len(done), func(i int) error { done[i].Add(1); return nil }); err != nil {
		t.Fatal(err)
	}
	for i := range done {
		if n := done[i].Load(); n != 1 {
			t.Errorf("job %d was done %d times", i, n)
		}
	}
	if err := lint.Spread(t.Context(), 0, 0, func(int) error { return errors.New("there is no job") }); err != nil {
		t.Error(err)
	}
	wrong := errors.New("job 5")
	var begun atomic.Int32
	err := lint.Spread(t.Context(), 2, 1000, func(i int) error {
		begun.Add(1)
		if i == 5 {
			return wrong
		}
		return nil
	})
	if !errors.Is(err, wrong) {
		t.Errorf("the error is %v", err)
	}
	if one := begun.Load(); lint.Spread(t.Context(), 1, 1000, func(i int) error { begun.Add(1); return wrong }) != wrong || begun.Load() != one+1 {
		t.Errorf("%d jobs were begun after an error", begun.Load()-one-1)
	}
	ended, end := context.WithCancel(t.Context())
	end()
	if err := lint.Spread(ended, 2, 10, func(int) error { t.Error("begun after the end"); return nil }); !errors.Is(err, context.Canceled) {
		t.Errorf("called off: %v", err)
	}
}
