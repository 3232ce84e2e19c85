package lint

import (
	"strings"
	"testing"
)

// A name that no rule has is answered by the nearest one, by those that begin as it
// does, or by those that hold its last part; far from all it is answered by none.
func TestLikely(t *testing.T) {
	known := []string{"limits", "practice", "limits.cold_bank", "limits.cold_voltage", "limits.gas", "limits.short_circuit_rating", "practice.cold_start", "practice.labels"}
	for name, want := range map[string]string{
		"limits.cold":         "limits.cold_bank limits.cold_voltage",
		"limits.cold_":        "limits.cold_bank limits.cold_voltage",
		"limits.cold_v":       "limits.cold_voltage",
		"limits.cold_voltgae": "limits.cold_voltage",
		"limts.cold_voltage":  "limits.cold_voltage",
		"limits.rating":       "limits.short_circuit_rating",
		"limits.zzz":          "", // its codebook's name does not make it alike
		"limits.a":            "",
		"limit":               "limits",
		"cold_bank":           "limits.cold_bank",
		"cold":                "limits.cold_bank limits.cold_voltage practice.cold_start",
		"nothing":             "",
		"":                    "",
		"limits.":             "limits.cold_bank limits.cold_voltage limits.gas limits.short_circuit_rating",
	} {
		near, candidates := likely(name, known)
		got := near + strings.Join(candidates, " ")
		if got != want || near != "" && len(candidates) > 0 || len(candidates) == 1 {
			t.Errorf("%q: near %q, candidates %q, want %q", name, near, candidates, want)
		}
	}
}

// A list of candidates stays short, and never leaves out one alone.
func TestOneOf(t *testing.T) {
	names := strings.Fields("a b c d e f g h i j")
	for n, want := range map[int]string{2: "a or b", 8: "a, b, c, d, e, f, g or h", 9: "a, b, c, d, e, f, g, h or i", 10: "a, b, c, d, e, f, g, h or 2 more"} {
		if got := oneOf(names[:n]); got != want {
			t.Errorf("%d: %q, want %q", n, got, want)
		}
	}
}
