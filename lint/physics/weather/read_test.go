package weather

import (
	"fmt"
	"math"
	"runtime"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"
)

// The place of the extremes: each layout is found, what fits neither or both is
// unknown. Read by the wrong rule a coldest morning of +28 or +34 degC comes out.
func TestExtremesLayouts(t *testing.T) {
	for name, c := range map[string]struct {
		extremes string
		min      float64
		known    bool
	}{
		"with a wet bulb before it":        {layout2009, -23.7, true},
		"without":                          {layout2017, -18.1, true},
		"none":                             {"Nothing", 0, false},
		"cut short":                        {layout2017[:60], 0, false},
		"a word among them":                {strings.Replace(layout2009, "-29.6", "N/A", 1), 0, false},
		"years that do not grow colder":    {strings.Replace(layout2009, "-32.2", "-28", 1), 0, false},
		"years that stay as cold":          {strings.Replace(layout2009, "-32.2", "-29.6", 1), 0, false},
		"years that stay as hot":           {strings.Replace(layout2017, "36.8", "36", 1), 0, false},
		"years that do not grow hotter":    {strings.Replace(layout2017, "36.8", "35", 1), 0, false},
		"a five-year cold at the mean":     {strings.Replace(layout2009, "-27,", "-23.7,", 1), 0, false},
		"a negative deviation":             {strings.Replace(layout2009, "4.5", "-4.5", 1), 0, false},
		"a temperature that is none":       {strings.Replace(layout2009, "-35.5", "-135.5", 1), 0, false},
		"a mean minimum above the maximum": {strings.Replace(layout2009, "-23.7", "36.7", 1), 0, false},
		"two sets":                         {layout2009 + "," + layout2017, 0, false},
		"two sets, one of them unreadable": {layout2009 + ",Extremes,1,2,3", -23.7, true},
	} {
		y, problems := Read([]byte(whole(header(c.extremes))))
		if len(problems) > 0 || y.Lacks() != "" {
			t.Errorf("%s: %v, lacks %q", name, problems, y.Lacks())
		}
		if y.Extremes.Known != c.known || c.known && math.Abs(y.Extremes.MeanMin-kelvin-c.min) > 1e-9 || c.known != (y.Extremes.Why == "") {
			t.Errorf("%s: %+v", name, y.Extremes)
		}
	}
	y, problems := ReadHeader([]byte(location + "DESIGN CONDITIONS,0\nDATA PERIODS,1,1,Data,Sunday,1/1,12/31\n"))
	if len(problems) > 0 || y.Extremes.Known || y.Extremes.Why != "the header has no extreme temperatures" || y.Latitude != 46.5 {
		t.Errorf("no design conditions: %v, %+v", problems, y)
	}
}

// Whatever a station's extremes are, its header gives them back in either layout,
// and none of its numbers in place of another.
func TestExtremesAnyStation(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		tenth := func(least, most int, what string) float64 {
			return float64(rapid.IntRange(least, most).Draw(t, what)) / 10
		}
		low, high := tenth(-500, 250, "mean minimum"), tenth(260, 500, "mean maximum")
		v := []float64{low, high, tenth(1, 50, "deviation of the minimum"), tenth(1, 30, "deviation of the maximum")}
		for range 4 {
			low -= tenth(1, 40, "colder by")
			high += tenth(1, 20, "hotter by")
			v = append(v, low, high)
		}
		words := []string{"Extremes", "10.1", "8.8", "7.9"}
		if rapid.Bool().Draw(t, "with a wet bulb") {
			words = append(words, fmt.Sprint(tenth(150, 350, "wet bulb")))
		}
		for _, x := range v {
			words = append(words, fmt.Sprintf("%.1f", x))
		}
		e := extremes(append([]string{"DESIGN CONDITIONS", "1", "Heating"}, words...))
		got := []float64{e.MeanMin, e.MeanMax, v[2] + kelvin, v[3] + kelvin}
		for i := range 4 {
			got = append(got, e.ReturnMin[i], e.ReturnMax[i])
		}
		for i := range v {
			if !e.Known || math.Abs(got[i]-kelvin-v[i]) > 1e-9 {
				t.Fatalf("%v: %+v", words, e)
			}
		}
	})
}

// What is wrong is told with its line; the rest is used. A year of which too much
// is wrong says what it lacks.
func TestBadFiles(t *testing.T) {
	good := whole(header(layout2017))
	third := func(text string) string { return strings.Replace(good, usual(1, 1, 3), text, 1) }
	fields := func(n int) string { return strings.Join(strings.Split(usual(1, 1, 3), ",")[:n], ",") + "\n" }
	for name, c := range map[string]struct{ text, want, lacks string }{
		"empty":                       {"", "line 1: not an EPW", ""},
		"another format":              {"date,temperature\n2001-01-01,3\n", "line 1: not an EPW", ""},
		"too large":                   {strings.Repeat("x", MaxBytes+1), "line 1: the file has 16777217 bytes, more than 16777216", ""},
		"as large as may be":          {good + strings.Repeat("\n", MaxBytes-len(good)), "", ""},
		"a header alone":              {header(layout2017), "line 9: global radiation is missing throughout", "the air temperature of 8760 hours is missing; the radiation of 8760 hours is missing"},
		"no header but its first":     {location, "line 8: the header has no DATA PERIODS line", "the air temperature of 8760 hours is missing; the radiation of 8760 hours is missing"},
		"a header line without end":   {strings.Replace(good, "COMMENTS 1", "COMMENTS 1,"+strings.Repeat("x", headerBytes), 1), "line 6: a header line of 65547 bytes, more than 65536", ""},
		"cut short":                   {good[:len(good)-2000], "of its 8760 steps are missing", ""},
		"cut in half":                 {good[:len(good)/2], "steps are missing", "the air temperature of 4"},
		"cut within a line":           {third(fields(31)), "line 11: 31 fields, fewer than 32: the line is cut short", ""},
		"the fields of an old file":   {third(fields(32)), "", ""},
		"text in a number":            {third(line(1, 1, 3, 0, "cold", "0")), `line 11, field 7: dry bulb temperature: expected a number, found "cold"`, ""},
		"text that writes a terminal": {third(line(1, 1, 3, 0, "\x1b[31m", "0")), `line 11, field 7: dry bulb temperature: expected a number, found "?[31m"`, ""},
		"an exponent":                 {third(line(1, 1, 3, 0, "1e1", "0")), "line 11, field 7", ""},
		"a long word":                 {third(line(1, 1, 3, 0, strings.Repeat("cold", 20), "0")), `found "coldcoldcoldcoldcoldcoldcoldcoldcoldcold..."`, ""},
		"no number":                   {third(line(1, 1, 3, 0, "NaN", "0")), "line 11, field 7", ""},
		"an empty field":              {third(line(1, 1, 3, 0, "", "0")), "", ""},
		"a month of 13":               {third(line(13, 1, 3, 0, "1", "0")), "line 11, field 2: month: expected a whole number from 1 to 12", ""},
		"hour 0":                      {third(line(1, 1, 0, 0, "1", "0")), "line 11, field 4: hour: expected a whole number from 1 to 24", ""},
		"half a day":                  {strings.Replace(good, "2001,1,1,3,", "2001,1,1.5,3,", 1), `line 11, field 3: day: expected a whole number from 1 to 31, found "1.5"`, ""},
		"an hour twice":               {third(usual(1, 1, 2)), "line 11: this hour stands twice: line 10 has it already", ""},
		"out of order":                {strings.Replace(good, usual(1, 1, 2)+usual(1, 1, 3), usual(1, 1, 3)+usual(1, 1, 2), 1), "line 11: out of order", ""},
		"a day that is not":           {strings.Replace(good, usual(2, 28, 24), line(2, 30, 24, 0, "1", "0"), 1), "month 2 has no day 30", ""},
		"an impossible light":         {third(line(1, 1, 3, 0, "1", "5000")), "line 11, field 14: global horizontal radiation: 5000 is outside 0 to 1800", ""},
		"an impossible frost":         {third(line(1, 1, 3, 0, "-90.1", "0")), "line 11, field 7: dry bulb temperature: -90.1 is outside -90 to 65", ""},
		"a latitude of words":         {strings.Replace(good, "46.5", "north", 1), `line 1, field 7: latitude: expected a number from -90 to 90, found "north"`, ""},
		"no time zone":                {strings.Replace(good, ",1.0,1840.0", "", 1), "line 1: time zone is missing", "the header does not tell the time zone"},
		"a longitude of another sign": {strings.Replace(good, "9.87,1.0", "170.87,1.0", 1), "of the year's global radiation falls at night", "its light falls at night"},
		"watts for watt hours":        {strings.ReplaceAll(good, "0,100,", "0,900,"), "of that above the air: its unit is not Wh/m2", "it has more light than there is"},
		"a year of night":             {strings.ReplaceAll(good, "0,100,", "0,0,"), "", "there is no light in it"},
		"steps of 7 minutes":          {strings.Replace(good, "DATA PERIODS,1,1,", "DATA PERIODS,1,7,", 1), `line 8, field 3: records an hour: expected a number that divides 60, found "7"`, ""},
		"a short line of periods":     {strings.Replace(good, "DATA PERIODS,1,1,Data,Sunday,1/1,12/31", "DATA PERIODS,1", 1), "line 8: the line is cut short", ""},
		"a week without air":          {without(good, 8, 14), "line 177: air temperature is missing for 168 hours: the last value before stands for them", "the air temperature of 168 hours is missing"},
		"a day without air":           {without(good, 8, 8), "line 177: air temperature is missing for 24 hours: the last value before stands for them", ""},
	} {
		y, problems := Read([]byte(c.text))
		found := c.want == "" && len(problems) == 0
		for _, p := range problems {
			found = found || c.want != "" && strings.Contains(p.Error(), c.want)
		}
		if !found {
			t.Errorf("%s: want %q, got %v", name, c.want, problems)
		}
		if y == nil {
			continue
		}
		if strings.Contains(y.Lacks(), "no light") != (name == "a year of night") || !strings.HasPrefix(y.Lacks(), c.lacks) || c.lacks == "" && y.Lacks() != "" {
			t.Errorf("%s: lacks %q, want %q", name, y.Lacks(), c.lacks)
		}
		sound(t, y)
	}
}

// sound holds what [Year] promises of its series.
func sound(t interface{ Fatalf(string, ...any) }, y *Year) {
	n := y.Steps()
	for name, s := range map[string]struct {
		series      []float64
		least, most float64
	}{"air": {y.Air, 183.15, 338.15}, "global": {y.Global, 0, 1801}, "beam": {y.Beam, 0, 1501}, "diffuse": {y.Diffuse, 0, 1201}, "wind": {y.Wind, 0, 100}} {
		if s.series == nil && (name == "air" || name == "wind" && y.Clear) {
			continue
		}
		if len(s.series) != n {
			t.Fatalf("%s has %d values for %d steps", name, len(s.series), n)
		}
		for i, v := range s.series {
			if !(v >= s.least && v <= s.most) {
				t.Fatalf("%s at step %d is %v", name, i, v)
			}
		}
	}
	if (y.Air == nil) != math.IsNaN(y.Coldest) {
		t.Fatalf("air from %v to %v K", y.Coldest, y.Hottest)
	}
}

// without takes the air temperature from days of January.
func without(text string, from, to int) string {
	for day := from; day <= to; day++ {
		for hour := 1; hour <= 24; hour++ {
			text = strings.Replace(text, usual(1, day, hour), line(1, day, hour, 0, "99.9", lit(hour)), 1)
		}
	}
	return text
}

// A problem on every line does not make an endless list, and the list says how
// many it leaves out.
func TestManyProblems(t *testing.T) {
	// Every seventh day's hours, 48 days; each day is a long gap besides.
	y, problems := Read([]byte(strings.ReplaceAll(whole(header(layout2017)), ",0,0,10,", ",0,0,x,")))
	if y == nil || len(problems) != most+1 || problems[most].Message != fmt.Sprintf("%d more problems are not listed", 48*24+48-most) {
		t.Errorf("%d problems, the last %v", len(problems), problems[len(problems)-1])
	}
}

// Missing codes of single hours are filled along a line, also around the turn of
// the year, and up to six hours.
func TestGaps(t *testing.T) {
	good := whole(header(layout2017))
	gap := strings.Replace(good, usual(1, 1, 13), line(1, 1, 13, 0, "99.9", "9999"), 1)
	y, problems := Read([]byte(gap))
	if len(problems) > 0 || y.MissingAir != 1 || y.MissingSun != 1 || y.Repaired != 2 || y.Guessed != 0 || math.Abs(y.Air[12]-kelvin-9) > 1e-9 || y.Global[12] != 100 {
		t.Errorf("a gap of an hour: %v, %v K, %v W/m2, %d and %d missing", problems, y.Air[12], y.Global[12], y.MissingAir, y.MissingSun)
	}
	turn := strings.Replace(good, usual(12, 31, 24), line(12, 31, 24, 0, "99.9", "0"), 1)
	turn = strings.Replace(turn, usual(1, 1, 1), line(1, 1, 1, 0, "99.9", "0"), 1)
	// From 7 degC on 31 December to 9 degC on 1 January.
	y, problems = Read([]byte(turn))
	if len(problems) > 0 || math.Abs(y.Air[8759]-kelvin-(7+2/3.0)) > 1e-9 || math.Abs(y.Air[0]-kelvin-(7+4/3.0)) > 1e-9 {
		t.Errorf("the turn of the year: %v, %v and %v degC", problems, y.Air[8759]-kelvin, y.Air[0]-kelvin)
	}
	for _, hours := range []int{longestGap, longestGap + 1} {
		text := good
		for hour := 9; hour < 9+hours; hour++ {
			text = strings.Replace(text, usual(3, 3, hour), line(3, 3, hour, 0, "7", "9999"), 1)
		}
		y, problems := Read([]byte(text))
		noon := ((31+28+2)*24 + 11)
		if long := hours > longestGap; long != (len(problems) > 0) || long != (y.Guessed > 0) || long != (y.Global[noon] == 0) {
			t.Errorf("%d hours: %v, %d guessed, %v W/m2", hours, problems, y.Guessed, y.Global[noon])
		}
	}
}

// Leap years and steps within an hour have their places.
func TestLeapYearsAndSteps(t *testing.T) {
	good := whole(header(layout2017))
	var day strings.Builder
	for hour := 1; hour <= 24; hour++ {
		day.WriteString(line(2, 29, hour, 0, "-5", lit(hour)))
	}
	leap := strings.Replace(good, usual(3, 1, 1), day.String()+usual(3, 1, 1), 1)
	y, problems := Read([]byte(leap))
	if len(problems) > 0 || !y.Leap || len(y.Air) != 8784 || math.Abs(y.Air[(31+28)*24]-kelvin+5) > 1e-9 {
		t.Errorf("a leap year: %v, %d steps", problems, len(y.Air))
	}
	// 2001 has not that day: the sun is taken from a year that has.
	if y.Of != leapYear || y.Middle(8783, y.Of).Month() != time.December {
		t.Errorf("a leap year: the sun of %d, its last hour at %v", y.Of, y.Middle(8783, y.Of))
	}
	if y, _ := Read([]byte(good)); y.Of != 2001 {
		t.Errorf("the sun of %d, want that of the file's own year", y.Of)
	}
	if y, _ := Read([]byte(strings.Replace(good, "2001,7,1,1,", "2003,7,1,1,", 1))); y.Of != commonYear {
		t.Errorf("the sun of %d in a year of many years' months", y.Of)
	}
	halves := strings.Builder{}
	halves.WriteString(strings.Replace(header(layout2017), "DATA PERIODS,1,1,", "DATA PERIODS,1,2,", 1))
	for month := 1; month <= 12; month++ {
		for day := 1; day <= before[month]-before[month-1]; day++ {
			for hour := 1; hour <= 24; hour++ {
				first, second := "0", "0"
				if lit(hour) != "0" {
					first, second = "40", "60"
				}
				halves.WriteString(line(month, day, hour, 30, "1", first) + line(month, day, hour, 60, "2", second))
			}
		}
	}
	y, problems = Read([]byte(halves.String()))
	if len(problems) > 0 || len(y.Air) != 17520 || y.Global[16] != 80 || y.Global[17] != 120 || y.Step != 30*time.Minute {
		t.Errorf("half hours: %v, %d steps, %v W/m2", problems, len(y.Air), y.Global[16:18])
	}
	if got := y.Middle(0, 2001); !got.Equal(time.Date(2000, 12, 31, 23, 15, 0, 0, time.UTC)) {
		t.Errorf("the first half hour has its middle at %v", got)
	}
	if got := y.Start(); !got.Equal(time.Date(2000, 12, 31, 23, 0, 0, 0, time.UTC)) {
		t.Errorf("the year starts at %v", got)
	}
	bad := strings.Replace(halves.String(), "2001,1,1,3,30,", "2001,1,1,3,20,", 1)
	if _, problems := Read([]byte(bad)); len(problems) == 0 || problems[0].Error() != "line 13, field 5: minute 20 does not end one of 2 steps an hour" {
		t.Errorf("a minute between the steps: %v", problems)
	}
	// Minute 0 ends a whole hour, as minute 60 does.
	zeros := strings.Replace(halves.String(), "2001,1,1,3,60,", "2001,1,1,3,0,", 1)
	if y, problems := Read([]byte(zeros)); len(problems) > 0 || y.Air[5] != 2+kelvin {
		t.Errorf("a minute of 0: %v, %v K", problems, y.Air[5])
	}
	windows := strings.ReplaceAll("\xef\xbb\xbf"+good, "\n", "\r\n") + "\r\n\r\n"
	if y, problems := Read([]byte(windows)); len(problems) > 0 || len(y.Air) != 8760 || y.Place != "Upper Terrace" {
		t.Errorf("another system's line ends: %v", problems)
	}
}

// FuzzRead: whatever stands in a file, nothing panics, every problem has a line,
// and no value leaves its range.
func FuzzRead(f *testing.F) {
	f.Add([]byte(header(layout2009) + line(1, 1, 1, 0, "1", "2")))
	f.Add([]byte(header(layout2017) + line(2, 29, 24, 60, "99.9", "9999")))
	f.Add([]byte("LOCATION,\n\n\n\n\n\n\n\n\n"))
	f.Add([]byte(strings.Replace(header(layout2017), "DATA PERIODS,1,1,", "DATA PERIODS,1,60,", 1) + line(12, 31, 24, 59, "1", "2")))
	f.Fuzz(func(t *testing.T, text []byte) {
		y, problems := Read(text)
		for _, p := range problems {
			if p.Line < 1 || p.Message == "" {
				t.Fatalf("%+v", p)
			}
		}
		if y == nil {
			if len(problems) == 0 {
				t.Fatal("no year and no problem")
			}
			return
		}
		sound(t, y)
	})
}

// A text made to hurt costs little beside itself, however long it is.
func TestHostileTexts(t *testing.T) {
	full := func(head, line string) []byte {
		return []byte(head + strings.Repeat(line, (MaxBytes/2-len(head))/len(line)))
	}
	sixty := strings.Replace(header(layout2017), "DATA PERIODS,1,1,", "DATA PERIODS,1,60,", 1)
	for name, text := range map[string][]byte{
		"blank lines":       full(header(layout2017), "\n"),
		"lines of a letter": full(header(layout2017), "x\n"),
		"commas":            full(header(layout2017), ","),
		"header of commas":  full("LOCATION,", ","),
		"one hour for ever": full(header(layout2017), line(1, 1, 1, 0, "1", "0")),
		"wrong hours":       full(header(layout2017), line(1, 1, 25, 0, "1", "0")),
		"minutes":           full(sixty, line(1, 1, 1, 1, "x", "y")),
	} {
		var was, is runtime.MemStats
		runtime.ReadMemStats(&was)
		y, problems := Read(text)
		runtime.ReadMemStats(&is)
		if len(problems) == 0 || len(problems) > most+1 {
			t.Errorf("%s: %d problems", name, len(problems))
		}
		if y != nil {
			sound(t, y)
		}
		// All that is ever allocated, garbage included: a year of minutes takes 23 MB.
		if took := is.TotalAlloc - was.TotalAlloc; took > 32<<20 {
			t.Errorf("%s: %d bytes allocated", name, took)
		}
	}
}
