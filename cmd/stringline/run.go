package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"stringline/lint/report"
	"stringline/lint/survey"
	"stringline/schema/source"
)

// run is the whole program: arguments in, exit status out. 0: nothing found at
// or above the grade to reject. 1: findings. 2: something could not be read, a
// verdict is void, or the command line is wrong.
func run(ctx context.Context, args []string, s *streams) (code int) {
	root := s.commands(&code)
	root.SetArgs(args)
	if err := root.ExecuteContext(ctx); err != nil {
		return s.fail(err)
	}
	return code
}

// commands builds the command tree. A command sets the exit status through code;
// an error that it returns is about its arguments.
func (s *streams) commands(code *int) *cobra.Command {
	root := &cobra.Command{
		Use:   "stringline",
		Short: "judge designs of small battery-based solar systems",
		Long: "Stringline judges designs of small battery-based solar systems: what is\n" +
			"unsafe, what is too tight, what cannot be known yet, and by how much\n" +
			"everything else meets its limit. A newcomer begins with start, which writes a\n" +
			"first workshop, and check; help COMMAND tells about a command.",
		Example: "  stringline start cabin\n" +
			"  stringline check cabin\n" +
			"  stringline help fit",
		SilenceErrors: true, SilenceUsage: true,
		Args: cobra.ArbitraryArgs,
	}
	root.RunE = func(c *cobra.Command, args []string) error {
		if len(args) > 0 {
			return unknownCommand(root, args[0])
		}
		*code = 2 // a hook that names no command must not pass
		s.explain("no command is named", helpOf(c, s.width))
		return nil
	}
	option := root.PersistentFlags()
	option.String("color", "auto", "`WHEN` to use color: auto, always or never")
	root.AddCommand(
		s.check(code),
		s.facts(code),
		s.workings(code),
		s.fit(code),
		s.sweep(code),
		s.sheet(code),
		s.commission(code),
		s.compare(code),
		s.codebook(code),
		s.parts(code),
		s.start(code),
		s.tidy(code),
		s.version(code),
	)
	// Completion scripts stay at hand without standing among the commands.
	root.CompletionOptions.HiddenDefaultCmd = true
	root.SetHelpCommand(s.help(root, code))
	root.SetHelpFunc(func(c *cobra.Command, _ []string) {
		*code = s.write(0, func(w io.Writer) error { return text(w, helpOf(c, s.width)) })
	})
	root.SetFlagErrorFunc(func(c *cobra.Command, err error) error { return flagError(c, err) })
	root.SetUsageFunc(func(*cobra.Command) error { return nil })
	root.SetOut(s.out)
	root.SetErr(s.err)
	s.completions(root)
	return root
}

func text(w io.Writer, words string) error {
	_, err := io.WriteString(w, words)
	return err
}

func unknownCommand(root *cobra.Command, name string) error {
	if strings.HasSuffix(name, survey.DesignSuffix) {
		return fmt.Errorf("no command %q; a design stands behind one, such as: stringline check %s", name, name)
	}
	var known []string
	for _, c := range root.Commands() {
		if !c.Hidden {
			known = append(known, c.Name())
		}
	}
	return fmt.Errorf("no command %q; %s", name, meant(name, known))
}

// meant names the nearest known word, or all of them.
func meant(word string, known []string) string {
	if near := source.Nearest(word, known); near != "" {
		return fmt.Sprintf("did you mean %q?", near)
	}
	return "there are " + strings.Join(known, ", ")
}

// flagError names the option that was meant.
func flagError(c *cobra.Command, err error) error {
	var unknown *pflag.NotExistError
	if !errors.As(err, &unknown) {
		return err
	}
	var known []string
	c.Flags().VisitAll(func(f *pflag.Flag) { known = append(known, f.Name) })
	name := unknown.GetSpecifiedName()
	for _, sub := range c.Commands() { // --version, as many programs have it
		if !sub.Hidden && sub.Name() == name {
			return fmt.Errorf("%s has no option %q; it is a command: %s", c.Name(), name, sub.CommandPath())
		}
	}
	return fmt.Errorf("%s has no option %q; %s", c.Name(), name, meant(name, known))
}

// page lays out text for people as this run's options and streams ask.
func (s *streams) page(c *cobra.Command) (report.Page, error) {
	when, err := oneOf(c, "color", "auto", "always", "never")
	if err != nil {
		return report.Page{}, err
	}
	opts := report.Page{Width: s.width}
	if s.colored(when) {
		opts.Style = newPaint()
	}
	return opts, nil
}

// oneOf reads an option that takes one of some words.
func oneOf(c *cobra.Command, name string, words ...string) (string, error) {
	value, err := c.Flags().GetString(name)
	if err != nil {
		return "", fmt.Errorf("reading --%s: %w", name, err)
	}
	for _, word := range words {
		if value == word {
			return value, nil
		}
	}
	return "", fmt.Errorf("--%s %q is not known; %s", name, value, meant(value, words))
}

// named reads an option that names something; where it is given it is not empty.
func named(c *cobra.Command, option string, to *string) (err error) {
	if *to, err = c.Flags().GetString(option); err != nil {
		return fmt.Errorf("reading --%s: %w", option, err)
	}
	if c.Flags().Changed(option) && *to == "" {
		return fmt.Errorf("--%s: the name is empty", option)
	}
	return nil
}

// arguments checks that as many arguments stand there as are named.
func arguments(names ...string) cobra.PositionalArgs {
	return func(c *cobra.Command, args []string) error {
		switch {
		case len(args) < len(names):
			return fmt.Errorf("%s needs %s: stringline %s", c.Name(), strings.Join(names[len(args):], " and "), c.Use)
		case len(args) > 0 && len(names) == 0:
			return fmt.Errorf("%s takes nothing after it: found %q", c.Name(), args[0])
		case len(args) > len(names):
			return fmt.Errorf("%s takes %s and nothing after: found %q", c.Name(), strings.Join(names, " and "), args[len(names)])
		}
		return nil
	}
}

// nearFact names the fact that was meant, or where to find them all.
func nearFact(id string, known []string) string {
	if near := source.Nearest(id, known); near != "" {
		return fmt.Sprintf("; did you mean %q?", near)
	}
	for _, fact := range known {
		if strings.HasPrefix(fact, id+".") {
			return fmt.Sprintf("; it has facts, such as %q: stringline facts lists them", fact)
		}
	}
	return "; stringline facts lists them"
}
