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
	"stringline/lint/verdict"
	"stringline/rules"
)

// A workshop with one codebook of its own, whose one rule asks that a bank's
// charge setting stays below a parameter.
var house = map[string]string{
	"shop/workshop.hcl": `parts = ["*.parts.hcl"]

codebook "house" {
  path = "books/house"
  params {
    calm = "40 A"
  }
}
`,
	"shop/books/house/codebook.hcl": `name    = "house"
version = "1.0.0"

parameter "calm" {
  kind    = "quantity"
  unit    = "A"
  default = "20 A"
  range   = ["1 A", "500 A"]
  means   = "charge current that the workshop is calm about"
}
`,
	"shop/books/house/calm/rule.rego": `# METADATA
# title: Charge current that we are calm about
# description: A house rule for tests.
# custom:
#   grade: fix
#   each: chargers
#   source: common practice
#   remedy: turn the setting down
package codebooks.house.calm

check contains {"about": c.id, "is": c.settings.charge_current, "at_most": input.params.calm} if some c in input.chargers
`,
	"shop/all.parts.hcl": `controller "ridge-60" {
  charge_current_max = "60 A"
}

battery "fell-200" {
  nominal = "25.6 V"
}
`,
	"shop/hut.design.hcl": `design "Hut" {
  revision = "A"
}

bank "house" {
  battery  = "fell-200"
  series   = 1
  parallel = 2
}

charger "main" {
  controller = "ridge-60"
  bank       = "house"
  settings {
    charge_current = "50 A"
  }
}
`,
}

// changed gives the workshop's texts with some of them replaced.
func changed(edits ...string) map[string]string {
	texts := maps.Clone(house)
	for i := 0; i < len(edits); i += 3 {
		name, old, new := edits[i], edits[i+1], edits[i+2]
		if old == "" {
			texts[name] += new
		} else {
			if !strings.Contains(texts[name], old) {
				panic(fmt.Sprintf("%s does not hold %q", name, old))
			}
			texts[name] = strings.Replace(texts[name], old, new, 1)
		}
	}
	return texts
}

func run(t *testing.T, texts map[string]string, change func(*lint.Options)) *lint.Result {
	t.Helper()
	o := lint.Options{
		Disk: linttest.NewDisk(texts), Embedded: rules.Books, WorkingDir: "/shop", Paths: []string{"."},
		Date: "2026-05-02", RejectFrom: verdict.Fix, Rules: []string{"house"}, Trust: []string{"house"},
	}
	if change != nil {
		change(&o)
	}
	result, err := lint.Run(context.Background(), o)
	if err != nil {
		t.Fatal(err)
	}
	return result
}

// told lists what a run found, as a person would read it aloud.
func told(r *lint.Result) []string {
	var out []string
	for _, p := range r.Problems {
		out = append(out, p.Error())
	}
	for i := range r.Designs {
		for _, p := range r.Designs[i].Problems {
			out = append(out, p.Error())
		}
		for j := range r.Designs[i].Verdicts {
			v := &r.Designs[i].Verdicts[j]
			out = append(out, fmt.Sprintf("%s: %s %s: %s", r.Designs[i].File, v.Grade, v.Key(), v.Outcome))
		}
	}
	return append(out, fmt.Sprint("exit ", r.Exit))
}

func TestRun(t *testing.T) {
	const hut = "shop/hut.design.hcl"
	waiver := func(rule, on, expires string) string {
		return fmt.Sprintf("\nwaiver %q {\n  on      = [%q]\n  reason  = \"seen\"\n  expires = %q\n}\n", rule, on, expires)
	}
	cases := []struct {
		name   string
		texts  map[string]string
		change func(*lint.Options)
		want   []string
	}{
		{name: "a house rule breaks", texts: house,
			want: []string{"hut.design.hcl: fix house.calm|charger.main|: breaks", "exit 1"}},
		{name: "exactly at the parameter it meets", texts: changed("shop/workshop.hcl", `"40 A"`, `"50 A"`),
			want: []string{"hut.design.hcl: fix house.calm|charger.main|: meets", "exit 0"}},
		{name: "a grade below what is rejected", texts: changed("shop/workshop.hcl", "", "\ngrade \"house.calm\" {\n  as = \"advise\"\n}\n"),
			want: []string{"hut.design.hcl: advise house.calm|charger.main|: breaks", "exit 0"}},
		{name: "unknown stays unproven", texts: changed(hut, "    charge_current = \"50 A\"\n", ""),
			want: []string{"hut.design.hcl: fix house.calm|charger.main|: unproven", "exit 1"}},
		{name: "a waiver through its last day", texts: changed(hut, "", waiver("house.calm", "charger.main", "2026-05-02")),
			want: []string{"hut.design.hcl: fix house.calm|charger.main|: waived", "exit 0"}},
		{name: "a waiver the day after", texts: changed(hut, "", waiver("house.calm", "charger.main", "2026-05-01")),
			want: []string{"hut.design.hcl: fix house.calm|charger.main|: breaks", "hut.design.hcl: fix waiver.in_force|system|house.calm on charger.main: breaks", "exit 1"}},
		{name: "a waiver that matches nothing", texts: changed(hut, "", waiver("house.calm", "charger.mian", "2026-06-01")),
			want: []string{"hut.design.hcl: fix house.calm|charger.main|: breaks", "hut.design.hcl: fix waiver.in_force|system|house.calm on charger.mian: breaks", "exit 1"}},
		{name: "a waiver of no rule", texts: changed(hut, "", waiver("house.clam", "charger.main", "2026-06-01")),
			want: []string{`hut.design.hcl:19:1: no rule in force has the id "house.clam" (did you mean "house.calm"?)`, "hut.design.hcl: fix house.calm|charger.main|: breaks", "exit 2"}},
		{name: "a grade of no rule", texts: changed("shop/workshop.hcl", "", "\ngrade \"house.clam\" {\n  as = \"advise\"\n}\n"),
			want: []string{`workshop.hcl:10:1: no rule in force has the id "house.clam" (did you mean "house.calm"?)`, "hut.design.hcl: fix house.calm|charger.main|: breaks", "exit 2"}},
		{name: "a codebook that is not trusted does not run", texts: house, change: func(o *lint.Options) { o.Trust = nil; o.Rules = []string{"limits.frames_bonded"} },
			want: []string{`workshop.hcl:3:1: codebook "house" lies outside the program and would run inside it: that takes --trust house`, "hut.design.hcl: fix limits.frames_bonded|grounding|: unproven", "exit 2"}},
		{name: "a parameter out of range does not fall back to its default", texts: changed("shop/workshop.hcl", `"40 A"`, `"400 kA"`),
			want: []string{`workshop.hcl:6:12: calm: expected 1.00 A to 500.0 A, found "400 kA"`, "hut.design.hcl: fix house.calm|charger.main|: unproven", "exit 2"}},
		{name: "a codebook that the program does not have", texts: changed(hut, "revision = \"A\"", "revision = \"A\"\n  codebooks = [\"limit\"]"),
			want: []string{`hut.design.hcl:3:16: no codebook is named "limit" (did you mean "limits"?)`, "hut.design.hcl: fix house.calm|charger.main|: breaks", "exit 2"}},
		{name: "a rule that cannot be loaded", texts: changed("shop/books/house/calm/rule.rego", "c.settings.charge_current", "c.settings.charge_curent"),
			change: func(o *lint.Options) { o.Rules = []string{"limits.frames_bonded"} },
			want:   []string{"books/house/calm/rule.rego:11:", "hut.design.hcl: fix limits.frames_bonded|grounding|: unproven", "exit 2"}},
		{name: "a selection that keeps nothing", texts: house, change: func(o *lint.Options) { o.Rules = []string{"house.clam"} },
			want: []string{`no rule or codebook in force is named "house.clam" (did you mean "house.calm"?)`, "exit 2"}},
		{name: "a codebook that needs a newer program", texts: changed("shop/books/house/codebook.hcl", "version = \"1.0.0\"", "version = \"1.0.0\"\nneeds   = \"0.10\""),
			change: func(o *lint.Options) { o.Version = "0.9.5" },
			want:   []string{"books/house/codebook.hcl:3:11: the codebook needs version 0.10 of this program or a newer one; this is 0.9.5", "exit 2"}},
		{name: "a codebook that needs just this program", texts: changed("shop/books/house/codebook.hcl", "version = \"1.0.0\"", "version = \"1.0.0\"\nneeds   = \"0.10\""),
			change: func(o *lint.Options) { o.Version = "0.10.0" },
			want:   []string{"hut.design.hcl: fix house.calm|charger.main|: breaks", "exit 1"}},
		{name: "a selection of a codebook that cannot be loaded adds nothing", texts: changed("shop/books/house/calm/rule.rego", "c.settings.charge_current", "c.settings.charge_curent"),
			want: []string{"books/house/calm/rule.rego:11:", "exit 2"}},
		{name: "a typo in the design", texts: changed(hut, "parallel = 2", "paralel  = 2"),
			want: []string{"hut.design.hcl:5:1: parallel is missing", `hut.design.hcl:8:3: unknown attribute "paralel" of bank (did you mean "parallel"?)`, "hut.design.hcl: fix house.calm|charger.main|: breaks", "exit 2"}},
		{name: "no path", texts: house, change: func(o *lint.Options) { o.Paths = nil }, want: []string{"no rule or codebook", "exit 2"}},
		{name: "no such path", texts: house, change: func(o *lint.Options) { o.Paths = []string{"hat.design.hcl"}; o.Rules = nil },
			want: []string{"hat.design.hcl: looking for designs: file does not exist", "exit 2"}},
		{name: "standard input lies in the working folder", texts: changed("shop/workshop.hcl", `"40 A"`, `"50 A"`),
			change: func(o *lint.Options) { o.Paths = nil; o.Stdin = []byte(house[hut]) },
			want:   []string{"-: fix house.calm|charger.main|: meets", "exit 0"}},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			got := told(run(t, c.texts, c.change))
			same := slices.EqualFunc(c.want, got, func(want, got string) bool { return strings.HasPrefix(got, want) })
			if !same {
				t.Errorf("want lines that begin with\n%s\ngot\n%s", strings.Join(c.want, "\n"), strings.Join(got, "\n"))
			}
		})
	}
}

// TestPinnedDigest: a codebook whose content moved on does not run.
func TestPinnedDigest(t *testing.T) {
	var digest string
	for _, b := range run(t, house, nil).Books {
		if b.Name == "house" {
			digest = b.Digest
		}
	}
	pin := func(d string) map[string]string {
		return changed("shop/workshop.hcl", `path = "books/house"`, `path = "books/house"`+"\n  digest = \""+d+"\"")
	}
	if r := run(t, pin(digest), nil); r.Exit != 1 || len(r.Problems) > 0 {
		t.Errorf("with the right digest: %v", told(r))
	}
	moved := pin(digest)
	moved["shop/books/house/calm/rule.rego"] += "\n# moved on\n"
	r := run(t, moved, nil)
	if r.Exit != 2 || !strings.Contains(r.Problems.Error(), "the folder's files have another digest than the one in workshop.hcl. A folder's digest is of its files") {
		t.Errorf("with another content: %v", told(r))
	}
}

// TestManyDesigns: results stand in the order of their files, are the same each
// time, and do not depend on how many work at once.
func TestManyDesigns(t *testing.T) {
	texts := maps.Clone(house)
	for i := range 40 {
		texts[fmt.Sprintf("shop/more/%02d.design.hcl", i)] = strings.Replace(house["shop/hut.design.hcl"], "50 A", fmt.Sprintf("%d A", 20+i), 1)
	}
	var first []string
	for _, workers := range []int{1, 2, 7} {
		r := run(t, texts, func(o *lint.Options) { o.Workers = workers; o.Rules = nil })
		got := told(r)
		if first == nil {
			first = got
			if r.Summary.Designs != 41 {
				t.Fatalf("%d designs judged", r.Summary.Designs)
			}
		}
		if diff := cmp.Diff(first, got); diff != "" {
			t.Errorf("with %d workers (-first +now):\n%s", workers, diff)
		}
	}
}

func TestRunStops(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	_, err := lint.Run(ctx, lint.Options{Disk: linttest.NewDisk(house), Embedded: rules.Books, WorkingDir: "/shop", Paths: []string{"."}, Date: "2026-05-02", RejectFrom: verdict.Fix})
	if err == nil {
		t.Error("a run that was called off gave a result")
	}
}
