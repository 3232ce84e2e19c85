package facts

import (
	"fmt"
	"slices"
	"strings"

	"stringline/schema/quantity"
)

// What the formulas share: sums and largest-of over subjects, the physics
// packages' refusals, and numbers as the one-line workings write them.

// say writes an SI value for the workings: as people read it, without trailing
// zeros ("37.4 V", "-27 degC").
func say(si float64, unit string) string {
	text := quantity.Format(si, unit)
	figure, symbol, _ := strings.Cut(text, " ")
	if strings.Contains(figure, ".") {
		figure = strings.TrimRight(strings.TrimRight(figure, "0"), ".")
	}
	if symbol == "" {
		return figure
	}
	return figure + " " + symbol
}

// times writes a factor before a term; a factor of 1 is left out.
func times(n float64, term string) string {
	if n == 1 {
		return term
	}
	return fmt.Sprintf("%g x %s", n, term)
}

// physics takes what a formula of the physics packages returned. A refusal makes
// the fact unknown and says why; over unknown inputs it means nothing.
func (w *Work) physics(v float64, err error) float64 {
	if err == nil {
		return v
	}
	if w.Known() {
		w.fail(err.Error())
	}
	return 0
}

// input gives the work of a fact that w has read.
func (k Key[S, V]) input(s S) *Work { return s.self().work(k.name) }

// lead puts an input before the others: it decides, so its places come first.
func (w *Work) lead(in *Work) {
	if i := slices.Index(w.Inputs, in); i > 0 {
		copy(w.Inputs[1:i+1], w.Inputs[:i])
		w.Inputs[0] = in
	}
}

// largest gives the largest of a fact over subjects, none negative; of none it is
// 0. The workings are those of the one that decides.
func largest[S subject](w *Work, key Key[S, float64], of []S) float64 {
	most := 0.0
	var from *Work
	for _, s := range of {
		if v := key.Of(w, s); from == nil || v > most {
			most, from = v, key.input(s)
		}
	}
	if from != nil {
		w.lead(from)
		w.Say("%s", from.Fact.Says)
	}
	return most
}

// smallest gives the smallest of a fact over subjects. Of none there is no answer.
func smallest[S subject](w *Work, key Key[S, float64], of []S) float64 {
	least := 0.0
	var from *Work
	for _, s := range of {
		if v := key.Of(w, s); from == nil || v < least {
			least, from = v, key.input(s)
		}
	}
	if from == nil {
		if w.Known() {
			w.fail("there is none to take the smallest of")
		}
		return 0
	}
	w.lead(from)
	w.Say("%s", from.Fact.Says)
	return least
}

// sum adds a fact over subjects, each so many times as count says (nil: once).
func sum[S subject](w *Work, key Key[S, float64], of []S, count func(S) float64) float64 {
	total := 0.0
	var terms []string
	for _, s := range of {
		n := 1.0
		if count != nil {
			n = count(s)
		}
		v := key.Of(w, s)
		total += n * v
		terms = append(terms, times(n, s.self().id+" "+say(v, key.input(s).Fact.Unit)))
	}
	w.Say("%s", strings.Join(terms, " + "))
	return total
}

// terms collects a sum over subjects of several kinds.
type terms struct {
	w     *Work
	total float64
	said  []string
}

func (t *terms) add(id string, amperes float64) {
	t.total += amperes
	t.said = append(t.said, id+" "+say(amperes, "A"))
}

func (t *terms) sum() float64 {
	t.w.Say("%s", strings.Join(t.said, " + "))
	return t.total
}

// addAll adds a current over subjects of one kind.
func addAll[S subject](t *terms, key Key[S, float64], of []S) {
	for _, s := range of {
		t.add(s.self().id, key.Of(t.w, s))
	}
}
