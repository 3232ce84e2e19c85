package main

import (
	"context"
	"fmt"
	"io"
	"path"
	"slices"

	"github.com/spf13/cobra"

	"stringline/lint/report"
	"stringline/lint/survey"
	"stringline/schema/design"
	"stringline/schema/hcltext"
	"stringline/schema/source"
)

func (s *streams) tidy(code *int) *cobra.Command {
	c := &cobra.Command{
		Use:   "tidy [PATH...]",
		Short: "bring files into the canonical layout",
		Long: "Lays out designs, parts files, workshop.hcl and codebooks under the paths (the\n" +
			"working folder where none is named; - reads one text from standard input and\n" +
			"writes it to standard output). Blanks and line ends alone change: what stands in\n" +
			"quotes, comments and the order of everything stay. The layout is that of HCL's\n" +
			"own formatter, and one blank line between blocks.\n\n" +
			"A file is written whole or not at all, and keeps its mode. One that cannot be\n" +
			"read is left alone and told with its place; symbolic links are not followed.\n\n" +
			"Exit status 0: all is tidy now. 1: with --show, something would change.\n" +
			"2: a file could not be read or written, or none was found.",
		Example: "  stringline tidy\n" +
			"  stringline tidy --show huts\n" +
			"  stringline tidy - < hut.design.hcl",
	}
	c.Flags().Bool("show", false, "write nothing; show what would change")
	c.RunE = func(c *cobra.Command, args []string) error {
		only, err := c.Flags().GetBool("show")
		if err != nil {
			return fmt.Errorf("reading --show: %w", err)
		}
		page, err := s.page(c)
		if err != nil {
			return err
		}
		if slices.Contains(args, "-") {
			if len(args) > 1 {
				return fmt.Errorf("- (standard input) stands alone: found %d paths beside it", len(args)-1)
			}
			*code, err = s.tidyInput(only, page)
			return err
		}
		if len(args) == 0 {
			args = []string{"."}
		}
		*code, err = s.tidyFiles(c.Context(), args, only, page)
		return err
	}
	return c
}

// tidyInput lays out standard input.
func (s *streams) tidyInput(only bool, page report.Page) (int, error) {
	text, err := s.readAll()
	if err != nil {
		return 2, err
	}
	laidOut, problems := hcltext.Tidy(source.NewFile("-", text))
	if len(problems) > 0 {
		s.say(problems.Error())
		return 2, nil
	}
	one := report.TidiedFile{File: "-", Before: text, After: laidOut}
	if !only {
		return s.write(0, func(w io.Writer) error { return reportBytes(w, laidOut) }), nil
	}
	state := 0
	if one.Changes() {
		state = 1
	}
	return s.write(state, func(w io.Writer) error { return report.Tidied(w, []report.TidiedFile{one}, true, page) }), nil
}

func reportBytes(w io.Writer, text []byte) error {
	_, err := w.Write(text)
	return err
}

// tidyFiles lays out every file of the language under the paths. One that cannot
// be read or written does not keep the others from being laid out.
func (s *streams) tidyFiles(ctx context.Context, paths []string, only bool, page report.Page) (int, error) {
	dir, err := s.dir()
	if err != nil {
		return 2, fmt.Errorf("finding the working folder: %w", err)
	}
	dir = slashed(dir)
	for i := range paths {
		paths[i] = slashed(paths[i])
	}
	texts, problems := survey.Files(s.disk, dir, paths)
	state := 0
	var done []report.TidiedFile
	for _, name := range texts.Names {
		if err := ctx.Err(); err != nil {
			return 2, fmt.Errorf("laying out files: %w; %d were looked at", err, len(done))
		}
		shown := survey.Relative(dir, name)
		one, faults := s.tidyFile(name, shown, only)
		if problems = append(problems, faults...); len(faults) == 0 {
			done = append(done, one)
			if only && one.Changes() {
				state = 1
			}
		}
	}
	if len(problems) > 0 {
		problems.Sort()
		s.say(problems.Error())
		state = 2
	}
	for _, link := range texts.Links {
		s.say(survey.Relative(dir, link) + ": a symbolic link, passed over")
	}
	return s.write(state, func(w io.Writer) error { return report.Tidied(w, done, only, page) }), nil
}

func (s *streams) tidyFile(name, shown string, only bool) (report.TidiedFile, source.Problems) {
	refuse := func(what string, err error) (report.TidiedFile, source.Problems) {
		return report.TidiedFile{}, source.Problems{{Kind: "file", Message: what + ": " + err.Error(), At: source.Range{File: shown}}}
	}
	tree, err := s.disk.Root(path.Dir(name))
	if err != nil {
		return refuse("opening its folder", writeFault(err))
	}
	text, err := design.ReadFile(tree, path.Base(name))
	if err != nil {
		return refuse("reading the file", err)
	}
	laidOut, problems := hcltext.Tidy(source.NewFile(shown, text))
	if len(problems) > 0 {
		return report.TidiedFile{}, problems
	}
	one := report.TidiedFile{File: shown, Before: text, After: laidOut}
	if !only && one.Changes() {
		if err := replace(native(name), text, laidOut); err != nil {
			return refuse("writing the file", err)
		}
	}
	return one, nil
}
