package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"runtime"
	"slices"
	"strings"
	"testing"

	"go.yaml.in/yaml/v3"
)

// The keys of a hook as the framework's documents list them (from memory).
var hookKeys = []string{
	"id", "name", "entry", "language", "files", "exclude", "types", "types_or", "exclude_types", "always_run", "fail_fast", "verbose",
	"pass_filenames", "require_serial", "description", "language_version", "minimum_pre_commit_version", "args", "stages", "additional_dependencies",
}

func hooks(t *testing.T) []map[string]any {
	t.Helper()
	text, err := os.ReadFile("../../.pre-commit-hooks.yaml")
	if err != nil {
		t.Fatal(err)
	}
	var list []map[string]any
	if err := yaml.Unmarshal(text, &list); err != nil || len(list) < 2 {
		t.Fatalf("%d hooks, %v", len(list), err)
	}
	return list
}

// TestHooks: the file says what the framework wants, and what it must so that all
// designs are judged at once.
func TestHooks(t *testing.T) {
	languages := map[string]bool{}
	for _, h := range hooks(t) {
		for key := range h {
			if !slices.Contains(hookKeys, key) {
				t.Errorf("%v: no key %q", h["id"], key)
			}
		}
		for _, key := range []string{"id", "name", "entry", "language", "description"} {
			if text, ok := h[key].(string); !ok || text == "" {
				t.Errorf("%v: %s is %v", h["id"], key, h[key])
			}
		}
		if h["pass_filenames"] != false || h["require_serial"] != true {
			t.Errorf("%v: file names are passed, or in parallel", h["id"])
		}
		languages[h["language"].(string)] = true
		// The entry is a command that there is.
		entry := strings.Fields(h["entry"].(string))
		if entry[0] != "stringline" {
			t.Fatalf("%v: entry %v", h["id"], entry)
		}
		if c, rest, err := commandTree().Find(entry[1:]); err != nil || len(rest) > 0 || c.Name() != entry[len(entry)-1] {
			t.Errorf("%v: entry %v", h["id"], entry)
		}
		files := regexp.MustCompile(h["files"].(string))
		sets := []string{"hut.design.hcl", "a b/x.design.hcl", "parts/p.parts.hcl", "workshop.hcl", "w/workshop.hcl", "codebooks/county/codebook.hcl"}
		if entry[1] == "check" { // judging rests on these too
			sets = append(sets, "codebooks/county/data/t.json", "x/rule.rego", "town.epw")
		}
		for _, name := range sets {
			if !files.MatchString(name) {
				t.Errorf("%v: %s does not set it off", h["id"], name)
			}
		}
		for _, name := range []string{"README.md", "main.tf.hcl", "myworkshop.hcl", "design.hcl.txt", "designhcl", "notcodebooks/x"} {
			if files.MatchString(name) {
				t.Errorf("%v: %s sets it off", h["id"], name)
			}
		}
	}
	if !languages["golang"] || !languages["system"] {
		t.Errorf("languages %v", languages)
	}
}

// TestHookInstalls does what the framework does for a hook in Go: it clones the
// repository, installs ./... there with a GOBIN of its own, and calls the entry
// with that on the search path.
func TestHookInstalls(t *testing.T) {
	if testing.Short() || underRace { // what is installed is built without the detector
		t.Skip("links the program")
	}
	root, err := filepath.Abs("../..")
	if err != nil {
		t.Fatal(err)
	}
	if _, err := os.Stat(filepath.Join(root, ".git")); err != nil {
		t.Skip("not in a clone")
	}
	clone, bin := filepath.Join(t.TempDir(), "clone"), t.TempDir()
	command := func(dir, name string, args ...string) (string, error) {
		c := exec.Command(name, args...)
		c.Dir = dir
		c.Env = append(gitEnvironment(os.Environ()), "GOBIN="+bin, "GIT_ALLOW_PROTOCOL=file", "GOFLAGS=-mod=readonly", "NO_COLOR=1")
		out, err := c.CombinedOutput()
		return string(out), err
	}
	if out, err := command(root, "git", "clone", "-q", "--no-hardlinks", root, clone); err != nil {
		t.Skipf("cannot clone: %v\n%s", err, out)
	}
	// What is not committed yet counts too.
	if err := os.CopyFS(filepath.Join(clone, "now"), os.DirFS(filepath.Join(root, "examples", "hut"))); err != nil {
		t.Fatal(err)
	}
	if out, err := command(clone, "go", "install", "./..."); err != nil {
		t.Fatalf("installing: %v\n%s", err, out)
	}
	entries, err := os.ReadDir(bin)
	if err != nil || len(entries) != 1 || strings.TrimSuffix(entries[0].Name(), ".exe") != "stringline" {
		t.Fatalf("a hook installs one program, found %v, %v", entries, err)
	}
	program := filepath.Join(bin, entries[0].Name())
	if runtime.GOOS != "windows" {
		if out, err := command(filepath.Join(clone, "now"), program, "check", "hut.design.hcl"); err != nil {
			t.Errorf("a good design: %v\n%s", err, out)
		}
		if out, err := command(filepath.Join(clone, "now"), program, "check"); err == nil {
			t.Errorf("a bad design is taken:\n%s", out)
		}
	}
	// The line of the Go version is one that the framework's Go can be.
	text, err := os.ReadFile(filepath.Join(clone, "go.mod"))
	if err != nil || regexp.MustCompile(`(?m)^toolchain `).Match(text) {
		t.Errorf("go.mod names a toolchain, or %v", err)
	}
}

var (
	yamlBlock   = regexp.MustCompile("(?s)```yaml\n(.*?)```")
	calledInDoc = regexp.MustCompile(`stringline ((?:check|compare|tidy|codebook|facts|sheet)\b[^\n>|&"']*(?:"[^"\n]*"[^\n>|&"']*)*)`)
)

// TestYAMLOfDocuments: each block of YAML in the documents is YAML, and each
// command in it is one that there is.
func TestYAMLOfDocuments(t *testing.T) {
	blocks, calls := 0, 0
	for _, name := range []string{"../../README.md", "../../DEVELOPERS.md"} {
		text, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		for _, b := range yamlBlock.FindAllStringSubmatch(string(text), -1) {
			blocks++
			var any any
			if err := yaml.Unmarshal([]byte(b[1]), &any); err != nil || any == nil {
				t.Errorf("%s: %v\n%s", name, err, b[1])
			}
			for _, call := range calledInDoc.FindAllStringSubmatch(b[1], -1) {
				calls++
				c, rest, err := commandTree().Find(strings.Fields(strings.ReplaceAll(call[1], `"`, "")))
				if err == nil {
					err = c.ParseFlags(rest)
				}
				if err != nil {
					t.Errorf("%s: stringline %s: %v", name, call[1], err)
				}
			}
		}
	}
	if blocks < 3 || calls < 4 {
		t.Errorf("%d blocks with %d calls: this test would prove nothing", blocks, calls)
	}
}
