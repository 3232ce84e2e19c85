package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"path"

	"github.com/spf13/cobra"

	"stringline/lint"
	"stringline/lint/compare"
	"stringline/lint/report"
	"stringline/lint/survey"
	"stringline/lint/verdict"
	"stringline/schema/quantity"
)

func (s *streams) compare(code *int) *cobra.Command {
	c := &cobra.Command{
		Use:   "compare OLD NEW | --since COMMIT [PATH]",
		Short: "what a change did: facts, verdicts and headroom, was and now",
		Long: "Judges two designs, two folders, or a folder as it was at a commit and as it is,\n" +
			"and shows what the change did: verdicts that turned, headroom lost and won,\n" +
			"what is written otherwise, and the facts that moved with what moved them. A\n" +
			"block with another label that is otherwise alike counts as renamed; where a\n" +
			"block stands does not count.\n\n" +
			"With --since the older side is the commit as git has it, with its workshop\n" +
			"file, parts, codebooks and weather; the newer one is the files as they lie\n" +
			"there, or another commit (--until). git is only read. Both sides are judged by\n" +
			"this program, with the codebooks that it comes with, as on one day.\n\n" +
			"Exit state 0: nothing got worse. 1: something did. That is: a finding that was\n" +
			"none, or is new with its subject, rule or design; one that breaks where it was\n" +
			"unproven; one of a higher grade; one further past its limit. Headroom that is\n" +
			"lost while a limit is still met is shown and is not worse, unless\n" +
			"--headroom-below names a margin that it must not fall under. A rule that is\n" +
			"waived now, taken less seriously, or no longer in force is shown as turned\n" +
			"otherwise: neither better nor worse. 2: something on either side could not be\n" +
			"read, or a verdict is void.",
		Example: "  stringline compare hut.design.hcl hut-24.design.hcl\n" +
			"  stringline compare --since HEAD\n" +
			"  stringline compare --since origin/main --as markdown huts > review.md",
		Args: cobra.ArbitraryArgs,
	}
	option := c.Flags()
	option.String("as", "text", "`FORM` of the output: text, markdown or json")
	option.String("since", "", "compare with a `COMMIT`: a branch, a tag, HEAD~1")
	option.String("until", "", "end at a `COMMIT`; default the files as they lie there")
	option.String("reject-from", "advise", "least `GRADE` that makes worse exit state 1: stop, fix or advise")
	option.String("headroom-below", "", "`SHARE` of a limit, as \"5 %\", under which headroom must not fall")
	option.String("date", "", "`DAY` that ends waivers, as 2026-05-02; default today")
	option.Bool("all", false, "show every limit and fact that moved")
	option.Bool("driver", false, "be git's diff driver: takes the arguments that git hands on")
	outsideOptions(c)
	c.RunE = func(c *cobra.Command, args []string) error {
		form, err := oneOf(c, "as", "text", "markdown", "json")
		if err != nil {
			return err
		}
		page, err := s.page(c)
		if err != nil {
			return err
		}
		o, state, err := s.comparison(c, args)
		if err != nil || o == nil {
			return err
		}
		all, err := c.Flags().GetBool("all")
		if err != nil {
			return fmt.Errorf("reading --all: %w", err)
		}
		found := compare.Runs(*o)
		*code = s.write(state(found.Exit), func(w io.Writer) error {
			switch form {
			case "json":
				return report.CompareJSON(w, found)
			case "markdown":
				return report.CompareMarkdown(w, found, all)
			}
			return report.Compare(w, found, report.CompareOptions{Page: page, All: all})
		})
		return nil
	}
	return c
}

// comparison judges both sides as the arguments ask. state turns what the
// comparison found into the exit state. No options and no error: there is nothing
// to compare, and that was said.
func (s *streams) comparison(c *cobra.Command, args []string) (o *compare.Options, state func(int) int, err error) {
	state = func(exit int) int { return exit }
	o = &compare.Options{}
	if o.HeadroomBelow, err = headroomBelow(c); err != nil {
		return nil, state, err
	}
	reject, err := oneOf(c, "reject-from", string(verdict.Stop), string(verdict.Fix), string(verdict.Advise))
	if err != nil {
		return nil, state, err
	}
	o.RejectFrom = verdict.Grade(reject)
	var r request
	r.rejectFrom = verdict.Advise
	if err = r.outside(c); err != nil {
		return nil, state, err
	}
	if r.date, err = s.date(c); err != nil {
		return nil, state, err
	}
	driver, err := c.Flags().GetBool("driver")
	if err != nil {
		return nil, state, fmt.Errorf("reading --driver: %w", err)
	}
	since, until := c.Flags().Changed("since"), c.Flags().Changed("until")
	switch {
	case driver && (since || until):
		return nil, state, errors.New("--driver compares what git hands on; --since and --until do not go with it")
	case driver:
		// git takes any other exit state for a driver that failed.
		there, err := s.drive(c.Context(), r, args, o)
		if err != nil || !there {
			o = nil
		}
		return o, func(int) int { return 0 }, err
	case since:
		return o, state, s.sinceCommit(c, r, args, o)
	case until:
		return nil, state, errors.New("--until names the end of what --since begins")
	case len(args) != 2:
		return nil, state, fmt.Errorf("compare needs OLD and NEW, or --since COMMIT: found %d paths", len(args))
	case args[0] == "-" && args[1] == "-":
		return nil, state, errors.New("- (standard input) can be one side, not both")
	}
	return o, state, s.twoPaths(c.Context(), r, args, o)
}

// headroomBelow reads the option of that name as a share.
func headroomBelow(c *cobra.Command) (*float64, error) {
	text, err := c.Flags().GetString("headroom-below")
	if err != nil {
		return nil, fmt.Errorf("reading --headroom-below: %w", err)
	}
	if !c.Flags().Changed("headroom-below") {
		return nil, nil
	}
	q, err := quantity.ParseAs(text, "%")
	if err != nil {
		return nil, fmt.Errorf("--headroom-below: %w", err)
	}
	if q.SI < 0 || q.SI > 1 {
		return nil, fmt.Errorf("--headroom-below %q is out of range: 0 %% to 100 %%", text)
	}
	return &q.SI, nil
}

// twoPaths compares two files or folders.
func (s *streams) twoPaths(ctx context.Context, r request, args []string, o *compare.Options) error {
	dir, err := s.workingDir()
	if err != nil {
		return err
	}
	for i, side := range []*compare.Run{&o.Was, &o.Now} {
		if args[i] == "" {
			return errors.New("a path to compare is empty")
		}
		r.paths = []string{args[i]}
		result, err := s.judge(ctx, r)
		if err != nil {
			return err
		}
		*side = compare.Run{Label: args[i], Result: result, Name: s.below(dir, slashed(args[i]))}
	}
	if len(o.Was.Result.Designs) == 1 && len(o.Now.Result.Designs) == 1 {
		one := func(string) string { return "" } // whatever they are called
		o.Was.Name, o.Now.Name = one, one
	}
	return nil
}

// below names designs by their place in the folder that was named.
func (s *streams) below(dir, given string) func(string) string {
	absolute := func(name string) string {
		if path.IsAbs(name) {
			return path.Clean(name)
		}
		return path.Join(dir, name)
	}
	base := absolute(given)
	if info, err := s.disk.Stat(base); err != nil || !info.IsDir() {
		base = path.Dir(base)
	}
	return func(file string) string { return survey.Relative(base, absolute(file)) }
}

// sinceCommit compares a commit with the files as they lie there, or with another
// commit.
func (s *streams) sinceCommit(c *cobra.Command, r request, args []string, o *compare.Options) error {
	if len(args) > 1 {
		return fmt.Errorf("compare --since takes one PATH: found %q beside it", args[1])
	}
	given := "."
	if len(args) == 1 {
		given = args[0]
	}
	switch given {
	case "":
		return errors.New("the path is empty")
	case "-":
		return errors.New("- (standard input) has no history; compare two files instead")
	}
	if s.git == nil {
		return errNoGit
	}
	program, err := s.git()
	if err != nil {
		return err
	}
	dir, err := s.workingDir()
	if err != nil {
		return err
	}
	// git shows folders without symbolic links; so must everything beside it.
	name := physical(dir, given)
	r.dir, r.paths = physical(dir, "."), []string{native(name)}
	for _, side := range []struct {
		option string
		run    *compare.Run
	}{{"since", &o.Was}, {"until", &o.Now}} {
		word, err := c.Flags().GetString(side.option)
		if err != nil {
			return fmt.Errorf("reading --%s: %w", side.option, err)
		}
		if !c.Flags().Changed(side.option) {
			r.disk = s.disk
			side.run.Label = "the files as they are"
			if err := s.judgeSide(c.Context(), r, name, side.run); err != nil {
				return err
			}
			continue
		}
		then, err := openRevision(c.Context(), program, folderOf(name), word)
		if err != nil {
			return fmt.Errorf("--%s: %w", side.option, err)
		}
		r.disk = then
		side.run.Label, side.run.Commit = word, then.commit
		err = s.judgeSide(c.Context(), r, name, side.run)
		then.close()
		if err != nil {
			return err
		}
	}
	if lacks(&o.Was) && lacks(&o.Now) {
		return fmt.Errorf("%s: neither side has it", given)
	}
	return nil
}

// lacks tells whether a side has nothing at the path that was named.
func lacks(r *compare.Run) bool { return len(r.Result.Designs)+len(r.Result.Problems) == 0 }

// judgeSide judges one side of a history. A path that this side does not have
// holds no design there.
func (s *streams) judgeSide(ctx context.Context, r request, name string, run *compare.Run) error {
	run.MayLack = true
	if _, err := r.disk.Stat(name); errors.Is(err, fs.ErrNotExist) {
		run.Result = &lint.Result{Version: programVersion, Date: r.date}
		return nil
	}
	result, err := s.judge(ctx, r)
	run.Result = result
	return err
}
