package survey_test

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint/survey"
)

func TestFiles(t *testing.T) {
	for _, c := range []struct {
		name       string
		workingDir string
		paths      []string
		want       []string
		problems   []string
	}{
		{"a folder: every kind of file, codebooks included, dotted folders not", "/shop", []string{"."}, []string{
			"/shop/boats/canal boat 50%.design.hcl", "/shop/boats/old/tub.design.hcl", "/shop/boats/old/workshop.hcl",
			"/shop/codebooks/house/a/breaks.design.hcl", "/shop/codebooks/house/a/meets.design.hcl", "/shop/codebooks/house/codebook.hcl",
			"/shop/hut.design.hcl", "/shop/parts/panels.parts.hcl", "/shop/workshop.hcl"}, nil},
		{"named twice, found once", "/shop", []string{"hut.design.hcl", "/shop/hut.design.hcl", "../shop/./hut.design.hcl"}, []string{"/shop/hut.design.hcl"}, nil},
		{"a workshop's file stands for itself", "/", []string{"shop/workshop.hcl"}, []string{"/shop/workshop.hcl"}, nil},
		{"nothing there", "/", []string{"", "nowhere", "empty", "lone/notes.txt"}, nil, []string{
			"looking for files: the path is empty",
			"nowhere: looking for files: file does not exist",
			"empty: no file of the language here: nothing under it is named *.design.hcl, *.parts.hcl, workshop.hcl or codebook.hcl",
			"lone/notes.txt: not a file of the language: its name would end in .design.hcl or .parts.hcl, or be workshop.hcl or codebook.hcl"}},
	} {
		found, problems := survey.Files(tree, c.workingDir, c.paths)
		if diff := cmp.Diff(c.want, found.Names); diff != "" {
			t.Errorf("%s (-want +got):\n%s", c.name, diff)
		}
		var got []string
		for _, p := range problems {
			got = append(got, p.Error())
		}
		if diff := cmp.Diff(c.problems, got); diff != "" {
			t.Errorf("%s: problems (-want +got):\n%s", c.name, diff)
		}
	}
}

// Links are told apart, wherever they lead.
func TestFilesPassOverLinks(t *testing.T) {
	top := t.TempDir()
	for name, text := range map[string]string{"in/a.design.hcl": "", "out/b.design.hcl": ""} {
		file := filepath.Join(top, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(file, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	for link, to := range map[string]string{"in/out.design.hcl": "../out/b.design.hcl", "in/lost.parts.hcl": "nowhere", "in/folder": "../out", "in/self": "."} {
		if err := os.Symlink(filepath.FromSlash(to), filepath.Join(top, filepath.FromSlash(link))); err != nil {
			t.Skip(err)
		}
	}
	found, problems := survey.Files(real{top}, "/", []string{"in"})
	want := survey.Texts{Names: []string{"/in/a.design.hcl"}, Links: []string{"/in/lost.parts.hcl", "/in/out.design.hcl"}}
	if diff := cmp.Diff(want, found); diff != "" || len(problems) > 0 {
		t.Errorf("(-want +got):\n%s\n%v", diff, problems)
	}
}
