package report

import (
	"fmt"
	"io"
	"strings"

	"stringline/lint"
	"stringline/schema/source"
)

// Hosts show at most ten annotations of a level for each step of a run and drop
// the rest without a word, so the last of ten says how many more there are. What
// is not shown stands below as plain lines of the log.
const (
	mostAnnotations = 10
	mostPlain       = 200 // of a level
)

// Annotations writes a run as log commands, ::error file=…,line=…::message, for CI
// hosts that show them beside the lines of a change. A stop, a void verdict and
// what could not be read are errors, a fix is a warning, advice a notice, and so
// is what a waiver or a baseline puts up with. Each command is one line; nothing
// that a design or a codebook says can begin or end one.
func Annotations(w io.Writer, r *lint.Result) error { return whole(NewAnnotations(w), r) }

// NewAnnotations is [Annotations] for a run that goes on. The worst come first,
// so nothing is written before the end; the worst of each level are kept.
func NewAnnotations(w io.Writer) Sink {
	s := &annotationSink{w: w}
	for i := range s.levels {
		s.levels[i].most = mostAnnotations + mostPlain
	}
	return s
}

type annotationSink struct {
	w      io.Writer
	levels [3]worst // by annotationLevels
}

var annotationLevels = [3]string{"error", "warning", "notice"}

func (s *annotationSink) take(n notice) {
	level := map[string]int{"error": 0, "warning": 1, "note": 2}[levelOf(&n)]
	s.levels[level].take(n)
}

func (s *annotationSink) Design(d *lint.DesignResult) error {
	for _, n := range noticesOf(d) {
		s.take(n)
	}
	return nil
}

func (s *annotationSink) End(r *lint.Result) error {
	for i := range r.Problems {
		s.take(notice{problem: &r.Problems[i]})
	}
	var b, plain strings.Builder
	for i := range s.levels {
		level := &s.levels[i]
		level.trim()
		shown := level.kept
		if level.taken > mostAnnotations {
			shown = shown[:mostAnnotations-1]
		}
		for n := range shown {
			b.WriteString(annotation(annotationLevels[i], &shown[n]))
		}
		if more := level.taken - len(shown); more > 0 {
			words := fmt.Sprintf("%d more are not shown here: a host shows at most %d of each level. They stand in the log, worst first.", more, mostAnnotations)
			fmt.Fprintf(&b, "::%s title=%d more of level %s::%s\n", annotationLevels[i], more, annotationLevels[i], logData(words))
			for _, n := range level.kept[len(shown):] {
				plain.WriteString(plainLine(&n))
			}
		}
		if level.cut > 0 {
			plain.WriteString(logText(cutWords(level.cut, level.most, "of level "+annotationLevels[i])) + "\n")
		}
	}
	if plain.Len() > 0 {
		b.WriteString("Not shown as annotations:\n" + plain.String())
	}
	b.WriteString(logText(countWords(&r.Summary)) + "\n")
	if u := r.Baseline; u != nil {
		b.WriteString(logText(baselineWords(u)) + "\n")
		for i := range u.Gone {
			b.WriteString(logText("Gone: "+goneWords(&u.Gone[i])) + "\n")
		}
	}
	b.WriteString(cautionWords + "\n")
	_, err := io.WriteString(s.w, b.String())
	return err
}

// annotation is one log command. A host that is told no file shows it with the run.
func annotation(level string, n *notice) string {
	var b strings.Builder
	fmt.Fprintf(&b, "::%s ", level)
	if at := n.place(); at.File != "" && at.File != "-" {
		fmt.Fprintf(&b, "file=%s,", logProperty(at.File))
		if at.Valid() {
			line, column, end := oneLine(at)
			fmt.Fprintf(&b, "line=%d,endLine=%d,col=%d,", line, line, column)
			if end > 0 {
				fmt.Fprintf(&b, "endColumn=%d,", end)
			}
		}
	}
	said := n.sentences()
	if words := n.lineWords(); words != "" {
		said = append(said, words)
	}
	for i := range said {
		said[i] = logData(said[i])
	}
	fmt.Fprintf(&b, "title=%s::%s\n", logProperty(n.heading()), strings.Join(said, "%0A"))
	return b.String()
}

// plainLine is one line of the log that no host takes for a command: it begins
// with a grade.
func plainLine(n *notice) string {
	at := n.place()
	where := ""
	if at != (source.Range{}) {
		where = " at " + at.String()
	}
	return logText(n.heading()+where+": "+strings.Join(n.sentences(), " ")) + "\n"
}

// logText makes a text fit for a log. Besides commands at the start of a line,
// hosts know older ones, ##[command] and ##name[command], that they find anywhere
// in a line: no two number signs stand together.
func logText(text string) string {
	return strings.ReplaceAll(strings.ReplaceAll(Escape(text), "##", "# #"), "##", "# #")
}

// logData escapes the message of a log command, logProperty the value of one of
// its properties, as the format's public documentation asks.
func logData(text string) string {
	return strings.NewReplacer("%", "%25", "\r", "%0D", "\n", "%0A").Replace(logText(text))
}

func logProperty(text string) string {
	return strings.NewReplacer(":", "%3A", ",", "%2C").Replace(logData(text))
}
