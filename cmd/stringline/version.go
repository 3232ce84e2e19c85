package main

import (
	"fmt"
	"io"

	"github.com/spf13/cobra"
)

func (s *streams) version(code *int) *cobra.Command {
	return &cobra.Command{
		Use:   "version",
		Short: "the version of this program",
		Args:  arguments(),
		RunE: func(*cobra.Command, []string) error {
			*code = s.write(0, func(w io.Writer) error {
				_, err := fmt.Fprintf(w, "stringline %s\n", programVersion)
				return err
			})
			return nil
		},
	}
}
