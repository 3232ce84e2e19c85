package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"stringline/lint"
	"stringline/rules"
)

// onBench opens the one design that a command is about, has many variants of it
// judged while progress is shown, and then has the outcome told: that gives the exit
// status.
func (s *streams) onBench(c *cobra.Command, design, what string, judge func(bench *lint.Bench, progress func(done, total int)) (tell func() (int, error), err error), code *int) error {
	bench, err := s.bench(c, design)
	if err != nil {
		return err
	}
	defer bench.Close()
	p := s.progress()
	p.what = what
	tell, err := judge(bench, p.at)
	p.done()
	if err != nil {
		return err
	}
	*code, err = tell()
	return err
}

// bench opens the one design that a command is about.
func (s *streams) bench(c *cobra.Command, design string) (*lint.Bench, error) {
	var r request
	if err := r.outside(c); err != nil {
		return nil, err
	}
	var err error
	if c.Flags().Lookup("date") != nil {
		r.date, err = s.date(c)
	}
	if err != nil {
		return nil, err
	}
	dir, err := s.dir()
	if err != nil {
		return nil, fmt.Errorf("finding the working folder: %w", err)
	}
	o := lint.Options{Disk: s.disk, Embedded: rules.Books, WorkingDir: slashed(dir), Date: r.date, Trust: r.trust, Isolation: r.apart, Version: programVersion}
	if design == "-" {
		if o.Stdin, err = s.readAll(); err != nil {
			return nil, err
		}
	} else {
		o.Paths = []string{slashed(design)}
	}
	return lint.OpenBench(c.Context(), o)
}
