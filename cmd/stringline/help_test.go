package main

import (
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/spf13/cobra"
)

// Help keeps to the terminal's width, but for words that are longer and for the
// examples and calls, which are there to be copied. It leaves no option out, and
// names the letter of one that has a letter.
func TestHelpKeepsToTheWidth(t *testing.T) {
	s, _, _ := testStreams(nil)
	code := 0
	root := s.commands(&code)
	commands := []*cobra.Command{root}
	for i := 0; i < len(commands); i++ {
		commands = append(commands, commands[i].Commands()...)
	}
	if len(commands) < 15 {
		t.Fatalf("%d commands", len(commands))
	}
	for _, c := range commands {
		for _, width := range []int{40, 80, 140} {
			help := helpOf(c, width)
			body, _, _ := strings.Cut(help, "\nExamples\n")
			for i, line := range strings.Split(body, "\n") {
				words := strings.Fields(line)
				if i > 0 && len(words) > 1 && !strings.HasPrefix(words[0], "-") && utf8.RuneCountInString(line) > width {
					t.Errorf("%s at %d: %q", c.CommandPath(), width, line)
				}
				if strings.TrimRight(line, " ") != line {
					t.Errorf("%s at %d: blanks end %q", c.CommandPath(), width, line)
				}
			}
			if c.LocalNonPersistentFlags().Lookup("output") != nil && !strings.Contains(help, "\n  -o, --output ") {
				t.Errorf("%s does not tell of -o:\n%s", c.CommandPath(), help)
			}
			if got := strings.Join(strings.Fields(help), " "); !strings.Contains(got, strings.Join(strings.Fields(c.Long), " ")) {
				t.Errorf("%s at %d: words are lost:\n%s", c.CommandPath(), width, help)
			}
		}
	}
	// A default that holds is told; one that is nothing is not.
	if help := helpOf(root, 0); !strings.Contains(help, "default auto") || strings.Contains(help, "default 0") {
		t.Errorf("defaults:\n%s", help)
	}
}
