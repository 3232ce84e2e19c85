package source

import (
	"regexp"
	"testing"

	"pgregory.net/rapid"
)

// The scan by hand is held against the same thing said as a regular expression.
func TestIsBareHeader(t *testing.T) {
	plain := regexp.MustCompile(`^[ \t]*[A-Za-z_][A-Za-z0-9_-]*([ \t]+"[^"]*")*[ \t]*((#|//).*)?\r*$`)
	rapid.Check(t, func(t *rapid.T) {
		line := ""
		for _, part := range rapid.SliceOfN(rapid.SampledFrom([]string{"site", "a-1", "_", " ", "\t", `"roof"`, `"`, "#", "//", "/", "=", "{", "1", "\r", "é"}), 0, 8).Draw(t, "parts") {
			line += part
		}
		if got, want := isBareHeader([]byte(line)), plain.MatchString(line); got != want {
			t.Fatalf("%q: %v, want %v", line, got, want)
		}
	})
}
