package lint_test

import (
	"context"
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint"
	"stringline/lint/linttest"
	"stringline/rules"
)

// accept judges texts, accepts what is found and gives the baseline's text.
func accept(t *testing.T, texts map[string]string, dir string) (*lint.Result, *lint.Acceptance) {
	t.Helper()
	r := run(t, texts, func(o *lint.Options) { o.Baseline = &lint.Baseline{Name: "accepted.csv", Dir: dir, New: true} })
	before := use(r)
	done, err := lint.Accept(r)
	if err != nil {
		t.Fatal(err, told(r))
	}
	if after := use(r); after != before {
		t.Errorf("accepting alone changed the run from %s to %s", before, after)
	}
	done.Settle(r)
	return r, done
}

// against judges texts by a baseline in dir.
func against(t *testing.T, texts map[string]string, dir, text string, change func(*lint.Options)) *lint.Result {
	t.Helper()
	return run(t, texts, func(o *lint.Options) {
		o.Baseline = &lint.Baseline{Name: "accepted.csv", Dir: dir, Text: []byte(text)}
		if change != nil {
			change(o)
		}
	})
}

// use says what became of a baseline.
func use(r *lint.Result) string {
	words := fmt.Sprintf("%d held, %d worse, %d new, exit %d", r.Baseline.Held, r.Baseline.Worse, r.Baseline.Fresh, r.Exit)
	for _, g := range r.Baseline.Gone {
		words += ", gone " + g.File + " " + g.Rule
	}
	return words
}

func TestBaseline(t *testing.T) {
	const hut = "shop/hut.design.hcl"
	r, done := accept(t, house, "/shop")
	if got := use(r); got != "1 held, 0 worse, 0 new, exit 0" || done.Added != 1 || r.Summary.Accepted != 1 || r.Summary.Breaks != 1 {
		t.Fatalf("%s, %+v, %+v", got, done, r.Summary)
	}
	text := string(done.Text)
	if !strings.HasSuffix(text, "\nhut.design.hcl,house.calm,charger.main,,breaks,fix,50 A,-10 A,-0.25,2026-05-02\n") {
		t.Fatalf("%q", text)
	}
	otherwise := changed
	gone := maps.Clone(house)
	delete(gone, hut)
	gone["shop/other.design.hcl"] = house[hut]
	for _, c := range []struct {
		name   string
		texts  map[string]string
		change func(*lint.Options)
		want   string
	}{
		{"as accepted", house, nil, "1 held, 0 worse, 0 new, exit 0"},
		{"worse", otherwise(hut, `"50 A"`, `"52 A"`), nil, "0 held, 1 worse, 0 new, exit 1"},
		{"better", otherwise(hut, `"50 A"`, `"45 A"`), nil, "1 held, 0 worse, 0 new, exit 0"},
		{"met", otherwise(hut, `"50 A"`, `"40 A"`), nil, "0 held, 0 worse, 0 new, exit 0, gone hut.design.hcl house.calm"},
		{"unknown now", otherwise(hut, "    charge_current = \"50 A\"\n", ""), nil, "0 held, 1 worse, 0 new, exit 1"},
		{"another file", gone, nil, "0 held, 0 worse, 1 new, exit 1, gone hut.design.hcl house.calm"},
		{"a typo in the design", otherwise(hut, "parallel = 2", "paralel  = 2"), nil, "1 held, 0 worse, 0 new, exit 2"},
		{"a design that cannot be read at all", otherwise(hut, "design \"Hut\"", "<<<<<<< ours\ndesign \"Hut\""), nil, "0 held, 0 worse, 0 new, exit 2"},
		{"a rule that was not asked for", house, func(o *lint.Options) { o.Rules = []string{"limits.frames_bonded"} }, "0 held, 0 worse, 1 new, exit 1"},
		{"a codebook that is not trusted", house, func(o *lint.Options) { o.Trust = nil; o.Rules = nil }, ""},
		{"a codebook that is no longer in force", otherwise("shop/workshop.hcl", house["shop/workshop.hcl"], "parts = []\n"), func(o *lint.Options) { o.Rules = []string{"limits.frames_bonded", "house"} }, ""},
		{"the grade rose to stop", otherwise("shop/workshop.hcl", "", "\ngrade \"house.calm\" {\n  as = \"stop\"\n}\n"), nil, "0 held, 1 worse, 0 new, exit 1"},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := against(t, c.texts, "/shop", text, c.change)
			if got := use(r); c.want != "" && got != c.want {
				t.Errorf("%s\nwant %s\n%v", got, c.want, told(r))
			}
			if c.want == "" { // its rules are not known here: nothing is gone, and the run says why
				if len(r.Baseline.Gone) > 0 || r.Exit != 2 {
					t.Errorf("%s\n%v", use(r), told(r))
				}
			}
			if r.Exit == 2 {
				if done, err := lint.Accept(r); err == nil {
					t.Errorf("a run with exit 2 accepted %+v", done)
				}
			}
		})
	}
}

// TestBaselineFolders: paths are relative to the baseline's folder, wherever the
// run is made from.
func TestBaselineFolders(t *testing.T) {
	texts := maps.Clone(house)
	texts["shop/more/b c.design.hcl"] = house["shop/hut.design.hcl"]
	for dir, want := range map[string][]string{
		"/shop": {"hut.design.hcl", "more/b c.design.hcl"}, "/": {"shop/hut.design.hcl", "shop/more/b c.design.hcl"}, "/shop/more": {"../hut.design.hcl", "b c.design.hcl"},
	} {
		_, done := accept(t, texts, dir)
		var files []string
		for line := range strings.Lines(string(done.Text)) {
			name, _, _ := strings.Cut(line, ",")
			files = append(files, name)
		}
		slices.Sort(want)
		if diff := cmp.Diff(want, files[1:]); diff != "" {
			t.Errorf("from %s (-want +got)\n%s", dir, diff)
		}
		for _, from := range []string{"/shop", "/shop/more", "/"} {
			r := against(t, texts, dir, string(done.Text), func(o *lint.Options) { o.WorkingDir, o.Paths = from, []string{"/shop"} })
			if got := use(r); got != "2 held, 0 worse, 0 new, exit 0" {
				t.Errorf("baseline in %s, run from %s: %s", dir, from, got)
			}
		}
	}
}

// TestAcceptRefuses: a stop, what nobody may permit; and what the run did not see
// stays as it was.
func TestAcceptRefuses(t *testing.T) {
	stop := changed("shop/workshop.hcl", "", "\ngrade \"house.calm\" {\n  as = \"stop\"\n}\n")
	r, done := accept(t, stop, "/shop")
	if r.Exit != 1 || done.Added != 0 || len(done.Refused) != 1 || done.Refused[0].Why != "it is a stop" || strings.Count(string(done.Text), "\n") != 1 {
		t.Errorf("%s, %+v", use(r), done)
	}
	texts := maps.Clone(house)
	texts["shop/more/b.design.hcl"] = house["shop/hut.design.hcl"]
	_, all := accept(t, texts, "/shop")
	half := against(t, changed("shop/hut.design.hcl", `"50 A"`, `"40 A"`), "/shop", string(all.Text), func(o *lint.Options) {
		disk := o.Disk.(linttest.Disk)
		disk["shop/more/b.design.hcl"] = linttest.NewDisk(texts)["shop/more/b.design.hcl"]
		o.Paths = []string{"hut.design.hcl"}
	})
	done, err := lint.Accept(half)
	if err != nil || done.Dropped != 1 || strings.Contains(string(done.Text), "\nhut.design.hcl") || !strings.Contains(string(done.Text), "\nmore/b.design.hcl") {
		t.Errorf("%v: %+v\n%s", err, done, done.Text)
	}
	if _, err := lint.Accept(run(t, house, nil)); err == nil {
		t.Error("a run without a baseline accepted something")
	}
	if _, err := lint.Run(context.Background(), lint.Options{Disk: linttest.NewDisk(house), Embedded: rules.Books, Stdin: []byte{}, Baseline: &lint.Baseline{}}); err == nil {
		t.Error("a design from standard input went by a baseline")
	}
}
