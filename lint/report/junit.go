package report

import (
	"bytes"
	"cmp"
	"encoding/xml"
	"fmt"
	"io"
	"strings"

	"stringline/lint"
	"stringline/lint/verdict"
	"stringline/schema/source"
)

// JUnit writes a run in the XML that test runners write and CI hosts show (there
// is no standard; the elements are those that all readers know: testsuites,
// testsuite, testcase with failure, error or skipped). A design is a suite, a
// verdict a case:
//
//   - a finding at or above the grade to reject is a failure, so that the report is
//     red exactly where the exit status is not 0
//   - one below it is skipped, with what was found: the format has no warning
//   - what could not be read and a void verdict are errors
//   - what does not apply, is waived or accepted is skipped, with the reason
func JUnit(w io.Writer, r *lint.Result) error { return whole(NewJUnit(w, r.RejectFrom), r) }

// NewJUnit is [JUnit] for a run that goes on: each suite is written as its design
// comes.
func NewJUnit(w io.Writer, rejectFrom verdict.Grade) Sink {
	return &junitSink{w: w, reject: rejectFrom}
}

type junitSink struct {
	w      io.Writer
	reject verdict.Grade
	begun  bool
}

type junitSuite struct {
	XMLName    xml.Name        `xml:"testsuite"`
	Name       string          `xml:"name,attr"`
	Tests      int             `xml:"tests,attr"`
	Failures   int             `xml:"failures,attr"`
	Errors     int             `xml:"errors,attr"`
	Skipped    int             `xml:"skipped,attr"`
	Properties []junitProperty `xml:"properties>property,omitempty"`
	Cases      []junitCase     `xml:"testcase"`

	names map[string]int
}

type junitProperty struct {
	Name  string `xml:"name,attr"`
	Value string `xml:"value,attr"`
}

type junitCase struct {
	Class   string     `xml:"classname,attr"`
	Name    string     `xml:"name,attr"`
	File    string     `xml:"file,attr,omitempty"`
	Line    int        `xml:"line,attr,omitempty"`
	Failure *junitWhy  `xml:"failure"`
	Error   *junitWhy  `xml:"error"`
	Skipped *junitSkip `xml:"skipped"`
	Out     *junitText `xml:"system-out"`
}

type junitWhy struct {
	Type    string `xml:"type,attr"`
	Message string `xml:"message,attr"`
	Text    string `xml:",innerxml"` // escaped, with line ends of its own
}

type junitSkip struct {
	Message string `xml:"message,attr"`
}

type junitText struct {
	Text string `xml:",innerxml"`
}

func (s *junitSink) begin() error {
	if s.begun {
		return nil
	}
	s.begun = true
	_, err := fmt.Fprintf(s.w, "%s<testsuites name=%q>\n", xml.Header, ToolName)
	return err
}

func (s *junitSink) Design(d *lint.DesignResult) error {
	suite := &junitSuite{Name: Escape(d.File)}
	for _, p := range [][2]string{{"name", d.Name}, {"revision", d.Revision}, {"digest", d.Digest}, {"codebooks", strings.Join(d.Books, " ")}} {
		if p[1] != "" {
			suite.Properties = append(suite.Properties, junitProperty{p[0], Escape(p[1])})
		}
	}
	for i := range d.Problems {
		suite.problem(d.File, i+1, &d.Problems[i])
	}
	for i := range d.Verdicts {
		suite.verdict(d.File, &d.Verdicts[i], s.reject)
	}
	if tallyOf(d).judged == 0 && len(d.Problems) == 0 {
		suite.problem(d.File, 1, notJudged(d))
	}
	return s.suite(suite)
}

// End closes with a suite of what belongs to no one design. It always has a case,
// so that no run is empty: readers take a file without cases for a fault.
func (s *junitSink) End(r *lint.Result) error {
	suite := &junitSuite{Name: ToolName, Properties: []junitProperty{{"version", r.Version}, {"date", r.Date}, {"exit", fmt.Sprint(r.Exit)}}}
	for i := range r.Problems {
		suite.problem(ToolName, i+1, &r.Problems[i])
	}
	counted := junitCase{Class: ToolName, Name: "every design under the paths is judged"}
	if r.Summary.Designs == 0 || r.Summary.Rules == 0 || r.Summary.NotJudged > 0 {
		counted.Error = why("not judged", "not every design was judged", []string{countWords(&r.Summary)})
	}
	words := []string{countWords(&r.Summary)}
	if r.Baseline != nil {
		words = append(words, baselineWords(r.Baseline))
		for i := range r.Baseline.Gone {
			words = append(words, "Gone: "+goneWords(&r.Baseline.Gone[i]))
		}
	}
	counted.Out = &junitText{xmlLines(append(words, cautionWords))}
	suite.add(counted)
	if err := s.suite(suite); err != nil {
		return err
	}
	_, err := io.WriteString(s.w, "</testsuites>\n")
	return err
}

func (s *junitSink) suite(suite *junitSuite) error {
	if err := s.begin(); err != nil {
		return err
	}
	text, err := xml.MarshalIndent(suite, "  ", "  ")
	if err != nil {
		return fmt.Errorf("writing JUnit: %w", err)
	}
	_, err = s.w.Write(append(text, '\n'))
	return err
}

// add takes a case in. Readers tell cases apart by class and name alone.
func (s *junitSuite) add(c junitCase) {
	if s.names == nil {
		s.names = map[string]int{}
	}
	for s.names[c.Name]++; s.names[c.Name] > 1; s.names[c.Name]++ {
		c.Name = fmt.Sprintf("%s (%d)", c.Name, s.names[c.Name])
	}
	s.Tests++
	switch {
	case c.Error != nil:
		s.Errors++
	case c.Failure != nil:
		s.Failures++
	case c.Skipped != nil:
		s.Skipped++
	}
	s.Cases = append(s.Cases, c)
}

func (s *junitSuite) problem(class string, number int, p *source.Problem) {
	n := notice{problem: p}
	said := n.sentences()
	if where := p.At.String(); where != "" {
		said = append(said, "At "+where)
	}
	s.add(junitCase{
		Class: cmp.Or(Escape(class), "-"), Name: fmt.Sprintf("reading, error %d", number), File: Escape(p.At.File), Line: p.At.Start.Line,
		Error: why(cmp.Or(p.Kind, "error"), n.heading(), said),
	})
}

func (s *junitSuite) verdict(class string, v *verdict.Verdict, reject verdict.Grade) {
	n := notice{verdict: v, file: class}
	at := n.place()
	c := junitCase{Class: cmp.Or(Escape(class), "-"), Name: Escape(v.Rule + " on " + subject(v)), File: Escape(at.File), Line: at.Start.Line}
	text := n.sentences()
	if where := strings.Join(places(v.At), " "); where != "" {
		text = append(text, "At "+where)
	}
	all := strings.Join(n.sentences(), " ")
	switch {
	case v.Outcome == verdict.Void:
		c.Error = why("void", n.heading(), text)
	case v.Finding() && v.Grade.Rank() <= reject.Rank():
		c.Failure = why(strings.TrimSpace(string(v.Grade)+" "+string(v.Outcome)), n.heading(), text)
	case v.Finding():
		c.Skipped = &junitSkip{Escape(fmt.Sprintf("%s, below what is rejected (%s). %s", n.heading(), reject, all))}
	case v.Outcome == verdict.DoesNotApply:
		c.Skipped = &junitSkip{Escape(strings.TrimSpace("does not apply: " + v.Because))}
	case v.Outcome == verdict.Waived, v.Held():
		c.Skipped = &junitSkip{Escape(all)}
	}
	s.add(c)
}

func why(kind, message string, text []string) *junitWhy {
	return &junitWhy{Type: Escape(kind), Message: Escape(message), Text: xmlLines(text)}
}

// xmlLines puts texts on lines of their own, each escaped for terminals and XML.
func xmlLines(texts []string) string {
	var b bytes.Buffer
	for i, text := range texts {
		if i > 0 {
			b.WriteByte('\n')
		}
		_ = xml.EscapeText(&b, []byte(Escape(text))) // a buffer takes everything
	}
	return b.String()
}
