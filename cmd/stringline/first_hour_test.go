package main

import (
	"os"
	"strings"
	"testing"
)

// TestFirstHourOfTheReadme: what the README has a newcomer type in the first hour is
// what the script of that hour runs, in that order. So each of those lines works.
func TestFirstHourOfTheReadme(t *testing.T) {
	readme, err := os.ReadFile("../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	script, err := os.ReadFile("testdata/script/first_hour.txtar")
	if err != nil {
		t.Fatal(err)
	}
	_, section, found := strings.Cut(string(readme), "\n## The first hour\n")
	section, _, ended := strings.Cut(section, "\n## ")
	if !found || !ended {
		t.Fatal("the README has no first hour")
	}
	section = strings.ReplaceAll(section, "\\\n", " ") // lines that go on
	rest := strings.NewReplacer("'", "", "$WORK/", "").Replace(string(script))
	lines, inBlock := 0, false
	for _, line := range strings.Split(section, "\n") {
		if strings.HasPrefix(line, "```") {
			inBlock = !inBlock
			continue
		}
		call, ok := strings.CutPrefix(line, "stringline ")
		if !inBlock || !ok {
			continue
		}
		lines++
		call, _, _ = strings.Cut(call, " #")
		call = " " + strings.Join(strings.Fields(strings.ReplaceAll(call, `"`, "")), " ") + "\n"
		_, after, found := strings.Cut(rest, call)
		if !found {
			t.Errorf("the script does not run, after the lines before it: stringline%s", call)
			continue
		}
		rest = after
	}
	if lines < 10 {
		t.Errorf("%d lines: this test would prove nothing", lines)
	}
}
