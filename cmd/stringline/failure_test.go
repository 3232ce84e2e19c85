package main

import (
	"encoding/json"
	"errors"
	"io/fs"
	"strings"
	"testing"

	"github.com/joshdk/go-junit"

	"stringline/lint/survey"
)

// breaking is a disk that makes the program itself fail at one file.
type breaking struct {
	survey.Disk
	at string
}

func (b breaking) Root(dir string) (fs.FS, error) {
	tree, err := b.Disk.Root(dir)
	return breakingTree{tree, b.at}, err
}

type breakingTree struct {
	fs.FS
	at string
}

func (b breakingTree) Open(name string) (fs.File, error) {
	if name == b.at {
		panic("no such case")
	}
	return b.FS.Open(name)
}

// TestFailureInMidRun: where the program itself fails in the middle of a run, or
// before it began, a machine's output is whole all the same, names what happened,
// and the exit status is 2.
func TestFailureInMidRun(t *testing.T) {
	dir := t.TempDir()
	manyHuts(t, dir, 12)
	for _, c := range []struct {
		name, says string
		set        func(*streams)
		most       int // designs that may have been judged
	}{
		{"in mid-run", "judging 0009.design.hcl: the program itself failed: no such case, at failure_test.go:", func(s *streams) { s.disk = breaking{s.disk, "0009.design.hcl"} }, 11},
		{"before it began", "finding the working folder: it is gone", func(s *streams) { s.dir = func() (string, error) { return "", errors.New("it is gone") } }, 0},
	} {
		for _, form := range checkForms {
			t.Run(c.name+" as "+form, func(t *testing.T) {
				s, out, said := testStreams(nil)
				s.dir = func() (string, error) { return dir, nil }
				c.set(s)
				if code := run(t.Context(), []string{"check", "--as", form}, s); code != 2 {
					t.Errorf("exit status %d", code)
				}
				if !strings.Contains(said.String(), "stringline: "+c.says) {
					t.Errorf("said %q", said)
				}
				switch form {
				case "json":
					var doc struct {
						Designs []struct{ File string }
						Errors  []struct{ Kind, Message string }
						Exit    int
					}
					if err := json.Unmarshal(out.Bytes(), &doc); err != nil {
						t.Fatalf("%v:\n%s", err, out)
					}
					if len(doc.Errors) != 1 || doc.Errors[0].Kind != "failure" || !strings.HasPrefix(doc.Errors[0].Message, c.says) || doc.Exit != 2 || len(doc.Designs) > c.most {
						t.Errorf("%d designs, exit %d, errors %+v", len(doc.Designs), doc.Exit, doc.Errors)
					}
				case "sarif":
					var doc struct {
						Runs []struct {
							Invocations []struct {
								ExecutionSuccessful        bool
								ToolExecutionNotifications []struct{ Message struct{ Text string } }
							}
						}
					}
					if err := json.Unmarshal(out.Bytes(), &doc); err != nil {
						t.Fatalf("%v:\n%s", err, out)
					}
					if !strings.Contains(out.String(), "the program itself failed") && !strings.Contains(out.String(), "it is gone") || doc.Runs[0].Invocations[0].ExecutionSuccessful {
						t.Errorf("%+v", doc)
					}
				case "junit":
					suites, err := junit.Ingest(out.Bytes())
					if err != nil || len(suites) == 0 || suites[len(suites)-1].Totals.Error == 0 {
						t.Errorf("%d suites, %v:\n%s", len(suites), err, out)
					}
				case "annotations":
					if !strings.Contains(out.String(), "::error") {
						t.Errorf("put out:\n%s", out)
					}
				}
			})
		}
	}
}
