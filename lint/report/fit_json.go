package report

import (
	"io"
	"reflect"

	"stringline/lint/fit"
	"stringline/lint/verdict"
)

// fitDocument is the JSON of a fit, format 1.
type fitDocument struct {
	Format       int                `json:"format" jsonschema:"number of this format; keys are added within one, never removed or retyped"`
	Tool         toolEntry          `json:"tool"`
	Date         string             `json:"date" jsonschema:"yyyy-mm-dd, the day that decides the ends of waivers"`
	File         string             `json:"file"`
	Design       string             `json:"design"`
	Revision     *string            `json:"revision"`
	Digest       string             `json:"digest" jsonschema:"over all files of the design as it stands"`
	Hand         []panelsEntry      `json:"hand" jsonschema:"the panels in hand"`
	Judged       int                `json:"judged" jsonschema:"arrangements that were judged"`
	Possible     int                `json:"possible" jsonschema:"arrangements that were thought of"`
	More         bool               `json:"more" jsonschema:"there are more than possible says"`
	Years        int                `json:"years" jsonschema:"arrangements that got a year of sun"`
	Arrangements []arrangementEntry `json:"arrangements" jsonschema:"those with a number in its order, then those that are stopped, by the rule that stops them"`
	NotAt        []noBankEntry      `json:"not_at" jsonschema:"bank voltages that the controllers know and the batteries cannot be wired to"`
	Beside       []findingEntry     `json:"beside" jsonschema:"findings that the design has whatever the arrangement"`
	Exit         int                `json:"exit" jsonschema:"0 an arrangement meets every rule; 1 none does"`
}

type panelsEntry struct {
	Panel string `json:"panel"`
	Count int    `json:"count"`
}

type arrangementEntry struct {
	Number        *int                 `json:"number" jsonschema:"what --take asks for; null where it is stopped"`
	State         arrangementStateWord `json:"state"`
	AsIs          bool                 `json:"as_is" jsonschema:"the design as it stands"`
	Banks         []bankEntry          `json:"banks"`
	Strings       []stringsEntry       `json:"strings"`
	LeftOver      []panelsEntry        `json:"left_over"`
	YearlyEnergy  *float64             `json:"yearly_energy" jsonschema:"Wh into the banks; null where no year was computed or it is unknown"`
	Sky           *string              `json:"sky" jsonschema:"what the year rests on"`
	Headroom      *float64             `json:"headroom" jsonschema:"least headroom of the limits that rest on the panels"`
	Least         *string              `json:"least" jsonschema:"key of the verdict with that headroom"`
	ConductorMass *float64             `json:"conductor_mass" jsonschema:"kg of the runs of strings and arrays, in the sizes that the design has"`
	Advice        int                  `json:"advice" jsonschema:"findings of grade advise"`
	NotPut        []string             `json:"not_put" jsonschema:"rules that need a year of sun and were not put"`
	Waived        []findingEntry       `json:"waived" jsonschema:"what a waiver of the design permits, although it may have been given for another arrangement"`
	Stops         []findingEntry       `json:"stops"`
	MustChange    []findingEntry       `json:"must_change" jsonschema:"what hangs on the bank's voltage and must be changed too"`
	Errors        []errorEntry         `json:"errors" jsonschema:"why its text could not be read"`
}

type bankEntry struct {
	Bank     string         `json:"bank"`
	Voltage  float64        `json:"voltage" jsonschema:"V, system voltage"`
	Series   int            `json:"series"`
	Parallel int            `json:"parallel"`
	LeftOver int            `json:"left_over" jsonschema:"batteries"`
	AsIs     bool           `json:"as_is"`
	Settings []settingEntry `json:"settings" jsonschema:"set-points that go with the voltage"`
}

type settingEntry struct {
	ID  string `json:"id"`
	Was string `json:"was"`
	Now string `json:"now"`
}

type stringsEntry struct {
	Array    string        `json:"array"`
	CopyOf   *string       `json:"copy_of" jsonschema:"the array that a new one is copied from"`
	Charger  string        `json:"charger"`
	PVInput  int           `json:"pv_input"`
	Series   []panelsEntry `json:"series" jsonschema:"in one string"`
	Parallel int           `json:"parallel"`
}

type noBankEntry struct {
	Bank    string  `json:"bank"`
	Voltage float64 `json:"voltage"`
	Why     string  `json:"why"`
}

// findingEntry is a verdict in short.
type findingEntry struct {
	Key      string          `json:"key"`
	Rule     string          `json:"rule"`
	About    string          `json:"about"`
	Which    *string         `json:"which"`
	Verdict  outcomeWord     `json:"verdict"`
	Grade    gradeWord       `json:"grade"`
	Title    string          `json:"title"`
	Message  string          `json:"message"`
	Is       *measuredEntry  `json:"is"`
	Limits   []measuredEntry `json:"limits"`
	Headroom *float64        `json:"headroom"`
	Missing  []string        `json:"missing"`
}

// arrangementStateWord is one of the states of an arrangement.
type arrangementStateWord string

// FitSchema gives the JSON Schema of what [FitJSON] writes. A test holds
// schema/fit.schema.json to it.
func FitSchema() ([]byte, error) {
	return schemaOf[fitDocument]("what stringline fit --as json writes, format 1", typeSchemas{
		reflect.TypeFor[arrangementStateWord](): words(fit.Meets, fit.AfterChanges, fit.Waits, fit.Stopped),
	})
}

// FitJSON writes which arrangements can be built as JSON.
func FitJSON(w io.Writer, r *fit.Result, version, date string) error {
	doc := fitDocument{
		Format: Format, Tool: toolEntry{ToolName, version}, Date: date, File: r.Base.File, Design: r.Base.Name, Revision: filled(r.Base.Revision), Digest: r.Base.Digest,
		Hand: panelsEntries(r.Hand), Judged: r.Judged, Possible: r.Possible, More: r.More, Years: r.Years,
		Arrangements: []arrangementEntry{}, NotAt: []noBankEntry{}, Beside: findingEntries(r.Beside), Exit: r.Exit(),
	}
	for _, a := range r.Numbered() {
		doc.Arrangements = append(doc.Arrangements, arrangementEntryOf(a))
	}
	for _, g := range r.Stopped {
		for _, a := range g.Stopped {
			doc.Arrangements = append(doc.Arrangements, arrangementEntryOf(a))
		}
	}
	for _, n := range r.NoBanks {
		doc.NotAt = append(doc.NotAt, noBankEntry(n))
	}
	return writeJSON(w, doc)
}

func panelsEntries(list []fit.Panels) []panelsEntry {
	entries := make([]panelsEntry, len(list))
	for i, p := range list {
		entries[i] = panelsEntry{p.Name, p.Count}
	}
	return entries
}

func arrangementEntryOf(a *fit.Arrangement) arrangementEntry {
	e := arrangementEntry{
		State: arrangementStateWord(a.State), AsIs: a.AsIs, Banks: []bankEntry{}, Strings: []stringsEntry{}, LeftOver: panelsEntries(a.LeftOver),
		Sky: filled(a.Sky), Advice: a.Advice, NotPut: list(a.NotPut), Waived: findingEntries(a.Waived), Stops: findingEntries(a.Stops), MustChange: findingEntries(a.MustChange), Errors: errorEntries(a.Problems),
	}
	if a.Number > 0 {
		e.Number = &a.Number
	}
	if a.YearlyEnergy != nil {
		energy := inUnit(*a.YearlyEnergy, "Wh")
		e.YearlyEnergy = number(&energy)
	}
	if a.Least != nil {
		e.Headroom, e.Least = number(a.Least.Headroom), filled(a.Least.Key())
	}
	e.ConductorMass = number(a.ConductorMass)
	for _, b := range a.Banks {
		entry := bankEntry{b.Bank, b.Voltage, b.Series, b.Parallel, b.LeftOver, b.AsIs, []settingEntry{}}
		for _, s := range b.Settings {
			entry.Settings = append(entry.Settings, settingEntry(s))
		}
		e.Banks = append(e.Banks, entry)
	}
	for _, s := range a.Strings {
		e.Strings = append(e.Strings, stringsEntry{s.Array, filled(s.CopyOf), s.Charger, s.Input, panelsEntries(s.Series), s.Parallel})
	}
	return e
}

func findingEntries(list []verdict.Verdict) []findingEntry {
	entries := make([]findingEntry, 0, len(list))
	for i := range list {
		v := verdictEntryOf(&list[i])
		entries = append(entries, findingEntry{v.Key, v.Rule, v.About, v.Which, v.Verdict, v.Grade, v.Title, v.Message, v.Is, v.Limits, v.Headroom, v.Missing})
	}
	return entries
}
