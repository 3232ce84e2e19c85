package main

import (
	"errors"
	"fmt"
	"io"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"stringline/lint/survey"
	"stringline/schema/datasheet"
	"stringline/schema/design"
	"stringline/schema/source"
)

func (s *streams) parts(code *int) *cobra.Command {
	c := &cobra.Command{
		Use:   "parts",
		Short: "parts from a table of their values",
		Args:  cobra.ArbitraryArgs,
	}
	c.RunE = func(c *cobra.Command, args []string) error {
		if len(args) > 0 {
			return unknownCommand(c, args[0])
		}
		*code = 2
		s.explain("parts: no command is named", helpOf(c, s.width))
		return nil
	}
	c.AddCommand(s.partsImport(code))
	return c
}

func (s *streams) partsImport(code *int) *cobra.Command {
	c := &cobra.Command{
		Use:   "import FILE.csv -o NAME.parts.hcl",
		Short: "write part blocks from a table of data sheets",
		Long: "Reads a table (comma-separated values, UTF-8; - for standard input) with one part\n" +
			"a row and writes NAME.parts.hcl, which must not be there yet (-o - writes to\n" +
			"standard output). A heading is an attribute with its unit: voc [V], temp_voc\n" +
			"[%/K], bms.charge_cutoff [A]; or name, part (the kind), note (a comment), or\n" +
			"leave_out. Where headings are somebody else's, --columns names a table with the\n" +
			"headings column, attribute, unit.\n\n" +
			"Nothing is guessed: what is not clear is refused at its line and column. An empty\n" +
			"cell, -, ? or n/a is a value that the sheet does not tell, and is left out. A\n" +
			"decimal comma is taken where it cannot part thousands, or with --decimal comma.\n\n" +
			"Exit status 0: all rows are written. 1: with --keep-good, some were refused and the\n" +
			"others are written. 2: nothing is written.",
		Example: "  stringline parts import panels.csv --part panel -o parts/panels.parts.hcl\n" +
			"  stringline parts import list.csv --columns map.csv --decimal comma -o store.parts.hcl",
		Args: arguments("FILE.csv"),
	}
	option := c.Flags()
	option.StringP("output", "o", "", "write the parts file `NAME.parts.hcl`; - for standard output")
	option.String("columns", "", "`MAP.csv`: which column is which attribute, in which unit")
	option.String("part", "", "every row is this `KIND` of part, such as panel")
	option.String("decimal", "auto", "`WORD`: decimals stand behind a comma, a point, or auto")
	option.String("separator", "auto", "`WORD`: columns are parted by comma, semicolon, tab, or auto")
	option.Bool("keep-good", false, "write the rows that are good where others are refused")
	c.RunE = func(c *cobra.Command, args []string) error {
		output, err := c.Flags().GetString("output")
		if err != nil {
			return fmt.Errorf("reading --output: %w", err)
		}
		switch {
		case output == "":
			return errors.New("parts import needs -o NAME.parts.hcl, or -o - for standard output")
		case output != "-" && !strings.HasSuffix(output, survey.PartsSuffix):
			return fmt.Errorf("-o %s: a parts file's name ends in %s", output, survey.PartsSuffix)
		}
		keep, err := c.Flags().GetBool("keep-good")
		if err != nil {
			return fmt.Errorf("reading --keep-good: %w", err)
		}
		opts, err := s.tableOptions(c)
		if err != nil {
			return err
		}
		table, err := s.table(args[0])
		if err != nil {
			return err
		}
		*code = s.writeParts(table, opts, output, keep)
		return nil
	}
	return c
}

// tableOptions reads how the table is to be read.
func (s *streams) tableOptions(c *cobra.Command) (datasheet.Options, error) {
	var opts datasheet.Options
	var err error
	if opts.Part, err = c.Flags().GetString("part"); err != nil {
		return opts, fmt.Errorf("reading --part: %w", err)
	}
	if c.Flags().Changed("part") {
		var kinds []string
		for _, k := range design.Kinds() {
			if k.Part {
				kinds = append(kinds, k.Name)
			}
		}
		if _, err := oneOf(c, "part", kinds...); err != nil {
			return opts, err
		}
	}
	decimal, err := oneOf(c, "decimal", "auto", "comma", "point")
	if err != nil {
		return opts, err
	}
	opts.Decimals = map[string]datasheet.Decimals{"comma": datasheet.Comma, "point": datasheet.Point}[decimal]
	separator, err := oneOf(c, "separator", "auto", "comma", "semicolon", "tab")
	if err != nil {
		return opts, err
	}
	opts.Separator = map[string]rune{"comma": ',', "semicolon": ';', "tab": '\t'}[separator]
	columns, err := c.Flags().GetString("columns")
	if err != nil {
		return opts, fmt.Errorf("reading --columns: %w", err)
	}
	if c.Flags().Changed("columns") {
		if columns == "-" {
			return opts, errors.New("--columns: standard input is for the table")
		}
		if opts.Columns, err = s.table(columns); err != nil {
			return opts, err
		}
	}
	return opts, nil
}

// table reads a table, one byte more than it may have at most, so that the guard
// sees one that is too long.
func (s *streams) table(name string) (*source.File, error) {
	if name == "-" {
		text, err := s.readAll()
		return source.NewFile("-", text), err
	}
	if name == "" {
		return nil, errors.New("the table's name is empty")
	}
	folder, base := filepath.Split(native(slashed(name)))
	tree, err := s.disk.Root(filepath.Clean(folder + "."))
	if err != nil {
		return nil, fmt.Errorf("reading %s: %w", name, design.PlainFault(err))
	}
	text, err := design.ReadFile(tree, base)
	if err != nil {
		return nil, fmt.Errorf("reading %s: %w", name, err)
	}
	return source.NewFile(slashed(name), text), nil
}

// writeParts imports a table and writes what came of it.
func (s *streams) writeParts(table *source.File, opts datasheet.Options, output string, keep bool) int {
	result, problems := datasheet.Import(table, opts)
	if len(problems) > 0 {
		s.say(problems.Error())
	}
	for _, settled := range []struct{ kind, by string }{
		{datasheet.KindDecimal, "--decimal comma or --decimal point"}, {datasheet.KindSeparator, "--separator comma, semicolon or tab"},
	} {
		if slices.ContainsFunc(problems, func(p source.Problem) bool { return p.Kind == settled.kind }) {
			s.say("which it is, " + settled.by + " says")
		}
	}
	state := 0
	switch {
	case len(problems) > 0 && (!keep || !result.Whole || result.Parts == 0):
		words := "nothing was written"
		if result.Whole {
			words += fmt.Sprintf(": %d of %d rows could be read", result.Parts, result.Rows)
		}
		s.say(words)
		return 2
	case len(problems) > 0:
		state = 1
	}
	if output == "-" {
		return s.write(state, func(w io.Writer) error { return reportBytes(w, result.Text) })
	}
	if err := create(native(slashed(output)), result.Text); err != nil {
		return s.fail(fmt.Errorf("writing %s: %w", output, err))
	}
	return s.write(state, func(w io.Writer) error {
		_, err := fmt.Fprintf(w, "%s: %d parts of %d rows written. Hold every value against its maker's own sheet, then:\n\n  stringline check\n", slashed(output), result.Parts, result.Rows)
		return err
	})
}
