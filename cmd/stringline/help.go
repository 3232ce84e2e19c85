package main

import (
	"fmt"
	"io"
	"strings"
	"unicode/utf8"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"
)

// help tells about a command, or writes the manual page.
func (s *streams) help(root *cobra.Command, code *int) *cobra.Command {
	c := &cobra.Command{Use: "help [COMMAND]", Short: "tell about a command", Hidden: true}
	c.Flags().Bool("manual", false, "write the manual page, for man(1)")
	c.RunE = func(c *cobra.Command, args []string) error {
		whole, err := c.Flags().GetBool("manual")
		if err != nil {
			return fmt.Errorf("reading --manual: %w", err)
		}
		if whole && len(args) > 0 {
			return fmt.Errorf("--manual is the page of the whole program: found %q beside it", args[0])
		}
		about, rest, err := root.Find(args)
		if err != nil || len(rest) > 0 {
			return unknownCommand(root, strings.Join(args, " "))
		}
		*code = s.write(0, func(w io.Writer) error {
			if whole {
				return text(w, manual(root))
			}
			return text(w, helpOf(about, s.width))
		})
		return nil
	}
	s.completions(c) // it is not among the root's commands yet
	return c
}

// Columns of a help text: those of a terminal, within bounds that can be read.
const (
	helpWidth  = 80 // where the terminal's is not known
	helpMost   = 100
	helpLeast  = 32
	helpColumn = 24 // where what is said about an option starts, in a wide enough one
)

// helpOf writes a command's help: how it is called, what a person gets, commands,
// options, examples. It keeps to the width in columns, 0 where it is not known;
// examples stay as they are, to be copied.
func helpOf(c *cobra.Command, width int) string {
	if width == 0 {
		width = helpWidth
	}
	width = min(max(width, helpLeast), helpMost)
	var b strings.Builder
	use := c.UseLine()
	if c.HasAvailableSubCommands() {
		use = c.CommandPath() + " COMMAND"
	}
	fmt.Fprintf(&b, "%s\n\n", strings.TrimSuffix(use, " [flags]"))
	words := c.Long
	if words == "" {
		words = capital(c.Short) + "."
	}
	for i, paragraph := range strings.Split(words, "\n\n") {
		if i > 0 {
			b.WriteByte('\n')
		}
		for _, line := range wrapped(paragraph, width) {
			fmt.Fprintf(&b, "%s\n", line)
		}
	}
	var rows [][2]string
	for _, sub := range c.Commands() {
		if !sub.Hidden {
			rows = append(rows, [2]string{sub.Name(), sub.Short})
		}
	}
	pairsOf(&b, "Commands", rows, 14, width)
	rows = nil
	options := func(f *pflag.Flag) {
		if f.Hidden || f.Name == "help" {
			return
		}
		rows = append(rows, [2]string{optionHead(f), optionWords(f)})
	}
	c.LocalNonPersistentFlags().VisitAll(options)
	if c.HasParent() {
		c.InheritedFlags().VisitAll(options)
	} else {
		c.PersistentFlags().VisitAll(options)
	}
	pairsOf(&b, "Options", rows, helpColumn, width)
	if c.Example != "" {
		fmt.Fprintf(&b, "\nExamples\n%s\n", c.Example)
	}
	return b.String()
}

// optionHead writes an option with its letter and the word for its value.
func optionHead(f *pflag.Flag) string {
	head := "--" + f.Name
	if f.Shorthand != "" {
		head = "-" + f.Shorthand + ", " + head
	}
	if value, _ := pflag.UnquoteUsage(f); value != "" {
		head += " " + value
	}
	return head
}

// optionWords says what an option does, and what holds without it.
func optionWords(f *pflag.Flag) string {
	_, words := pflag.UnquoteUsage(f)
	if f.DefValue != "" && f.DefValue != "false" && f.DefValue != "[]" && f.DefValue != "0" && !strings.Contains(words, "default") {
		words += "; default " + f.DefValue
	}
	return words
}

// pairsOf writes a heading and rows of two columns, the second from a column on. A
// first one that leaves it no room stands on a line of its own; in a narrow
// terminal all do.
func pairsOf(b *strings.Builder, heading string, rows [][2]string, column, width int) {
	if len(rows) == 0 {
		return
	}
	fmt.Fprintf(b, "\n%s\n", heading)
	narrow := column > width/2
	if narrow {
		column = 4
	}
	for _, row := range rows {
		left := "  " + row[0]
		for i, line := range wrapped(row[1], width-column) {
			if i == 0 && (narrow || utf8.RuneCountInString(left) >= column) {
				fmt.Fprintf(b, "%s\n", left)
				left = ""
			}
			fmt.Fprintf(b, "%-*s%s\n", column, left, line)
			left = ""
		}
	}
}

// wrapped breaks words at blanks into lines of at most width columns, but for a
// word that is longer.
func wrapped(words string, width int) (lines []string) {
	line := ""
	for _, word := range strings.Fields(words) {
		switch {
		case line == "":
			line = word
		case utf8.RuneCountInString(line)+1+utf8.RuneCountInString(word) <= width:
			line += " " + word
		default:
			lines = append(lines, line)
			line = word
		}
	}
	return append(lines, line)
}
