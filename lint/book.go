package lint

import (
	"context"
	"fmt"
	"io/fs"
	"maps"
	"path"
	"slices"
	"strings"

	"stringline/lint/judge"
	"stringline/lint/survey"
	"stringline/schema/source"
	"stringline/schema/workshop"
)

// What a codebook's own tests found, as package judge tells it.
type (
	BookTest     = judge.TestReport
	BookTestCase = judge.TestResult
	Mutant       = judge.Mutant
	Coverage     = judge.Coverage
)

// BookOptions says which codebooks are wanted, and hands down all that may be
// touched.
type BookOptions struct {
	Disk       survey.Disk
	Embedded   fs.FS  // the codebooks that come with the program, one folder each
	WorkingDir string // absolute, "/" between folders
	Version    string // of this program
}

// embeddedNames lists the codebooks that come with the program.
func embeddedNames(embedded fs.FS) []string {
	var names []string
	entries, _ := fs.ReadDir(embedded, ".") // one that cannot be read holds none
	for _, e := range entries {
		if e.IsDir() {
			names = append(names, e.Name())
		}
	}
	return names
}

// bookSource finds the codebook that a word on the command line means: the name
// of one that comes with the program, a folder ("./limits" where a folder has such
// a name), or the name that the workshop at the working folder gives one of its own.
func bookSource(o BookOptions, word string) (judge.Source, *source.Problem) {
	own := embeddedNames(o.Embedded)
	if slices.Contains(own, word) {
		files, err := fs.Sub(o.Embedded, word)
		if err == nil {
			return judge.Source{Name: word, Files: files, Show: "codebook " + word, Embedded: true}, nil
		}
	}
	named := workshopBooks(o)
	refuse := func(why string) (judge.Source, *source.Problem) {
		p := &source.Problem{Kind: "path", Message: "looking for a codebook: " + why, Expected: "a codebook's folder, or one of " + strings.Join(own, ", "), Found: word,
			At: source.Range{File: word}}
		if !strings.Contains(word, "/") {
			p.Near = source.Nearest(word, append(own, slices.Sorted(maps.Keys(named))...))
		}
		return judge.Source{}, p
	}
	if word == "" {
		return refuse("the path is empty")
	}
	dir := word
	if !path.IsAbs(dir) {
		dir = path.Join(o.WorkingDir, dir)
	}
	info, err := o.Disk.Stat(path.Clean(dir))
	if folder, ok := named[word]; ok && (err != nil || !isBook(o.Disk, path.Clean(dir))) {
		word, dir = survey.Relative(o.WorkingDir, folder), folder
		if info, err = o.Disk.Stat(folder); err == nil && info.Mode().IsRegular() {
			return refuse("the workshop names an archive; what is tested is the folder that it was made of")
		}
	}
	switch {
	case err != nil:
		return refuse("there is no such folder, and no codebook of that name comes with the program or is named by the workshop")
	case !info.IsDir():
		return refuse("not a folder")
	}
	tree, err := o.Disk.Root(path.Clean(dir))
	if err != nil {
		return refuse("the folder cannot be opened")
	}
	if _, err := fs.Stat(tree, survey.CodebookFile); err != nil {
		return refuse("no " + survey.CodebookFile + " in the folder")
	}
	show := path.Clean(word)
	if show == "." {
		show = ""
	}
	return judge.Source{Files: tree, Show: show}, nil
}

func isBook(disk survey.Disk, dir string) bool {
	_, err := disk.Stat(path.Join(dir, survey.CodebookFile))
	return err == nil
}

// workshopBooks gives the codebooks of its own that the workshop at the working
// folder names, with where they lie. What is wrong with its file is no matter here.
func workshopBooks(o BookOptions) map[string]string {
	home, err := survey.Home(o.Disk, o.WorkingDir, o.WorkingDir)
	if err != nil || home.File == "" {
		return nil
	}
	w := workshop.Load(home.Tree, home.File, home.Show)
	books := map[string]string{}
	for _, b := range w.Books {
		if b.Path != "" {
			books[b.Name] = path.Join(home.Dir, w.Folder, b.Path)
		}
	}
	return books
}

// TestedBook is what testing one codebook came to.
type TestedBook struct {
	Asked    string          // as it was named
	Problems source.Problems // it could not be loaded; Report is nil then
	Report   *BookTest
	Embedded bool
}

// TestBooksOptions says how much of the codebooks is tested.
type TestBooksOptions struct {
	BookOptions
	Books    []string // names of embedded codebooks, or folders
	Rules    []string // "limits.cold_voltage"; empty for all
	Quick    bool     // leaves mutation out
	Progress func(done, total int)
}

// TestBooks runs the own tests of codebooks: Rego tests, example designs,
// deletion, mutation, coverage. What is wrong with a codebook is in the result;
// the error is the context's, or names a rule that is not there.
func TestBooks(ctx context.Context, o TestBooksOptions) ([]TestedBook, error) {
	var all []TestedBook
	asked := map[string]bool{}
	for _, word := range o.Books {
		t := TestedBook{Asked: word}
		src, problem := bookSource(o.BookOptions, word)
		if problem != nil {
			t.Problems = source.Problems{*problem}
			all = append(all, t)
			continue
		}
		t.Embedded = src.Embedded
		book, problems := judge.Load(ctx, src)
		if len(problems) == 0 {
			problems = tooNew(book, o.Version)
		}
		if len(problems) > 0 {
			t.Problems = problems
			all = append(all, t)
			continue
		}
		rules, none := chosen(o.Rules, book, asked)
		if none {
			continue
		}
		report, problems, err := judge.Test(ctx, src, judge.TestOptions{Rules: rules, Mutation: !o.Quick, Coverage: true, Progress: o.Progress})
		if err != nil {
			return nil, fmt.Errorf("testing codebook %s: %w", book.Name(), err)
		}
		t.Report, t.Problems = report, problems
		all = append(all, t)
	}
	for _, id := range o.Rules {
		if !asked[id] && !slices.ContainsFunc(all, unloaded) { // which may have had it
			return nil, fmt.Errorf("rule %q is in none of the codebooks that are tested", id)
		}
	}
	return all, nil
}

func unloaded(t TestedBook) bool { return t.Report == nil }

// chosen gives the names within a book of the rules that are asked for.
func chosen(ids []string, book *judge.Book, asked map[string]bool) (rules []string, none bool) {
	if len(ids) == 0 {
		return nil, false
	}
	for _, id := range ids {
		if name, ok := strings.CutPrefix(id, book.Name()+"."); ok {
			asked[id] = true
			rules = append(rules, name)
		}
	}
	return rules, len(rules) == 0
}

// tooNew gives the problem of a codebook that needs a newer program.
func tooNew(book *judge.Book, version string) source.Problems {
	cb := book.Codebook()
	if !older(version, cb.Needs) {
		return nil
	}
	return source.Problems{{Kind: "codebook", At: cb.NeedsAt, Expected: "version " + cb.Needs + " or newer", Found: "version " + version,
		Message: fmt.Sprintf("the codebook needs version %s of this program or a newer one; this is %s", cb.Needs, version)}}
}

// ExitOfBooks gives the exit status: 2 where a codebook could not be loaded or
// nothing was tested, 1 where a test failed or a mutant went unnoticed, else 0.
func ExitOfBooks(books []TestedBook) int {
	exit := 0
	tested := false
	for i := range books {
		b := &books[i]
		switch {
		case b.Report == nil:
			return 2
		case len(b.Report.Failed()) > 0, len(b.Report.Survivors()) > 0:
			exit = 1
		}
		tested = tested || len(b.Report.Results) > 0
	}
	if !tested {
		return 2
	}
	return exit
}
