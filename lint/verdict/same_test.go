package verdict

import (
	"math"
	"testing"
)

func TestSameFigures(t *testing.T) {
	number := func(v float64) *float64 { return &v }
	word := func(v string) *string { return &v }
	yes := func(v bool) *bool { return &v }
	v := func(is *Measured, limits ...Measured) *Verdict { return &Verdict{Is: is, Limits: limits} }
	volts := Measured{Unit: "V", Value: number(150)}
	for name, c := range map[string]struct {
		a, b *Verdict
		want bool
	}{
		"nothing measured":    {v(nil), v(nil), true},
		"one side alone":      {v(nil), v(&volts), false},
		"the same":            {v(&volts, volts), v(&Measured{Unit: "V", Value: number(150), ID: "x", Says: "3 x 50 V"}, volts), true},
		"rounding":            {v(&volts), v(&Measured{Unit: "V", Value: number(150 * (1 + 0.9e-9))}), true},
		"beyond rounding":     {v(&volts), v(&Measured{Unit: "V", Value: number(150 * (1 + 1.1e-9))}), false},
		"no bound":            {v(&Measured{Value: number(math.Inf(1))}), v(&Measured{Value: number(math.Inf(1))}), true},
		"unknown now":         {v(&volts), v(&Measured{Unit: "V"}), false},
		"another lower bound": {v(&Measured{AtLeast: number(1)}), v(&Measured{AtLeast: number(2)}), false},
		"another unit":        {v(&volts), v(&Measured{Unit: "A", Value: number(150)}), false},
		"another limit":       {v(&volts, volts), v(&volts, Measured{Unit: "V", Value: number(100)}), false},
		"a limit more":        {v(&volts, volts), v(&volts, volts, volts), false},
		"a word":              {v(&Measured{Word: word("agm")}), v(&Measured{Word: word("agm")}), true},
		"another word":        {v(&Measured{Word: word("agm")}), v(&Measured{Word: word("gel")}), false},
		"an empty word":       {v(&Measured{Word: word("")}), v(&Measured{}), false},
		"yes":                 {v(&Measured{Yes: yes(true)}), v(&Measured{Yes: yes(true)}), true},
		"no":                  {v(&Measured{Yes: yes(true)}), v(&Measured{Yes: yes(false)}), false},
	} {
		if got := SameFigures(c.a, c.b); got != c.want || SameFigures(c.b, c.a) != c.want {
			t.Errorf("%s: %v, want %v", name, got, c.want)
		}
	}
}
