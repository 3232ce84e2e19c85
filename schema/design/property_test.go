package design_test

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"stringline/schema/design"
	"stringline/schema/quantity"
)

// simple are attributes of data sheets that one can be written alone.
func simple() (kinds []*design.Kind) {
	for _, k := range design.Kinds() {
		if k.Part && k.Top {
			kinds = append(kinds, k)
		}
	}
	return kinds
}

// A quantity in its range is read as what was written, in any unit of its
// dimension; one out of it is refused at its place and is bad.
func TestQuantitiesKeepTheirValue(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := rapid.SampledFrom(simple()).Draw(t, "kind")
		var quantities []design.Attribute
		for _, a := range k.Attributes {
			if a.Form == design.Quantity && !a.Placed {
				quantities = append(quantities, a)
			}
		}
		a := rapid.SampledFrom(quantities).Draw(t, "attribute")
		due := quantity.MustLookup(a.Unit)
		var units []quantity.Unit
		for _, u := range quantity.Units() {
			if quantity.Fits(u, due) && u.Symbol != "AWG" {
				units = append(units, u)
			}
		}
		u := rapid.SampledFrom(units).Draw(t, "unit")
		width := a.Max - a.Min
		x := a.Min + width*rapid.Float64Range(-0.5, 1.5).Draw(t, "share")
		number := strconv.FormatFloat(u.FromSI(due.ToSI(x)), 'f', 9, 64)
		written, err := strconv.ParseFloat(number, 64)
		if err != nil {
			t.Fatal(err)
		}
		x = due.FromSI(u.ToSI(written))
		edge := 1e-8 * math.Max(math.Abs(a.Min), math.Abs(a.Max))
		if math.Abs(x-a.Min) < edge || math.Abs(x-a.Max) < edge {
			t.Skip("the ends of a range have tests of their own")
		}
		text := fmt.Sprintf("design \"t\" {}\n%s \"x\" {\n  %s = \"%s %s\"\n}\n", k.Name, a.Name, number, u.Symbol)
		d := design.Load(design.Options{Path: "a.design.hcl", Text: []byte(text)})
		v, given := d.Find(k.Name, "x").Value(a.Name)
		if !given {
			t.Fatal("the attribute is not there")
		}
		inside := x > a.Min && x < a.Max
		switch {
		case inside && (v.Bad || len(d.Problems) > 0):
			t.Fatalf("%s.%s refused: %v", k.Name, a.Name, d.Problems)
		case inside && math.Abs(v.SI-u.ToSI(written)) > 1e-12*math.Abs(v.SI):
			t.Fatalf("%s.%s = %v, want %v", k.Name, a.Name, v.SI, u.ToSI(written))
		case !inside && (!v.Bad || len(d.Problems) != 1 || d.Problems[0].Kind != "range"):
			t.Fatalf("%s.%s out of range: bad %v, %v", k.Name, a.Name, v.Bad, d.Problems)
		case !inside && (d.Problems[0].At.Start.Line != 3 || d.Problems[0].At.Start.Column != len(a.Name)+6):
			t.Fatalf("the problem stands at %v", d.Problems[0].At)
		}
	})
}

// Whatever is left out of, doubled in or swapped in the sample: no panic,
// problems with places in the order of the text, and the same again the second
// time.
func TestDamagedSample(t *testing.T) {
	files := archive(t, "sample.txtar")
	lines := strings.SplitAfter(string(files["huts/larch.design.hcl"].Data), "\n")
	cache := new(design.PartsCache)
	rapid.Check(t, func(t *rapid.T) {
		damaged := append([]string{}, lines...)
		for range rapid.IntRange(1, 4).Draw(t, "damages") {
			i := rapid.IntRange(0, len(damaged)-1).Draw(t, "line")
			j := rapid.IntRange(0, len(damaged)-1).Draw(t, "other")
			switch rapid.IntRange(0, 3).Draw(t, "how") {
			case 0:
				damaged[i] = "\n"
			case 1:
				damaged[i] += damaged[i]
			case 2:
				damaged[i], damaged[j] = damaged[j], damaged[i]
			case 3:
				cut := rapid.IntRange(0, max(0, len(damaged[i])-1)).Draw(t, "cut")
				damaged[i] = damaged[i][:cut] + damaged[j]
			}
		}
		load := func() *design.Design {
			return design.Load(design.Options{Files: files, Path: "huts/larch.design.hcl", Text: []byte(strings.Join(damaged, "")), Cache: cache})
		}
		d := load()
		for i, p := range d.Problems {
			if !p.At.Valid() || p.Kind == "" || p.Message == "" {
				t.Fatalf("problem without place, kind or message: %+v", p)
			}
			if i > 0 && d.Problems[i-1].At.File == p.At.File && d.Problems[i-1].At.Start.Byte > p.At.Start.Byte {
				t.Fatal("problems are not in order")
			}
		}
		if again := load(); again.Problems.Error() != d.Problems.Error() || again.Digest != d.Digest {
			t.Fatal("the second load differs")
		}
		seen := map[string]bool{}
		var walk func(b *design.Block)
		walk = func(b *design.Block) {
			if id := b.ID(); b.Kind.Name != "waiver" && seen[id] {
				t.Fatalf("two blocks with the id %s", id)
			}
			seen[b.ID()] = true
			for _, inner := range b.Blocks {
				walk(inner)
			}
		}
		for _, b := range d.Blocks {
			walk(b)
		}
	})
}
