package survey_test

import (
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint/linttest"
	"stringline/lint/survey"
)

// real is a Disk over a folder of the machine, as the command builds it.
type real struct{ top string }

func (r real) Root(dir string) (fs.FS, error) {
	root, err := os.OpenRoot(filepath.Join(r.top, filepath.FromSlash(dir)))
	if err != nil {
		return nil, err
	}
	return root.FS(), nil
}

func (r real) Stat(name string) (fs.FileInfo, error) {
	return os.Stat(filepath.Join(r.top, filepath.FromSlash(name)))
}

var tree = linttest.NewDisk(map[string]string{
	"shop/workshop.hcl":                        "\n",
	"shop/hut.design.hcl":                      "\n",
	"shop/parts/panels.parts.hcl":              "\n",
	"shop/boats/canal boat 50%.design.hcl":     "\n",
	"shop/boats/old/workshop.hcl":              "\n",
	"shop/boats/old/tub.design.hcl":            "\n",
	"shop/codebooks/house/codebook.hcl":        "\n",
	"shop/codebooks/house/a/meets.design.hcl":  "\n",
	"shop/codebooks/house/a/breaks.design.hcl": "\n",
	"shop/.git/x.design.hcl":                   "\n",
	"lone/van.design.hcl":                      "\n",
	"lone/notes.txt":                           "\n",
	"empty/readme.md":                          "\n",
	"onlyworkshop/workshop.hcl":                "\n",
	"odd/workshop.hcl/is-a-folder":             "\n",
	"odd/van.design.hcl":                       "\n",
})

func TestFind(t *testing.T) {
	cases := []struct {
		name       string
		workingDir string
		paths      []string
		want       []string // workshop folder, file, designs as shown
		problems   []string
	}{
		{name: "a folder is searched, codebooks and dotted folders are not", workingDir: "/shop", paths: []string{"."},
			want: []string{"/shop workshop.hcl: boats/canal boat 50%.design.hcl, hut.design.hcl", "/shop/boats/old workshop.hcl: boats/old/tub.design.hcl"}},
		{name: "named twice, judged once", workingDir: "/shop", paths: []string{"hut.design.hcl", "./hut.design.hcl", "/shop/hut.design.hcl"},
			want: []string{"/shop workshop.hcl: hut.design.hcl"}},
		{name: "from below, the workshop above is found", workingDir: "/shop/boats", paths: []string{"canal boat 50%.design.hcl"},
			want: []string{"/shop workshop.hcl: canal boat 50%.design.hcl"}},
		{name: "from elsewhere, paths climb", workingDir: "/lone", paths: []string{"../shop/hut.design.hcl"},
			want: []string{"/shop workshop.hcl: ../shop/hut.design.hcl"}},
		{name: "no workshop", workingDir: "/", paths: []string{"lone"},
			want: []string{"/lone : lone/van.design.hcl"}},
		{name: "a parts file stands for its workshop", workingDir: "/shop", paths: []string{"parts/panels.parts.hcl"},
			want: []string{"/shop workshop.hcl: boats/canal boat 50%.design.hcl, hut.design.hcl", "/shop/boats/old workshop.hcl: boats/old/tub.design.hcl"}},
		{name: "nothing there", workingDir: "/", paths: []string{"nowhere", "empty", "lone/notes.txt", "onlyworkshop/workshop.hcl"},
			problems: []string{
				"nowhere: looking for designs: file does not exist",
				"empty: no design here: nothing under it is named *.design.hcl",
				"lone/notes.txt: not a design: a design's name ends in .design.hcl",
				"onlyworkshop/workshop.hcl: no design belongs to this file's workshop",
			}},
		{name: "a codebook's examples are no designs, named or not", workingDir: "/shop/codebooks", paths: []string{"house/a/meets.design.hcl", "house/a", "house"},
			problems: []string{
				"house/a/meets.design.hcl: no design here: it lies in a codebook's folder, whose designs are examples of its rules",
				"house/a: no design here: it lies in a codebook's folder, whose designs are examples of its rules",
				"house: no design here: nothing under it is named *.design.hcl",
			}},
		{name: "an empty path is not the working folder", workingDir: "/shop", paths: []string{""},
			problems: []string{"looking for designs: the path is empty"}},
		{name: "a workshop file that is none", workingDir: "/", paths: []string{"odd"},
			problems: []string{"odd/van.design.hcl: finding the workshop: odd/workshop.hcl: not a regular file"}},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			found, problems := survey.Find(tree, c.workingDir, c.paths)
			if diff := cmp.Diff(c.want, lines(found)); diff != "" {
				t.Errorf("workshops (-want +got):\n%s", diff)
			}
			var got []string
			for _, p := range problems {
				got = append(got, p.Error())
			}
			if diff := cmp.Diff(c.problems, got); diff != "" {
				t.Errorf("problems (-want +got):\n%s", diff)
			}
		})
	}
}

func lines(found []*survey.Workshop) []string {
	var out []string
	for _, w := range found {
		var shown []string
		for _, d := range w.Designs {
			shown = append(shown, w.Show(d))
		}
		out = append(out, w.Dir+" "+w.File+": "+strings.Join(shown, ", "))
	}
	return out
}

// TestLinks: a link that leads out of the tree, a loop of links,
// and a folder that is named like a design.
func TestLinks(t *testing.T) {
	top := t.TempDir()
	for _, dir := range []string{"in", "out", "in/folder.design.hcl"} {
		if err := os.MkdirAll(filepath.Join(top, dir), 0o755); err != nil {
			t.Fatal(err)
		}
	}
	for _, name := range []string{"in/a.design.hcl", "out/b.design.hcl"} {
		if err := os.WriteFile(filepath.Join(top, name), nil, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	for link, to := range map[string]string{"in/b.design.hcl": "../out/b.design.hcl", "in/loop": ".", "in/away": "../out"} {
		if err := os.Symlink(to, filepath.Join(top, link)); err != nil {
			t.Skip("no symbolic links here: ", err)
		}
	}
	found, problems := survey.Find(real{top}, "/", []string{"in"})
	if len(problems) > 0 {
		t.Errorf("problems: %v", problems)
	}
	if diff := cmp.Diff([]string{"/in : in/a.design.hcl, in/b.design.hcl"}, lines(found)); diff != "" {
		t.Errorf("workshops (-want +got):\n%s", diff)
	}
	if _, err := fs.ReadFile(found[0].Tree, "b.design.hcl"); err == nil {
		t.Error("the tree lets a link lead out of it")
	}
}

func TestRelative(t *testing.T) {
	for _, c := range [][3]string{
		{"/a/b", "/a/b/c", "c"}, {"/a/b", "/a/c", "../c"}, {"/a/b", "/a/b", "."}, {"/", "/x", "x"},
		{"/a/b", "/a", ".."}, {"/a/b/c", "/d", "../../../d"}, {"/a/bc", "/a/b/d", "../b/d"},
	} {
		if got := survey.Relative(c[0], c[1]); got != c[2] {
			t.Errorf("Relative(%q, %q) = %q, want %q", c[0], c[1], got, c[2])
		} else if path.Join(c[0], got) != c[1] {
			t.Errorf("joining %q and %q does not lead back to %q", c[0], got, c[1])
		}
	}
}
