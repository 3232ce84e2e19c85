package physics

import (
	"errors"
	"math"
	"testing"
)

func TestCheck(t *testing.T) {
	in := func(v float64, unit string) Input {
		return Input{Name: "length", Value: v, Min: 0, Max: 10, Unit: unit}
	}
	for _, c := range []struct {
		name  string
		input Input
		want  string
	}{
		{"lower end", in(0, "m"), ""},
		{"upper end", in(10, "m"), ""},
		{"below", in(-0.5, "m"), "a run: length is -0.5 m, outside 0 to 10 m"},
		{"above", in(10.5, "m"), "a run: length is 10.5 m, outside 0 to 10 m"},
		{"count", in(11, ""), "a run: length is 11, outside 0 to 10"},
		{"NaN", in(math.NaN(), "m"), "a run: length is not a finite number"},
		{"infinite", in(math.Inf(-1), "m"), "a run: length is not a finite number"},
	} {
		err := Check("a run", in(5, "m"), c.input)
		if c.want == "" {
			if err != nil {
				t.Errorf("%s: %v", c.name, err)
			}
			continue
		}
		var refusal *Refusal
		if !errors.As(err, &refusal) || err.Error() != c.want {
			t.Errorf("%s: got %v, want %s", c.name, err, c.want)
		}
	}
}
