package design_test

import (
	"bytes"
	"strings"
	"testing"
	"testing/fstest"

	"stringline/schema/design"
)

// A weather file is read once for all designs of a workshop, belongs to what the
// digest covers, and has a bound.
func TestWeatherFile(t *testing.T) {
	load := func(text string, cache *design.PartsCache) *design.Design {
		return design.Load(design.Options{
			Files: fstest.MapFS{"w/a.epw": {Data: []byte(text)}}, Path: "w/x.design.hcl", Cache: cache,
			Show: func(name string) string { return "shown/" + name }, Text: []byte("design \"t\" {}\n\nsite {\n  weather = \"a.epw\"\n}\n"),
		})
	}
	one := load("LOCATION,a", nil)
	if len(one.Problems) > 0 || one.Weather == nil || one.Weather.File != "shown/w/a.epw" || string(one.Weather.Text) != "LOCATION,a" {
		t.Fatalf("%+v %v", one.Weather, one.Problems)
	}
	if other := load("LOCATION,b", nil); other.Digest == one.Digest {
		t.Error("another weather file, the same digest")
	}
	var cache design.PartsCache
	first, second := load("LOCATION,a", &cache), load("LOCATION,b", &cache)
	if !bytes.Equal(first.Weather.Text, second.Weather.Text) {
		t.Error("the file was read twice")
	}
	large := load(strings.Repeat("x", 16<<20+1), nil)
	if large.Weather != nil || len(large.Problems) != 1 || !strings.Contains(large.Problems[0].Error(), `shown/w/x.design.hcl:4:13: weather: reading "a.epw": it is larger than 16 MiB`) {
		t.Errorf("a file that is too large: %v", large.Problems)
	}
}
