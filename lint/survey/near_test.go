package survey_test

import (
	"testing"

	"stringline/lint/linttest"
	"stringline/lint/survey"
)

// A path that leads nowhere names the one that was most likely meant, in the form
// in which it was given; where none is near it names none.
func TestNearPaths(t *testing.T) {
	disk := linttest.NewDisk(map[string]string{
		"huts/larch-col/larch-col.design.hcl": "\n",
		"huts/larch-col/parts/a.parts.hcl":    "\n",
		"huts/boat.design.hcl":                "\n",
		"huts/.git/x.design.hcl":              "\n",
		"huts/notes.txt":                      "\n",
	})
	for given, want := range map[string]string{
		"huts/laarch-col":                       "huts/larch-col",
		"/huts/laarch-col":                      "/huts/larch-col",
		"hust/larch-col/larch-col.design.hcl":   "huts/larch-col/larch-col.design.hcl",
		"hust/larch-kol/larch-col.design.hcl":   "huts/larch-col/larch-col.design.hcl",
		"huts/larch-col/nowhere":                "",
		"hust/nowhere":                          "huts",
		"huts/baot.design.hcl":                  "huts/boat.design.hcl",
		"huts/boat":                             "huts/boat.design.hcl", // the ending left out
		"huts/boat.hcl":                         "huts/boat.design.hcl",
		"huts/car.design.hcl":                   "", // alike in its ending alone
		"huts/note.txt":                         "", // no file of the language
		"huts/gti":                              "", // a dotted folder is passed over
		"huts/boat.design.hcl/more":             "", // no folder
		"huts/larch-col/larch-cool.design.hcl/": "huts/larch-col/larch-col.design.hcl",
		"huts/larch-col/parts/b.parts.hcl":      "",
	} {
		_, problems := survey.Find(disk, "/", []string{given})
		_, asTexts := survey.Files(disk, "/", []string{given})
		if len(problems) != 1 || problems[0].Near != want || problems[0].At.File != given {
			t.Errorf("%s: %+v, want near %q", given, problems, want)
		}
		if len(asTexts) != 1 || asTexts[0].Near != want {
			t.Errorf("%s among texts: %+v, want near %q", given, asTexts, want)
		}
	}
	_, problems := survey.Find(disk, "/huts/larch-col", []string{"../baot.design.hcl"})
	if len(problems) != 1 || problems[0].Near != "../boat.design.hcl" {
		t.Errorf("from another folder: %+v", problems)
	}
}
