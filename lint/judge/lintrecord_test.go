package judge_test

import (
	"context"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint/judge"
)

const parameterDrop = `parameter "drop" {
  kind    = "quantity"
  unit    = "%"
  default = "3 %"
  means   = "x"
}
`

// TestLoadWritten: what a rule writes out is checked before any design, in the
// author's words, with the near name.
func TestLoadWritten(t *testing.T) {
	banks := func(record string) string {
		return rule("r", "banks", "check contains "+record+" if some b in input.banks")
	}
	const at = "book/r/rule.rego:"
	for _, test := range []struct {
		name, files string
		want        []string
	}{
		{"a misspelt key", banks(`{"about": b.id, "is": b.nominal, "at_mots": b.nominal}`),
			[]string{at + `13:49: a record has no key "at_mots" (did you mean "at_most"?)`}},
		{"about nobody", banks(`{"is": b.nominal, "at_most": b.nominal}`),
			[]string{at + `13:16: a record names the subject that it is about`}},
		{"two limits", banks(`{"about": b.id, "is": b.nominal, "at_most": b.nominal, "at_least": b.nominal}`),
			[]string{at + `13:16: a record with is has one of at_most, at_least, equals, between; this one has at_most and at_least`}},
		{"nothing to judge", banks(`{"about": b.id}`),
			[]string{at + `13:16: a record has one of is, all_equal, is_true, does_not_apply; this one has none`}},
		{"a limit of a yes or no", banks(`{"about": b.id, "is_true": b.matched, "because": "x", "at_most": b.nominal}`),
			[]string{at + `13:16: at_most does not go with is_true`}},
		{"no because", banks(`{"about": b.id, "is_true": b.matched}`),
			[]string{at + `13:16: is_true needs because: the words to show where it is not`}},
		{"a because where numbers speak", banks(`{"about": b.id, "is": b.nominal, "at_most": b.nominal, "because": "x"}`),
			[]string{at + `13:16: because goes with is_true and all_equal; with is the numbers speak`}},
		{"otherwise without when", banks(`{"about": b.id, "is_true": b.matched, "because": "x", "otherwise": "y"}`),
			[]string{at + `13:16: otherwise goes with when`}},
		{"when beside does_not_apply", banks(`{"about": b.id, "does_not_apply": "x", "when": b.matched}`),
			[]string{at + `13:16: does_not_apply stands by itself, without when`}},
		{"words that nothing fills in", banks(`{"about": b.id, "is": b.nominal, "at_most": b.nominal, "say": "{iss} of {about}"}`),
			[]string{at + `13:78: say: only {is}, {limit} and {about} are filled in`}},
		{"a fact for a text", banks(`{"about": b.id, "is_true": b.matched, "because": b.nominal}`),
			[]string{at + `13:65: because is a text, not the fact b.nominal`}},
		{"a number for a text, and none at all", banks(`{"about": b.id, "is_true": b.matched, "because": "", "which": 3}`),
			[]string{at + `13:65: because is empty`, at + `13:78: which is a text, not a plain number`}},
		{"three limits between which", banks(`{"about": b.id, "is": b.nominal, "between": [b.nominal, b.nominal, b.nominal]}`),
			[]string{at + `13:60: between takes two limits, not 3`}},
		{"a record that is a text", rule("r", "banks", `check contains "x" if count(input.banks) > 0`),
			[]string{at + `13:16: a record is an object, not the text "x"`}},
		{"about members of another collection", rule("r", "banks", `check contains {"about": c.id, "is_true": c.isolated, "because": "x"} if some c in input.controllers`),
			[]string{at + `13:26: the record is about one of controllers, and METADATA says each: banks`}},
		{"about what a link leads to", rule("r", "banks", `check contains {"about": c.bank.id, "is_true": c.bank.matched, "because": "x"} if some c in input.chargers`), nil},
		{"about the wrong end of a link", rule("r", "chargers", `check contains {"about": c.bank.id, "is_true": c.bank.matched, "because": "x"} if some c in input.chargers`),
			[]string{at + `13:26: the record is about one of banks, and METADATA says each: chargers`}},
		{"a word that it never is", banks(`{"about": b.id, "is_true": fact.one_of(b.battery.chemistry, ["agm", "lifepo"]), "because": "x"}`),
			[]string{at + `13:84: b.battery.chemistry is never "lifepo": it is one of flooded, agm, gel, lifepo4, nmc, sodium_ion (did you mean "lifepo4"?)`}},
		{"a word that it never is, behind a function's parameter", rule("r", "banks", "check contains {\"about\": b.id, \"is_true\": lead(b.battery), \"because\": \"x\"} if some b in input.banks\n\nlead(x) := fact.one_of(x.chemistry, [\"flodded\"])"),
			[]string{at + `15:38: x.chemistry is never "flodded": it is one of flooded, agm, gel, lifepo4, nmc, sodium_ion (did you mean "flooded"?)`}},
		{"a word that a name is elsewhere, and not here", rule("r", "chargers", `check contains {"about": c.id, "is_true": fact.one_of(c.controller.kind, ["breaker"]), "because": "x"} if some c in input.chargers`),
			[]string{at + `13:75: c.controller.kind is never "breaker": it is one of mppt, pwm`}},
		{"a word where anything can stand", rule("r", "strings", `check contains {"about": s.id, "is_true": fact.one_of(p.connector, ["heron-4"]), "because": "x"} if {
	some s in input.strings
	some p in s.panels
}`), nil},
		{"a word of the site", rule("r", "site", `check contains {"about": "site", "is_true": fact.one_of(input.site.place, ["boots", "vehicle"]), "because": "x"}`),
			[]string{at + `13:76: input.site.place is never "boots": it is one of building, ground, vehicle, boat (did you mean "boat"?)`}},
		{"a unit that is none", banks(`{"about": b.id, "is": b.nominal, "at_most": fact.number(24, "Volt")}`),
			[]string{at + `13:76: fact.number: "Volt" is not a unit`}},
		{"a unit in the wrong case", banks(`{"about": b.id, "is": b.nominal, "at_most": fact.number(24, "kv")}`),
			[]string{at + `13:76: fact.number: "kv" is not a unit (did you mean "kV"?)`}},
		{"a table with an axis more", tableData + rule("r", "cable_runs", `check contains {"about": c.id, "is": fact.lookup("ambient", [c.ambient, c.area]), "at_most": 1} if some c in input.cable_runs`),
			[]string{at + `13:61: fact.lookup: table "ambient" has the axes ambient; here stand 2 operands`}},
		{"a function in two files of shared/", "-- shared/a.rego --\npackage codebooks.small.shared\n\nf(x) := x.nominal\n-- shared/b.rego --\npackage codebooks.small.shared\n\nf(x) := x.capacity\n" +
			rule("r", "banks", "import data.codebooks.small.shared\n\ncheck contains {\"about\": b.id, \"is\": shared.f(b), \"at_most\": b.nominal} if some b in input.banks"),
			[]string{`book/shared/b.rego:3:1: function "f" is defined in book/shared/a.rego too: one name, one file`}},
		{"units that do not compare", banks(`{"about": b.id, "is": b.nominal, "at_most": b.capacity}`),
			[]string{at + `13:16: at_most: a voltage (b.nominal) cannot be compared with a charge (b.capacity)`}},
		{"units that do not compare, deep in a formula", banks(`{"about": b.id, "is": fact.ratio(fact.times([2, b.energy]), b.nominal), "at_most": fact.number(1, "V")}`),
			[]string{at + `13:16: at_most: a charge cannot be compared with a voltage`}},
		{"a parameter of another unit", strings.Replace(banks(`{"about": b.id, "is": b.nominal, "at_most": input.params.drop}`), "-- r/", parameterDrop+"-- r/", 1),
			[]string{at + `13:16: at_most: a voltage (b.nominal) cannot be compared with a bare number (input.params.drop)`}},
		{"units that do not add", banks(`{"about": b.id, "is": fact.plus([b.nominal, b.capacity]), "at_most": b.nominal}`),
			[]string{at + `13:38: fact.plus: a voltage (b.nominal) and a charge (b.capacity) do not go together`}},
		{"units that do not add, behind a function's parameter", rule("r", "banks", `check contains {"about": b.id, "is": f(b), "at_most": b.nominal} if some b in input.banks

f(x) := fact.minus(x.nominal, x.capacity)`),
			[]string{at + `15:9: fact.minus: a voltage (x.nominal) and a charge (x.capacity) do not go together`}},
		{"a temperature against a difference", rule("r", "site", `check contains {"about": "site", "is": input.site.coldest, "at_least": fact.number(5, "K")}`),
			[]string{at + `13:16: at_least: a temperature (input.site.coldest) cannot be compared with a temperature difference`}},
		{"a word as a number", banks(`{"about": b.id, "is": fact.times([2, b.battery.chemistry]), "at_most": 1}`),
			[]string{at + `13:38: fact.times takes numbers, not a word (b.battery.chemistry)`}},
		{"a number for a yes or no", banks(`{"about": b.id, "is_true": b.nominal, "because": "x"}`),
			[]string{at + `13:16: is_true takes a yes/no, not a voltage (b.nominal)`}},
		{"an operand that a table does not take", tableData + rule("r", "cable_runs", `check contains {"about": c.id, "is": fact.lookup("ambient", [c.area]), "at_most": 1} if some c in input.cable_runs`),
			[]string{at + `13:38: fact.lookup: axis "ambient" of table "ambient" does not take an area (c.area)`}},
		{"made while it runs", rule("r", "banks", "check contains made if {\n\tsome b in input.banks\n\tmade := {\"about\": b.id}\n}"), nil},
	} {
		t.Run(test.name, func(t *testing.T) {
			b, problems := judge.Load(context.Background(), judge.Source{Name: "small", Files: folder(bookHead + test.files), Show: "book"})
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
	_, problems := judge.Load(context.Background(), judge.Source{Files: folder(bookHead + rule("r", "banks",
		`check contains {"about": b.id, "is": fact.number(count([a * 2 | some a in [1]]), ""), "at_most": 3} if some b in input.banks`)), Show: "book"})
	const hint = "unexpected some keyword; within brackets write [(a * b) | some a in list]: without the round ones | joins two sets"
	if len(problems) == 0 || problems[0].Message != hint {
		t.Errorf("a product in a comprehension: %v", problems)
	}
}
