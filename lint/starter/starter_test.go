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
	if testing.Short() || underRace {
		delete(sites, "arctic")
		delete(sites, "desert")
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
				if underRace && (volts == "12 V") != (chemistry == "agm") {
					continue
				}
				for site, about := range sites {
					for _, size := range []string{"small", "middle"} {
						if underRace && size == "small" {
							continue
						}
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
	if len(found) < 50 && !underRace {
		t.Errorf("only %d workshops were judged", len(found))
	}
}

// Aboard a boat the book advises against more than 60 V on open decks and more than
// 50 V of batteries: what hangs on the answers themselves is told, and nothing else.
func TestBoatsAbove12V(t *testing.T) {
	found := judge(t, map[string]starter.Answers{
		"24": complete(t, map[string]string{"code": "marine", "place": "boat"}),
		"48": complete(t, map[string]string{"code": "marine", "place": "boat", "bank-voltage": "48 V", "panels": "3"}),
	})
	want := map[string]string{
		"24": "marine.deck_voltage breaks on pv_input.main.1",
		"48": "marine.deck_voltage breaks on pv_input.main.1; marine.voltage_scope breaks on bank.house",
	}
	for name, list := range found {
		if got := strings.Join(list, "; "); got != want[name] {
			t.Errorf("%s: found %q, want %q", name, got, want[name])
		}
	}
}

// What is not known stays out: it is unproven, never broken, and never met by a
// value that the program made up.
func TestWhatIsNotKnown(t *testing.T) {
	asked := []string{"place", "latitude", "longitude", "elevation", "coldest", "hottest", "tilt", "azimuth", "run", "bank-coldest", "bank-hottest", "dc-hours", "ac-hours", "ac-surge", "plan"}
	workshops := map[string]starter.Answers{}
	all := map[string]string{}
	for i, option := range asked {
		if underRace && i%5 != 0 && option != "plan" && option != "coldest" {
			continue
		}
		answer := "unknown"
		if option == "plan" {
			answer = "no"
		}
		all[option] = answer
		workshops[option] = complete(t, map[string]string{option: answer, "code": "iec"})
	}
	all["code"] = "us_2023"
	workshops["all"] = complete(t, all)
	for name, list := range judge(t, workshops) {
		unproven := 0
		for _, f := range list {
			switch {
			case strings.Contains(f, " unproven on "):
				unproven++
			default:
				t.Errorf("%s: %s", name, f)
			}
		}
		if unproven == 0 {
			t.Errorf("%s: nothing hangs on it", name)
		}
		if (name == "plan" || name == "all") && unproven < 30 {
			t.Errorf("%s: only %d unproven", name, unproven)
		}
	}
	for name, answers := range workshops {
		files, err := starter.Write(answers, "hooks")
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range files {
			for line := range strings.Lines(string(f.Text)) {
				line = strings.TrimSpace(line)
				if name == "coldest" && strings.HasPrefix(line, "coldest") && !strings.Contains(line, "6 degC") {
					t.Errorf("a coldest air that nobody told: %s", line)
				}
			}
		}
	}
}

// Answers are read by the language's own reader.
func TestCheck(t *testing.T) {
	for _, c := range []struct{ option, answer, want, problem string }{
		{"coldest", " -27 degC ", "-27 degC", ""},
		{"coldest", "\u221227\u00a0°C", "\u221227 °C", ""},
		{"bank-hottest", "35degC", "35 degC", ""},
		{"run", "40ft", "40 ft", ""},
		{"coldest", "", "", ""},
		{"coldest", "unknown", "", ""},
		{"coldest", "-27", "", "unit"},
		{"coldest", "-27 K", "", "expected a temperature"},
		{"coldest", "-127 degC", "", "-90 degC to 40 degC"},
		{"coldest", "-27,5 degC", "", "a decimal point"},
		{"coldest", "${x}", "", "no template"},
		{"panels", "4", "4", ""},
		{"panels", "4.5", "", "a whole number"},
		{"panels", "0", "", "1 to 500"},
		{"panels", "", "", "nothing can be drawn without it"},
		{"panels", "unknown", "", "nothing can be drawn without it"},
		{"panels", "4\nx = 5", "", "panels"},
		{"dc-hours", "25", "", "0 to 24"},
		{"bank-voltage", "24V", "24 V", ""},
		{"bank-voltage", "24", "24 V", ""}, // one alone can be meant
		{"bank-voltage", "2", "", "12 V, 24 V, 48 V"},
		{"bank-voltage", "36 V", "", "12 V, 24 V, 48 V"},
		{"code", "nec", "", "us_2023"},
		{"title", "", "First system", ""},
		{"title", `The "old" hut \ 2`, `The "old" hut \ 2`, ""},
		{"title", "a\u202eb", "", ""},
		{"plan", "", "no", ""},
	} {
		for _, q := range starter.Questions() {
			if q.Option != c.option {
				continue
			}
			got, err := q.Check(c.answer)
			switch {
			case c.problem == "" && c.want == "" && c.option == "title":
				if err == nil {
					t.Errorf("%s %q: taken as %q", c.option, c.answer, got)
				}
			case c.problem == "":
				if err != nil || got != c.want {
					t.Errorf("%s %q: %q, %v; want %q", c.option, c.answer, got, err, c.want)
				}
			case err == nil || !strings.Contains(err.Error(), c.problem):
				t.Errorf("%s %q: %q, %v; want an error with %q", c.option, c.answer, got, err, c.problem)
			}
		}
	}
	for _, q := range starter.Questions() {
		if _, err := q.Check(q.Such); err != nil {
			t.Errorf("the example of %s is refused: %v", q.Option, err)
		}
	}
}

// Answers that do not go together are refused, with what would.
func TestAnswersThatDoNotGoTogether(t *testing.T) {
	for _, c := range []struct {
		more map[string]string
		want string
	}{
		{map[string]string{"panels": "3"}, "panels: 3 do not make strings of 2"},
		{map[string]string{"panels": "4", "bank-voltage": "12 V"}, "at most 3"},
		{map[string]string{"panels": "14", "bank-voltage": "48 V"}, "do not make strings of 3"},
		{map[string]string{"panels": "15", "bank-voltage": "48 V"}, "panels: "},
		{map[string]string{"batteries": "9"}, "batteries: at most 4"},
		{map[string]string{"chemistry": "agm", "batteries": "1", "panels": "6"}, "batteries: these panels charge with"},
		{map[string]string{"ac-power": "9 kW"}, "ac-power: 9000 W"},
		{map[string]string{"ac-power": "3 kW", "bank-voltage": "12 V", "panels": "2"}, "choose a higher bank voltage"},
	} {
		if files, err := starter.Write(complete(t, c.more), "hooks"); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%v: %d files, %v; want %q", c.more, len(files), err, c.want)
		}
	}
	if _, err := starter.Write(starter.Answers{}, "hooks"); err == nil {
		t.Error("a workshop without answers")
	}
}

// An answer that does not go with those before it is told at once; what is still
// open stands in nobody's way. At the limit itself it fits.
func TestFits(t *testing.T) {
	for _, c := range []struct {
		answers map[string]string
		option  string
		want    string
	}{
		{map[string]string{"coldest": "20 degC", "hottest": "19.9 degC"}, "hottest", "hottest: coldest, 20 degC, is above hottest, 19.9 degC"},
		{map[string]string{"coldest": "20 degC", "hottest": "20 degC"}, "hottest", ""},
		{map[string]string{"coldest": "20 degC", "hottest": "67 degF"}, "hottest", "above"},
		{map[string]string{"coldest": "20 degC"}, "hottest", ""},
		{map[string]string{"coldest": "20 degC", "hottest": "10 degC"}, "tilt", ""}, // told when it was answered
		{map[string]string{"bank-coldest": "5 degC", "bank-hottest": "4 degC"}, "bank-hottest", "is above bank-hottest"},
		{map[string]string{"bank-voltage": "24 V", "chemistry": "lifepo4", "batteries": "4"}, "batteries", ""},
		{map[string]string{"bank-voltage": "24 V", "chemistry": "lifepo4", "batteries": "5"}, "batteries", "at most 4"},
		{map[string]string{"bank-voltage": "48 V", "chemistry": "lifepo4", "batteries": "1", "panels": "3"}, "panels", ""},
		{map[string]string{"bank-voltage": "48 V", "chemistry": "lifepo4", "batteries": "1", "panels": "4"}, "panels", "do not make strings of 3"},
		{map[string]string{"bank-voltage": "24 V", "chemistry": "lifepo4", "batteries": "2", "panels": "4", "ac-power": "9 kW"}, "ac-power", "9000 W"},
		{map[string]string{"bank-voltage": "24 V", "chemistry": "lifepo4", "batteries": "2", "panels": "4", "ac-power": "700 W", "ac-surge": "9 kW"}, "ac-surge", "starting on 9000 W"},
		{map[string]string{"bank-voltage": "24 V", "chemistry": "lifepo4", "batteries": "2", "panels": "4", "ac-power": "700 W"}, "ac-power", ""},
	} {
		err := starter.Answers(c.answers).Fits(c.option)
		if c.want == "" && err != nil || c.want != "" && (err == nil || !strings.Contains(err.Error(), c.want)) {
			t.Errorf("%v, %s: %v, want %q", c.answers, c.option, err, c.want)
		}
	}
}

// Every code that comes with the program is offered, and no other.
func TestEveryCodeIsOffered(t *testing.T) {
	entries, err := rules.Books.ReadDir(".")
	if err != nil {
		t.Fatal(err)
	}
	want := []string{"none"}
	for _, e := range entries {
		if always := []string{"datasheet", "limits", "practice"}; e.IsDir() && !slices.Contains(always, e.Name()) {
			want = append(want, e.Name())
		}
	}
	for _, q := range starter.Questions() {
		if q.Option == "code" {
			slices.Sort(want)
			if got := slices.Sorted(slices.Values(q.Words)); !slices.Equal(got, want) {
				t.Errorf("offered are %v, want %v", got, want)
			}
		}
	}
}
