package report

import (
	"bytes"
	"encoding/json"
	"fmt"
	"net/url"
	"os"
	"regexp"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/santhosh-tekuri/jsonschema/v6"
	"pgregory.net/rapid"

	"stringline/lint"
)

// standardSARIF is the standard's own schema; see testdata/sarif/README.md.
func standardSARIF(t testing.TB) *jsonschema.Schema {
	t.Helper()
	text, err := os.ReadFile("testdata/sarif/sarif-2.1.0-rtm.5.json")
	if err != nil {
		t.Fatal(err)
	}
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	compiler := jsonschema.NewCompiler()
	compiler.AssertFormat()
	if err := compiler.AddResource("sarif.json", doc); err != nil {
		t.Fatal(err)
	}
	schema, err := compiler.Compile("sarif.json")
	if err != nil {
		t.Fatal(err)
	}
	return schema
}

func TestSARIFFitsTheStandard(t *testing.T) {
	schema := standardSARIF(t)
	valid := func(text string) error {
		doc, err := jsonschema.UnmarshalJSON(strings.NewReader(text))
		if err != nil {
			t.Fatal(err)
		}
		return schema.Validate(doc)
	}
	for name, r := range samples() {
		if err := valid(output(t, "sarif", r)); err != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
	// The schema can tell a wrong document.
	hut := output(t, "sarif", accepted())
	for _, change := range [][2]string{
		{`"kind": "fail"`, `"kind": "broken"`}, {`"level": "error"`, `"level": "stop"`}, {`"version": "2.1.0"`, `"version": "2"`},
		{`"columnKind": "unicodeCodePoints"`, `"columnKind": "bytes"`}, {`"uri": "hut.design.hcl"`, `"uri": "hut design %"`},
		{`"startLine": 41`, `"startLine": 0`}, {`"kind": "inSource"`, `"kind": "waiver"`}, {`"baselineState": "unchanged"`, `"baselineState": "held"`},
	} {
		changed := strings.Replace(hut, change[0], change[1], 1)
		if changed == hut {
			t.Errorf("the sample does not hold %s", change[0])
		} else if valid(changed) == nil {
			t.Errorf("the schema accepts %s", change[1])
		}
	}
}

func sarifOf(t testing.TB, r *lint.Result) sarifRun {
	t.Helper()
	var log sarifLog
	if err := json.Unmarshal([]byte(output(t, "sarif", r)), &log); err != nil {
		t.Fatal(err)
	}
	return log.Runs[0]
}

// TestSARIFForHosts holds what code hosts ask beyond the schema (conventions that
// their public documentation names).
func TestSARIFForHosts(t *testing.T) {
	for name, r := range samples() {
		t.Run(name, func(t *testing.T) {
			run := sarifOf(t, r)
			components := append([]sarifComponent{run.Tool.Driver}, run.Tool.Extensions...)
			for _, c := range components {
				for _, rule := range c.Rules {
					for field, text := range map[string]string{"id": rule.ID, "shortDescription": rule.ShortDescription.Text, "fullDescription": rule.FullDescription.Text, "help.text": rule.Help.Text, "help.markdown": rule.Help.Markdown} {
						if strings.TrimSpace(text) == "" {
							t.Errorf("%s of rule %q is empty", field, rule.ID)
						}
					}
					if n := len([]rune(rule.FullDescription.Text)); n > 1024 {
						t.Errorf("rule %s: a description of %d characters", rule.ID, n)
					}
				}
			}
			told := map[string]bool{}
			for _, result := range run.Results {
				told[result.RuleID] = true
			}
			for i, c := range components {
				for _, rule := range c.Rules {
					if !told[rule.ID] {
						t.Errorf("rule %s is described and has no result", rule.ID)
					}
				}
				if i > 0 && (c.Properties.InForce != len(r.Books[i-1].Rules) || c.Properties.Digest == "") {
					t.Errorf("of %s: %+v, and it has %d rules", c.Name, c.Properties, len(r.Books[i-1].Rules))
				}
			}
			prints := map[string]bool{}
			for _, result := range run.Results {
				component := run.Tool.Driver
				if c := result.Rule.Component; c != nil {
					component = run.Tool.Extensions[c.Index]
					if component.Name != c.Name {
						t.Errorf("%s points to %s, which is %s", result.RuleID, c.Name, component.Name)
					}
				}
				if got := component.Rules[result.Rule.Index].ID; got != result.RuleID || result.Rule.ID != got {
					t.Errorf("result of %s points to rule %s", result.RuleID, got)
				}
				if len(result.Locations) != 1 {
					t.Fatalf("%d places", len(result.Locations))
				}
				for _, l := range append(result.Locations, result.Related...) {
					region, address := l.Physical.Region, l.Physical.Artifact.URI
					if region == nil || region.StartLine < 1 || region.EndLine != region.StartLine || region.StartColumn < 1 || region.EndColumn <= region.StartColumn {
						t.Errorf("%s stands at %+v", result.RuleID, region)
					}
					if u, err := url.Parse(address); err != nil || u.Scheme != "" || strings.Contains(address, `\`) {
						t.Errorf("address %q: %v", address, err)
					}
				}
				print := result.Fingerprints["primaryLocationLineHash"]
				if !regexp.MustCompile(`^[0-9a-f]{16}:\d+$`).MatchString(print) || prints[print] {
					t.Errorf("fingerprint %q of %s is not of its form, or there twice", print, result.Properties.Key)
				}
				prints[print] = true
				if result.Kind != "fail" && result.Level != "none" {
					t.Errorf("kind %s with level %s (SARIF 3.27.10)", result.Kind, result.Level)
				}
			}
			if run.Invocations[0].Successful != (r.Exit != 2) || run.Invocations[0].ExitCode != r.Exit {
				t.Errorf("%+v", run.Invocations[0])
			}
		})
	}
}

// TestSARIFTellsEverything: each finding, error, waiver and acceptance is there at
// its loudness; what no host could place is a notification.
func TestSARIFTellsEverything(t *testing.T) {
	say := func(r *lint.Result) (said []string) {
		run := sarifOf(t, r)
		for _, x := range run.Results {
			line := strings.TrimSpace(fmt.Sprintf("%s %s %s %s", x.Level, x.RuleID, x.Properties.About, x.Properties.Verdict))
			for _, s := range x.Suppressions {
				line += " " + s.Kind
			}
			said = append(said, strings.TrimSpace(line+" "+x.BaselineState))
		}
		for _, n := range run.Invocations[0].Notifications {
			said = append(said, n.Level+": "+n.Message.Text)
		}
		return said
	}
	if diff := cmp.Diff([]string{
		"error limits.bank_charge bank.house unproven new",
		"error limits.cold_voltage pv_input.main.1 breaks new",
		"warning practice.voltage_drop cable_run.array.north breaks updated",
		"note practice.voltage_drop cable_run.array.south breaks external unchanged",
		"note practice.take_off bank.house waived inSource new",
		"note: Against accepted.csv: 1 finding as accepted, 1 worse, 2 new. 1 gone; --accept takes them out.",
		"note: Gone: practice.labels on bank.house in hut.design.hcl, accepted 2026-01-04.",
	}, say(accepted())); diff != "" {
		t.Errorf("the hut (-want +got)\n%s", diff)
	}
	odd := strings.Join(say(samples()["odd"]), "\n")
	for _, want := range []string{
		"error house.gas bank.house void", "error reading/unknown_name  unread", "error reading/not_judged  unread", "error reading/path  unread", "error reading/baseline",
		"error: Interrupted: 4 of 9 designs were judged; of the rest nothing is known.", "error: dir with space/50%.design.hcl: 2 errors in what was read",
	} {
		if !strings.Contains(odd, want) {
			t.Errorf("nothing says %q in\n%s", want, odd)
		}
	}
}

// TestSARIFFingerprints: they stay when lines move, and differ where verdicts do.
func TestSARIFFingerprints(t *testing.T) {
	of := func(r *lint.Result) (all []string) {
		for _, x := range sarifOf(t, r).Results {
			all = append(all, x.Properties.Key+" "+x.Fingerprints["primaryLocationLineHash"])
		}
		return all
	}
	moved := accepted()
	for i := range moved.Designs[0].Verdicts {
		v := &moved.Designs[0].Verdicts[i]
		v.Message = "Put in other words."
		for j := range v.At {
			v.At[j].Start.Line += 100
			v.At[j].End.Line += 100
		}
	}
	if diff := cmp.Diff(of(accepted()), of(moved)); diff != "" {
		t.Errorf("(-before +after)\n%s", diff)
	}
	elsewhere := accepted()
	elsewhere.Designs[0].File = "other.design.hcl"
	for i, print := range of(elsewhere) {
		if print == of(accepted())[i] {
			t.Errorf("%s is the same in another design", print)
		}
	}
}

// TestURI: a path comes back from its address whole, and is never a scheme, a host
// or a query (RFC 3986, by the standard library's reader).
func TestURI(t *testing.T) {
	for name, want := range map[string]string{
		"hut.design.hcl": "hut.design.hcl", "a b/50%.hcl": "a%20b/50%25.hcl", "c:d.hcl": "./c:d.hcl", "a/b:c.hcl": "a/b:c.hcl", "../x": "../x",
		"a?b#c": "a%3Fb%23c", "ä°": "%C3%A4%C2%B0", "/srv/x y": "file:///srv/x%20y", "/C:/x": "file:///C:/x",
	} {
		if got := uriOf(name); got != want {
			t.Errorf("%q: %q, want %q", name, got, want)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		name := rapid.StringMatching(`[a-z:%?# é&\[\]]{1,6}(/[a-z:%?# é]{1,5}){0,2}`).Draw(t, "name")
		u, err := url.Parse(uriOf(name))
		if err != nil || u.Scheme+u.Host+u.RawQuery+u.Fragment != "" || strings.TrimPrefix(u.Path, "./") != name {
			t.Fatalf("%q: %q, %v", name, uriOf(name), err)
		}
	})
}
