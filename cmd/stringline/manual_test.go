package main

import (
	"os/exec"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"
)

// commandTree gives the program's commands.
func commandTree() *cobra.Command {
	s, _, _ := testStreams(nil)
	var code int
	return s.commands(&code)
}

func manualText(t *testing.T) string {
	t.Helper()
	s, out, said := testStreams(nil)
	if code := run(t.Context(), []string{"help", "--manual"}, s); code != 0 || said.Len() > 0 {
		t.Fatalf("exit status %d, said %q", code, said)
	}
	return out.String()
}

// TestManualIsWhole: every command and every option that people see is on the
// page, with its words; and nothing of it is empty.
func TestManualIsWhole(t *testing.T) {
	text := manualText(t)
	if again := manualText(t); again != text {
		t.Error("two runs give two pages")
	}
	options := 0
	var look func(c *cobra.Command)
	look = func(c *cobra.Command) {
		for _, sub := range c.Commands() {
			if !sub.Hidden {
				look(sub)
			}
		}
		if c.HasAvailableSubCommands() {
			return
		}
		_, section, ok := strings.Cut(text, `.SS "`+plainText(strings.TrimSuffix(c.UseLine(), " [flags]"))+`"`)
		if !ok {
			t.Errorf("%s is not on the page", c.CommandPath())
			return
		}
		section, _, _ = strings.Cut(section, "\n.S")
		c.LocalNonPersistentFlags().VisitAll(func(f *pflag.Flag) {
			if f.Hidden || f.Name == "help" {
				return
			}
			options++
			_, words := pflag.UnquoteUsage(f)
			if !strings.Contains(section, plainText("--"+f.Name)) || !strings.Contains(section, plainText(words)) {
				t.Errorf("%s --%s is not on the page", c.CommandPath(), f.Name)
			}
		})
	}
	look(commandTree())
	if options < 15 {
		t.Fatalf("only %d options seen: this test would prove nothing", options)
	}
	for _, section := range []string{"NAME", "SYNOPSIS", "EXIT STATUS", "FILES", "ENVIRONMENT", "EXAMPLES", "CAUTIONS"} {
		if !regexp.MustCompile(`(?m)^\.SH "` + section + `"\n(\.TP\n)?[^.\n]`).MatchString(text) {
			t.Errorf("the section %s is empty or not there", section)
		}
	}
	for _, name := range []string{"NO_COLOR", "CLICOLOR_FORCE", "TERM", "GOGC", "workshop.hcl", "--color"} {
		if !strings.Contains(text, plainText(name)) {
			t.Errorf("%s is not on the page", name)
		}
	}
}

// TestManualReads puts the page to the programs that read manual pages, as far as
// they are there: none may warn.
func TestManualReads(t *testing.T) {
	text := manualText(t)
	tried := 0
	for _, reader := range [][]string{
		{"mandoc", "-T", "lint", "-W", "warning"},
		{"groff", "-man", "-Tutf8", "-ww", "-z"},
		{"man", "--warnings", "-l", "-"},
	} {
		program, err := exec.LookPath(reader[0])
		if err != nil {
			continue
		}
		tried++
		read := func(text string) (string, error) {
			c := exec.Command(program, reader[1:]...)
			c.Env = append(c.Environ(), "MANWIDTH=80", "LC_ALL=C.UTF-8", "PAGER=cat", "MANPAGER=cat")
			c.Stdin = strings.NewReader(text)
			var said strings.Builder
			c.Stderr = &said
			if reader[0] == "mandoc" {
				c.Stdout = &said
			}
			err := c.Run()
			return said.String(), err
		}
		if said, err := read(text); err != nil || said != "" {
			t.Errorf("%s: %v\n%s", reader[0], err, said)
		}
		if said, err := read(text + ".nosuchmacro x\n"); err == nil && said == "" && reader[0] != "man" {
			t.Errorf("%s does not warn about anything", reader[0])
		}
	}
	if tried == 0 {
		t.Skip("no program here reads manual pages")
	}
}

func TestArgumentNames(t *testing.T) {
	for use, want := range map[string][]argumentName{
		"check [PATH...]":                 {{"PATH", true}},
		"workings DESIGN FACT":            {{"DESIGN", false}, {"FACT", false}},
		"test [FOLDER | NAME]...":         {{"FOLDER|NAME", true}},
		"explain RULE|BOOK [DESIGN]":      {{"RULE|BOOK", false}, {"DESIGN", false}},
		"compare OLD NEW | --since X [Y]": {{"OLD", false}, {"NEW", false}},
		"sheet DESIGN -o FILE":            {{"DESIGN", false}},
		"version":                         nil,
	} {
		if got := argumentNames(use); !slices.Equal(got, want) {
			t.Errorf("%q: %v, want %v", use, got, want)
		}
	}
}

// TestListedWords: the words that the shell offers for an option are those that
// its command takes, all of them and no other.
func TestListedWords(t *testing.T) {
	seen := 0
	var look func(c *cobra.Command)
	look = func(c *cobra.Command) {
		for _, sub := range c.Commands() {
			look(sub)
		}
		each := func(f *pflag.Flag) {
			_, words := pflag.UnquoteUsage(f)
			list := listedWords(words)
			if f.Name == "as" && len(list) < 2 {
				t.Errorf("%s --as: %q lists no words", c.CommandPath(), words)
			}
			for _, word := range list {
				seen++
				if err := c.Flags().Set(f.Name, word); err != nil {
					t.Errorf("%s --%s: %v", c.CommandPath(), f.Name, err)
				}
				if _, err := oneOf(c, f.Name, list...); err != nil {
					t.Errorf("%s --%s %s: %v", c.CommandPath(), f.Name, word, err)
				}
			}
			if len(list) == 0 || c.Name() == "stringline" {
				return
			}
			// A word that is not listed is refused, and the refusal names those that are.
			s, _, said := testStreams(nil)
			args := append(strings.Fields(c.CommandPath())[1:], "--"+f.Name, "sideways", "../../examples/hut/hut.design.hcl", "../../examples/hut/hut.design.hcl")
			if code := run(t.Context(), args[:min(len(args), len(strings.Fields(c.CommandPath()))+3)], s); code != 2 {
				t.Errorf("%v: exit status %d", args, code)
			}
			for _, word := range list {
				if text := said.String(); strings.Contains(text, "there are ") && !strings.Contains(text, word) {
					t.Errorf("%v: %q does not name %s", args, text, word)
				}
			}
		}
		c.LocalNonPersistentFlags().VisitAll(each)
	}
	look(commandTree())
	if seen < 10 {
		t.Fatalf("only %d words seen: this test would prove nothing", seen)
	}
}
