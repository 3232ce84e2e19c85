package starter

import (
	"fmt"
	"maps"
	"slices"
	"strconv"
)

// ordered are answers of which the first may not exceed the second, as in the
// language.
var ordered = [][2]string{{"coldest", "hottest"}, {"bank-coldest", "bank-hottest"}}

// sized are answers that parts must be found for.
var sized = []string{"batteries", "panels", "dc-power", "ac-power", "ac-surge"}

// Fits tells whether the answer to one question goes together with those that are
// given so far, so that it can be asked again at once. Answers that are still open
// are left out of it. The error says what does not fit.
func (a Answers) Fits(option string) error {
	for _, pair := range ordered {
		if slices.Contains(pair[:], option) && a[pair[0]] != "" && a[pair[1]] != "" {
			low, err := a.number(pair[0])
			if err != nil {
				return err
			}
			high, err := a.number(pair[1])
			if err != nil {
				return err
			}
			if low > high {
				return fmt.Errorf("%s: %s, %s, is above %s, %s", option, pair[0], a[pair[0]], pair[1], a[pair[1]])
			}
		}
	}
	if !slices.Contains(sized, option) || a["bank-voltage"] == "" || a["batteries"] == "" {
		return nil
	}
	so := maps.Clone(a)
	if so["panels"] == "" { // the fewest, to ask about the batteries by themselves
		so["panels"] = strconv.Itoa(seriesPanels(so["bank-voltage"]))
	}
	_, err := newPlan(so)
	return err
}

// number reads an answer that is a quantity, in SI.
func (a Answers) number(option string) (float64, error) {
	for _, q := range Questions() {
		if q.Option == option {
			v, err := q.read(a[option])
			if err != nil {
				return 0, err
			}
			return v.SI, nil
		}
	}
	return 0, fmt.Errorf("%s is no question", option)
}

// seriesPanels is how many panels one string has at a bank's voltage.
func seriesPanels(bankVoltage string) int {
	return map[string]int{"12 V": 1, "24 V": 2, "48 V": 3}[bankVoltage]
}
