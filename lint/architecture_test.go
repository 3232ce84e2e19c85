package lint_test

import (
	"encoding/json"
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// rooms lists the folders in the direction that data flows, lowest first. A
// package may import those of rooms below its own, and within its own room only
// what roommates allows. The longest matching folder is a package's room.
var rooms = []string{
	"schema/quantity",
	"schema/source",
	"schema/hcltext",
	"schema/rewrite",
	"schema/design",
	"schema/datasheet",
	"schema/workshop",
	"schema/codebook",
	"lint/physics",
	"lint/facts",
	"lint/verdict",
	"lint/judge",
	"lint/starter",
	"lint/survey",
	"lint",
	"lint/fit",
	"lint/sweep",
	"lint/commission",
	"lint/compare",
	"lint/report",
	"lint/linttest",
	"rules",
	"cmd",
}

// strangers are rooms that must not know each other although one stands above
// the other in the list.
var strangers = map[string][]string{
	"schema/workshop": {"schema/datasheet"},
	"schema/codebook": {"schema/datasheet"},
	"lint/physics":    {"schema/source", "schema/hcltext", "schema/design", "schema/workshop", "schema/codebook"},
	"lint/verdict":    {"schema/hcltext", "schema/design", "schema/workshop", "schema/codebook", "lint/physics", "lint/facts"},
	"lint/judge":      {"lint/physics", "schema/workshop"},
	"lint/survey":     {"lint/physics", "lint/facts", "lint/judge", "lint/verdict", "lint/starter"},
	"lint/starter":    {"schema/workshop", "schema/codebook", "lint/physics", "lint/facts", "lint/verdict", "lint/judge"},
	"lint":            {"lint/physics", "lint/starter"},
	"lint/commission": {"lint/physics", "lint/judge", "lint/fit", "lint/sweep", "lint/starter", "schema/hcltext", "schema/workshop", "schema/codebook"},
	"lint/fit":        {"lint/physics", "lint/judge", "lint/commission", "lint/starter"},
	"lint/sweep":      {"lint/physics", "lint/judge", "lint/fit", "lint/commission", "lint/starter"},
	"lint/compare":    {"lint/physics", "lint/judge", "lint/starter", "lint/commission", "lint/fit", "lint/sweep"},
	"lint/report":     {"lint/physics", "lint/judge"},
	"rules":           rooms,
	"cmd":             {"lint/physics", "lint/judge"},
}

// kept says where alone a library may be imported.
var kept = map[string][]string{
	"github.com/open-policy-agent/opa": {"lint/judge"},
	"github.com/hashicorp/hcl":         {"schema"},
	"github.com/zclconf/go-cty":        {"schema"},
	"github.com/fatih/color":           {"cmd"},
	"github.com/spf13/cobra":           {"cmd"},
	"golang.org/x/term":                {"cmd"},
	"os":                               {"cmd"},
	"os/exec":                          {"cmd"},
	"os/signal":                        {"cmd"},
	"os/user":                          {"cmd"},
	"syscall":                          {"cmd"},
	"golang.org/x/sys":                 {"cmd"},
	"net":                              {},
	"net/http":                         {},
	"log":                              {},
	"unsafe":                           {},
	"C":                                {},
}

type listed struct {
	ImportPath string
	Dir        string
	Imports    []string
	GoFiles    []string
}

func packages(t *testing.T) []listed {
	t.Helper()
	command := exec.Command("go", "list", "-json=ImportPath,Dir,Imports,GoFiles", "stringline/...")
	command.Stderr = os.Stderr
	out, err := command.Output()
	if err != nil {
		t.Fatalf("listing packages: %v", err)
	}
	var all []listed
	for decoder := json.NewDecoder(strings.NewReader(string(out))); decoder.More(); {
		var p listed
		if err := decoder.Decode(&p); err != nil {
			t.Fatalf("reading go list: %v", err)
		}
		all = append(all, p)
	}
	if len(all) < 10 {
		t.Fatalf("only %d packages listed: this test would prove nothing", len(all))
	}
	return all
}

func under(folder, top string) bool { return folder == top || strings.HasPrefix(folder, top+"/") }

func roomOf(folder string) (int, string) {
	best := -1
	for i, r := range rooms {
		if under(folder, r) && (best < 0 || len(r) > len(rooms[best])) {
			best = i
		}
	}
	if best < 0 {
		return -1, ""
	}
	return best, rooms[best]
}

// TestImportOrder holds spec part 5: one direction, and each library in the one
// room that may know it.
func TestImportOrder(t *testing.T) {
	for _, p := range packages(t) {
		folder, _ := strings.CutPrefix(p.ImportPath, "stringline/")
		at, room := roomOf(folder)
		if at < 0 {
			t.Errorf("%s stands in no room of the architecture", folder)
			continue
		}
		for _, imported := range p.Imports {
			if other, ours := strings.CutPrefix(imported, "stringline/"); ours {
				otherAt, otherRoom := roomOf(other)
				// One level up the users of the pipeline do not know each other.
				if otherAt > at || slices.Contains(strangers[room], otherRoom) {
					t.Errorf("%s imports %s, against the direction of data", folder, other)
				}
				continue
			}
			for library, places := range kept {
				if under(imported, library) && (library != "net" || imported == "net") &&
					(library != "os" || imported == "os") && (library != "log" || imported == "log") {
					if !slices.ContainsFunc(places, func(place string) bool { return under(folder, place) }) {
						t.Errorf("%s imports %s, which may be known in %v only", folder, imported, places)
					}
				}
			}
		}
	}
}

// TestHouseRules: no init, no clock below cmd, no file too long to read.
func TestHouseRules(t *testing.T) {
	for _, p := range packages(t) {
		folder, _ := strings.CutPrefix(p.ImportPath, "stringline/")
		for _, name := range p.GoFiles {
			file := filepath.Join(p.Dir, name)
			text, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			if lines := strings.Count(string(text), "\n"); lines > 450 {
				t.Errorf("%s/%s has %d lines; split it by what its parts are about", folder, name, lines)
			}
			tree, err := parser.ParseFile(token.NewFileSet(), file, text, parser.SkipObjectResolution)
			if err != nil {
				t.Fatal(err)
			}
			for _, d := range tree.Decls {
				if f, ok := d.(*ast.FuncDecl); ok && f.Recv == nil && f.Name.Name == "init" {
					t.Errorf("%s/%s has an init function", folder, name)
				}
			}
			if under(folder, "cmd") {
				continue
			}
			ast.Inspect(tree, func(n ast.Node) bool {
				if s, ok := n.(*ast.SelectorExpr); ok {
					if x, ok := s.X.(*ast.Ident); ok && x.Name == "time" && slices.Contains([]string{"Now", "Since", "Until", "After", "Tick", "Sleep"}, s.Sel.Name) {
						t.Errorf("%s/%s reads the clock (time.%s); below cmd a date is handed down", folder, name, s.Sel.Name)
					}
				}
				return true
			})
		}
	}
}

// TestTopLevel: the top level holds what the design card has and nothing else.
func TestTopLevel(t *testing.T) {
	entries, err := os.ReadDir("..")
	if err != nil {
		t.Fatal(err)
	}
	allowed := []string{"cmd", "lint", "rules", "schema", "examples", "testdata", "go.mod", "go.sum", "README.md", "DEVELOPERS.md", "LICENSE"}
	for _, e := range entries {
		if !strings.HasPrefix(e.Name(), ".") && !slices.Contains(allowed, e.Name()) {
			t.Errorf("the top level holds %s", e.Name())
		}
	}
}
