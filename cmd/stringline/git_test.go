package main

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"testing"
	"testing/fstest"
)

// repository makes a git repository that holds the files, and runs git in it.
func repository(t *testing.T, files map[string]string) (dir string, run func(args ...string) string) {
	t.Helper()
	if _, err := exec.LookPath("git"); err != nil || runtime.GOOS == "windows" {
		t.Skip("needs git, and links")
	}
	dir, err := filepath.EvalSymlinks(t.TempDir())
	if err != nil {
		t.Fatal(err)
	}
	run = func(args ...string) string {
		t.Helper()
		c := exec.Command("git", args...)
		c.Dir = dir
		c.Env = append(gitEnvironment(os.Environ()), "GIT_AUTHOR_NAME=a", "GIT_AUTHOR_EMAIL=a@example.invalid",
			"GIT_COMMITTER_NAME=a", "GIT_COMMITTER_EMAIL=a@example.invalid", "GIT_CONFIG_GLOBAL=/dev/null", "GIT_ALLOW_PROTOCOL=file")
		out, err := c.CombinedOutput()
		if err != nil {
			t.Fatalf("git %v: %v\n%s", args, err, out)
		}
		return string(out)
	}
	run("init", "-q", "-b", "main")
	for name, text := range files {
		name = filepath.Join(dir, name)
		if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
			t.Fatal(err)
		}
		if to, link := strings.CutPrefix(text, "link:"); link {
			err = os.Symlink(to, name)
		} else {
			err = os.WriteFile(name, []byte(text), 0o644)
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	run("add", "-A")
	run("commit", "-q", "-m", "all")
	return dir, run
}

func openTest(t *testing.T, dir, word string) *revision {
	t.Helper()
	g, err := findGit(os.Environ())
	if err != nil {
		t.Fatal(err)
	}
	r, err := openRevision(t.Context(), g, dir, word)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(r.close)
	return r
}

// odd are names that a list split at spaces or lines would break.
var odd = map[string]string{
	"plain.txt":            "plain",
	"with space/50% .txt":  "space",
	"line\nfeed/a\nb.txt":  "lines",
	"tab\there.txt":        "tab",
	"ünïcode/µΩ°.txt":      "letters",
	"quote\"d/s'.txt":      "quotes",
	"-dash.txt":            "dash",
	"empty.txt":            "",
	"deep/er/and/er/x.txt": "deep",
	"binary":               "\x00\x01\n\xff",
}

// TestCommitTree: what the tree gives is what git itself checks out, and it keeps
// the rules of fs.FS by the standard library's own test of file systems.
func TestCommitTree(t *testing.T) {
	dir, _ := repository(t, odd)
	r := openTest(t, dir, "HEAD")
	if err := fstest.TestFS(r.files, slices.Collect(func(yield func(string) bool) {
		for name := range odd {
			if !yield(name) {
				return
			}
		}
	})...); err != nil {
		t.Error(err)
	}
	for name, want := range odd {
		if got, err := fs.ReadFile(r.files, name); err != nil || string(got) != want {
			t.Errorf("%q: %q, %v", name, got, err)
		}
		top := slashed(dir)
		if info, err := r.Stat(path.Join(top, name)); err != nil || info.Size() != int64(len(want)) || !info.Mode().IsRegular() {
			t.Errorf("%q: %v, %v", name, info, err)
		}
	}
	// The files as they were, not as they are.
	if err := os.WriteFile(filepath.Join(dir, "plain.txt"), []byte("other"), 0o644); err != nil {
		t.Fatal(err)
	}
	if got, err := fs.ReadFile(r.files, "plain.txt"); err != nil || string(got) != "plain" {
		t.Errorf("a changed file: %q, %v", got, err)
	}
	if _, err := r.Stat("/elsewhere/x"); !errors.Is(err, fs.ErrNotExist) {
		t.Errorf("a name elsewhere: %v", err)
	}
	if _, err := r.Root("/elsewhere"); err == nil {
		t.Error("a folder elsewhere can be opened")
	}
}

// TestCommitTreeLinks: links are followed inside a folder and never out of it.
func TestCommitTreeLinks(t *testing.T) {
	dir, _ := repository(t, map[string]string{
		"secret": "x", "w/file": "y", "w/sub/file": "z", "w/in": "link:sub/file", "w/folder": "link:sub", "w/round": "link:sub/../file",
		"w/out": "link:../secret", "w/far": "link:sub/../../secret", "w/abs": "link:/etc/passwd", "w/loop": "link:loop", "w/gone": "link:nothing", "back": "link:w",
	})
	huge := bytes.Repeat([]byte("x/"), longestLink)
	r0 := &commitTree{root: folderNode("."), content: &commitContent{open: func() (gitObjects, error) { return oneObject(huge), nil }}}
	r0.add("link", gitLink, "0", 0)
	if _, err := r0.Open("link"); !errors.Is(err, errNoLink) {
		t.Errorf("a link whose target is %d bytes long: %v", len(huge), err)
	}
	r := openTest(t, dir, "main")
	tree, err := r.Root(path.Join(slashed(dir), "w"))
	if err != nil {
		t.Fatal(err)
	}
	for name, want := range map[string]string{"file": "y", "in": "z", "folder/file": "z", "round": "y"} {
		if got, err := fs.ReadFile(tree, name); err != nil || string(got) != want {
			t.Errorf("%s: %q, %v", name, got, err)
		}
	}
	for _, name := range []string{"out", "far", "abs", "loop", "gone", "../secret", "file/x"} {
		if got, err := fs.ReadFile(tree, name); err == nil {
			t.Errorf("%s gives %q", name, got)
		}
	}
	// The whole repository is one tree: from above the same link stays inside.
	if got, err := fs.ReadFile(r.files, "w/out"); err != nil || string(got) != "x" {
		t.Errorf("w/out from above: %q, %v", got, err)
	}
	if info, err := r.Stat(path.Join(slashed(dir), "back")); err != nil || !info.IsDir() {
		t.Errorf("a link to a folder: %v, %v", info, err)
	}
}

// oneObject is what every object holds.
type oneObject []byte

func (o oneObject) read(string) ([]byte, error) { return o, nil }
func (oneObject) close()                        {}

// TestGitRunsNothingElse: whatever a repository's settings name is not run, and
// nothing is written. Each of them would leave a mark.
func TestGitRunsNothingElse(t *testing.T) {
	dir, run := repository(t, map[string]string{"a.design.hcl": "x", ".gitattributes": "* diff=evil filter=evil\n"})
	mark := filepath.Join(t.TempDir(), "mark")
	program := filepath.Join(t.TempDir(), "program")
	if err := os.WriteFile(program, []byte(fmt.Sprintf("#!/bin/sh\ntouch '%s'\ncat\n", mark)), 0o755); err != nil {
		t.Fatal(err)
	}
	for _, key := range []string{"core.pager", "pager.ls-tree", "pager.rev-parse", "diff.external", "diff.evil.command", "diff.evil.textconv",
		"filter.evil.smudge", "filter.evil.clean", "filter.evil.process", "core.fsmonitor", "core.sshCommand", "core.gitProxy", "core.askPass",
		"alias.ls-tree", "alias.rev-parse", "alias.cat-file", "credential.helper", "core.editor", "gpg.program"} {
		run("config", key, program)
	}
	hooks := filepath.Join(dir, ".git", "hooks")
	if err := os.MkdirAll(hooks, 0o755); err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{"post-index-change", "reference-transaction", "post-checkout", "pre-commit"} {
		if err := os.Symlink(program, filepath.Join(hooks, name)); err != nil {
			t.Fatal(err)
		}
	}
	before := listing(t, filepath.Join(dir, ".git"))
	env := append(os.Environ(), "GIT_EXTERNAL_DIFF="+program, "GIT_PAGER="+program, "PAGER="+program, "GIT_DIR=/nowhere", "GIT_INDEX_FILE="+mark,
		"GIT_CONFIG_COUNT=1", "GIT_CONFIG_KEY_0=core.bare", "GIT_CONFIG_VALUE_0=true", "GIT_TRACE="+mark)
	g, err := findGit(env)
	if err != nil {
		t.Fatal(err)
	}
	r, err := openRevision(t.Context(), g, dir, "HEAD")
	if err != nil {
		t.Fatal(err)
	}
	if got, err := fs.ReadFile(r.files, "a.design.hcl"); err != nil || string(got) != "x" {
		t.Errorf("%q, %v", got, err)
	}
	r.close()
	if _, err := os.Stat(mark); err == nil {
		t.Error("something of the repository's settings was run, or something was written")
	}
	if after := listing(t, filepath.Join(dir, ".git")); !slices.Equal(before, after) {
		t.Errorf("the repository was changed:\n%v\n%v", before, after)
	}
	// The settings do bite where git is run as usual: this test can fail.
	if out, err := exec.Command("git", "-C", dir, "-c", "core.hooksPath="+hooks, "commit", "-q", "--allow-empty", "-m", "x").CombinedOutput(); err == nil {
		t.Log(string(out))
	}
	if _, err := os.Stat(mark); err != nil {
		t.Error("nothing leaves a mark: the test proves nothing")
	}
}

// listing names the files of a folder with their sizes and times.
func listing(t *testing.T, dir string) []string {
	t.Helper()
	var all []string
	err := filepath.WalkDir(dir, func(name string, e fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		info, err := e.Info()
		if err == nil {
			all = append(all, fmt.Sprint(name, info.Size(), info.ModTime().UnixNano()))
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return all
}

// TestPartialClone: what a partial clone lacks is told and not fetched.
func TestPartialClone(t *testing.T) {
	dir, run := repository(t, map[string]string{"a.txt": "x"})
	run("config", "uploadpack.allowFilter", "true")
	clone := filepath.Join(t.TempDir(), "clone")
	run("clone", "-q", "--filter=blob:none", "--no-checkout", "file://"+dir, clone)
	r := openTest(t, clone, "HEAD")
	if got, err := fs.ReadFile(r.files, "a.txt"); err == nil || !errors.Is(err, errNotInRepository) {
		t.Errorf("%q, %v", got, err)
	}
}

func TestPointerAndSize(t *testing.T) {
	dir, _ := repository(t, map[string]string{"town.epw": "version https://large.example/spec/v1\noid sha256:" + strings.Repeat("0", 64) + "\nsize 1700000\n"})
	r := openTest(t, dir, "HEAD")
	if _, err := fs.ReadFile(r.files, "town.epw"); !errors.Is(err, errElsewhere) {
		t.Errorf("a pointer: %v", err)
	}
	r.files.root.children["town.epw"].size = largestObject + 1
	if _, err := fs.ReadFile(r.files, "town.epw"); !errors.Is(err, errTooLarge) {
		t.Errorf("a large file: %v", err)
	}
}

func TestCommitNames(t *testing.T) {
	dir, run := repository(t, map[string]string{"a.txt": "x"})
	run("tag", "-a", "v1", "-m", "one")
	g, err := findGit(os.Environ())
	if err != nil {
		t.Fatal(err)
	}
	for _, word := range []string{"HEAD", "main", "v1", "@"} {
		r := openTest(t, dir, word)
		if want := strings.TrimSpace(run("rev-parse", "HEAD")); r.commit != want {
			t.Errorf("%s: %s, want %s", word, r.commit, want)
		}
	}
	for _, word := range []string{"", "-x", "--all", "nothing", "HEAD:a.txt", "HEAD..HEAD", "HEAD HEAD", "a\nb", "HEAD^{tree}"} {
		if r, err := openRevision(t.Context(), g, dir, word); err == nil {
			t.Errorf("%q stands for %s", word, r.commit)
		}
	}
}

// TestOverlay holds the disk with one file exchanged to the rules of fs.FS.
func TestOverlay(t *testing.T) {
	dir := t.TempDir()
	for _, name := range []string{"a.txt", "sub/b.txt"} {
		if err := os.MkdirAll(filepath.Dir(filepath.Join(dir, name)), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(dir, name), []byte("under"), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	read := func(text []byte, name string) (string, []string, error) {
		o := overlay{disk{}, slashed(filepath.Join(dir, "sub/b.txt")), text}
		tree, err := o.Root(slashed(dir))
		if err != nil {
			t.Fatal(err)
		}
		var names []string
		entries, err := fs.ReadDir(tree, "sub")
		for _, e := range entries {
			names = append(names, e.Name())
		}
		if err != nil {
			t.Fatal(err)
		}
		got, err := fs.ReadFile(tree, name)
		return string(got), names, err
	}
	if got, names, err := read([]byte("over"), "sub/b.txt"); got != "over" || err != nil || len(names) != 1 {
		t.Errorf("exchanged: %q, %v, %v", got, names, err)
	}
	if got, _, err := read([]byte("over"), "a.txt"); got != "under" || err != nil {
		t.Errorf("beside it: %q, %v", got, err)
	}
	if _, names, err := read(nil, "sub/b.txt"); !errors.Is(err, fs.ErrNotExist) || len(names) != 0 {
		t.Errorf("taken away: %v, %v", names, err)
	}
}

// TestManyDesigns: beyond what is held at once designs are judged by and by, and
// the comparison is the same: one changed, one moved, one new, one gone.
func TestManyDesigns(t *testing.T) {
	files := map[string]string{"workshop.hcl": ""}
	design := func(i int, coldest string) string {
		return fmt.Sprintf("design \"number %d\" {}\n\nsite {\n  latitude  = \"46 deg\"\n  longitude = \"9 deg\"\n  elevation = \"100 m\"\n  coldest   = %q\n  hottest   = \"30 degC\"\n}\n", i, coldest)
	}
	for i := range atOnce + 10 {
		files[fmt.Sprintf("d%03d.design.hcl", i)] = design(i, "-10 degC")
	}
	dir, run1 := repository(t, files)
	write := func(name, text string) {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	write("d001.design.hcl", design(1, "-20 degC"))
	write("new.design.hcl", design(1000, "-10 degC"))
	run1("mv", "d010.design.hcl", "moved10.design.hcl") // two of one title now: neither is said to have moved
	write("like10.design.hcl", design(10, "-10 degC"))
	for i := range atOnce {
		write(fmt.Sprintf("more%03d.design.hcl", i), design(2000+i, "-10 degC"))
	}
	run1("mv", "d002.design.hcl", "moved.design.hcl")
	run1("rm", "-q", "d003.design.hcl")
	s, out, said := testStreams(nil)
	s.git = func() (git, error) { return findGit(os.Environ()) }
	s.dir = func() (string, error) { return dir, nil }
	code := run(t.Context(), []string{"compare", "--since", "HEAD"}, s)
	if want := fmt.Sprintf("%d designs compared: 2 changed, %d the same, %d new, 2 gone", 2*atOnce+13, atOnce+6, atOnce+3); !strings.Contains(strings.Join(strings.Fields(out.String()), " "), want) {
		t.Errorf("exit status %d, said %q, not %q:\n%s", code, said, want, out)
	}
	if strings.Contains(out.String(), "10.design.hcl, was") {
		t.Error("one of two that are alike is said to have moved")
	}
	for _, want := range []string{"moved.design.hcl, was d002.design.hcl", "was -10 degC, now -20 degC", "The design is gone.", "The design is new"} {
		if !strings.Contains(out.String(), want) {
			t.Errorf("%q is not told", want)
		}
	}
}
