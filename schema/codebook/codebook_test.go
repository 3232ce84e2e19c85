package codebook_test

import (
	"math"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"

	"stringline/schema/codebook"
	"stringline/schema/design"
	"stringline/schema/hcltext"
	"stringline/schema/source"
)

// sample is the codebook file of the specification, with a parameter of each
// kind.
const sample = `name         = "county"
version      = "1.0.0"
edition      = "2023" # of the code that it follows
jurisdiction = "Fell County"
needs        = "0.4"
covers       = ["690.7", "690.8"]
cannot_judge = ["690.33"]

source "nec" {
  title  = "National Electrical Code, 2023"
  status = "transcribed" # read, transcribed, from memory
}

parameter "voltage_drop_max" {
  kind    = "quantity" # kinds as below
  unit    = "%"
  default = "3 %"
  range   = ["0 %", "10 %"]
  means   = "largest drop along one path"
}

parameter "method" {
  kind    = "word"
  words   = ["table", "formula"]
  default = "table"
  means   = "how ampacity is found"
}

parameter "strict" {
  kind    = "yes_no"
  default = true
  means   = "whether doubt counts"
}

parameter "strings" {
  kind    = "quantity"
  unit    = ""
  default = 3
  range   = [1, 12]
  means   = "strings without fuses"
}

attribute "ventilated" { # lets designs say what this code asks about, without Go
  of    = "banks"
  kind  = "yes_no" # yes_no, word (with words = […]), quantity (with unit; "" for a count)
  means = "the bank's enclosure vents to the outside"
}

attribute "sealed" {
  of    = "protections"
  kind  = "word"
  words = ["yes", "unknown"]
  means = "whether the device is sealed"
}
`

func load(text string) *codebook.Codebook {
	return codebook.Load(fstest.MapFS{"county/codebook.hcl": {Data: []byte(text)}}, "county/codebook.hcl", nil)
}

func TestSampleOfTheSpecification(t *testing.T) {
	c := load(sample)
	if len(c.Problems) > 0 {
		t.Fatal(c.Problems)
	}
	if c.Name != "county" || c.Version != "1.0.0" || c.Edition != "2023" || c.Jurisdiction != "Fell County" || c.Needs != "0.4" {
		t.Errorf("head: %+v", c)
	}
	if diff := cmp.Diff([][]string{{"690.7", "690.8"}, {"690.33"}}, [][]string{c.Covers, c.CannotJudge}); diff != "" {
		t.Errorf("clauses (-want +got):\n%s", diff)
	}
	if s := c.Sources[0]; len(c.Sources) != 1 || s.Key != "nec" || s.Status != "transcribed" || s.Title != "National Electrical Code, 2023" {
		t.Errorf("sources: %+v", c.Sources)
	}
	p, ok := c.Parameter("voltage_drop_max")
	if !ok || p.Kind != "quantity" || p.Unit != "%" || p.Default.SI != 0.03 || p.Default.Text != "3 %" || *p.Min != 0 || *p.Max != 0.1 || p.Means == "" {
		t.Errorf("voltage_drop_max: %+v", p)
	}
	if p, _ := c.Parameter("method"); p.Default.Word != "table" {
		t.Errorf("method: %+v", p)
	}
	if p, _ := c.Parameter("strict"); !p.Default.Yes {
		t.Errorf("strict: %+v", p)
	}
	if p, _ := c.Parameter("strings"); p.Default.SI != 3 || *p.Max != 12 {
		t.Errorf("strings: %+v", p)
	}
	declares := c.Declares()
	if a := declares["bank"]; len(a) != 1 || a[0].Name != "ventilated" || a[0].Form != design.YesNo {
		t.Errorf("banks are asked %+v", a)
	}
	if len(declares["fuse"]) != 1 || len(declares["breaker"]) != 1 || declares["fuse"][0].Form != design.Word {
		t.Errorf("protections are asked %+v", declares)
	}
}

func TestNameAndVersionAloneAreOwed(t *testing.T) {
	if c := load("name = \"county\"\nversion = \"2\"\n"); len(c.Problems) > 0 {
		t.Error(c.Problems)
	}
	c := load("")
	want := "county/codebook.hcl:1:1: name is missing: the codebook's name, the same as its folder's\n" +
		"county/codebook.hcl:1:1: version is missing: the codebook's own version"
	if c.Problems.Error() != want {
		t.Errorf("an empty file:\n%v\nwant\n%s", c.Problems, want)
	}
}

func TestProblems(t *testing.T) {
	parameter := func(s string) string {
		return "parameter \"p\" {\n  means = \"m\"\n  kind = \"quantity\"\n  unit = \"%\"\n" + s + "}\n"
	}
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"nothing wrong", "", nil},
		{"unknown attribute", "covres = []\n", []string{`3:1: unknown attribute "covres" of codebook (did you mean "covers"?)`}},
		{"unknown block", "paramter \"a\" {}\n", []string{`3:1: unknown block "paramter" in a codebook file (did you mean "parameter"?)`}},
		{"needs no version", "needs = \"new\"\n", []string{`3:9: needs: expected a version such as 0.4, found "new"`}},
		{"covered and not", "covers = [\"1\"]\ncannot_judge = [\"1\"]\n", []string{`4:17: cannot_judge: clause "1" is among those that the codebook covers`}},
		{"source without status", "source \"s\" { title = \"t\" }\n", []string{`3:1: status is missing: read, transcribed or from memory`}},
		{"source with another status", "source \"s\" {\n  title = \"t\"\n  status = \"transcribd\"\n}\n",
			[]string{`5:12: status: expected one of "read", "transcribed", "from memory", found "transcribd" (did you mean "transcribed"?)`}},
		{"source twice", "source \"s\" {\n  title = \"t\"\n  status = \"read\"\n}\nsource \"s\" {\n  title = \"t\"\n  status = \"read\"\n}\n",
			[]string{`7:1: source "s" is declared twice, first at county/codebook.hcl:3:1`}},
		{"parameter without default", parameter(""), []string{`3:1: default is missing: the value where the workshop sets none`}},
		{"parameter without a unit", "parameter \"p\" {\n  means = \"m\"\n  kind = \"quantity\"\n  default = 1\n}\n", []string{`3:1: unit is missing: the unit of a quantity, "" for a count`}},
		{"unit that documents do not print", "parameter \"p\" {\n  means = \"m\"\n  kind = \"quantity\"\n  unit = \"mV\"\n  default = \"1 mV\"\n}\n",
			[]string{`6:10: unit: expected one of the documents' units, such as V, A, %, mm2, or "" for a count, found "mV" (did you mean "V"?)`}},
		{"default of another dimension", parameter("  default = \"3 V\"\n"), []string{`7:13: default: expected a percentage (%), found a voltage, "3 V"`}},
		{"bare default", parameter("  default = 3\n"), []string{`7:13: default: expected a percentage (%), found the bare number 3; write it with its unit and in quotes, such as "3 %"`}},
		{"default beyond the range", parameter("  default = \"10.1 %\"\n  range = [\"0 %\", \"10 %\"]\n"), []string{`7:13: default: expected 0 % to 10.0 %, found "10.1 %"`}},
		{"default at the end of the range", parameter("  default = \"10 %\"\n  range = [\"0 %\", \"10 %\"]\n"), nil},
		{"range the wrong way round", parameter("  default = \"3 %\"\n  range = [\"10 %\", \"0 %\"]\n"), []string{`8:11: range: its least value is above its largest`}},
		{"range of three", parameter("  default = \"3 %\"\n  range = [\"1 %\", \"2 %\", \"3 %\"]\n"), []string{`8:11: range: expected the least and the largest value of a quantity, in [ ], found a list of 3`}},
		{"misspelt default", parameter("  defalt = \"3 %\"\n"), []string{`3:1: default is missing: the value where the workshop sets none`, `7:3: unknown attribute "defalt" of parameter (did you mean "default"?)`}},
		{"word without words", "parameter \"p\" {\n  means = \"m\"\n  kind = \"word\"\n  default = \"a\"\n}\n", []string{`3:1: words is missing: the words that it may be`}},
		{"default that is none of the words", "parameter \"p\" {\n  means = \"m\"\n  kind = \"word\"\n  words = [\"table\", \"formula\"]\n  default = \"tabel\"\n}\n",
			[]string{`7:13: default: expected one of "table", "formula", found "tabel" (did you mean "table"?)`}},
		{"unit of a word", "parameter \"p\" {\n  means = \"m\"\n  kind = \"yes_no\"\n  unit = \"V\"\n  default = true\n}\n", []string{`6:3: unit belongs to another kind, not to "yes_no"`}},
		{"range of a yes", "parameter \"p\" {\n  means = \"m\"\n  kind = \"yes_no\"\n  default = true\n  range = [1, 2]\n}\n", []string{`7:3: range belongs to a quantity, not to "yes_no"`}},
		{"parameter called id", "parameter \"id\" {\n  means = \"m\"\n  kind = \"yes_no\"\n  default = true\n}\n",
			[]string{`3:11: the name of a parameter: expected small letters, digits and _, and not "id" or "unit", found "id"`}},
		{"hyphen in a name", "parameter \"a-b\" {\n  means = \"m\"\n  kind = \"yes_no\"\n  default = true\n}\n",
			[]string{`3:11: the name of a parameter: expected small letters, digits and _, and not "id" or "unit", found "a-b" (did you mean "a_b"?)`}},
		{"attribute of no collection", "attribute \"a\" {\n  means = \"m\"\n  kind = \"yes_no\"\n  of = \"bank\"\n}\n",
			[]string{`6:8: of: expected one of "site", "grounding", "system", "panels", "controllers", "batteries", "inverters", "converters", "strings", "arrays", "chargers", "banks", "cable_runs", "protections", "disconnects", "ac_outputs", "loads", "supplies", "charge_sources", "readings", found "bank" (did you mean "banks"?)`}},
		{"attribute twice", "attribute \"a\" {\n  means = \"m\"\n  kind = \"yes_no\"\n  of = \"banks\"\n}\nattribute \"a\" {\n  means = \"m\"\n  kind = \"yes_no\"\n  of = \"banks\"\n}\n",
			[]string{`8:1: attribute "a" is declared twice, first at county/codebook.hcl:3:1`}},
		{"one name for two collections", "attribute \"a\" {\n  means = \"m\"\n  kind = \"yes_no\"\n  of = \"banks\"\n}\nattribute \"a\" {\n  means = \"m\"\n  kind = \"yes_no\"\n  of = \"loads\"\n}\n", nil},
		{"block in a block", "source \"s\" {\n  title = \"t\"\n  status = \"read\"\n  x {}\n}\n", []string{`6:3: a source block holds no other block`}},
	} {
		t.Run(c.name, func(t *testing.T) {
			book := load("name = \"county\"\nversion = \"1.0.0\"\n" + c.text)
			var got []string
			for _, p := range book.Problems {
				got = append(got, strings.TrimPrefix(p.Error(), "county/codebook.hcl:"))
			}
			if diff := cmp.Diff(c.want, got); diff != "" {
				t.Errorf("problems (-want +got):\n%s", diff)
			}
		})
	}
	for _, name := range []string{"County", "2county", "my-book", "a b"} {
		book := load("name = \"" + name + "\"\nversion = \"1.0.0\"\n")
		if len(book.Problems) != 1 || book.Name != "" || book.Problems[0].At.Start.Column != 8 {
			t.Errorf("name %q: %v", name, book.Problems)
		}
	}
}

// literal reads one value as a workshop's params block would hold it.
func literal(t *testing.T, text string) hcltext.Literal {
	t.Helper()
	body, problems, _ := hcltext.Parse(source.NewFile("workshop.hcl", []byte("x = "+text+"\n")))
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return body.Attributes[0].Value
}

func TestSet(t *testing.T) {
	book := load(sample)
	for _, c := range []struct {
		name, text string
		want       codebook.Value
		problem    string
	}{
		{"voltage_drop_max", `"2 %"`, codebook.Value{SI: 0.02, Text: "2 %"}, ""},
		{"voltage_drop_max", `"10 %"`, codebook.Value{SI: 0.1, Text: "10 %"}, ""},
		{"voltage_drop_max", `"0 %"`, codebook.Value{SI: 0, Text: "0 %"}, ""},
		{"voltage_drop_max", `"10.01 %"`, codebook.Value{}, `voltage_drop_max: expected 0 % to 10.0 %, found "10.01 %"`},
		{"voltage_drop_max", `"-1 %"`, codebook.Value{}, `voltage_drop_max: expected 0 % to 10.0 %, found "-1 %"`},
		{"voltage_drop_max", `2`, codebook.Value{}, `voltage_drop_max: expected a percentage (%), found the bare number 2; write it with its unit and in quotes, such as "2 %"`},
		{"voltage_drop_max", `"2 V"`, codebook.Value{}, `voltage_drop_max: expected a percentage (%), found a voltage, "2 V"`},
		{"voltage_drop_max", `true`, codebook.Value{}, `voltage_drop_max: expected a percentage (%), found true`},
		{"voltage_drop", `"2 %"`, codebook.Value{}, `codebook "county" has no parameter "voltage_drop"`},
		{"method", `"formula"`, codebook.Value{Word: "formula", Text: "formula"}, ""},
		{"method", `"formul"`, codebook.Value{}, `method: expected one of "table", "formula", found "formul" (did you mean "formula"?)`},
		{"strict", `false`, codebook.Value{Text: "false"}, ""},
		{"strict", `"false"`, codebook.Value{}, `strict: expected true or false, without quotes, found the text "false"`},
		{"strings", `4`, codebook.Value{SI: 4, Text: "4"}, ""},
		{"strings", `13`, codebook.Value{}, `strings: expected 1 to 12, found "13"`},
		{"strings", `"4"`, codebook.Value{}, `strings: expected a bare number, found the text "4"`},
	} {
		l := literal(t, c.text)
		got, problem := book.Set(c.name, l, l.At)
		switch {
		case problem == nil && c.problem != "":
			t.Errorf("%s = %s: accepted as %+v", c.name, c.text, got)
		case problem != nil:
			if message := strings.TrimPrefix(problem.Error(), "workshop.hcl:1:5: "); message != c.problem {
				t.Errorf("%s = %s:\n got %s\nwant %s", c.name, c.text, message, c.problem)
			}
			if problem.Kind == "" || problem.Block != "codebook.county" || problem.At != l.At {
				t.Errorf("%s = %s: %+v", c.name, c.text, problem)
			}
		default:
			if diff := math.Abs(got.SI - c.want.SI); diff > 1e-15 {
				t.Errorf("%s = %s is %v in SI, want %v", c.name, c.text, got.SI, c.want.SI)
			}
			got.SI = c.want.SI
			if diff := cmp.Diff(c.want, got); diff != "" {
				t.Errorf("%s = %s (-want +got):\n%s", c.name, c.text, diff)
			}
		}
	}
	if _, problem := book.Set("strict", hcltext.Literal{}, source.Range{File: "w"}); problem == nil {
		t.Error("a literal that could not be read is accepted")
	}
}

func TestNotThere(t *testing.T) {
	c := codebook.Load(fstest.MapFS{}, "county/codebook.hcl", nil)
	if len(c.Problems) != 1 || c.Problems[0].Message != "reading the codebook: no such file" {
		t.Errorf("problems: %v", c.Problems)
	}
}
