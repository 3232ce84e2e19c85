package lint_test

import (
	"context"
	"regexp"
	"strings"
	"testing"

	"stringline/lint"
	"stringline/lint/judge"
	"stringline/lint/linttest"
	"stringline/lint/verdict"
	"stringline/rules"
)

// TestEmbeddedAnswers holds that every answer among the embedded codebooks is to a
// rule that is there and yields, and that the two of limits are answered.
func TestEmbeddedAnswers(t *testing.T) {
	books := embeddedBooks(t)
	if p := judge.New(judge.Options{Books: books}).Problems(); len(p) > 0 {
		t.Error(p)
	}
	answered := map[string]int{}
	for _, b := range books {
		for _, r := range b.Rules() {
			for _, a := range r.Answers {
				answered[a.Rule]++
			}
		}
	}
	if answered["limits.conductor_carries"] < 2 || answered["limits.fuse_protects_conductor"] < 2 {
		t.Errorf("answered: %v", answered)
	}
}

// TestAmpacityByCode takes every maker's ampacity out of the ranch, which us_2023
// judges by NEC Table 310.16: nothing is found, and each conductor is judged still.
// What that code does not come to judge stays unproven.
func TestAmpacityByCode(t *testing.T) {
	texts := map[string]string{}
	given := regexp.MustCompile(`(?m)^ *ampacity +=.*\n`)
	taken := 0
	for name, text := range exampleTexts(t) {
		if strings.HasPrefix(name, "examples/ranch/") && !strings.HasSuffix(name, brokenSuffix) {
			taken += len(given.FindAllString(text, -1))
			texts[name] = given.ReplaceAllString(text, "")
		}
	}
	if taken < 8 {
		t.Fatalf("only %d ampacities were given", taken)
	}
	const file, workshopFile = "examples/ranch/ranch.design.hcl", "examples/ranch/workshop.hcl"
	design, workshop := texts[file], texts[workshopFile]
	options := func(texts map[string]string) lint.Options {
		return lint.Options{
			Disk: linttest.NewDisk(texts), Embedded: rules.Books, WorkingDir: "/", Paths: []string{"examples/ranch"}, Trust: []string{"county"},
			Date: examplesDate, RejectFrom: verdict.Fix, Version: "0.1.0",
		}
	}
	judged := func(design, workshop string) (findings, yielded []string) {
		t.Helper()
		texts[file], texts[workshopFile] = design, workshop
		result, err := lint.Run(context.Background(), options(texts))
		if err != nil {
			t.Fatal(err)
		}
		if len(result.Problems) > 0 || len(result.Designs) != 1 || len(result.Designs[0].Problems) > 0 {
			t.Fatalf("%d designs: %v %v", len(result.Designs), result.Problems, result.Designs)
		}
		for i := range result.Designs[0].Verdicts {
			v := &result.Designs[0].Verdicts[i]
			if v.Finding() {
				findings = append(findings, v.Key()+" "+string(v.Outcome))
			}
			if v.Outcome == verdict.DoesNotApply && strings.Contains(v.Because, " judges it, without ") {
				yielded = append(yielded, v.Key())
			}
		}
		return findings, yielded
	}
	replaced := func(text, from, to string) string {
		t.Helper()
		if strings.Count(text, from) != 1 {
			t.Fatalf("%q stands %d times", from, strings.Count(text, from))
		}
		return strings.Replace(text, from, to, 1)
	}

	all := func(list []string) string { return strings.Join(list, ", ") }

	findings, yielded := judged(design, workshop)
	if len(findings) > 0 {
		t.Errorf("by the tables alone, found %v", findings)
	}
	if runs, devices := strings.Count(all(yielded), "limits.conductor_carries|"), strings.Count(all(yielded), "limits.fuse_protects_conductor|"); runs != 8 || devices != 7 { // eight runs stand in the design, one without a device
		t.Errorf("%d conductors and %d devices yielded: %v", runs, devices, yielded)
	}

	// Without the code both rules of limits ask for the ampacity, as before.
	bare := regexp.MustCompile(`(?s) *codebooks += \[[^\]]*\]\n`).ReplaceAllString(design, "")
	bare = regexp.MustCompile(`(?s)  declared "us_2023" \{.*?\n *\}\n`).ReplaceAllString(bare, "")
	findings, alone := judged(bare, workshop)
	if len(alone) > 0 {
		t.Errorf("without a code, yielded %v", alone)
	}
	for _, key := range yielded {
		if !strings.Contains(all(findings), key+" unproven") {
			t.Errorf("without a code, %s is not unproven: %v", key, findings)
		}
	}

	// A conductor too thin for its fuse and current is found by the code, once.
	thin := replaced(design, "size                 = \"2 AWG\"", "size                 = \"8 AWG\"")
	findings, _ = judged(thin, workshop)
	if !strings.Contains(all(findings), "us_2023.conductor_corrected|cable_run.bank.house| breaks") || strings.Contains(all(findings), "limits.conductor_carries") {
		t.Errorf("8 AWG at the bank: found %v", findings)
	}

	// Where the workshop takes the code's rule less seriously, the stop stays.
	findings, _ = judged(thin, workshop+"\ngrade \"us_2023.conductor_corrected\" {\n  as = \"fix\"\n}\n")
	if !strings.Contains(all(findings), "limits.conductor_carries|cable_run.bank.house| unproven") {
		t.Errorf("8 AWG at the bank, by a rule of lower grade: found %v", findings)
	}

	// A codebook of the workshop's own answers where the workshop lets it.
	texts["examples/ranch/county/codebook.hcl"] = "name = \"county\"\nversion = \"1.0.0\"\n"
	texts["examples/ranch/county/bears/rule.rego"] = "# METADATA\n# title: t\n# description: d\n# custom:\n#   grade: stop\n#   each: cable_runs\n#   waivable: false\n#   source: common practice\n#   remedy: r\n" +
		"#   answers:\n#     - rule: limits.conductor_carries\npackage codebooks.county.bears\n\n" +
		"check contains {\"about\": r.id, \"is\": r.current, \"at_most\": fact.number(400, \"A\")} if some r in input.cable_runs\n"
	named := func(answers string) string {
		return workshop + "\ncodebook \"county\" {\n  path = \"county\"\n" + answers + "}\n"
	}
	if _, yielded = judged(bare, named("")); len(yielded) > 0 {
		t.Errorf("without the workshop's leave, yielded %v", yielded)
	}
	if _, yielded = judged(bare, named("  answers = [\"limits.conductor_carries\"]\n")); strings.Count(all(yielded), "limits.conductor_carries|") != 8 {
		t.Errorf("with the workshop's leave, yielded %v", yielded)
	}
	texts[workshopFile] = named("  answers = [\"limits.cold_voltage\", \"limits.conductor_carry\"]\n")
	result, err := lint.Run(context.Background(), options(texts))
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{"answers: limits.cold_voltage yields to no other rule", `no rule in force has the id "limits.conductor_carry"`} {
		if !strings.Contains(result.Problems.Error(), want) {
			t.Errorf("%v; want %s", result.Problems, want)
		}
	}
}
