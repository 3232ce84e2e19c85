package judge_test

import (
	"context"
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint/judge"
)

// rule writes a rule's file: the metadata take twelve lines, the package stands
// on line 11, and the body begins on line 13.
func rule(name, each, body string) string {
	return "-- " + name + `/rule.rego --
# METADATA
# title: A title
# description: What happens where it is not kept.
# custom:
#   grade: stop
#   each: ` + each + `
#   waivable: true
#   source: maker's data sheet
#   cites: [sheet]
#   remedy: change it
package codebooks.small.` + name + `

` + body + "\n"
}

const tableData = `-- data/ambient.json --
{"title": "ambient correction", "source": "sheet", "status": "read", "unit": "",
 "axes": [{"name": "ambient", "unit": "degC", "match": "up_to"}],
 "rows": [[30, 1.0], [40, 0.91], [60, 0.71]]}
`

const sharedLib = `-- shared/lib.rego --
package codebooks.small.shared

lead(b) := fact.one_of(b.chemistry, ["agm"])

mains(b) := b.protections
`

func TestLoadProblems(t *testing.T) {
	for _, test := range []struct {
		name, files string
		want        []string // file:line:column: message (did you mean …)
	}{
		{"a misspelt fact", rule("r", "pv_inputs", `check contains {"about": i.id, "is": i.voc_cald, "at_most": i.controller.pv_voltage_max} if some i in input.pv_inputs`),
			[]string{`book/r/rule.rego:13:40: there is no fact or link "voc_cald" (did you mean "voc_cold"?)`}},
		{"a misspelt collection", rule("r", "pv_inputs", `check contains {"about": i.id, "is_true": true, "because": "x"} if some i in input.pv_input`),
			[]string{`book/r/rule.rego:13:84: input has no "pv_input" (did you mean "pv_inputs"?)`}},
		{"a fact of another kind of subject", rule("r", "pv_inputs", `check contains {"about": i.id, "is": i.capacity, "at_most": i.controller.pv_voltage_max} if some i in input.pv_inputs`),
			[]string{`book/r/rule.rego:13:40: i has no "capacity"`}},
		{"a misspelt fact behind a function's parameter", rule("r", "pv_inputs", "check contains {\"about\": i.id, \"is\": f(i), \"at_most\": i.controller.pv_voltage_max} if some i in input.pv_inputs\n\nf(x) := x.voc_kold"),
			[]string{`book/r/rule.rego:15:11: there is no fact or link "voc_kold" (did you mean "voc_cold"?)`}},
		{"a misspelt fact under every", rule("r", "system", `check contains {"about": "system", "is_true": true, "because": "x"} if {
	every s in input.strings { count(s.protektions) == 0 }
}`),
			[]string{`book/r/rule.rego:14:37: there is no fact or link "protektions" (did you mean "protections"?)`}},
		{"a misspelt parameter", rule("r", "system", `check contains {"about": "system", "is": input.params.drop, "at_most": input.params.drap}`),
			[]string{`book/r/rule.rego:13:48: there is no fact or link "params"`, `book/r/rule.rego:13:78: there is no fact or link "params"`, `book/r/rule.rego:13:85: there is no fact or link "drap" (did you mean "drop"?)`}},
		{"a misspelt function", rule("r", "pv_inputs", `check contains {"about": i.id, "is": fact.tmes([2, i.voc_cold]), "at_most": i.controller.pv_voltage_max} if some i in input.pv_inputs`),
			[]string{`book/r/rule.rego:13:38: there is no function fact.tmes for rules (did you mean "fact.times"?)`}},
		{"an id where a formula is due", rule("r", "pv_inputs", `check contains {"about": i.id, "is": fact.times([2, i.id]), "at_most": i.controller.pv_voltage_max} if some i in input.pv_inputs`),
			[]string{`book/r/rule.rego:13:38: fact.times cannot be called with that: it takes a list of facts, formulas or plain numbers`}},
		{"a whole subject where a formula is due", rule("r", "pv_inputs", `check contains {"about": i.id, "is": fact.plus([i.voc_cold, i.controller]), "at_most": i.controller.pv_voltage_max} if some i in input.pv_inputs`),
			[]string{`book/r/rule.rego:13:38: fact.plus cannot be called with that: it takes a list of facts, formulas or plain numbers`}},
		{"a list where one formula is due", rule("r", "strings", `check contains {"about": s.id, "is_true": fact.no(s.protections), "because": "x"} if some s in input.strings`),
			[]string{`book/r/rule.rego:13:43: fact.no cannot be called with that: it takes a yes/no fact or formula`}},
		{"a fact compared as if it were a number", rule("r", "pv_inputs", "check contains {\"about\": i.id, \"is_true\": true, \"because\": \"x\"} if {\n\tsome i in input.pv_inputs\n\ti.voc_cold > 150\n}"),
			[]string{`book/r/rule.rego:15:2: gt cannot be called with that: only plain numbers and texts can be compared here; facts are compared in the record, by fact.more_than, fact.at_least and fact.one_of`}},
		{"a fact compared as if it were a word", rule("r", "chargers", "check contains {\"about\": c.id, \"is_true\": true, \"because\": \"x\"} if {\n\tsome c in input.chargers\n\tpwm(c.controller)\n}\n\npwm(x) if x.kind == \"pwm\""),
			[]string{`book/r/rule.rego:18:11: x.kind is a fact: compare it with fact.one_of, fact.more_than or in the record`}},
		{"a fact as a condition", rule("r", "chargers", "check contains {\"about\": c.id, \"is_true\": true, \"because\": \"x\"} if {\n\tsome c in input.chargers\n\tc.controller.isolated\n}"),
			[]string{`book/r/rule.rego:15:2: c.controller.isolated is a fact, not a condition: put it into ` + "`when`" + ` or into a fact.* function`}},
		{"a formula as a condition", rule("r", "chargers", "check contains {\"about\": c.id, \"is_true\": true, \"because\": \"x\"} if {\n\tsome c in input.chargers\n\tnot safe(c)\n}\n\nsafe(c) := fact.one_of(c.controller.kind, [\"mppt\"])"),
			[]string{`book/r/rule.rego:15:2: safe gives a formula, not a condition: put it into ` + "`when`, `is` or `is_true`"}},
		{"a variable as a condition", rule("r", "chargers", "check contains {\"about\": c.id, \"is_true\": true, \"because\": \"x\"} if {\n\tsome c in input.chargers\n\tx := c.controller.isolated\n\tnot x\n}"),
			[]string{`book/r/rule.rego:16:6: x alone is no condition: what it stands for may be a fact, which always holds; compare it`}},
		{"a fact looked for in a list", rule("r", "chargers", "check contains {\"about\": c.id, \"is_true\": lead(c.bank.battery), \"because\": \"x\"} if some c in input.chargers\n\nlead(b) := b.chemistry in [\"agm\", \"gel\"]"),
			[]string{`book/r/rule.rego:15:12: b.chemistry is a fact: compare it with fact.one_of, fact.more_than or in the record`}},
		{"the largest by the engine's own order", rule("r", "panels", `check contains {"about": p.id, "is": max([p.voc, p.vmp]), "at_most": p.voc} if some p in input.panels`),
			[]string{`book/r/rule.rego:13:38: max cannot be called with that: its operands have other types`}},
		{"two facts compared", rule("r", "panels", "check contains {\"about\": p.id, \"is_true\": true, \"because\": \"x\"} if {\n\tsome p in input.panels\n\tp.voc != p.vmp\n}"),
			[]string{`book/r/rule.rego:15:2: neq cannot be called with that: only plain numbers and texts can be compared here; facts are compared in the record, by fact.more_than, fact.at_least and fact.one_of`,
				`book/r/rule.rego:15:2: p.voc is a fact: compare it with fact.one_of, fact.more_than or in the record`,
				`book/r/rule.rego:15:11: p.vmp is a fact: compare it with fact.one_of, fact.more_than or in the record`}},
		{"comprehensions without end", rule("r", "system", `check contains {"about": "system", "is_true": true, "because": "x"} if count(`+strings.Repeat("[x | x := ", 20)+"1"+strings.Repeat("]", 20)+`) > 0`),
			[]string{`book/r/rule.rego:13:139: comprehensions stand more than 6 deep within one another`}},
		{"a body without end", rule("r", "system", `check contains {"about": "system", "is_true": true, "because": "x"} if {`+strings.Repeat("\n\tcount(input.strings) > 0", 101)+"\n}"),
			[]string{`book/r/rule.rego:14:2: a body has more than 100 expressions`}},
		{"too many operators", rule("r", "system", `check contains {"about": "system", "is_true": 0`+strings.Repeat(" + 1", 500)+` > 1, "because": "x"}`),
			[]string{"book/r/rule.rego:13:1: a definition has more than 500 calls and operators"}},
		{"too many branches", rule("r", "system", "check contains {\"about\": \"system\", \"is_true\": f(1), \"because\": \"x\"}\n\nf(x) := true if x == 0"+strings.Repeat(" else := false if x == 1", 51)),
			[]string{"book/r/rule.rego:15:1: a definition has more than 50 branches of else"}},
		{"too many definitions", rule("r", "system", strings.Repeat("check contains {\"about\": \"system\", \"is_true\": true, \"because\": \"x\"}\n", 501)),
			[]string{"book/r/rule.rego:513:1: a module has more than 500 definitions"}},
		{"too many functions, each known from the next", rule("r", "system", chain(6000)),
			[]string{"book/r/rule.rego:513:1: a module has more than 500 definitions"}},
		{"a table that is not there", tableData + rule("r", "cable_runs", `check contains {"about": c.id, "is": fact.lookup("ambent", [c.ambient]), "at_most": 1} if some c in input.cable_runs`),
			[]string{`book/r/rule.rego:13:50: there is no table "ambent" in data/ (did you mean "ambient"?)`}},
		{"another codebook's data", rule("r", "system", `check contains {"about": "system", "is_true": true, "because": "x"} if count(data.codebooks.limits.cold_voltage.check) > 0`),
			[]string{`book/r/rule.rego:13:78: a rule sees no data but the functions of data.codebooks.small.shared; data.codebooks.limits.cold_voltage.check is not for it`}},
		{"with", rule("r", "system", `check contains {"about": "system", "is_true": true, "because": "x"} if count(input.strings) == 0 with input as {}`),
			[]string{"book/r/rule.rego:13:98: `with` is for tests alone", "book/r/rule.rego:13:103: input as a whole is not for rules: name a collection"}},
		{"a helper rule", rule("r", "system", "check contains {\"about\": \"system\", \"is_true\": true, \"because\": \"x\"}\n\nlimit := 3"),
			[]string{"book/r/rule.rego:15:1: a rule's package holds `check contains` and functions alone; limit is neither"}},
		{"a misspelt check", rule("r", "system", `chek contains {"about": "system", "is_true": true, "because": "x"}`),
			[]string{"book/r/rule.rego:11:1: the rule has no `check contains`", "book/r/rule.rego:13:1: a rule's package holds `check contains` and functions alone; chek is neither (did you mean \"check\"?)"}},
		{"check as one value", rule("r", "system", `check := {"about": "system", "is_true": true, "because": "x"}`),
			[]string{"book/r/rule.rego:11:1: the rule has no `check contains`", "book/r/rule.rego:13:1: check is a set: write `check contains {...} if ...`"}},
		{"the network", rule("r", "system", `check contains {"about": "system", "is_true": true, "because": "x"} if http.send({"method": "get", "url": "http://localhost"})`),
			[]string{"book/r/rule.rego:13:72: there is no function http.send for rules"}},
		{"a misspelt shared function", sharedLib + rule("r", "banks", "import data.codebooks.small.shared\n\ncheck contains {\"about\": b.id, \"is_true\": shared.laed(b.battery), \"because\": \"x\"} if some b in input.banks"),
			[]string{`book/r/rule.rego:15:43: there is no function data.codebooks.small.shared.laed for rules`, `book/r/rule.rego:15:50: shared/ has no function "laed" (did you mean "lead"?)`}},
		{"a shared formula as a condition", sharedLib + rule("r", "banks", "import data.codebooks.small.shared\n\ncheck contains {\"about\": b.id, \"is_true\": true, \"because\": \"x\"} if {\n\tsome b in input.banks\n\tnot shared.lead(b.battery)\n}"),
			[]string{"book/r/rule.rego:17:2: shared.lead gives a formula, not a condition: put it into `when`, `is` or `is_true`"}},
		{"a shared rule that is no function", "-- shared/lib.rego --\npackage codebooks.small.shared\n\nlimit := 3\n" + rule("r", "system", `check contains {"about": "system", "is_true": true, "because": "x"}`),
			[]string{`book/shared/lib.rego:3:1: shared/ holds functions alone; limit is none`}},
		{"another rule's package", sharedLib + rule("r", "system", "import data.codebooks.small.q\n\ncheck contains {\"about\": \"system\", \"is_true\": count(q.check) > 0, \"because\": \"x\"}"),
			[]string{`book/r/rule.rego:13:1: a rule may import input and, by its own name, data.codebooks.small.shared; not data.codebooks.small.q`, `book/r/rule.rego:15:55: there is no fact or link "check"`}},
		{"a syntax error behind Unicode", rule("r", "system", `check contains {"about": "system", "is_true": true, "because": "über 30 °C Ω"} if if`),
			[]string{"book/r/rule.rego:13:83: unexpected if keyword"}},
		{"a package that is not its folder's", strings.Replace(rule("r", "system", `check contains {"about": "system", "is_true": true, "because": "x"}`), "package codebooks.small.r", "package codebooks.small.q", 1),
			[]string{`book/r/rule.rego:11:1: the package is that of the folder: package codebooks.small.r, not codebooks.small.q`}},
		{"a file that has no place", "-- r/rule.rgo --\n" + rule("r", "system", `check contains {"about": "system", "is_true": true, "because": "x"}`),
			[]string{`book/r/rule.rgo:1:1: rule.rgo has no place in a rule's folder, which holds rule.rego, rule_test.rego, meets.design.hcl, breaks.design.hcl (did you mean "rule.rego"?)`}},
		{"no rule at all", "", []string{`book/codebook.hcl:1:1: the codebook has no rule`}},
		{"a word in a table of numbers", strings.Replace(tableData, "[40, 0.91]", `[40, "most"]`, 1) + rule("r", "system", `check contains {"about": "system", "is_true": true, "because": "x"}`),
			[]string{`book/data/ambient.json:3:22: row 2: value: most is not a number`}},
		{"a table that cannot be read, which a rule names", strings.Replace(tableData, `"rows"`, `"row"`, 1) + rule("r", "cable_runs", `check contains {"about": c.id, "is": fact.lookup("ambient", [c.ambient]), "at_most": 1} if some c in input.cable_runs`),
			[]string{`book/data/ambient.json:3:45: reading the table: unknown field "row"`}},
		{"a misspelt key in a table", strings.Replace(tableData, `"rows"`, `"row"`, 1) + rule("r", "system", `check contains {"about": "system", "is_true": true, "because": "x"}`),
			[]string{`book/data/ambient.json:3:45: reading the table: unknown field "row"`}},
	} {
		t.Run(test.name, func(t *testing.T) {
			b, problems := judge.Load(context.Background(), judge.Source{Name: "small", Files: folder(bookHead + test.files), Show: "book"})
			if b != nil {
				t.Error("the codebook loaded")
			}
			var got []string
			for _, p := range problems {
				got = append(got, p.Error())
			}
			if diff := cmp.Diff(test.want, got); diff != "" {
				t.Errorf("problems (-want +got):\n%s", diff)
			}
		})
	}
}

func TestLoadMetadata(t *testing.T) {
	const sound = `# METADATA
# title: A title
# description: Why.
# custom:
#   grade: stop
#   each: system
#   source: common practice
#   remedy: change it
package codebooks.small.r

check contains {"about": "system", "is_true": true, "because": "x"}
`
	for _, test := range []struct {
		name, old, new string
		want           []string
	}{
		{"sound", "", "", nil},
		{"a misspelt key", "# title:", "# titel:", []string{`book/r/rule.rego:1:1: METADATA: title is owed`, `book/r/rule.rego:2:1: METADATA has no key "titel" (did you mean "title"?)`}},
		{"a misspelt custom key", "#   remedy:", "#   remedi:", []string{`book/r/rule.rego:1:1: METADATA: custom.remedy is owed`, `book/r/rule.rego:8:5: METADATA: custom has no key "remedi" (did you mean "remedy"?)`}},
		{"a grade that is none", "grade: stop", "grade: stopp", []string{`book/r/rule.rego:5:5: METADATA: grade is one of stop, fix, advise, not "stopp" (did you mean "stop"?)`}},
		{"waivable as a text", "#   remedy", "#   waivable: maybe\n#   remedy", []string{`book/r/rule.rego:8:5: METADATA: waivable is true or false, not maybe`}},
		{"a source that is not the codebook's", "#   remedy", "#   cites: [sheat]\n#   remedy", []string{`book/r/rule.rego:8:5: METADATA: cites: the codebook has no source "sheat" (did you mean "sheet"?)`}},
		{"a clause without cites", "source: common practice", "source: clause 7.1", []string{`book/r/rule.rego:7:5: METADATA: a rule without cites rests on "common practice" or on a maker's data sheet: say so in its source, or cite a source of the codebook`}},
		{"schemas", "# custom:", "# schemas:\n#   - input: {}\n# custom:", []string{`book/r/rule.rego:1:1: METADATA: schemas may not be given: the types of input are those of the fact table`, `book/r/rule.rego:4:1: METADATA has no key "schemas"`}},
		{"metadata that are no YAML", "# title: A title", "# title: \"A title", []string{`book/r/rule.rego:8:1: METADATA cannot be read: line 8: found unexpected end of stream`}},
		{"no metadata", "# METADATA", "# METEDATA", []string{`book/r/rule.rego:9:1: the rule has no METADATA above its package`}},
	} {
		t.Run(test.name, func(t *testing.T) {
			text := strings.Replace(sound, test.old, test.new, 1)
			b, problems := judge.Load(context.Background(), judge.Source{Files: folder(bookHead + "-- r/rule.rego --\n" + text), Show: "book"})
			var got []string
			for _, p := range problems {
				got = append(got, p.Error())
			}
			if diff := cmp.Diff(test.want, got); diff != "" {
				t.Errorf("problems (-want +got):\n%s", diff)
			}
			if (b != nil) != (len(test.want) == 0) {
				t.Errorf("book %v with %d problems", b, len(got))
			}
		})
	}
}

// The digest follows every byte of the folder, and nothing else.
func TestDigest(t *testing.T) {
	files := bookHead + rule("r", "system", `check contains {"about": "system", "is_true": true, "because": "x"}`)
	first, again := loaded(t, files).Digest(), loaded(t, files).Digest()
	if first != again {
		t.Errorf("two loads: %s and %s", first, again)
	}
	if other := loaded(t, files+"-- README.md --\nwords\n").Digest(); other == first {
		t.Error("a file more, and the same digest")
	}
}

// chain is a rule with functions that call one another, the last one first.
func chain(n int) string {
	text := `check contains {"about": "system", "is_true": true, "because": "x"}`
	for i := range n {
		text += fmt.Sprintf("\nf%d(x) := f%d(x)", n-i, n-i+1)
	}
	return text
}
