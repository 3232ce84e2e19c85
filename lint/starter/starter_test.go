package starter_test

import (
	"fmt"
	"maps"
	"path"
	"slices"
	"strings"
	"testing"

	"stringline/lint"
	"stringline/lint/linttest"
	"stringline/lint/starter"
	"stringline/lint/verdict"
	"stringline/rules"
	"stringline/schema/hcltext"
	"stringline/schema/source"
)

// complete answers every question; more changes some. They go through the reader.
func complete(t *testing.T, more map[string]string) starter.Answers {
	t.Helper()
	given := map[string]string{
		"title": "Test hut", "place": "building", "code": "none", "latitude": "40 deg", "longitude": "9.9 deg", "elevation": "840 m",
		"coldest": "-20 degC", "hottest": "34 degC", "tilt": "45 deg", "azimuth": "180 deg", "run": "12 m",
		"bank-voltage": "24V", "chemistry": "lifepo4", "batteries": "2", "bank-coldest": "6 degC", "bank-hottest": "35 degC", "panels": "4",
		"dc-power": "60 W", "dc-hours": "3", "ac-power": "500 W", "ac-hours": "0.5", "ac-surge": "1 kW", "plan": "yes",
	}
	maps.Copy(given, more)
	answers := starter.Answers{}
	for _, q := range starter.Questions() {
		if q.Only != nil && !q.Only(answers) {
			continue
		}
		answer, err := q.Check(given[q.Option])
		if err != nil {
			t.Fatal(err)
		}
		answers.Set(q.Option, answer)
	}
	return answers
}

// judge puts first workshops through the pipeline with every embedded codebook, and
// gives what was found against each, by its folder.
func judge(t *testing.T, workshops map[string]starter.Answers) map[string][]string {
	t.Helper()
	texts := map[string]string{}
	for name, answers := range workshops {
		files, err := starter.Write(answers, "hooks")
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		for _, f := range files {
			texts[path.Join(name, f.Path)] = string(f.Text)
			if strings.HasSuffix(f.Path, ".hcl") {
				tidy, problems := hcltext.Tidy(source.NewFile(f.Path, f.Text))
				if len(problems) > 0 || string(tidy) != string(f.Text) {
					t.Errorf("%s/%s is not tidy: %v", name, f.Path, problems)
				}
			}
		}
	}
	result, err := lint.Run(t.Context(), lint.Options{
		Disk: linttest.NewDisk(texts), Embedded: rules.Books, WorkingDir: "/", Paths: []string{"."}, Date: "2026-05-02", RejectFrom: verdict.Advise,
		WithoutSystems: true,
	})
	if err != nil {
		t.Fatal(err)
	}
	if len(result.Problems) > 0 || len(result.Designs) != len(workshops) {
		t.Fatalf("%d designs of %d; %v", len(result.Designs), len(workshops), result.Problems)
	}
	found := map[string][]string{}
	for _, d := range result.Designs {
		name := path.Dir(d.File)
		found[name] = []string{}
		for _, p := range d.Problems {
			found[name] = append(found[name], p.Error())
		}
		judged := 0
		for _, v := range d.Verdicts {
			if v.Outcome == verdict.Meets {
				judged++
			}
			if v.Finding() {
				found[name] = append(found[name], fmt.Sprintf("%s %s on %s", v.Rule, v.Outcome, v.About))
			}
		}
		if judged < 100 && workshops[name]["plan"] == "yes" && workshops[name]["ac-power"] != "" {
			t.Errorf("%s: only %d judgements were met; this would prove little", name, judged)
		}
	}
	return found
}

// Every embedded code, several voltages, both kinds of battery, several sites, the
// least and the most of everything: with all answers given, nothing is found.
func TestFirstWorkshopsAreClean(t *testing.T) {
	places := map[string]string{"none": "ground", "iec": "building", "us_2023": "building", "marine": "boat", "vehicle": "vehicle"}
	voltages := map[string][]string{"marine": {"12 V"}} // see TestBoatsAbove12V
	sites := map[string]map[string]string{
		"alps":   {"latitude": "46.5 deg", "coldest": "-27 degC", "hottest": "29 degC", "elevation": "1840 m"},
		"arctic": {"latitude": "40 deg", "coldest": "-45 degC", "hottest": "25 degC", "elevation": "300 m"},
		"desert": {"latitude": "-23 deg", "longitude": "133 deg", "coldest": "28 degF", "hottest": "45 degC", "azimuth": "0 deg", "bank-hottest": "45 degC"},
	}
	workshops := map[string]starter.Answers{}
	for code, place := range places {
		list := voltages[code]
		if list == nil {
			list = []string{"12 V", "24 V", "48 V"}
		}
		for _, volts := range list {
			strings := map[string]int{"12 V": 1, "24 V": 2, "48 V": 3}[volts]
			for _, chemistry := range []string{"lifepo4", "agm"} {
				for site, about := range sites {
					for _, size := range []string{"small", "middle"} {
						more := map[string]string{"code": code, "place": place, "bank-voltage": volts, "chemistry": chemistry, "standard": "en_1648"}
						maps.Copy(more, about)
						switch size {
						case "small":
							maps.Copy(more, map[string]string{"panels": fmt.Sprint(strings), "batteries": "1", "dc-power": "20 W", "dc-hours": "2", "ac-power": "", "run": "3 m"})
						case "middle":
							more["panels"] = fmt.Sprint(2 * strings)
						}
						workshops[fmt.Sprintf("%s-%s-%s-%s-%s", code, volts[:2], chemistry, site, size)] = complete(t, more)
					}
				}
			}
		}
	}
	for _, standard := range []string{"as_nzs_3001", "nec_552", "rvia_lv"} {
		workshops["vehicle-"+standard] = complete(t, map[string]string{"code": "vehicle", "place": "vehicle", "standard": standard, "bank-voltage": "12 V", "panels": "2"})
	}
	for name, more := range map[string]map[string]string{
		"most-panels": {"panels": "12", "bank-voltage": "48 V", "batteries": "3", "ac-power": "2.4 kW", "ac-surge": "5 kW"},
		"three":       {"panels": "6", "batteries": "3"},
		"four":        {"panels": "6", "batteries": "4", "code": "iec"},
		"us-three":    {"panels": "9", "bank-voltage": "48 V", "batteries": "3", "code": "us_2023", "ac-power": "1.5 kW", "ac-surge": "3 kW"},
		"long":        {"run": "60 m", "code": "iec"},
	} {
		workshops[name] = complete(t, more)
	}
	bad := 0
	found := judge(t, workshops)
	for _, name := range slices.Sorted(maps.Keys(found)) {
		if list := found[name]; len(list) > 0 {
			if bad++; bad <= 25 {
				t.Errorf("%s: %d findings\n\t%s", name, len(list), strings.Join(list[:min(len(list), 5)], "\n\t"))
			}
		}
	}
	if len(found) < 100 {
		t.Errorf("only %d workshops were judged", len(found))
	}
}
