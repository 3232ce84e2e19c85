package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path"
	"path/filepath"

	"github.com/spf13/cobra"

	"stringline/lint"
	"stringline/lint/verdict"
)

// baseline reads the options of a baseline, and the file that they name.
func (s *streams) baseline(c *cobra.Command, r *request) error {
	name, err := c.Flags().GetString("baseline")
	if err != nil {
		return fmt.Errorf("reading --baseline: %w", err)
	}
	if r.accept, err = c.Flags().GetBool("accept"); err != nil {
		return fmt.Errorf("reading --accept: %w", err)
	}
	switch {
	case !c.Flags().Changed("baseline") && r.accept:
		return errors.New("--accept writes a baseline, so --baseline FILE is needed")
	case !c.Flags().Changed("baseline"):
		return nil
	case name == "":
		return errors.New("--baseline: the name is empty")
	}
	dir, err := s.dir()
	if err != nil {
		return fmt.Errorf("finding the working folder: %w", err)
	}
	file := slashed(name)
	if !path.IsAbs(file) {
		file = path.Join(slashed(dir), file)
	}
	r.file = name
	r.baseline = &lint.Baseline{Name: slashed(name), Dir: path.Dir(path.Clean(file))}
	text, err := readSmall(name, verdict.MostBytes+1)
	switch {
	case errors.Is(err, fs.ErrNotExist) && r.accept:
		r.baseline.New = true
	case errors.Is(err, fs.ErrNotExist):
		return fmt.Errorf("reading the baseline %s: there is no such file; --accept writes one", name)
	case err != nil:
		return fmt.Errorf("reading the baseline: %w", err)
	}
	r.baseline.Text = text
	return nil
}

// readSmall reads at most so many bytes of a regular file; it never waits on a pipe.
// An empty file gives an empty text, and not nil.
func readSmall(name string, most int64) (text []byte, err error) {
	info, err := os.Stat(name)
	if err != nil {
		return nil, err
	}
	if !info.Mode().IsRegular() {
		return nil, &fs.PathError{Op: "read", Path: name, Err: errIrregular}
	}
	f, err := os.Open(name)
	if err != nil {
		return nil, err
	}
	defer func() { err = errors.Join(err, f.Close()) }()
	return io.ReadAll(io.LimitReader(f, most))
}

// accept writes the baseline anew, whole or not at all, says what changed, and
// settles the result by it. Where that fails nothing is accepted, there or here.
func (s *streams) accept(result *lint.Result, r request) error {
	done, err := lint.Accept(result)
	if err != nil {
		return err
	}
	// What a link names is replaced, not the link.
	file, err := filepath.EvalSymlinks(r.file)
	switch {
	case r.baseline.New:
		err = create(r.file, done.Text)
	case err == nil:
		err = replace(file, r.baseline.Text, done.Text) // what was accepted meanwhile is not lost
	}
	if err != nil {
		return fmt.Errorf("writing the baseline %s, so that nothing was accepted: %w", r.file, err)
	}
	done.Settle(result)
	for _, x := range done.Refused {
		about := x.About
		if x.Which != "" {
			about += ", " + x.Which
		}
		s.say(fmt.Sprintf("not accepted: %s on %s in %s: %s", x.Rule, about, x.File, x.Why))
	}
	s.say(fmt.Sprintf("%s: %d findings are accepted; %d of them new, %d worse than before, and %d gone ones were taken out",
		r.baseline.Name, result.Baseline.Held, done.Added, done.Renewed, done.Dropped))
	return nil
}
