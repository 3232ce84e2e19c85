package judge

import (
	"context"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"io/fs"
	"maps"
	"path"
	"regexp"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"stringline/schema/codebook"
	"stringline/schema/source"
)

// Source says where a codebook is.
type Source struct {
	Name     string // the name that it is known by in workshops; its own must be the same
	Files    fs.FS  // rooted at the codebook's folder
	Show     string // that folder as shown to people, "/" between folders
	Embedded bool   // comes with the program
	// Held says that these very files were loaded without it by a test, as those
	// that come with the program are: the walk over the syntax trees and the types
	// of input, which only find an author's mistakes, are left out. They take two
	// fifths of loading.
	Held   bool
	Digest string // of the archive that the files are from; empty for a folder
	// Isolation, if not nil, runs the codebook apart from this process.
	Isolation Isolation
}

func (s *Source) show(name string) string {
	if s.Show == "" {
		return name
	}
	return s.Show + "/" + name
}

// Bounds on a codebook.
const (
	largestFile = 256 << 10
	largestBook = 8 << 20 // all files together
	mostFiles   = 5000
	mostRules   = 1000
)

var namePattern = regexp.MustCompile(`^[a-z][a-z0-9_]*$`)

// Load reads, checks and compiles a codebook. A codebook with any problem is not
// loaded: the book is nil and the problems, never empty then, say why, each at
// file, line and column. Nothing of a design is needed: every name that a rule
// uses is checked against the fact table.
func Load(ctx context.Context, src Source) (*Book, source.Problems) {
	l := &loader{ctx: ctx, src: src, modules: map[string]*ast.Module{}, texts: map[string]*source.File{}, capabilities: capabilities(false)}
	book := l.load()
	if len(l.problems) > 0 {
		l.problems.Sort()
		return nil, bounded(l.problems)
	}
	return book, nil
}

type loader struct {
	ctx     context.Context
	src     Source
	files   map[string][]byte // by path in the folder
	texts   map[string]*source.File
	parsed  map[string]parsed      // rules and shared/, by path in the folder
	modules map[string]*ast.Module // those that parsed, by shown path
	shared  []*ast.Module
	// capabilities are the allow-list; they are the same for every module.
	capabilities *ast.Capabilities
	problems     source.Problems
}

func (l *loader) bad(name, format string, args ...any) {
	p := source.Position{Line: 1, Column: 1}
	l.problems = append(l.problems, source.Problem{Kind: "codebook", Message: fmt.Sprintf(format, args...),
		At: source.Range{File: l.src.show(name), Start: p, End: p}})
}

func (l *loader) load() *Book {
	if !l.read() {
		return nil
	}
	cb := codebook.Load(l.src.Files, "codebook.hcl", l.src.show)
	if len(cb.Problems) > 0 {
		l.problems = append(l.problems, cb.Problems...)
		return nil
	}
	if l.src.Name != "" && cb.Name != l.src.Name {
		l.bad("codebook.hcl", "the codebook is named %q here, and %q where it is called", cb.Name, l.src.Name)
	}
	if !namePattern.MatchString(cb.Name) {
		l.bad("codebook.hcl", "a codebook's name is lower-case letters, digits and _, not %q", cb.Name)
	}
	b := &Book{source: l.src, codebook: cb, digest: l.digest(), files: l.showsOf(), words: vocabularyOf(cb), tables: map[string]*table{}, byValue: map[string]bool{}, sharedEquivalent: map[string][]Equivalent{}}
	l.tables(b)
	if l.src.Isolation != nil {
		return l.loadApart(b)
	}
	l.parseAll()
	l.sharedModules(b)
	rules := l.ruleModules(b)
	if len(l.problems) == 0 { // a rule that could not be read may be the one that is named
		l.problems = append(l.problems, b.answersWithin()...)
	}
	if len(b.names) == 0 && len(l.problems) == 0 {
		l.bad("codebook.hcl", "the codebook has no rule")
	}
	if len(l.problems) > 0 && len(l.modules) == 0 {
		return nil
	}
	if l.sizes(); slices.ContainsFunc(l.problems, func(p source.Problem) bool { return p.Kind == tooLarge }) {
		return nil
	}
	l.lint(b, rules)
	l.compile(b)
	return b
}

// read takes in all files of the folder, bounded.
func (l *loader) read() bool {
	l.files = map[string][]byte{}
	entries, size := 0, 0
	err := fs.WalkDir(l.src.Files, ".", func(name string, d fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case !portable(name):
			return fmt.Errorf("a name of a file that is too long or no UTF-8: %s", quote(name))
		}
		if entries++; entries > mostFiles {
			return fmt.Errorf("more than %d files and folders", mostFiles)
		}
		switch {
		case d.IsDir():
			return nil
		case !d.Type().IsRegular():
			l.bad(name, "a codebook holds regular files alone")
			return nil
		}
		info, err := d.Info()
		if err != nil {
			return err
		}
		if info.Size() > largestFile {
			l.bad(name, "the file is larger than %d KiB", largestFile>>10)
			return nil
		}
		text, err := fs.ReadFile(l.src.Files, name)
		if err != nil {
			return err
		}
		if size += len(text); size > largestBook {
			return fmt.Errorf("more than %d MiB in all its files", largestBook>>20)
		}
		l.files[name] = text
		return nil
	})
	if err != nil {
		l.bad("codebook.hcl", "reading the codebook: %v", err)
	}
	if _, ok := l.files["codebook.hcl"]; !ok && len(l.problems) == 0 {
		l.bad("codebook.hcl", "reading the codebook: there is no codebook.hcl")
	}
	return len(l.problems) == 0
}

func (l *loader) digest() string {
	if l.src.Digest != "" {
		return l.src.Digest
	}
	h := sha256.New()
	for _, name := range slices.Sorted(maps.Keys(l.files)) {
		fmt.Fprintf(h, "%d %s %d\n", len(name), name, len(l.files[name]))
		h.Write(l.files[name])
	}
	return "sha256:" + hex.EncodeToString(h.Sum(nil))
}

func (l *loader) text(name string) *source.File {
	f := l.texts[name]
	if f == nil {
		f = source.NewFile(l.src.show(name), l.files[name])
		l.texts[name] = f
	}
	return f
}

// within lists the files that lie directly in a folder.
func (l *loader) within(folder string) []string {
	var names []string
	for name := range l.files {
		if path.Dir(name) == folder {
			names = append(names, name)
		}
	}
	slices.Sort(names)
	return names
}

func (l *loader) tables(b *Book) {
	var keys []string
	for i := range b.codebook.Sources {
		keys = append(keys, b.codebook.Sources[i].Key)
	}
	for _, name := range l.within("data") {
		base, isJSON := strings.CutSuffix(path.Base(name), ".json")
		if !isJSON || !namePattern.MatchString(base) {
			l.bad(name, "data/ holds tables NAME.json, lower-case letters, digits and _")
			continue
		}
		t, problems := readTable(l.text(name), base, keys)
		l.problems = append(l.problems, problems...)
		b.tables[base] = t // nil where it is wrong: then a rule that names it is not told so too
	}
}

func (l *loader) sharedModules(b *Book) {
	for _, name := range l.within("shared") {
		if path.Ext(name) != ".rego" {
			l.bad(name, "shared/ holds .rego files alone")
			continue
		}
		if m := l.parse(name, sharedRef(b.codebook.Name)); m != nil {
			l.shared = append(l.shared, m)
			same, problems := readEquivalents(l.text(name), m)
			l.problems = append(l.problems, problems...)
			b.sharedEquivalent[name] = same
		}
	}
}

// beside are the files that a rule's folder may hold.
var beside = []string{"rule.rego", "rule_test.rego", "meets.design.hcl", "breaks.design.hcl"}

// top are the files that may lie in a codebook's own folder.
var top = []string{"codebook.hcl", "common.design.hcl", "common.parts.hcl", "README.md", "LICENSE"}

// ruleModules parses the rules, one folder each.
func (l *loader) ruleModules(b *Book) map[string]*ast.Module {
	folders := map[string]bool{}
	for name := range l.files {
		folder, file := path.Split(name)
		folder = strings.TrimSuffix(folder, "/")
		switch {
		case folder == "":
			if !slices.Contains(top, file) {
				l.bad(name, "the file has no place in a codebook's folder")
			}
		case folder == "data", folder == "shared":
		case strings.Contains(folder, "/"):
			l.bad(name, "a rule's folder holds no folders")
		default:
			folders[folder] = true
			if !slices.Contains(beside, file) {
				l.problems = append(l.problems, source.Problem{Kind: "codebook", Near: source.Nearest(file, beside), At: l.text(name).Range(0, 0),
					Message: fmt.Sprintf("%s has no place in a rule's folder, which holds %s", file, strings.Join(beside, ", "))})
			}
		}
	}
	rules := map[string]*ast.Module{}
	for _, folder := range slices.Sorted(maps.Keys(folders)) {
		name := folder + "/rule.rego"
		switch {
		case !namePattern.MatchString(folder):
			l.bad(name, "a rule's name is lower-case letters, digits and _, not %q", folder)
			continue
		case l.files[name] == nil:
			l.bad(name, "the rule's folder has no rule.rego")
			continue
		case len(b.names) >= mostRules:
			l.bad(name, "the codebook has more than %d rules", mostRules)
			return rules
		}
		m := l.parse(name, ruleRef(b.codebook.Name, folder))
		if m == nil {
			continue
		}
		rule, problems := readMetadata(l.text(name), m, b.codebook, b.codebook.Name+"."+folder)
		l.problems = append(l.problems, problems...)
		b.rules = append(b.rules, rule)
		b.names = append(b.names, folder)
		rules[folder] = m
	}
	return rules
}

// parsed is what the engine's parser made of one file.
type parsed struct {
	module *ast.Module
	err    error
}

// parseAll parses every module of the folder, on all processors: it is a quarter
// of the time that a codebook takes to load.
func (l *loader) parseAll() {
	var names []string
	for name := range l.files {
		if path.Base(name) == "rule.rego" || path.Dir(name) == "shared" && path.Ext(name) == ".rego" {
			names = append(names, name)
		}
	}
	found := make([]parsed, len(names))
	// Without the context's end: a file that was not parsed would pass for an empty one.
	sideBySide(context.WithoutCancel(l.ctx), len(names), func(i int) {
		found[i].module, found[i].err = ast.ParseModuleWithOpts(l.src.show(names[i]), string(l.files[names[i]]), ast.ParserOptions{
			ProcessAnnotation: true, RegoVersion: ast.RegoV1, Capabilities: l.capabilities,
		})
	})
	l.parsed = make(map[string]parsed, len(names))
	for i, name := range names {
		l.parsed[name] = found[i]
	}
}

// parse takes one module that was parsed and holds it to its package.
func (l *loader) parse(name string, due ast.Ref) *ast.Module {
	shown := l.src.show(name)
	m, err := l.parsed[name].module, l.parsed[name].err
	if err != nil {
		l.problems = append(l.problems, engineProblems(err, shown)...)
		return nil
	}
	if m == nil {
		l.bad(name, "the file is empty")
		return nil
	}
	l.modules[shown] = m
	if !m.Package.Path.Equal(due) {
		l.problems = append(l.problems, source.Problem{Kind: "rule", At: rangeOf(m.Package.Location), Expected: "package " + due.String()[len("data."):], Found: m.Package.String(),
			Message: fmt.Sprintf("the package is that of the folder: package %s, not %s", due.String()[len("data."):], strings.TrimPrefix(m.Package.String(), "package "))})
	}
	return m
}

// compile type-checks the modules against the schema of input and prepares the
// queries. What the walk has found at a line already is not told twice.
func (l *loader) compile(b *Book) {
	var e *engine
	var problems source.Problems
	if l.src.Held {
		e, problems = compile(l.ctx, b, l.modules, ast.NewCompiler().WithCapabilities(l.capabilities))
	} else {
		e, problems = newEngine(l.ctx, b, l.modules, l.capabilities, true)
	}
	b.engine = e
	type place struct {
		file string
		line int
		name string
	}
	told := map[place]bool{}
	for _, p := range l.problems {
		told[place{p.At.File, p.At.Start.Line, p.Found}] = p.Found != ""
	}
	for _, p := range problems {
		if !told[place{p.At.File, p.At.Start.Line, p.Found}] {
			l.problems = append(l.problems, p)
		}
	}
}

func sortedKeys[V any](sets ...map[string]V) []string {
	var keys []string
	for _, set := range sets {
		for k := range set {
			keys = append(keys, k)
		}
	}
	slices.Sort(keys)
	return slices.Compact(keys)
}
