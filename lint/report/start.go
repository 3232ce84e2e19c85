package report

import (
	"fmt"
	"io"
	"strings"

	"stringline/lint"
	"stringline/lint/verdict"
)

// Start is what a first workshop came to.
type Start struct {
	Folder   string
	Hooks    string            // the folder of hooks, as git is to be told it
	InGit    bool              // the folder stands in a work tree of git
	Files    []string          // below the folder, the design first
	Unknown  []string          // options that were not answered
	PlanOpen bool              // what a build must keep stands in the design as comments
	Findings []verdict.Verdict // what a check finds, worst first
	Refused  int               // of them, those for which the hook takes no commit
	Summary  lint.Summary
}

// Question puts a question with the reason for it.
func Question(w io.Writer, ask, why string, opts Page) error {
	p := newPage(opts)
	p.blank()
	p.line().wrap(ask, plain)
	p.line().to(2).wrap(why, plain)
	return p.flush(w)
}

// mostFindings is how many findings of a first design are named; check names all.
const mostFindings = 10

// Started says which files were written, what a check finds on them, and what to do
// next.
func Started(w io.Writer, s Start, opts Page) error {
	p := newPage(opts)
	p.line().wrap(fmt.Sprintf("%s written into %s:", count(len(s.Files), "file", "files"), s.Folder), plain)
	for _, f := range s.Files {
		p.line().to(2).put(f, plain).end()
	}
	p.blank()
	switch {
	case len(s.Findings) == 0:
		p.line().wrap(fmt.Sprintf("Nothing found against it: %s met.", count(s.Summary.Meets, "judgement", "judgements")), plain)
	default:
		p.line().wrap(fmt.Sprintf("NOT READY: %s, %d unproven. Worst first:", count(len(s.Findings), "finding", "findings"), s.Summary.Unproven), inkFix)
		for i, v := range s.Findings {
			if i == mostFindings {
				p.line().to(2).wrap(fmt.Sprintf("and %d more", len(s.Findings)-mostFindings), plain)
				break
			}
			p.line().to(2).put(string(v.Grade), plain).to(10).put(string(v.Outcome), plain).to(20).wrap(v.Rule+" on "+subject(&v), plain)
		}
	}
	if len(s.Unknown) > 0 {
		p.line().wrap("Not known, so left out of the design: "+strings.Join(s.Unknown, ", ")+".", inkSupply)
	}
	if s.PlanOpen {
		p.line().wrap("What a build must keep as planned stands in the design as comments: make it yours line by line, or start with --plan yes.", inkSupply)
	}
	p.blank()
	p.line().wrap("Every part in it is invented: replace them by data sheets, and look at each line of the plan, before anything is bought, wired or switched on. It supports, and does not replace, the code in force and a licensed person.", plain)
	p.blank()
	p.line().put("Next:", plain).end()
	design, commit := s.Files[0], "git commit -m first"
	if s.Refused > 0 {
		commit = "git commit --no-verify -m first"
	}
	for _, step := range []string{"cd " + shellWord(s.Folder), "stringline check", "stringline workings " + design + " pv_input.main.1.voc_cold", "git init", "git config core.hooksPath " + shellWord(s.Hooks), "git add .", commit} {
		if step != "cd ." && (step != "git init" || !s.InGit) {
			p.line().to(2).put(step, plain).end()
		}
	}
	if s.Refused > 0 {
		p.line().wrap(fmt.Sprintf("The hook takes no commit while a stop or a fix is open, unproven ones too, and %s. --no-verify keeps the work all the same; it makes nothing safe.",
			map[bool]string{true: "one is", false: fmt.Sprint(s.Refused, " are")}[s.Refused == 1]), plain)
	}
	return p.flush(w)
}

// shellWord writes a folder's name as a shell reads it.
func shellWord(name string) string {
	plainWord := strings.IndexFunc(name, func(r rune) bool {
		return !(r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' || r >= '0' && r <= '9' || strings.ContainsRune("./_-", r))
	}) < 0
	if plainWord && !strings.HasPrefix(name, "-") {
		return name
	}
	if strings.HasPrefix(name, "-") {
		name = "./" + name
	}
	return "'" + strings.ReplaceAll(name, "'", `'\''`) + "'"
}
