package main

import (
	"context"
	"fmt"

	"stringline/lint"
	"stringline/lint/compare"
	"stringline/lint/survey"
	"stringline/schema/source"
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
		near := ""
		if _, problems := survey.Find(s.disk, b.now.dir, []string{slashed(b.given)}); len(problems) > 0 && problems[0].Near != "" {
			near = fmt.Sprintf("; did you mean %q?", problems[0].Near)
		}
		return nil, fmt.Errorf("%s: neither side has it%s", b.given, near)
	}
	was, wasProblems := s.designsOf(&b.was)
	now, nowProblems := s.designsOf(&b.now)
	if b.single && (len(was) == 0 && len(wasProblems) > 0 || len(now) == 0 && len(nowProblems) > 0) {
		return nothingToCompare(b, o, wasProblems, nowProblems), nil
	}
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

// nothingToCompare tells why a side that was named holds no design. The other
// side's are not laid beside it: they would read as if they were gone, or new.
func nothingToCompare(b *sides, o compare.Options, was, now source.Problems) *compare.Comparison {
	o.Was = compare.Run{Label: b.was.label, Result: &lint.Result{Version: programVersion, Date: b.was.date, Problems: was}}
	o.Now = compare.Run{Label: b.now.label, Result: &lint.Result{Version: programVersion, Date: b.now.date, Problems: now}}
	return compare.Runs(o)
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
