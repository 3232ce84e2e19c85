package judge_test

import (
	"context"
	"fmt"
	"strings"
	"testing"

	"stringline/lint/judge"
	"stringline/lint/verdict"
)

// bookOf writes a codebook of rules; each is its name, the keys of its METADATA's
// custom beside those that all have here, and its body.
func bookOf(name string, rules ...[3]string) string {
	text := fmt.Sprintf("-- codebook.hcl --\nname    = %q\nversion = \"1.0.0\"\n", name)
	for _, r := range rules {
		custom := "#   each: banks\n#   source: common practice\n#   remedy: mend it\n"
		if !strings.Contains(r[1], "grade:") {
			custom += "#   grade: stop\n"
		}
		text += fmt.Sprintf("-- %[1]s/rule.rego --\n# METADATA\n# title: %[1]s\n# description: why\n# custom:\n%[2]s%[3]spackage codebooks.%[4]s.%[1]s\n\n%[5]s\n", r[0], custom, r[1], name, r[2])
		for _, example := range []string{"meets", "breaks"} {
			text += fmt.Sprintf("-- %s/%s.design.hcl --\n# nothing differs\n", r[0], example)
		}
		text += fmt.Sprintf("-- %[1]s/rule_test.rego --\npackage codebooks.%[2]s.%[1]s_test\n", r[0], name)
	}
	return text
}

const (
	lacking    = `check contains {"about": b.id, "is": fact.number(10, "A"), "at_most": b.battery.charge_current_max} if some b in input.banks`
	lacksMore  = `check contains {"about": b.id, "is": b.battery.discharge_current_max, "at_most": b.battery.charge_current_max} if some b in input.banks`
	measuring  = `check contains {"about": b.id, "is": fact.number(%s, "V"), "at_most": fact.number(5, "V")} if some b in input.banks`
	wanting    = `check contains {"about": b.id, "is": b.battery.parallel_max, "at_least": fact.number(1, "")} if some b in input.banks`
	elsewhere  = `check contains {"about": b.id, "does_not_apply": "not here"} if some b in input.banks`
	partly     = "check contains {\"about\": b.id, \"is\": fact.number(1, \"V\"), \"at_most\": fact.number(5, \"V\")} if some b in input.banks\n\ncheck contains {\"about\": b.id, \"which\": \"more\", \"is\": b.battery.parallel_max, \"at_least\": fact.number(1, \"\")} if some b in input.banks"
	yieldsIt   = "#   waivable: false\n#   yields: [charge_current_max]\n"
	answersIt  = "#   waivable: false\n#   answers:\n#     - rule: asking.limit\n"
	answersTwo = answersIt + "#       with: [beside]\n"
)

// What lacks a figure only yields to a rule that has judged the same; nothing that
// breaks is lost on the way.
func TestAnswers(t *testing.T) {
	meets, breaks := fmt.Sprintf(measuring, "5"), fmt.Sprintf(measuring, "5.01")
	allowed := map[string][]string{"law": {"asking.limit"}}
	for _, c := range []struct {
		name    string
		asking  [3]string
		law     [][3]string
		allowed map[string][]string
		want    verdict.Outcome
	}{
		{"meets", [3]string{"limit", yieldsIt, lacking}, [][3]string{{"table", answersIt, meets}}, allowed, verdict.DoesNotApply},
		{"breaks as a stop", [3]string{"limit", yieldsIt, lacking}, [][3]string{{"table", answersIt, breaks}}, allowed, verdict.DoesNotApply},
		{"breaks as a fix", [3]string{"limit", yieldsIt, lacking}, [][3]string{{"table", answersIt + "#   grade: fix\n", breaks}}, allowed, verdict.Unproven},
		{"meets as a fix", [3]string{"limit", yieldsIt, lacking}, [][3]string{{"table", answersIt + "#   grade: fix\n", meets}}, allowed, verdict.DoesNotApply},
		{"a fix that breaks answers a fix", [3]string{"limit", yieldsIt + "#   grade: fix\n", lacking}, [][3]string{{"table", answersIt + "#   grade: fix\n", breaks}}, allowed, verdict.DoesNotApply},
		{"breaks and can be waived", [3]string{"limit", yieldsIt, lacking}, [][3]string{{"table", strings.Replace(answersIt, "false", "true", 1), breaks}}, allowed, verdict.Unproven},
		{"breaks, and both can be waived", [3]string{"limit", strings.Replace(yieldsIt, "false", "true", 1), lacking}, [][3]string{{"table", strings.Replace(answersIt, "false", "true", 1), breaks}}, allowed, verdict.DoesNotApply},
		{"unproven too", [3]string{"limit", yieldsIt, lacking}, [][3]string{{"table", answersIt, wanting}}, allowed, verdict.Unproven},
		{"unproven in part", [3]string{"limit", yieldsIt, lacking}, [][3]string{{"table", answersIt, partly}}, allowed, verdict.Unproven},
		{"void", [3]string{"limit", yieldsIt, lacking}, [][3]string{{"table", answersIt, `check contains {"about": b.id, "is": fact.ratio(fact.number(1, "V"), fact.number(0, "V")), "at_most": 1} if some b in input.banks`}}, allowed, verdict.Unproven},
		{"not under that code", [3]string{"limit", yieldsIt, lacking}, [][3]string{{"table", answersIt, elsewhere}}, allowed, verdict.Unproven},
		{"lacks another thing too", [3]string{"limit", yieldsIt, lacksMore}, [][3]string{{"table", answersIt, meets}}, allowed, verdict.Unproven},
		{"yields for want of another thing", [3]string{"limit", strings.Replace(yieldsIt, "charge_current_max", "parallel_max", 1), lacking}, [][3]string{{"table", answersIt, meets}}, allowed, verdict.Unproven},
		{"both looked at", [3]string{"limit", yieldsIt, lacking}, [][3]string{{"table", answersTwo, meets}, {"beside", "", meets}}, allowed, verdict.DoesNotApply},
		{"the one beside does not apply", [3]string{"limit", yieldsIt, lacking}, [][3]string{{"table", answersTwo, meets}, {"beside", "", elsewhere}}, allowed, verdict.DoesNotApply},
		{"the one beside alone has judged", [3]string{"limit", yieldsIt, lacking}, [][3]string{{"table", answersTwo, elsewhere}, {"beside", "", meets}}, allowed, verdict.Unproven},
		{"the one beside is unproven", [3]string{"limit", yieldsIt, lacking}, [][3]string{{"table", answersTwo, meets}, {"beside", "", wanting}}, allowed, verdict.Unproven},
		{"the one beside breaks as a fix", [3]string{"limit", yieldsIt, lacking}, [][3]string{{"table", answersTwo, meets}, {"beside", "#   grade: fix\n", breaks}}, allowed, verdict.Unproven},
		{"the one beside breaks as a stop", [3]string{"limit", yieldsIt, lacking}, [][3]string{{"table", answersTwo, meets}, {"beside", "#   waivable: false\n", breaks}}, allowed, verdict.DoesNotApply},
		{"nobody allowed it", [3]string{"limit", yieldsIt, lacking}, [][3]string{{"table", answersIt, meets}}, nil, verdict.Unproven},
		{"another one is allowed", [3]string{"limit", yieldsIt, lacking}, [][3]string{{"table", answersIt, meets}}, map[string][]string{"law": {"asking.other"}, "other": {"asking.limit"}}, verdict.Unproven},
		{"nothing is lacking", [3]string{"limit", yieldsIt, fmt.Sprintf(measuring, "6")}, [][3]string{{"table", answersIt, meets}}, allowed, verdict.Breaks},
	} {
		t.Run(c.name, func(t *testing.T) {
			j := judge.New(judge.Options{Books: []*judge.Book{loaded(t, bookOf("asking", c.asking)), loaded(t, bookOf("law", c.law...))}, Answers: c.allowed})
			if p := j.Problems(); len(p) > 0 {
				t.Fatal(p)
			}
			vs, err := j.Judge(context.Background(), system(t, hut))
			if err != nil {
				t.Fatal(err)
			}
			for i := range vs {
				v := &vs[i]
				if v.Rule != "asking.limit" {
					continue
				}
				if v.Outcome != c.want {
					t.Errorf("%s: %s", v.Outcome, v.Message)
				}
				const because = "law.table judges it, without battery.fell.charge_current_max"
				if said := v.Because == because && v.Is == nil && len(v.Limits) == 0 && v.Headroom == nil; said != (c.want == verdict.DoesNotApply) {
					t.Errorf("because %q, %v of %v", v.Because, v.Is, v.Limits)
				}
			}
			if len(vs) != 1+len(c.law) && c.name != "unproven in part" {
				t.Errorf("%d verdicts", len(vs))
			}
		})
	}
}

// A figure that a method has no answer for is not one that somebody may answer.
func TestAnswersNoMethod(t *testing.T) {
	idle := hut[:strings.Index(hut, "charger \"main\"")] // nothing charges its bank, so nothing sets its highest voltage
	noMethod := `check contains {"about": b.id, "is": fact.times([fact.number(10, "A"), fact.ratio(b.voltage_max, fact.number(1, "V"))]), "at_most": b.battery.charge_current_max} if some b in input.banks`
	books := []*judge.Book{loaded(t, bookOf("asking", [3]string{"limit", yieldsIt, noMethod})), loaded(t, bookOf("law", [3]string{"table", answersIt, fmt.Sprintf(measuring, "5")}))}
	vs, err := judge.New(judge.Options{Books: books, Answers: map[string][]string{"law": {"asking.limit"}}}).Judge(context.Background(), system(t, idle))
	if err != nil {
		t.Fatal(err)
	}
	for i := range vs {
		if v := &vs[i]; v.Rule == "asking.limit" && (v.Outcome != verdict.Unproven || v.Because == "" || strings.Join(v.Missing, " ") != "battery.fell.charge_current_max") {
			t.Errorf("%s because %q, missing %v", v.Outcome, v.Because, v.Missing)
		}
	}
}

// What METADATA cannot mean is refused when the codebook is loaded, and what the
// codebook that is asked does not have when both are in force.
func TestAnswersRefused(t *testing.T) {
	meets := fmt.Sprintf(measuring, "5")
	answer := func(lines string) string { return "#   answers:\n" + lines }
	for _, c := range []struct{ custom, want string }{
		{answer("#     - rule: limit\n"), "rule is the id of a rule"},
		{answer("#     - with: [beside]\n"), "rule is the id of a rule"},
		{answer("#     - rule: law.beside\n"), "law.beside is a rule of the same codebook"},
		{answer("#     - rule: asking.limit\n#     - rule: asking.limit\n"), "lists asking.limit twice"},
		{answer("#     - rule: asking.limit\n#       whith: [beside]\n"), `no key "whith" (did you mean "with"?)`},
		{answer("#     - rule: asking.limit\n#       with: [besides]\n"), `this codebook has no rule law.besides (did you mean "law.beside"?)`},
		{answer("#     - rule: asking.limit\n#       with: [table]\n"), "with names the rule itself"},
		{answer("#     - rule: asking.limit\n#       with: [site]\n"), "law.site judges site, and this rule banks"},
		{answer("#     - rule: asking.limit\n#       with: beside\n"), "with is a list of at most"},
		{answer("#     - rule: asking.limit\n#       with: [\"be side\"]\n"), `"be side" is not a name`},
		{answer("#     - asking.limit\n"), "each with rule"},
		{"#   answers: asking.limit\n", "answers is a list"},
		{"#   yields: [charge_curent_max]\n", `no attribute or fact is named "charge_curent_max" (did you mean "charge_current_max"?)`},
		{"#   yields: []\n", "yields names no figure"},
		{"#   yields: ampacity\n", "yields is a list of at most"},
	} {
		site := [3]string{"site", "", `check contains {"about": "site", "is_true": true, "because": "x"}`}
		text := bookOf("law", [3]string{"table", c.custom, meets}, [3]string{"beside", "", meets}, site)
		text = strings.Replace(text, "# title: site\n# description: why\n# custom:\n#   each: banks", "# title: site\n# description: why\n# custom:\n#   each: site", 1)
		_, problems := judge.Load(context.Background(), judge.Source{Files: folder(text), Show: "book"})
		if len(problems) != 1 || !strings.Contains(problems[0].Error(), c.want) || !strings.HasPrefix(problems[0].Error(), "book/table/rule.rego:") {
			t.Errorf("%s: %v; want %s", c.custom, problems, c.want)
		}
	}

	law := loaded(t, bookOf("law", [3]string{"table", answersIt, meets}))
	other := strings.Replace(bookOf("asking", [3]string{"limit", yieldsIt, `check contains {"about": "site", "is_true": true, "because": "x"}`}), "each: banks", "each: site", 1)
	for want, text := range map[string]string{
		"asking.limit yields to no other rule":          bookOf("asking", [3]string{"limit", "", lacking}),
		"codebook asking has no rule asking.limit":      bookOf("asking", [3]string{"limits", yieldsIt, lacking}),
		"asking.limit judges site, and this rule banks": other,
	} {
		j := judge.New(judge.Options{Books: []*judge.Book{law, loaded(t, text)}, Answers: map[string][]string{"law": {"asking.limit"}}})
		if p := j.Problems(); len(p) != 1 || !strings.Contains(p[0].Message, want) {
			t.Errorf("%v; want %s", p, want)
		}
	}
	if p := judge.New(judge.Options{Books: []*judge.Book{law}}).Problems(); len(p) > 0 {
		t.Errorf("a codebook that is not in force is no problem: %v", p)
	}
}
