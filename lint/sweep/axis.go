package sweep

import (
	"cmp"
	"errors"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"stringline/schema/design"
	"stringline/schema/quantity"
)

// Bounds on what one sweep may try.
const (
	mostPoints = 500  // of one axis
	mostTrials = 2000 // of both together
)

// Over says what is varied, as in an option: "site.coldest=-40degC..0degC/5K", or
// values one by one: "array.south.mounting=open_rack,roof_flush". A parameter of a
// codebook is param.BOOK.NAME, an answer to its question SUBJECT.declared.BOOK.NAME.
type Over struct {
	ID     string
	Range  string // what stands behind the =
	Values []string
}

// ParseOver reads an option's text. Whether there is such an attribute, and
// whether the values are its, is found out against a design.
func ParseOver(text string) (Over, error) {
	id, rest, found := strings.Cut(text, "=")
	o := Over{ID: strings.TrimSpace(id), Range: strings.TrimSpace(rest)}
	if !found || o.ID == "" || o.Range == "" {
		return o, fmt.Errorf("expected ID=FROM..TO/STEP or ID=VALUE,VALUE, such as site.coldest=-40degC..0degC/5K, found %q", text)
	}
	if !strings.Contains(o.Range, "..") {
		for part := range strings.SplitSeq(o.Range, ",") {
			o.Values = append(o.Values, strings.TrimSpace(part))
		}
	}
	return o, nil
}

// Axis is one attribute, parameter or answer with the values that it is given in turn.
type Axis struct {
	ID        string
	Unit      string // the unit that its values are written in; "" for bare numbers and words
	Attribute *design.Attribute
	Points    []Point
	// Between tells that there are values between the points, so that where a rule
	// turns can be looked for; Tolerance, in Unit, is how close. Otherwise a rule
	// turns from one point to the next.
	Between   bool
	Tolerance float64
	// Part names the data sheet that the attribute is written in, as in panel
	// "slate-410"; "" where it is the design's own.
	Part string
	// Book names the codebook whose parameter it is, or whose question it answers;
	// "" for an attribute of the language.
	Book string
	// InForce is what a parameter is set to where no sweep varies it; "" for what is
	// no parameter.
	InForce string

	at   place
	unit quantity.Unit
}

// Point is one value: as written in a file without quotes, and as a number in the
// axis' unit where it is one.
type Point struct {
	Text  string
	Value float64
}

// Number tells that its values are numbers, in order.
func (a *Axis) Number() bool {
	return a.Attribute.Form == design.Quantity || a.Attribute.Form == design.Number || a.Attribute.Form == design.Count
}

// listed takes values one by one, in the order given.
func (a *Axis) listed(o Over) error {
	for i, text := range o.Values {
		v, err := a.Attribute.Read(text)
		if err != nil {
			return err
		}
		if slices.Contains(o.Values[:i], text) {
			return fmt.Errorf("the value %s stands twice", text)
		}
		p := Point{Text: text}
		if a.Number() {
			if i == 0 {
				a.unit = a.unitOf(v)
				a.Unit = a.unit.Symbol
			}
			p.Value = a.unit.FromSI(v.SI)
		}
		a.Points = append(a.Points, p)
	}
	if len(a.Points) > mostPoints {
		return fmt.Errorf("%d values; at most %d", len(a.Points), mostPoints)
	}
	a.Between = (a.Attribute.Form == design.Quantity || a.Attribute.Form == design.Number) && a.unit.Symbol != "AWG" &&
		slices.IsSortedFunc(a.Points, func(x, y Point) int { return cmp.Compare(x.Value, y.Value) })
	a.tolerate()
	return nil
}

// tolerance is how close a turning point is found, as a share of the whole range.
const tolerance = 1e-5

func (a *Axis) tolerate() {
	if a.Between && len(a.Points) > 0 {
		a.Tolerance = tolerance * math.Abs(a.Points[len(a.Points)-1].Value-a.Points[0].Value)
		a.Between = a.Tolerance > 0
	}
}

// ranged takes the values from one to another by a step; the last is always
// among them.
func (a *Axis) ranged(o Over) error {
	if !a.Number() {
		return errors.New("it has no values in order; list them: ID=VALUE,VALUE")
	}
	first, rest, _ := strings.Cut(o.Range, "..")
	from, err := a.Attribute.Read(strings.TrimSpace(first))
	if err != nil {
		return err
	}
	to, step, err := a.ends(rest)
	if err != nil {
		return err
	}
	a.unit = a.unitOf(from)
	a.Unit = a.unit.Symbol
	if a.unit.Symbol == "AWG" {
		return errors.New("gauges have no even steps; give the size in mm2, or list gauges: ID=10AWG,8AWG")
	}
	begin, end := a.unit.FromSI(from.SI), a.unit.FromSI(to.SI)
	by := step / a.unit.Scale
	whole := a.Attribute.Form == design.Count
	switch {
	case by == 0:
		return errors.New("the step is nought")
	case by < 0:
		return errors.New("the step is negative; a range runs upward")
	case end < begin:
		return fmt.Errorf("the range runs downward; write %s..%s", strings.TrimSpace(to.Text), strings.TrimSpace(first))
	case end == begin:
		return errors.New("the range has one value only")
	case whole && by != math.Trunc(by):
		return fmt.Errorf("it counts whole things; the step %v is none", by)
	}
	steps := math.Floor((end-begin)/by + 1e-9)
	if steps+1 > mostPoints {
		return fmt.Errorf("%.0f values; at most %d: take a larger step", steps+1, mostPoints)
	}
	for i := range int(steps) + 1 {
		a.Points = append(a.Points, a.point(begin+float64(i)*by))
	}
	if last := a.Points[len(a.Points)-1].Value; end-last > 1e-9*by {
		a.Points = append(a.Points, a.point(end))
	}
	a.Between = !whole
	a.tolerate()
	return nil
}

// unitOf gives the unit that a value is written in; that of bare numbers for them.
func (a *Axis) unitOf(v *design.Value) quantity.Unit {
	if a.Attribute.Form == design.Quantity {
		return v.Written
	}
	return quantity.MustLookup("")
}

// ends reads "0degC/5K". Units hold a / too: the first place where both sides can
// be read parts them. The step is a difference in SI.
func (a *Axis) ends(text string) (to *design.Value, step float64, err error) {
	parted := false
	var because error
	for i := range len(text) {
		if text[i] != '/' {
			continue
		}
		v, err := a.Attribute.Read(strings.TrimSpace(text[:i]))
		if err != nil {
			if because == nil {
				because = err
			}
			continue
		}
		parted = true
		if step, because = a.difference(strings.TrimSpace(text[i+1:])); because == nil {
			return v, step, nil
		}
	}
	switch {
	case because != nil:
		return nil, 0, because
	case !parted:
		return nil, 0, fmt.Errorf("expected FROM..TO/STEP, found no step in %q", ".."+text)
	}
	return nil, 0, fmt.Errorf("%q cannot be read as an end and a step", text)
}

// difference reads a step.
func (a *Axis) difference(text string) (float64, error) {
	if a.Attribute.Form != design.Quantity {
		n, err := quantity.ParseNumber(text)
		if err != nil {
			return 0, fmt.Errorf("step: %w", err)
		}
		return n, nil
	}
	unit := a.Attribute.Unit
	due := append([]string{unit}, a.Attribute.Accepts...)
	if u, ok := quantity.Lookup(unit); ok && u.Dimension.Point {
		due = []string{"K"}
	}
	q, err := quantity.ParseAs(text, due...)
	if err != nil {
		return 0, fmt.Errorf("step: %w", err)
	}
	return q.SI, nil
}

// point writes a number as a file has it.
func (a *Axis) point(value float64) Point {
	value = quantity.Round(value)
	return Point{Text: a.text(value), Value: value}
}

func (a *Axis) text(value float64) string {
	text := strconv.FormatFloat(value, 'f', -1, 64)
	if a.Unit == "" {
		return text
	}
	return text + " " + a.Unit
}
