package report

import (
	"bytes"
	"encoding/xml"
	"io"
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode"

	"github.com/joshdk/go-junit"
	"github.com/santhosh-tekuri/jsonschema/v6"
	"pgregory.net/rapid"

	"stringline/lint"
	"stringline/lint/verdict"
	"stringline/schema/source"
)

// hostile texts, each with what a reader must still be able to make out.
var hostile = []struct{ text, readable string }{
	{"100%", "100%"}, {"%0A::error::x", "error"}, {"a\n::error file=x::y", "error"}, {"a\r\n::set-env name=x::y", "env"}, {"\u2028::error::y", "error"},
	{"::stop-commands::x", "commands"}, {"##[error]bad", "[error]bad"}, {"##vso[task.setvariable variable=x]y", "vso"}, {"####[group]", "[group]"},
	{"<script>alert(1)</script>", "script"}, {"a & b", "&"}, {`"quoted" 'too'`, "quoted"}, {"]]>", "]]"}, {"&lt;b&gt;", "&lt;b&gt;"},
	{"\u202eright to left\u202c", "right to left"}, {"שלום", "שלום"}, {"\x1b[31mred\x1b[0m", "red"}, {"\x00nul", "nul"}, {"\x9b31m", "31m"}, {"\xff\xfe", `\xff`},
	{"[link](javascript:alert)", "link"}, {"{0} {1}", "0"}, {"a,b:c;d=e", "a"}, {"`code`", "code"}, {"🔋 °C Ω", "Ω"}, {strings.Repeat("long ", 400), "long"},
}

// everywhere puts a text into every field that a design, a codebook, a workshop or
// a path can fill.
func everywhere(x string) *lint.Result {
	place := func(line int) source.Range { return at(x, line, 1, 3) }
	measured := func() verdict.Measured {
		return verdict.Measured{ID: x, Formula: x, Unit: "V", Value: ptr(2.0), Says: x}
	}
	base := verdict.Verdict{
		Rule: x, About: x, Which: x, Grade: verdict.Stop, BookGrade: verdict.Fix, Title: x, Message: x, Relation: "at_most", Is: ptr(measured()), Limits: []verdict.Measured{measured()},
		Also: []verdict.Measured{measured()}, Spare: &verdict.Spare{Value: -1, Unit: "V"}, Headroom: ptr(-0.5), Because: x + " because", Missing: []string{x}, Assumed: []string{x},
		Parameters: []verdict.Parameter{{Name: x, Value: x, SetAt: place(4)}}, Remedy: x, Source: x, At: []source.Range{place(1), place(2)},
	}
	d := lint.DesignResult{File: x, Workshop: x, Name: x, Revision: x, Digest: "sha256:00", Books: []string{x}, Problems: source.Problems{
		{Kind: x, Message: x, Block: x, Expected: x, Found: x, Near: x, At: place(3)}}}
	for _, o := range []verdict.Outcome{verdict.Breaks, verdict.Unproven, verdict.Waived, verdict.Void, verdict.DoesNotApply, verdict.Meets} {
		v := base
		v.Outcome = o
		switch o {
		case verdict.Waived:
			v.Waiver = &verdict.Waiver{Reason: x, ApprovedBy: x, Expires: x, At: place(5)}
		case verdict.Void:
			v.Fault = &verdict.Fault{Message: x, At: place(6)}
		}
		d.Verdicts = append(d.Verdicts, v)
	}
	held, worse := base, base
	held.Outcome, worse.Outcome, worse.Grade = verdict.Breaks, verdict.Breaks, verdict.Fix
	was := verdict.Accepted{File: x, Rule: x, About: x, Which: x, Found: x, Since: "2026-01-04", At: place(7)}
	held.Accepted, worse.Accepted = &verdict.Acceptance{Was: was}, &verdict.Acceptance{Was: was, Worse: x}
	d.Verdicts = append(d.Verdicts, held, worse)
	r := run(d)
	r.Problems = source.Problems{{Kind: x, Message: x, Block: x, Expected: x, Found: x, Near: x, At: place(8)}, {Kind: x, Message: x}}
	r.Baseline = &lint.BaselineUse{Name: x, Gone: []verdict.Accepted{was}}
	r.Books = []lint.BookInUse{{Name: x, Version: x, Edition: x, Digest: x, Parameters: []lint.ParameterInUse{{Name: x, Text: x}},
		Rules: []lint.RuleInUse{{ID: x, Title: x, Description: x, Source: x, Remedy: x, Grade: verdict.Stop, BookGrade: verdict.Stop}}}}
	r.Exit, r.RejectFrom = 2, verdict.Fix
	return r
}

// commandLine is a whole line that a host takes for a command: the form that the
// public documentation of log commands gives.
var commandLine = regexp.MustCompile(`^::(error|warning|notice) ([a-zA-Z]+=[^,:\r\n]*,)*title=[^,:\r\n]*::[^\r\n]*$`)

// TestHostileTexts puts each hostile text into every field of each output: it
// does nothing there, and can still be read.
func TestHostileTexts(t *testing.T) {
	schema := standardSARIF(t)
	for _, h := range hostile {
		r := everywhere(h.text)
		outs := map[string]string{}
		for form := range forHosts {
			outs[form] = output(t, form, r)
		}
		outs["text"] = string(text(t, r, Page{Width: 100}))
		outs["json"] = string(asJSON(t, r))
		for form, out := range outs {
			for i, c := range out {
				if c != '\n' && !unicode.IsPrint(c) {
					t.Errorf("%s of %q holds %U: %q", form, h.text, c, out[max(0, i-40):i])
					break
				}
			}
		}
		// SARIF: valid, and the strings in it are fit to be shown once they are decoded.
		doc, err := jsonschema.UnmarshalJSON(strings.NewReader(outs["sarif"]))
		if err != nil {
			t.Fatal(err)
		}
		if err := schema.Validate(doc); err != nil {
			t.Errorf("SARIF of %q: %v", h.text, err)
		}
		readable := false
		for _, text := range stringsIn(doc) {
			readable = readable || strings.Contains(strings.NewReplacer(`\[`, "[", `\]`, "]").Replace(text), h.readable)
			for _, c := range text {
				if c != '\n' && !unicode.IsPrint(c) {
					t.Errorf("SARIF of %q: %q", h.text, text)
					break
				}
			}
		}
		if !readable {
			t.Errorf("SARIF of %q: %q cannot be read", h.text, h.readable)
		}
		for _, x := range sarifOf(t, r).Results {
			if bare := regexp.MustCompile(`(^|[^\\])\[`); bare.MatchString(x.Message.Text) {
				t.Errorf("SARIF of %q: a link could begin in %q", h.text, x.Message.Text)
			}
			if strings.ContainsAny(strings.NewReplacer("{{", "", "}}", "").Replace(x.Message.Text), "{}") {
				t.Errorf("SARIF of %q: a placeholder could stand in %q", h.text, x.Message.Text)
			}
		}
		// JUnit: elements of the format alone, and the texts come back.
		decoder := xml.NewDecoder(strings.NewReader(outs["junit"]))
		var texts strings.Builder
		for {
			token, err := decoder.Token()
			if err == io.EOF {
				break
			}
			if err != nil {
				t.Fatalf("JUnit of %q: %v", h.text, err)
			}
			switch token := token.(type) {
			case xml.StartElement:
				if !slices.Contains([]string{"testsuites", "testsuite", "properties", "property", "testcase", "failure", "error", "skipped", "system-out"}, token.Name.Local) {
					t.Errorf("JUnit of %q: element %s", h.text, token.Name.Local)
				}
				for _, a := range token.Attr {
					texts.WriteString(a.Value + "\n")
				}
			case xml.CharData:
				texts.Write(token)
			}
		}
		if !strings.Contains(texts.String(), h.readable) {
			t.Errorf("JUnit of %q: %q cannot be read", h.text, h.readable)
		}
		if _, err := junit.Ingest([]byte(outs["junit"])); err != nil {
			t.Errorf("JUnit of %q: %v", h.text, err)
		}
		// Annotations: each line is a command of ours or no command at all.
		commands := 0
		for line := range strings.Lines(outs["annotations"]) {
			line = strings.TrimSuffix(line, "\n")
			switch {
			case commandLine.MatchString(line):
				commands++
			case strings.HasPrefix(strings.TrimSpace(line), "::"):
				t.Errorf("annotations of %q: %q", h.text, line)
			}
			if strings.Contains(line, "##") {
				t.Errorf("annotations of %q: an older command could stand in %q", h.text, line)
			}
		}
		if commands != 9 {
			t.Errorf("annotations of %q: %d commands\n%s", h.text, commands, outs["annotations"])
		}
		if shown := strings.ReplaceAll(decodeLog(outs["annotations"]), "# #", "##"); !strings.Contains(shown, h.readable) {
			t.Errorf("annotations of %q: %q cannot be read\n%s", h.text, h.readable, shown)
		}
	}
}

// decodeLog undoes the escapes of log commands as a host does.
func decodeLog(text string) string {
	return strings.NewReplacer("%25", "%", "%0D", "\r", "%0A", "\n", "%3A", ":", "%2C", ",").Replace(text)
}

func stringsIn(v any) (all []string) {
	switch v := v.(type) {
	case string:
		return []string{v}
	case []any:
		for _, x := range v {
			all = append(all, stringsIn(x)...)
		}
	case map[string]any:
		for k, x := range v {
			all = append(append(all, k), stringsIn(x)...)
		}
	}
	return all
}

// TestMachineWriters: what cannot be written is told, wherever the writer ends.
func TestMachineWriters(t *testing.T) {
	r := accepted()
	forms := map[string]func(io.Writer, *lint.Result) error{"json": JSON}
	for form, f := range forHosts {
		forms[form] = f
	}
	for form, f := range forms {
		var whole bytes.Buffer
		if err := f(&whole, r); err != nil {
			t.Fatal(err)
		}
		for left := 0; left < whole.Len(); left += 1 + whole.Len()/7 {
			if err := f(&broken{left}, r); err == nil {
				t.Errorf("%s: nothing says that only %d bytes of %d were taken", form, left, whole.Len())
			}
		}
	}
}

// TestAnyMachineOutput: whatever a run holds, each output is well formed.
func TestAnyMachineOutput(t *testing.T) {
	schema := standardSARIF(t)
	rapid.Check(t, func(t *rapid.T) {
		r := anyResult(t)
		for form, f := range forHosts {
			var b bytes.Buffer
			if err := f(&b, r); err != nil {
				t.Fatal(err)
			}
			for _, c := range b.String() {
				if c != '\n' && !unicode.IsPrint(c) {
					t.Fatalf("%s holds %U", form, c)
				}
			}
			switch form {
			case "sarif":
				doc, err := jsonschema.UnmarshalJSON(&b)
				if err != nil {
					t.Fatal(err)
				}
				if err := schema.Validate(doc); err != nil {
					t.Fatal(err)
				}
			case "junit":
				if _, err := junit.Ingest(b.Bytes()); err != nil {
					t.Fatal(err)
				}
			default:
				for line := range strings.Lines(b.String()) {
					if strings.HasPrefix(strings.TrimSpace(line), "::") && !commandLine.MatchString(strings.TrimSuffix(line, "\n")) {
						t.Fatalf("%q", line)
					}
				}
			}
		}
	})
}
