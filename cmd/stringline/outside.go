package main

import (
	"fmt"
	"time"

	"github.com/spf13/cobra"
)

// outsideOptions adds what says how codebooks from outside run.
func outsideOptions(c *cobra.Command) {
	option := c.Flags()
	option.StringArray("trust", nil, "run the codebook `NAME` from outside without limits")
	option.Int("codebook-seconds", int(workerTime/time.Second), "limit a codebook from outside to `N` s a request")
	option.Int("codebook-memory", workerMemory>>20, "limit a codebook from outside to `N` MiB")
}

// Bounds of the options: below them not even a small codebook loads.
const (
	leastSeconds, mostSeconds = 1, 3600
	leastMemory, mostMemory   = 128, 1 << 20 // MiB
)

// outside reads those options.
func (r *request) outside(c *cobra.Command) error {
	var err error
	if r.trust, err = names(c, "trust"); err != nil {
		return err
	}
	seconds, err := within(c, "codebook-seconds", leastSeconds, mostSeconds)
	if err != nil {
		return err
	}
	memory, err := within(c, "codebook-memory", leastMemory, mostMemory)
	if err != nil {
		return err
	}
	r.apart = newIsolation(time.Duration(seconds)*time.Second, uint64(memory)<<20)
	return nil
}

// within reads an option that is a whole number in a range.
func within(c *cobra.Command, name string, least, most int) (int, error) {
	n, err := c.Flags().GetInt(name)
	if err != nil {
		return 0, fmt.Errorf("reading --%s: %w", name, err)
	}
	if n < least || n > most {
		return 0, fmt.Errorf("--%s %d is out of range: %d to %d", name, n, least, most)
	}
	return n, nil
}
