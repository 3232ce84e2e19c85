package report

import (
	"cmp"
	"crypto/sha256"
	"fmt"
	"io"
	"net/url"
	"path"
	"slices"
	"strings"

	"stringline/lint"
	"stringline/lint/verdict"
	"stringline/schema/source"
)

// Limits of what code hosts take in (from their public documentation of what they
// read of SARIF): 25,000 results are refused, of fewer the 5,000 worst are kept.
const (
	mostResults       = 5000
	mostRelated       = 20
	mostNotifications = 1000
	mostDescription   = 1024 // code points
)

// SARIF writes a run in the Static Analysis Results Interchange Format 2.1.0
// (OASIS), as code hosts want it: codebooks are extensions of the tool, each
// finding a result at one line, with a fingerprint that does not hang on lines.
// Only rules that have a result are described.
//
//   - What is met or does not apply is counted (properties of the run), no result.
//   - A stop is an error, a fix a warning, advice a note. What could not be read
//     is an error at its place, and a notification of the invocation.
//   - An unproven verdict is of kind "fail" with its grade's level. The standard
//     has "open" for a rule that lacks information, but demands level "none" there
//     (3.27.10), and hosts go by the level alone: an unproven stop would show as
//     nothing, and here it is a stop. The result's property verdict says unproven.
//   - A waiver is a suppression in the source, a baseline's line an external one;
//     both are notes, for hosts that do not read suppressions.
//   - At most 5,000 results, worst first; a notification says how many were cut.
func SARIF(w io.Writer, r *lint.Result) error { return whole(NewSARIF(w), r) }

// NewSARIF is [SARIF] for a run that goes on. The tool's rules stand before the
// results, so nothing is written before the end; the worst results are kept.
func NewSARIF(w io.Writer) Sink { return &sarifSink{w: w, worst: worst{most: mostResults}} }

type sarifSink struct {
	w       io.Writer
	worst   worst
	unread  []sarifNotification
	unreadN int
}

func (s *sarifSink) Design(d *lint.DesignResult) error {
	for _, n := range noticesOf(d) {
		s.worst.take(n)
	}
	if len(d.Problems) > 0 {
		s.notify("error", fmt.Sprintf("%s: %s in what was read; what they touch is not judged.", d.File, count(len(d.Problems), "error", "errors")), source.Range{File: d.File})
	}
	return nil
}

func (s *sarifSink) notify(level, message string, at source.Range) {
	if s.unreadN++; len(s.unread) == mostNotifications {
		return
	}
	n := sarifNotification{Level: level, Message: sarifMessage(message)}
	if at.File != "" {
		n.Locations = []sarifLocation{sarifPlace(at)}
	}
	s.unread = append(s.unread, n)
}

func (s *sarifSink) End(r *lint.Result) error {
	for i := range r.Problems {
		p := &r.Problems[i]
		s.notify("error", strings.Join(problemSentences(p), " "), p.At)
		if p.At.File != "" { // a host refuses a result without a place
			s.worst.take(notice{problem: p})
		}
	}
	if b := r.Baseline; b != nil {
		s.notify("note", baselineWords(b), source.Range{})
		for i := range b.Gone {
			s.notify("note", "Gone: "+goneWords(&b.Gone[i])+".", b.Gone[i].At)
		}
	}
	s.worst.trim()
	told := s.unread
	if more := s.unreadN - len(told); more > 0 {
		told = append(told, sarifNotification{Level: "error", Message: sarifMessage(fmt.Sprintf("%d more notifications are not told here.", more))})
	}
	if s.worst.cut > 0 {
		told = append(told, sarifNotification{Level: "warning", Message: sarifMessage(cutWords(s.worst.cut, s.worst.most, "results"))})
	}
	if told == nil {
		told = []sarifNotification{}
	}
	rules := newSarifRules(r, s.worst.kept)
	run := sarifRun{
		Tool: sarifTool{Driver: rules.driver, Extensions: rules.extensions}, ColumnKind: "unicodeCodePoints",
		Invocations: []sarifInvocation{{Successful: r.Exit != 2, ExitCode: r.Exit, ExitWords: exitWords(r.Exit), Notifications: told}},
		Results:     make([]sarifResult, 0, len(s.worst.kept)),
		Properties:  sarifRunBag{Date: r.Date, Summary: summaryEntry(r.Summary), Cut: s.worst.cut},
	}
	seen := map[string]int{}
	for i := range s.worst.kept {
		n := &s.worst.kept[i]
		result := sarifResultOf(n, r.Baseline != nil)
		result.Rule = rules.reference(n)
		print := fingerprint(n)
		seen[print]++
		result.Fingerprints = map[string]string{"primaryLocationLineHash": fmt.Sprintf("%s:%d", print, seen[print])}
		run.Results = append(run.Results, result)
	}
	return writeJSON(s.w, sarifLog{Schema: sarifSchema, Version: sarifVersion, Runs: []sarifRun{run}})
}

func exitWords(exit int) string {
	return []string{"nothing found at or above the grade to reject", "findings at or above the grade to reject",
		"something could not be read, nothing was judged, or a verdict is void"}[min(max(exit, 0), 2)]
}

func sarifResultOf(n *notice, baseline bool) sarifResult {
	at := n.place()
	result := sarifResult{
		RuleID: ruleOf(n), Kind: "fail", Level: levelOf(n), Message: sarifMessage(n.heading() + ". " + strings.Join(n.sentences(), " ")),
		Locations: []sarifLocation{sarifPlace(at)},
	}
	if n.problem != nil {
		result.Properties = sarifResultBag{Key: Escape(n.problem.Kind + "|" + n.problem.Block), Verdict: "unread"}
		if baseline {
			result.BaselineState = "new"
		}
		return result
	}
	v := n.verdict
	result.Properties = sarifResultBag{Key: Escape(v.Key()), Verdict: string(v.Outcome), Grade: string(v.Grade), About: Escape(v.About), Headroom: number(v.Headroom)}
	told := []source.Range{at}
	for _, more := range v.At {
		if more.Valid() && !slices.Contains(told, more) && len(told) <= mostRelated {
			told = append(told, more)
			result.Related = append(result.Related, sarifPlace(more))
		}
	}
	switch {
	case v.Outcome == verdict.Waived && v.Waiver != nil:
		result.Suppressions = []sarifSuppression{{"inSource", "accepted", sarifMessage(stopped("Waived until " + v.Waiver.Expires + by(v.Waiver))).Text}}
	case v.Held():
		result.Suppressions = []sarifSuppression{{"external", "accepted", sarifMessage("Accepted on " + v.Accepted.Was.Since + " in " + v.Accepted.Was.At.File + ".").Text}}
	}
	if baseline {
		switch {
		case v.Accepted == nil:
			result.BaselineState = "new"
		case v.Held():
			result.BaselineState = "unchanged"
		default:
			result.BaselineState = "updated"
		}
	}
	return result
}

// levelOf gives how loud a host shows a notice.
func levelOf(n *notice) string {
	switch n.loudness() {
	case loudError, loudStop:
		return "error"
	case loudFix:
		return "warning"
	}
	return "note"
}

// sarifMessage is a text as a message of the standard (3.11): what would be a link
// or a placeholder there is text here. Paths keep their own brackets readable.
func sarifMessage(text string) sarifText {
	text = strings.NewReplacer(`[`, `\[`, `]`, `\]`, `{`, `{{`, `}`, `}}`).Replace(Escape(text))
	return sarifText{cmp.Or(strings.TrimSpace(text), "-")}
}

func sarifPlace(r source.Range) sarifLocation {
	line, column, end := oneLine(r)
	region := sarifRegion{StartLine: line, StartColumn: column, EndLine: line, EndColumn: end}
	if !r.Valid() { // the whole file is meant: hosts want a line, so its first
		region = sarifRegion{StartLine: 1, StartColumn: 1, EndLine: 1}
	}
	if region.EndColumn == 0 {
		region.EndColumn = region.StartColumn + 1
	}
	return sarifLocation{Physical: sarifPhysical{Artifact: sarifArtifact{uriOf(r.File)}, Region: &region}}
}

// uriOf gives a path as a relative reference (RFC 3986): percent-encoded, with /
// between folders and ./ before a first part that would read as a scheme.
func uriOf(name string) string {
	if path.IsAbs(name) {
		return (&url.URL{Scheme: "file", Path: name}).String()
	}
	return (&url.URL{Path: name}).String()
}

// fingerprint identifies a notice from run to run by the design's file and the
// verdict's key, so that it stays when lines move.
func fingerprint(n *notice) string {
	parts := []string{n.file}
	if n.problem != nil {
		parts = append(parts, n.problem.At.File, "error", n.problem.Kind, n.problem.Block, n.problem.Message)
	} else {
		parts = append(parts, n.verdict.Rule, n.verdict.About, n.verdict.Which)
	}
	return fmt.Sprintf("%x", sha256.Sum256([]byte(strings.Join(parts, "\x00"))))[:16]
}
