package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"path"
	"strings"

	"github.com/spf13/cobra"

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
		Long: "Judges two designs, two folders, or a folder as it was at a commit and as it\n" +
			"is, and shows what the change did: verdicts that turned, headroom lost and won,\n" +
			"what is written otherwise, and the facts that moved with what moved them. A\n" +
			"block with another label that is otherwise alike counts as renamed; where a\n" +
			"block stands does not count.\n\n" +
			"With --since the older side is the commit as git has it, with its workshop\n" +
			"file, parts, codebooks and weather; the newer one is the files as they lie\n" +
			"there, or another commit (--until). git is only read. Both sides are judged by\n" +
			"this program, with the codebooks that it comes with, as on one day.\n\n" +
			"Exit status 0: nothing got worse. 1: something did. That is: a finding that was\n" +
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
	option.String("reject-from", "advise", "least `GRADE` with exit status 1: stop, fix or advise")
	option.String("headroom-below", "", "`SHARE` that headroom must not fall below: \"5 %\"")
	option.String("date", "", "`DAY` that ends waivers, as 2026-05-02; default today")
	option.Bool("all", false, "show every limit and fact that moved")
	option.Bool("driver", false, "be git's diff driver, on the arguments that it hands on")
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
		all, err := c.Flags().GetBool("all")
		if err != nil {
			return fmt.Errorf("reading --all: %w", err)
		}
		found, state, err := s.comparison(c, args)
		if err != nil || found == nil {
			return err
		}
		*code = s.write(state, func(w io.Writer) error {
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

// comparison compares as the arguments ask and gives the exit status. No comparison
// and no error: there is nothing to compare, and that was said.
func (s *streams) comparison(c *cobra.Command, args []string) (*compare.Comparison, int, error) {
	var o compare.Options
	var err error
	if o.HeadroomBelow, err = headroomBelow(c); err != nil {
		return nil, 2, err
	}
	reject, err := oneOf(c, "reject-from", string(verdict.Stop), string(verdict.Fix), string(verdict.Advise))
	if err != nil {
		return nil, 2, err
	}
	o.RejectFrom = verdict.Grade(reject)
	r := request{rejectFrom: verdict.Advise}
	if err = r.outside(c); err != nil {
		return nil, 2, err
	}
	if r.date, err = s.date(c); err != nil {
		return nil, 2, err
	}
	driver, err := c.Flags().GetBool("driver")
	if err != nil {
		return nil, 2, fmt.Errorf("reading --driver: %w", err)
	}
	since, until := c.Flags().Changed("since"), c.Flags().Changed("until")
	var both *sides
	switch {
	case driver && (since || until):
		return nil, 2, errors.New("--driver compares what git hands on; --since and --until do not go with it")
	case driver:
		both, err = s.drive(r, args)
	case since:
		both, err = s.sinceCommit(c, r, args)
	case until:
		return nil, 2, errors.New("--until names the end of what --since begins")
	case len(args) != 2:
		found := "nothing"
		if len(args) > 0 {
			found = fmt.Sprintf("%q", args)
		}
		return nil, 2, fmt.Errorf("compare needs OLD and NEW, or --since COMMIT: found %s", strings.Trim(found, "[]"))
	case args[0] == "-" && args[1] == "-":
		return nil, 2, errors.New("- (standard input) can be one side, not both")
	default:
		both, err = s.twoPaths(r, args)
	}
	if both == nil || err != nil {
		return nil, 2, err
	}
	defer both.close()
	found, err := s.compareSides(c.Context(), both, o)
	if err != nil {
		return nil, 2, err
	}
	if driver { // git takes any other exit status for a driver that failed
		return found, 0, nil
	}
	return found, found.Exit, nil
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
func (s *streams) twoPaths(r request, args []string) (*sides, error) {
	dir, err := s.workingDir()
	if err != nil {
		return nil, err
	}
	both := &sides{single: true}
	for i, at := range []*side{&both.was, &both.now} {
		if args[i] == "" {
			return nil, errors.New("a path to compare is empty")
		}
		r.paths = []string{args[i]}
		*at = side{request: r, label: args[i], name: s.below(dir, slashed(args[i]))}
	}
	return both, nil
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
func (s *streams) sinceCommit(c *cobra.Command, r request, args []string) (*sides, error) {
	if len(args) > 1 {
		return nil, fmt.Errorf("compare --since takes one PATH: found %q beside it", args[1])
	}
	given := "."
	if len(args) == 1 {
		given = args[0]
	}
	switch given {
	case "":
		return nil, errors.New("the path is empty")
	case "-":
		return nil, errors.New("- (standard input) has no history; compare two files instead")
	}
	if s.git == nil {
		return nil, errNoGit
	}
	program, err := s.git()
	if err != nil {
		return nil, err
	}
	dir, err := s.workingDir()
	if err != nil {
		return nil, err
	}
	// git shows folders without symbolic links; so must everything beside it.
	name := physical(dir, given)
	r.dir, r.paths = physical(dir, "."), []string{native(name)}
	both := &sides{given: given}
	for _, end := range []struct {
		option string
		at     *side
	}{{"since", &both.was}, {"until", &both.now}} {
		word, err := c.Flags().GetString(end.option)
		if err != nil {
			return nil, fmt.Errorf("reading --%s: %w", end.option, err)
		}
		r.disk = s.disk
		*end.at = side{request: r, label: "the files as they are", lenient: true}
		if !c.Flags().Changed(end.option) {
			continue
		}
		then, err := openRevision(c.Context(), program, folderOf(name), word)
		if err != nil {
			both.close()
			return nil, fmt.Errorf("--%s: %w", end.option, err)
		}
		end.at.disk, end.at.label, end.at.commit, end.at.closer = then, word, then.commit, then.close
	}
	for _, at := range []*side{&both.was, &both.now} {
		_, err := at.disk.Stat(name)
		at.absent = errors.Is(err, fs.ErrNotExist)
	}
	return both, nil
}
