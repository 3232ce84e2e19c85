package main

import (
	"errors"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
	"github.com/santhosh-tekuri/jsonschema/v6"
)

var update = flag.Bool("update", false, "write what the scripts compare with instead of comparing")

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"stringline": main})
}

// TestScripts runs command-line stories over the real program. Besides the
// usual commands a script has:
//
//	exits STATE ARGS...   runs stringline and wants that exit status
//	edit FILE OLD NEW     changes one place of a file, which must be there
//	example NAME          copies a workshop of examples/ to NAME
//	full ARGS...          runs stringline with standard output on a full disk
func TestScripts(t *testing.T) {
	examples, err := filepath.Abs("../../examples")
	if err != nil {
		t.Fatal(err)
	}
	dir, files := "testdata/script", []string(nil)
	if underRace { // each run loads its codebooks anew; these have all that runs at once
		dir = ""
		for _, name := range []string{"baseline", "codebooks", "compare", "fit", "hut", "outputs", "start", "waiver"} {
			files = append(files, filepath.Join("testdata/script", name+".txtar"))
		}
	}
	testscript.Run(t, testscript.Params{
		Dir: dir, Files: files, UpdateScripts: *update, RequireExplicitExec: true, RequireUniqueNames: true,
		Setup: func(e *testscript.Env) error {
			e.Setenv("EXAMPLES", examples)
			e.Setenv("ESC", "\x1b")
			e.Setenv("NL", "\n")
			e.Setenv("NO_COLOR", "")
			program, err := exec.LookPath("stringline")
			e.Setenv("STRINGLINE", program) // for scripts that change PATH
			return err
		},
		Cmds: map[string]func(*testscript.TestScript, bool, []string){
			"exits": exits, "edit": edit, "example": example, "full": full,
		},
	})
}

func exits(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 1 {
		ts.Fatalf("usage: exits STATE ARGS...")
	}
	want, err := strconv.Atoi(args[0])
	ts.Check(err)
	got := 0
	if err := ts.Exec("stringline", args[1:]...); err != nil {
		var exit *exec.ExitError
		if !errors.As(err, &exit) {
			ts.Fatalf("running stringline: %v", err)
		}
		got = exit.ExitCode()
	}
	if got != want {
		ts.Fatalf("stringline %s: exit status %d, want %d", strings.Join(args[1:], " "), got, want)
	}
}

func edit(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 3 {
		ts.Fatalf("usage: edit FILE OLD NEW")
	}
	name := ts.MkAbs(args[0])
	text, err := os.ReadFile(name)
	ts.Check(err)
	if !strings.Contains(string(text), args[1]) {
		ts.Fatalf("%s does not hold %q", args[0], args[1])
	}
	ts.Check(os.WriteFile(name, []byte(strings.Replace(string(text), args[1], args[2], 1)), 0o644))
}

func example(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 1 {
		ts.Fatalf("usage: example NAME")
	}
	ts.Check(os.CopyFS(ts.MkAbs(args[0]), os.DirFS(filepath.Join(ts.Getenv("EXAMPLES"), args[0]))))
}

func full(ts *testscript.TestScript, neg bool, args []string) {
	disk, err := os.OpenFile("/dev/full", os.O_WRONLY, 0)
	ts.Check(err)
	defer disk.Close()
	program, err := exec.LookPath("stringline")
	ts.Check(err)
	command := exec.Command(program, args...)
	command.Dir, command.Stdout = ts.MkAbs("."), disk
	var said strings.Builder
	command.Stderr = &said
	err = command.Run()
	var exit *exec.ExitError
	if !errors.As(err, &exit) || exit.ExitCode() != 2 || !strings.Contains(said.String(), "writing the output") {
		ts.Fatalf("on a full disk: %v, said %q", err, said.String())
	}
}

// TestExamplesFitTheSchemas puts what the program writes on every example to a
// validator of JSON Schema (draft 2020-12) that knows nothing of our types.
func TestExamplesFitTheSchemas(t *testing.T) {
	designs, err := filepath.Glob("../../examples/*/*.design.hcl")
	if err != nil || len(designs) < 6 {
		t.Fatalf("only %d examples found: %v", len(designs), err)
	}
	for _, c := range []struct {
		schema string
		args   []string
	}{
		{"check.schema.json", []string{"check", "--as", "json"}},
		{"facts.schema.json", []string{"facts", "--as", "json"}},
		{"fit.schema.json", []string{"fit", "--most", "30", "--years", "2", "--as", "json"}},
		{"sweep.schema.json", []string{"sweep", "--over", "site.coldest=-20degC..0degC/10K", "--without-year", "--as", "json"}},
	} {
		schema, err := jsonschema.NewCompiler().Compile(filepath.Join("../../schema", c.schema))
		if err != nil {
			t.Fatal(err)
		}
		for i, design := range designs {
			if underRace && i%5 != 0 {
				continue
			}
			s, out, said := testStreams(nil)
			if code := run(t.Context(), append(c.args, design), s); code > 1 {
				t.Errorf("%v %s: exit status %d, said %q", c.args, design, code, said)
			}
			doc, err := jsonschema.UnmarshalJSON(out)
			if err != nil {
				t.Fatalf("%v %s: %v", c.args, design, err)
			}
			if err := schema.Validate(doc); err != nil {
				t.Errorf("%v %s: %v", c.args, design, err)
			}
		}
	}
}

// TestComparisonsFitTheSchema does the same for what compare writes.
func TestComparisonsFitTheSchema(t *testing.T) {
	schema, err := jsonschema.NewCompiler().Compile("../../schema/compare.schema.json")
	if err != nil {
		t.Fatal(err)
	}
	for _, pair := range [][2]string{
		{"hut/hut.design.hcl", "hut/hut-broken.design.hcl"}, {"growth/growth-12.design.hcl", "growth/growth-48.design.hcl"},
		{"ranch/ranch-broken.design.hcl", "boat/boat.design.hcl"}, {"clinic", "nowhere"},
	} {
		s, out, said := testStreams(nil)
		code := run(t.Context(), []string{"compare", "--as", "json", "../../examples/" + pair[0], "../../examples/" + pair[1]}, s)
		doc, err := jsonschema.UnmarshalJSON(out)
		if err != nil {
			t.Fatalf("%v: exit status %d, %v, said %q", pair, code, err, said)
		}
		if err := schema.Validate(doc); err != nil {
			t.Errorf("%v: %v", pair, err)
		}
		if exit := doc.(map[string]any)["exit"]; fmt.Sprint(exit) != fmt.Sprint(code) {
			t.Errorf("%v: exit status %d, the document says %v", pair, code, exit)
		}
	}
}
