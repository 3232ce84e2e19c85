package main

import (
	"context"
	"regexp"
	"slices"
	"strings"
	"time"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"stringline/lint"
	"stringline/lint/report"
)

// What the shell offers is read from what the help says: an argument called DESIGN
// is a design, an option of a RULE takes a rule's id, and an option whose help
// lists words ("`FORM` of the output: text or json") takes one of them. So a new
// command is completed without a line here, and a test holds each word that is
// offered against the command.

// completions makes every command below root offer what may stand there.
func (s *streams) completions(root *cobra.Command) {
	for _, c := range root.Commands() {
		s.completions(c)
	}
	c := root
	if c.RunE != nil && !c.HasSubCommands() {
		names := argumentNames(c.Use)
		c.ValidArgsFunction = func(c *cobra.Command, args []string, begun string) ([]string, cobra.ShellCompDirective) {
			at := len(args)
			if c.Flags().Changed("since") { // then one PATH follows
				return s.offer(c, "PATH", args, begun)
			}
			if len(names) == 0 || at >= len(names) && !names[len(names)-1].again {
				return nil, cobra.ShellCompDirectiveNoFileComp
			}
			return s.offer(c, names[min(at, len(names)-1)].name, args, begun)
		}
	}
	each := func(f *pflag.Flag) {
		value, words := pflag.UnquoteUsage(f)
		// The only error is that the option has a function already.
		_ = c.RegisterFlagCompletionFunc(f.Name, func(c *cobra.Command, args []string, begun string) ([]string, cobra.ShellCompDirective) {
			if list := listedWords(words); len(list) > 0 {
				return slices.DeleteFunc(list, func(word string) bool { return !strings.HasPrefix(word, begun) }), cobra.ShellCompDirectiveNoFileComp
			}
			return s.offer(c, value, args, begun)
		})
	}
	c.LocalNonPersistentFlags().VisitAll(each)
	c.PersistentFlags().VisitAll(each)
}

// argumentName is one argument of a command line; again: it may be repeated.
type argumentName struct {
	name  string
	again bool
}

var argumentWord = regexp.MustCompile(`[A-Z][A-Z|]*(?: \| [A-Z]+)*`)

// argumentNames reads the arguments from a command's line of use, up to where it
// goes on with options: "workings DESIGN FACT", "test [FOLDER | NAME]...".
func argumentNames(use string) []argumentName {
	use, _, _ = strings.Cut(use, " | -")
	var names []argumentName
	_, use, _ = strings.Cut(use, " ")
	for i := 0; i < len(use); {
		at := argumentWord.FindStringIndex(use[i:])
		if at == nil {
			break
		}
		begin, end := i+at[0], i+at[1]
		i = end
		if lead := strings.TrimRight(use[:begin], "[ "); strings.HasPrefix(lead[strings.LastIndexByte(lead, ' ')+1:], "-") {
			continue // the value of an option
		}
		rest := strings.TrimLeft(use[end:], "]")
		names = append(names, argumentName{strings.ReplaceAll(use[begin:end], " ", ""), strings.HasPrefix(rest, "...")})
	}
	return names
}

var wordList = regexp.MustCompile(`: ([a-z]+(?:, [a-z]+)*(?:, | or )[a-z]+)$`)

// listedWords gives the words that an option's help lists at its end.
func listedWords(help string) []string {
	found := wordList.FindStringSubmatch(help)
	if found == nil {
		return nil
	}
	return strings.FieldsFunc(strings.ReplaceAll(found[1], " or ", ","), func(r rune) bool { return r == ',' || r == ' ' })
}

// offer gives what may stand for an argument or an option's value by its name, of
// that what begins as the word that stands there already.
func (s *streams) offer(c *cobra.Command, name string, args []string, begun string) ([]string, cobra.ShellCompDirective) {
	list, directive := s.candidates(c, name, args, begun)
	if directive == cobra.ShellCompDirectiveFilterFileExt { // these are endings of names
		return list, directive
	}
	return slices.DeleteFunc(list, func(word string) bool { return !strings.HasPrefix(word, begun) }), directive
}

func (s *streams) candidates(c *cobra.Command, name string, args []string, begun string) ([]string, cobra.ShellCompDirective) {
	none := cobra.ShellCompDirectiveNoFileComp
	switch name {
	case "DESIGN":
		return []string{"design.hcl"}, cobra.ShellCompDirectiveFilterFileExt
	case "PATH", "OLD", "NEW":
		return []string{"hcl"}, cobra.ShellCompDirectiveFilterFileExt
	case "DIR", "FOLDER":
		return nil, cobra.ShellCompDirectiveFilterDirs
	case "FOLDER|NAME":
		if strings.ContainsAny(begun, "/.") {
			return nil, cobra.ShellCompDirectiveFilterDirs
		}
		return s.bookNames(c), cobra.ShellCompDirectiveDefault
	case "FILE", "PEM":
		return nil, cobra.ShellCompDirectiveDefault
	case "FACT":
		return s.factIDs(c, args), none
	case "RULE":
		return s.ruleIDs(c), none
	case "RULE|BOOK":
		return slices.Concat(s.ruleIDs(c), s.bookNames(c)), none
	case "COMMIT":
		return s.commits(c), none
	case "COMMAND":
		var names []string
		for _, sub := range c.Root().Commands() {
			if !sub.Hidden {
				names = append(names, sub.Name()+"\t"+sub.Short)
			}
		}
		return names, none
	}
	return nil, none
}

// contextOf is what ends the work below. Completion never says what is wrong: it
// offers nothing, and the command itself will say it.
func contextOf(c *cobra.Command) context.Context {
	if ctx := c.Context(); ctx != nil {
		return ctx
	}
	return context.Background()
}

// shelfHere gives the codebooks in force in the working folder; without those from
// outside, which nobody asked to run yet.
func (s *streams) shelfHere(c *cobra.Command) *lint.Shelf {
	books, err := s.bookOptions()
	if err != nil {
		return &lint.Shelf{}
	}
	shelf, err := lint.ListBooks(contextOf(c), lint.ShelfOptions{BookOptions: books, Path: "."})
	if err != nil {
		return &lint.Shelf{}
	}
	return shelf
}

func (s *streams) ruleIDs(c *cobra.Command) []string {
	var ids []string
	for _, b := range s.shelfHere(c).Books {
		for i := range b.Rules {
			ids = append(ids, b.Rules[i].ID+"\t"+report.Escape(b.Rules[i].Title))
		}
	}
	return ids
}

func (s *streams) bookNames(c *cobra.Command) []string {
	shelf := s.shelfHere(c)
	names := slices.Clone(shelf.AtHand)
	for i := range shelf.Books {
		names = append(names, shelf.Books[i].Name)
	}
	slices.Sort(names)
	return slices.Compact(names)
}

// factIDs gives the facts of the design that stands before.
func (s *streams) factIDs(c *cobra.Command, args []string) []string {
	if len(args) == 0 || args[0] == "-" {
		return nil
	}
	r, err := s.judge(contextOf(c), request{paths: args[:1], date: s.now().Format(time.DateOnly)})
	if err != nil || len(r.Designs) != 1 || r.Designs[0].System == nil {
		return nil
	}
	return report.FactNames(r.Designs[0].System)
}

// commits gives the branches and tags of the repository here.
func (s *streams) commits(c *cobra.Command) []string {
	names := []string{"HEAD", "HEAD~1"}
	if s.git == nil {
		return nil
	}
	program, err := s.git()
	if err != nil {
		return nil
	}
	dir, err := s.dir()
	if err != nil {
		return nil
	}
	out, err := program.output(contextOf(c), dir, "for-each-ref", "--count=1000", "--format=%(refname:short)", "refs/heads", "refs/remotes", "refs/tags")
	if err != nil {
		return nil
	}
	for line := range strings.Lines(string(out)) {
		names = append(names, report.Escape(strings.TrimSpace(line)))
	}
	return names
}
