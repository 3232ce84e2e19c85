package main

import (
	"fmt"

	"github.com/spf13/cobra"
)

// codebook is the parent of what is done with codebooks.
func (s *streams) codebook(code *int) *cobra.Command {
	c := &cobra.Command{
		Use:   "codebook",
		Short: "write, test, explain, export and list codebooks",
		Long:  "Codebooks are sets of rules: those that come with the program, and a workshop's own.",
		Args:  cobra.ArbitraryArgs,
	}
	c.RunE = func(c *cobra.Command, args []string) error {
		if len(args) > 0 {
			return unknownCommand(c, args[0])
		}
		return fmt.Errorf("codebook needs a command: stringline codebook --help")
	}
	c.AddCommand(s.codebookNew(code), s.codebookTest(code), s.codebookExplain(code), s.codebookExport(code), s.codebookList(code))
	return c
}
