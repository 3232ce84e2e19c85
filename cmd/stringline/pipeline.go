package main

import (
	"context"
	"fmt"
	"io"
	"slices"

	"stringline/lint"
	"stringline/rules"
	"stringline/schema/source"
)

// programVersion is the version of this program. It stands in the source, so
// that a build from a clone knows it too.
const programVersion = "0.1.0"

// judge runs the pipeline. An error is about the command line or the process;
// what is wrong with files is in the result. Of a run that was called off there is
// a result beside the error.
func (s *streams) judge(ctx context.Context, r request) (*lint.Result, error) {
	dir, err := r.dir, error(nil)
	if dir == "" {
		if dir, err = s.workingDir(); err != nil {
			return nil, err
		}
	}
	opts := lint.Options{
		Disk: s.disk, Embedded: rules.Books, WorkingDir: dir, Date: r.date, RejectFrom: r.rejectFrom,
		Rules: r.rules, Trust: r.trust, Isolation: r.apart, Version: programVersion,
		Each: r.each, Baseline: r.baseline, WithoutSystems: r.accept,
	}
	if r.disk != nil {
		opts.Disk = r.disk
	}
	for _, path := range r.paths {
		if path == "-" {
			if opts.Stdin, err = s.readAll(); err != nil {
				return nil, err
			}
			continue
		}
		opts.Paths = append(opts.Paths, slashed(path))
	}
	if len(r.paths) == 0 {
		opts.Paths = []string{"."}
	}
	if slices.Contains(r.paths, "-") && len(r.paths) > 1 {
		return nil, fmt.Errorf("- (standard input) stands alone: found %d paths beside it", len(r.paths)-1)
	}
	if !r.quiet {
		p := s.progress()
		defer p.done()
		opts.Progress = p.at
	}
	return lint.Run(ctx, opts)
}

// workingDir is the folder that paths are seen from, in the pipeline's form.
func (s *streams) workingDir() (string, error) {
	dir, err := s.dir()
	if err != nil {
		return "", fmt.Errorf("finding the working folder: %w", err)
	}
	return slashed(dir), nil
}

// readAll reads standard input, one byte more than a file may have at most, so
// that the guard sees one that is too long.
func (s *streams) readAll() ([]byte, error) {
	text, err := io.ReadAll(io.LimitReader(s.in, source.MaxBytes+1))
	if err != nil {
		return nil, fmt.Errorf("reading standard input: %w", err)
	}
	return text, nil
}
