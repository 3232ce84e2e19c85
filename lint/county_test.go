package lint_test

import (
	"context"
	"os"
	"strings"
	"testing"

	"stringline/lint"
	"stringline/lint/judge"
	"stringline/lint/linttest"
	"stringline/lint/verdict"
	"stringline/rules"
)

// countyFolder holds the worked jurisdiction: an invented county that amends us_2023.
const countyFolder = "examples/ranch/codebooks/fell_county"

// TestCounty runs the county's own tests: Rego tests, examples and deletion.
func TestCounty(t *testing.T) {
	report, problems, err := judge.Test(context.Background(), judge.Source{Name: "fell_county", Files: os.DirFS("../" + countyFolder), Show: countyFolder}, judge.TestOptions{Mutation: !testing.Short()})
	if err != nil || len(problems) > 0 {
		t.Fatal(problems, err)
	}
	if len(report.Results) < 15 {
		t.Errorf("only %d results", len(report.Results))
	}
	if err := report.Error(); err != "" {
		t.Error(err)
	}
}

// TestCountyAmends puts the county in force beside us_2023 in the ranch's workshop:
// the design that the code finds nothing against is warmer than the county's coldest
// morning and says nothing of a disconnect outside; with both put right, and the
// county's figure lowered by the workshop, nothing is found.
func TestCountyAmends(t *testing.T) {
	texts := map[string]string{}
	for name, text := range exampleTexts(t) {
		if strings.HasPrefix(name, "examples/ranch/") && !strings.HasSuffix(name, brokenSuffix) {
			texts[name] = text
		}
	}
	for name, text := range treeTexts(t, countyFolder) {
		texts[name] = text
	}
	const file = "examples/ranch/ranch.design.hcl"
	found := func(params string) []string {
		t.Helper()
		texts["examples/ranch/workshop.hcl"] = "parts = [\"parts/*.parts.hcl\"]\n\ncodebook \"fell_county\" {\n  path = \"codebooks/fell_county\"\n" + params + "}\n"
		result, err := lint.Run(context.Background(), lint.Options{
			Disk: linttest.NewDisk(texts), Embedded: rules.Books, WorkingDir: "/", Paths: []string{"examples/ranch"}, Trust: []string{"fell_county"},
			Date: examplesDate, RejectFrom: verdict.Fix, Version: "0.1.0",
		})
		if err != nil {
			t.Fatal(err)
		}
		if len(result.Problems) > 0 || len(result.Designs) != 1 || len(result.Designs[0].Problems) > 0 {
			t.Fatalf("%d designs: %v %v", len(result.Designs), result.Problems, result.Designs)
		}
		var findings []string
		for i := range result.Designs[0].Verdicts {
			if v := &result.Designs[0].Verdicts[i]; v.Finding() {
				findings = append(findings, v.Key()+" "+string(v.Outcome))
			}
		}
		return findings
	}
	want := "fell_county.design_cold|site| breaks, fell_county.outside_disconnect|array.south| unproven"
	if got := strings.Join(found(""), ", "); got != want {
		t.Errorf("found %s, want %s", got, want)
	}
	texts[file] = strings.Replace(texts[file], "  declared \"us_2023\" {\n    on_building", "  declared \"fell_county\" {\n    outside_disconnect = true\n  }\n  declared \"us_2023\" {\n    on_building", 1)
	if got := found("  params {\n    design_cold = \"-20 degC\"\n  }\n"); len(got) > 0 {
		t.Errorf("put right, found %v", got)
	}
	if got := strings.Join(found("  params {\n    design_cold = \"-20 degC\"\n    voltage_drop_max = \"0.5 %\"\n  }\n"), ", "); !strings.Contains(got, "fell_county.voltage_drop|cable_run.array.south| breaks") {
		t.Errorf("with a drop of 0.5 %%, found %s", got)
	}
}
