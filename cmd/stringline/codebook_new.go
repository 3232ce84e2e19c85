package main

import (
	"bytes"
	"embed"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"regexp"
	"slices"

	"github.com/spf13/cobra"

	"stringline/rules"
)

// The codebook that `codebook new` writes. It is a sound codebook by the name of
// templateName, which stands nowhere in it but where the name is meant.
//
//go:embed all:codebook_template
var codebookTemplate embed.FS

const (
	templateFolder = "codebook_template"
	templateName   = "bookname"
)

var bookPattern = regexp.MustCompile(`^[a-z][a-z0-9_]{0,63}$`)

func (s *streams) codebookNew(code *int) *cobra.Command {
	c := &cobra.Command{
		Use:   "new NAME [DIR]",
		Short: "write a first codebook that loads and is tested",
		Long: "Writes a codebook of that name into DIR (codebooks/NAME where none is given),\n" +
			"which must not be there or be empty: three small rules with their tests and\n" +
			"example designs. They show a table, a parameter, an attribute of the book's own,\n" +
			"when, and does_not_apply. Change them to what your workshop holds to.",
		Example: "  stringline codebook new county\n" +
			"  stringline codebook test codebooks/county",
		Args: func(c *cobra.Command, args []string) error {
			if len(args) < 1 || len(args) > 2 {
				return fmt.Errorf("new takes NAME and, where wanted, DIR: stringline codebook %s", c.Use)
			}
			return nil
		},
	}
	c.RunE = func(_ *cobra.Command, args []string) error {
		name := args[0]
		if !bookPattern.MatchString(name) {
			return fmt.Errorf("%q is no name for a codebook: lower-case letters, digits and _, a letter first", name)
		}
		if _, err := fs.Stat(rules.Books, name); err == nil {
			return fmt.Errorf("codebook %q comes with the program; one of your own needs another name", name)
		}
		dir := path.Join("codebooks", name)
		if len(args) == 2 {
			if dir = args[1]; dir == "" {
				return errors.New("the folder's name is empty")
			}
		}
		written, err := writeBook(native(slashed(dir)), name)
		if err != nil {
			return err
		}
		shown := slashed(dir)
		*code = s.write(0, func(w io.Writer) error {
			_, err := fmt.Fprintf(w, "%s: %d files written.\n\nTest it:\n\n  stringline codebook test %s\n\nPut it in force in workshop.hcl:\n\n  codebook %q {\n    path = %q\n  }\n\n"+
				"It then judges every design of the workshop, in a process apart:\n\n  stringline check\n", shown, written, shown, name, shown)
			return err
		})
		return nil
	}
	return c
}

// writeBook writes the template into a folder and says how many files it made.
// It never writes over anything, and writes all of it or nothing.
func writeBook(dir, name string) (int, error) {
	entries, err := os.ReadDir(dir)
	switch {
	case err == nil && len(entries) > 0:
		return 0, fmt.Errorf("writing codebook %s: %s is not empty", name, dir)
	case err != nil && !errors.Is(err, fs.ErrNotExist):
		return 0, fmt.Errorf("writing codebook %s: %w", name, err)
	}
	var files []string
	err = fs.WalkDir(codebookTemplate, templateFolder, func(file string, d fs.DirEntry, err error) error {
		if err == nil && !d.IsDir() {
			files = append(files, file)
		}
		return err
	})
	if err != nil {
		return 0, fmt.Errorf("reading the template: %w", err)
	}
	slices.Sort(files)
	var written []newFile
	for _, file := range files {
		text, err := codebookTemplate.ReadFile(file)
		if err != nil {
			return 0, fmt.Errorf("reading the template: %w", err)
		}
		inside, err := filepath.Rel(templateFolder, filepath.FromSlash(file))
		if err != nil {
			return 0, fmt.Errorf("reading the template: %w", err)
		}
		written = append(written, newFile{path: filepath.ToSlash(inside), text: bytes.ReplaceAll(text, []byte(templateName), []byte(name))})
	}
	if err := createAll(dir, written); err != nil {
		return 0, fmt.Errorf("writing codebook %s: %w", name, err)
	}
	return len(written), nil
}
