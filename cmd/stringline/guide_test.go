package main

import (
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
	"github.com/rogpeppe/go-internal/txtar"
)

const guideHead = "## Write your first rule in ten minutes\n"

var guideBlock = regexp.MustCompile("(?s)<!-- guide: ([a-z]+)([^\n]*) -->\n```[a-z]+\n(.*?)```\n")

// TestGuide follows the guide of DEVELOPERS.md literally: each block marked
// "guide: write FILE" or "append FILE" becomes that file, each line of "run
// [STATE]" is run and ends with that exit status, and each "shows" stands word for
// word in what the last command put out.
func TestGuide(t *testing.T) {
	text, err := os.ReadFile("../../DEVELOPERS.md")
	if err != nil {
		t.Fatal(err)
	}
	_, guide, ok := strings.Cut(string(text), guideHead)
	if !ok {
		t.Fatal("DEVELOPERS.md has no guide")
	}
	guide, _, _ = strings.Cut(guide, "\n## ")
	blocks := guideBlock.FindAllStringSubmatch(guide, -1)
	if n := strings.Count(guide, "<!-- guide:"); n != len(blocks) || n < 10 {
		t.Fatalf("%d of %d marked blocks can be read", len(blocks), n)
	}
	script, archive := "example hut\ncd hut\n", &txtar.Archive{}
	for i, b := range blocks {
		kind, operand, body := b[1], strings.TrimSpace(b[2]), b[3]
		file := fmt.Sprintf("block%d", i)
		switch kind {
		case "write", "append", "shows":
			archive.Files = append(archive.Files, txtar.File{Name: file, Data: []byte(body)})
			script += fmt.Sprintf("guide %s $WORK/%s %s\n", kind, file, operand)
		case "run":
			if operand == "" {
				operand = "0"
			}
			for line := range strings.Lines(body) {
				args, ok := strings.CutPrefix(strings.TrimSpace(line), "stringline ")
				if !ok {
					t.Fatalf("the guide runs %q", line)
				}
				script += "exits " + operand + " " + args + "\n"
			}
		default:
			t.Fatalf("the guide has a block of kind %q", kind)
		}
	}
	archive.Comment = []byte(script)
	name := filepath.Join(t.TempDir(), "guide.txtar")
	if err := os.WriteFile(name, txtar.Format(archive), 0o644); err != nil {
		t.Fatal(err)
	}
	examples, err := filepath.Abs("../../examples")
	if err != nil {
		t.Fatal(err)
	}
	testscript.Run(t, testscript.Params{
		Files: []string{name}, RequireExplicitExec: true,
		Setup: func(e *testscript.Env) error {
			e.Setenv("EXAMPLES", examples)
			e.Setenv("NO_COLOR", "")
			return nil
		},
		Cmds: map[string]func(*testscript.TestScript, bool, []string){"exits": exits, "example": example, "guide": guideStep},
	})
}

// guideStep writes a block to its file, or looks for it in the last output.
func guideStep(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 2 {
		ts.Fatalf("usage: guide write|append|shows BLOCK [FILE]")
	}
	block := ts.ReadFile(args[1])
	if args[0] == "shows" {
		if out := ts.ReadFile("stdout"); !strings.Contains(out, block) {
			ts.Fatalf("the guide shows\n%s\nand the command put out\n%s", block, out)
		}
		return
	}
	name := ts.MkAbs(args[2])
	ts.Check(os.MkdirAll(filepath.Dir(name), 0o755))
	if args[0] == "append" {
		block = ts.ReadFile(args[2]) + block
	}
	ts.Check(os.WriteFile(name, []byte(block), 0o644))
}
