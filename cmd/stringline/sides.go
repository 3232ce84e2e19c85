package main

import (
	"context"
	"fmt"

	"stringline/lint"
	"stringline/lint/compare"
)

// side is what one side of a comparison judges.
type side struct {
	request
	label, commit string
	name          func(file string) string // by which designs are paired; nil: as they are shown
	lenient       bool                     // it may hold no design, where the other does
	absent        bool                     // it does not have the path at all
	closer        func()
}

// sides are both.
type sides struct {
	was, now side
	single   bool   // one design on each side are a pair, whatever they are called
	given    string // the path that was named, where both sides share it
}

func (b *sides) close() {
	for _, at := range []*side{&b.was, &b.now} {
		if at.closer != nil {
			at.closer()
		}
	}
}

// atOnce is how many designs of a side are held at one time with all their facts.
// Beyond it they are judged by and by, and of each only what moved is kept.
const atOnce = 48

// compareSides judges both sides and compares them.
func (s *streams) compareSides(ctx context.Context, b *sides, o compare.Options) (*compare.Comparison, error) {
	if b.was.absent && b.now.absent {
		return nil, fmt.Errorf("%s: neither side has it", b.given)
	}
	was, wasProblems := s.designsOf(&b.was)
	now, nowProblems := s.designsOf(&b.now)
	if len(was) <= atOnce && len(now) <= atOnce {
		return s.compareSome(ctx, b, o, b.was.paths, b.now.paths)
	}
	var parts []*compare.Comparison
	for _, part := range inParts(was, now) {
		found, err := s.compareSome(ctx, b, o, part.was, part.now)
		if err != nil {
			return nil, err
		}
		parts = append(parts, found)
	}
	// What was wrong with paths came out while they were looked through.
	parts[0].Was.Problems = append(parts[0].Was.Problems, wasProblems...)
	parts[0].Now.Problems = append(parts[0].Now.Problems, nowProblems...)
	return compare.Join(parts...), nil
}

// compareSome judges and compares the designs at some paths; a side without paths
// holds none.
func (s *streams) compareSome(ctx context.Context, b *sides, o compare.Options, was, now []string) (*compare.Comparison, error) {
	for _, end := range []struct {
		at    *side
		paths []string
		run   *compare.Run
	}{{&b.was, was, &o.Was}, {&b.now, now, &o.Now}} {
		*end.run = compare.Run{Label: end.at.label, Commit: end.at.commit, Name: end.at.name, MayLack: end.at.lenient,
			Result: &lint.Result{Version: programVersion, Date: end.at.date}}
		if end.at.absent || len(end.paths) == 0 {
			continue
		}
		r := end.at.request
		r.paths = end.paths
		result, err := s.judge(ctx, r)
		if err != nil {
			return nil, err
		}
		end.run.Result = result
	}
	if b.single && len(o.Was.Result.Designs) == 1 && len(o.Now.Result.Designs) == 1 {
		one := func(string) string { return "" }
		o.Was.Name, o.Now.Name = one, one
	}
	return compare.Runs(o), nil
}
