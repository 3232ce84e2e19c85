package plot_test

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"stringline/lint/facts"
	"stringline/lint/linttest"
	"stringline/lint/report/plot"
	"stringline/schema/design"
)

// loaded reads a design of the examples with changes: pairs of what stands there,
// in the design or in a parts file, and what stands there instead.
func loaded(t testing.TB, name string, changes ...string) *facts.System {
	t.Helper()
	files := fstest.MapFS{}
	for file, text := range linttest.Texts(t, os.DirFS(filepath.Join("..", "..", "..", "examples", filepath.Dir(name))), ".") {
		files[file] = &fstest.MapFile{Data: []byte(text)}
	}
	for i := 0; i < len(changes); i += 2 {
		hit := false
		for file, text := range files {
			if strings.Contains(string(text.Data), changes[i]) && (file == filepath.Base(name) || strings.Contains(file, "parts/")) {
				text.Data, hit = []byte(strings.ReplaceAll(string(text.Data), changes[i], changes[i+1])), true
			}
		}
		if !hit {
			t.Fatalf("%s does not hold %q", name, changes[i])
		}
	}
	d := design.Load(design.Options{Files: files, Path: filepath.Base(name), Parts: []design.PartsGlob{{Glob: "parts/*.parts.hcl", From: "."}}})
	if d.Head == nil {
		t.Fatal(d.Problems)
	}
	return facts.New(d)
}

// element is an element of a picture as a reader of XML sees it.
type element struct {
	name  string
	attrs map[string]string
	text  string
	panel map[string]string // attributes of the panel that it stands in
}

// elements reads a picture with the standard library's reader of XML, which
// knows nothing of ours.
func elements(t testing.TB, svg []byte) []element {
	t.Helper()
	var all []element
	var open []int
	d := xml.NewDecoder(bytes.NewReader(svg))
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			t.Fatalf("the picture is no XML: %v", err)
		}
		switch token := token.(type) {
		case xml.StartElement:
			e := element{name: token.Name.Local, attrs: map[string]string{}}
			for _, a := range token.Attr {
				e.attrs[a.Name.Local] = a.Value
			}
			for _, n := range open {
				if all[n].attrs["data-panel"] != "" {
					e.panel = all[n].attrs
				}
			}
			open = append(open, len(all))
			all = append(all, e)
		case xml.EndElement:
			open = open[:len(open)-1]
		case xml.CharData:
			if len(open) > 0 {
				all[open[len(open)-1]].text += string(token)
			}
		}
	}
	if len(all) < 5 {
		t.Fatalf("only %d elements", len(all))
	}
	return all
}

func drawn(t testing.TB, s *facts.System, name string) []element {
	t.Helper()
	var b bytes.Buffer
	if err := plot.Alone(&b, s, name); err != nil {
		t.Fatal(err)
	}
	return elements(t, b.Bytes())
}

func number(t testing.TB, text string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

func factOf(t testing.TB, s *facts.System, id string) float64 {
	t.Helper()
	f, ok := s.Fact(id)
	v, known := f.Value().(float64)
	if !ok || !known {
		t.Fatalf("%s is not known", id)
	}
	return v
}

func allText(all []element) string {
	var words []string
	for _, e := range all {
		if e.name == "text" || e.name == "desc" {
			words = append(words, e.text)
		}
	}
	return strings.Join(words, "\n")
}
