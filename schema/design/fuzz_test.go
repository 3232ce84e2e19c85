package design_test

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/schema/design"
)

// FuzzLoad gives any bytes as a design: no panic, every problem has a true
// place, and loading twice says the same twice.
func FuzzLoad(f *testing.F) {
	for _, pattern := range []string{
		filepath.Join(hostileFolder, "*.design.hcl"),
		filepath.Join(hostileFolder, "design", "*.design.hcl"),
		"../source/testdata/*.hcl",
	} {
		files, err := filepath.Glob(pattern)
		if err != nil || len(files) == 0 {
			f.Fatalf("%s: %d files, error %v", pattern, len(files), err)
		}
		for _, file := range files {
			text, err := os.ReadFile(file)
			if err != nil {
				f.Fatal(err)
			}
			f.Add(text)
		}
	}
	f.Fuzz(func(t *testing.T, text []byte) {
		d := loadText("fuzz.design.hcl", text)
		checkProblems(t, d)
		again := loadText("fuzz.design.hcl", text)
		if diff := cmp.Diff(d.Problems, again.Problems); diff != "" {
			t.Errorf("loading twice (-first +second):\n%s", diff)
		}
		if d.Digest != again.Digest {
			t.Errorf("digest %s, then %s", d.Digest, again.Digest)
		}
		checkValues(t, d.Blocks)
	})
}

// checkValues holds that a value without a problem is a value: never NaN or
// infinite, and inside the range that its attribute documents.
func checkValues(t *testing.T, blocks []*design.Block) {
	for _, b := range blocks {
		for name, v := range b.Values {
			if v == nil || v.Attribute == nil || v.Attribute.Name != name {
				t.Errorf("%s.%s has no attribute behind it", b.ID(), name)
				continue
			}
			if !v.NameAt.Valid() || !v.At.Valid() {
				t.Errorf("%s.%s has no place", b.ID(), name)
			}
			for _, number := range append([]float64{v.SI}, v.List...) {
				if number != number || number-number != 0 {
					t.Errorf("%s.%s is %v", b.ID(), name, number)
				}
			}
		}
		checkValues(t, b.Blocks)
	}
}
