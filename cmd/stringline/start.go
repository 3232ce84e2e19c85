package main

import (
	"bufio"
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"stringline/lint"
	"stringline/lint/report"
	"stringline/lint/starter"
	"stringline/lint/verdict"
)

func (s *streams) start(code *int) *cobra.Command {
	c := &cobra.Command{
		Use:   "start [DIR]",
		Short: "write a first workshop: design, parts, workshop file, git hook",
		Long: "Writes a first workshop into DIR (the working folder where none is named): a\n" +
			"design with comments that teach, invented parts to be replaced by data sheets,\n" +
			"workshop.hcl and a plain git hook. On a terminal it asks what no option answers;\n" +
			"elsewhere it never waits. An empty answer, or unknown, means that you do not\n" +
			"know: the value stays out of the file, and check says what hangs on it.\n\n" +
			"The design is judged before it is written, and what check finds is told. No file\n" +
			"is ever written over; all files are written or none.",
		Example: "  stringline start cabin\n" +
			"  stringline start cabin --code iec --bank-voltage 24V --chemistry lifepo4 \\\n" +
			"    --batteries 2 --panels 4 --coldest=-27degC --plan yes",
		Args: func(_ *cobra.Command, args []string) error {
			if len(args) > 1 {
				return fmt.Errorf("start takes one folder and nothing after: found %q", args[1])
			}
			return nil
		},
	}
	c.Flags().SortFlags = false // in the order of the questions
	for _, q := range starter.Questions() {
		words := "such as " + q.Such
		if len(q.Words) > 0 {
			words = "is " + strings.Join(q.Words, ", ")
		}
		c.Flags().String(q.Option, "", fmt.Sprintf("%s (`VALUE` %s)", q.Ask, words))
	}
	c.RunE = func(c *cobra.Command, args []string) error {
		dir := "."
		if len(args) == 1 {
			if dir = args[0]; dir == "" {
				return errors.New("the folder's name is empty")
			}
		}
		page, err := s.page(c)
		if err != nil {
			return err
		}
		if s.inTerminal {
			if err := beginning(native(dir)); err != nil {
				return fmt.Errorf("writing a first workshop into %s: %w", dir, err)
			}
		}
		answers, err := s.answers(c)
		if err != nil {
			return err
		}
		*code, err = s.writeWorkshop(c.Context(), slashed(dir), answers, page)
		return err
	}
	return c
}

// beginning refuses a folder that has a workshop already, before anybody is asked
// two dozen questions for it. What the design will be called is not known yet.
func beginning(folder string) error {
	if info, err := os.Stat(folder); err == nil && !info.IsDir() {
		return errors.New("it is no folder")
	}
	for _, name := range starter.Fixed() {
		if _, err := os.Lstat(filepath.Join(folder, filepath.FromSlash(name))); err == nil {
			return fmt.Errorf("%s is there already; nothing is written over", name)
		}
	}
	return nil
}

// answers takes the options, and on a terminal asks for what they leave open.
func (s *streams) answers(c *cobra.Command) (starter.Answers, error) {
	answers := starter.Answers{}
	in := bufio.NewReader(io.LimitReader(s.in, 1<<20))
	if s.inTerminal {
		var words strings.Builder
		if err := report.Question(&words, "Some questions about the system, then the files are written.", "What you do not know may stay empty: check then names what hangs on it. Ctrl-C ends this and leaves nothing behind.", report.Page{Width: s.width}); err != nil {
			return nil, err
		}
		s.prompt(words.String())
	}
	var missing []string
	for _, q := range starter.Questions() {
		given, err := c.Flags().GetString(q.Option)
		if err != nil {
			return nil, fmt.Errorf("reading --%s: %w", q.Option, err)
		}
		if q.Only != nil && !q.Only(answers) {
			if c.Flags().Changed(q.Option) {
				return nil, fmt.Errorf("--%s answers a question that the other answers leave no room for", q.Option)
			}
			continue
		}
		switch {
		case c.Flags().Changed(q.Option):
			answer, err := q.Check(given)
			if err != nil {
				return nil, fmt.Errorf("--%w", err)
			}
			answers.Set(q.Option, answer)
			if err := answers.Fits(q.Option); err != nil && s.inTerminal { // before more is asked
				return nil, fmt.Errorf("--%w", err)
			}
		case s.inTerminal:
			if err := s.ask(in, q, answers); err != nil {
				return nil, err
			}
		case q.Needed:
			such := "such as " + q.Such
			if len(q.Words) > 0 {
				such = strings.Join(q.Words, ", ")
			}
			missing = append(missing, fmt.Sprintf("--%s (%s)", q.Option, such))
		default:
			answers.Set(q.Option, q.Default)
		}
	}
	if len(missing) > 0 {
		return nil, fmt.Errorf("nobody can be asked here (no terminal): start needs %s", strings.Join(missing, ", "))
	}
	return answers, nil
}

// ask puts one question until the answer can be read.
func (s *streams) ask(in *bufio.Reader, q starter.Question, answers starter.Answers) error {
	var words strings.Builder
	if err := report.Question(&words, q.Ask, q.Why, report.Page{Width: s.width}); err != nil {
		return err
	}
	s.prompt(words.String())
	for {
		hint := "such as " + q.Such
		if len(q.Words) > 0 {
			hint = strings.Join(q.Words, ", ")
		}
		switch {
		case q.Default != "":
			hint += "; empty: " + q.Default
		case q.None:
			hint += "; empty: none"
		case !q.Needed:
			hint += "; empty: left out"
		}
		s.prompt("  (" + hint + ") ")
		line, err := in.ReadString('\n')
		if err != nil && strings.TrimSpace(line) == "" {
			return fmt.Errorf("the input ended at the question for %s; nothing was written", q.Option)
		}
		answer, wrong := q.Check(line)
		if wrong == nil {
			answers.Set(q.Option, answer)
			if wrong = answers.Fits(q.Option); wrong == nil {
				return nil
			}
			delete(answers, q.Option)
		}
		s.prompt("  " + report.Escape(wrong.Error()) + "\n")
		if err != nil {
			return fmt.Errorf("the input ended at the question for %s; nothing was written", q.Option)
		}
	}
}

// writeWorkshop writes the files beside where they go, has them judged there, and
// then writes them, all or none.
func (s *streams) writeWorkshop(ctx context.Context, dir string, answers starter.Answers, page report.Page) (code int, err error) {
	hooks, inGit := hooksPath(native(dir))
	files, err := starter.Write(answers, hooks)
	if err != nil {
		return 2, err
	}
	refuse := func(err error) (int, error) { return 2, fmt.Errorf("writing a first workshop into %s: %w", dir, err) }
	folder := native(dir)
	written := make([]newFile, 0, len(files))
	for _, f := range files {
		written = append(written, newFile{f.Path, f.Text, f.Run})
		if _, err := os.Lstat(filepath.Join(folder, filepath.FromSlash(f.Path))); err == nil {
			return refuse(fmt.Errorf("%s is there already; nothing is written over", f.Path))
		}
	}
	made, err := makeFolders(folder)
	if err != nil {
		return refuse(writeFault(err))
	}
	whole := false
	defer func() {
		if !whole {
			removeEmpty(made)
		}
	}()
	beside, err := stageAll(folder, written)
	if err != nil {
		return refuse(err)
	}
	defer func() { err = errors.Join(err, os.RemoveAll(beside)) }()
	judged, err := s.judge(ctx, request{paths: []string{filepath.Join(beside, files[0].Path)}, date: s.now().Format(time.DateOnly), rejectFrom: verdict.Fix})
	if err != nil {
		return refuse(err)
	}
	if judged.Exit > 1 {
		return refuse(fmt.Errorf("it could not be judged: %w", problemsOf(judged, filepath.Base(beside))))
	}
	if err := settleAll(beside, folder, written, os.Link); err != nil {
		return refuse(err)
	}
	whole = true
	return s.write(0, func(w io.Writer) error {
		return report.Started(w, started(report.Start{Folder: dir, Hooks: hooks, InGit: inGit}, files, answers, judged), page)
	}), nil
}

// problemsOf gives what could not be read, in files as they are to be named: nobody
// knows the folder that they were judged in.
func problemsOf(r *lint.Result, beside string) error {
	problems := slices.Clone(r.Problems)
	for i := range r.Designs {
		problems = append(problems, r.Designs[i].Problems...)
	}
	for i := range problems {
		if _, name, found := strings.Cut(problems[i].At.File, beside+"/"); found {
			problems[i].At.File = name
		}
	}
	return problems
}

// hooksPath gives the folder of hooks as git is to be told it: below the top of the
// work tree that holds the folder, where there is one.
func hooksPath(folder string) (hooks string, inGit bool) {
	full, err := filepath.Abs(folder)
	if err != nil {
		return starter.Hooks, false
	}
	for top := full; ; top = filepath.Dir(top) {
		if _, err := os.Lstat(filepath.Join(top, ".git")); err == nil {
			below, err := filepath.Rel(top, filepath.Join(full, starter.Hooks))
			if err != nil {
				return starter.Hooks, true
			}
			return filepath.ToSlash(below), true
		}
		if top == filepath.Dir(top) {
			return starter.Hooks, false
		}
	}
}

// started tells the report what was written, what is not known, and what was found.
func started(out report.Start, files []starter.File, answers starter.Answers, judged *lint.Result) report.Start {
	out.Summary = judged.Summary
	for _, f := range files {
		out.Files = append(out.Files, f.Path)
	}
	for _, q := range starter.Questions() {
		if answers[q.Option] == "" && !q.Needed && !q.None && (q.Only == nil || q.Only(answers)) {
			out.Unknown = append(out.Unknown, q.Option)
		}
	}
	out.PlanOpen = answers["plan"] != "yes"
	for i := range judged.Designs {
		for _, v := range judged.Designs[i].Verdicts {
			if v.Finding() {
				out.Findings = append(out.Findings, v)
				if v.Grade.Rank() <= judged.RejectFrom.Rank() {
					out.Refused++
				}
			}
		}
	}
	return out
}
