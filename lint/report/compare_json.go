package report

import (
	"io"
	"reflect"

	"stringline/lint"
	"stringline/lint/compare"
	"stringline/lint/facts"
	"stringline/lint/verdict"
)

// These types are the JSON of a comparison, format 1; schema/compare.schema.json
// is made from them. Within a format keys are added, never removed or retyped.

type comparisonDocument struct {
	Format    int                 `json:"format" jsonschema:"number of this format; keys are added within one, never removed or retyped"`
	Tool      toolEntry           `json:"tool"`
	Date      string              `json:"date" jsonschema:"yyyy-mm-dd, the day that decides the ends of waivers, on both sides"`
	Columns   columnUnit          `json:"columns" jsonschema:"what columns count"`
	Was       sideEntryJSON       `json:"was"`
	Now       sideEntryJSON       `json:"now"`
	Codebooks []bookChangeEntry   `json:"codebooks" jsonschema:"codebooks that are not the same on both sides, by name"`
	Designs   []comparedEntry     `json:"designs" jsonschema:"ordered by file; those that are the same on both sides are listed too"`
	Exit      int                 `json:"exit" jsonschema:"0 nothing got worse; 1 something got worse; 2 something could not be read, or a verdict is void"`
	Summary   comparisonSummaries `json:"summary"`
}

type sideEntryJSON struct {
	Label  string       `json:"label" jsonschema:"as people call the side: a path, or a commit as it was named"`
	Commit *string      `json:"commit" jsonschema:"full name of the commit; null where the side is none"`
	Errors []errorEntry `json:"errors" jsonschema:"errors of no one design"`
}

type bookChangeEntry struct {
	Name      string                 `json:"name"`
	Change    bookWord               `json:"change"`
	Was       *bookSideEntry         `json:"was"`
	Now       *bookSideEntry         `json:"now"`
	Params    []parameterChangeEntry `json:"params"`
	Grades    []gradeChangeEntry     `json:"grades"`
	RulesNew  []string               `json:"rules_new"`
	RulesGone []string               `json:"rules_gone"`
}

type bookSideEntry struct {
	Version string  `json:"version"`
	Edition *string `json:"edition"`
	Digest  string  `json:"digest"`
	Rules   int     `json:"rules"`
}

type parameterChangeEntry struct {
	Name string          `json:"name"`
	Was  *parameterEntry `json:"was" jsonschema:"null where there was no such parameter"`
	Now  *parameterEntry `json:"now" jsonschema:"null where there is no such parameter any more"`
}

type gradeChangeEntry struct {
	Rule  string      `json:"rule"`
	Was   gradeWord   `json:"was"`
	Now   gradeWord   `json:"now"`
	WasAt *placeEntry `json:"was_at"`
	At    *placeEntry `json:"at"`
}

type comparedEntry struct {
	State       stateWord     `json:"state"`
	Moved       bool          `json:"moved" jsonschema:"its file has another name, or stands elsewhere"`
	File        *string       `json:"file" jsonschema:"null where the design is gone"`
	WasFile     *string       `json:"was_file" jsonschema:"null where the design is new"`
	Name        string        `json:"name"`
	WasName     string        `json:"was_name"`
	Revision    *string       `json:"revision"`
	WasRevision *string       `json:"was_revision"`
	Renamed     []renameEntry `json:"renamed" jsonschema:"blocks that have another label; ids elsewhere are those of now"`
	Changes     []changeEntry `json:"changes" jsonschema:"what is written otherwise"`
	Verdicts    []turnEntry   `json:"verdicts" jsonschema:"verdicts that differ in anything, worst first"`
	Facts       []movedEntry  `json:"facts" jsonschema:"facts that differ in their first 9 digits, worst first; facts of blocks that only one side has are not listed"`
	Errors      []errorEntry  `json:"errors"`
	WasErrors   []errorEntry  `json:"was_errors"`
}

type renameEntry struct {
	Was string      `json:"was"`
	Now string      `json:"now"`
	At  *placeEntry `json:"at"`
}

type changeEntry struct {
	Kind      changeWord  `json:"kind"`
	About     string      `json:"about" jsonschema:"id of the block; of a waiver RULE on SUBJECT"`
	Attribute *string     `json:"attribute" jsonschema:"null for a whole block"`
	Was       *string     `json:"was" jsonschema:"as written"`
	Now       *string     `json:"now" jsonschema:"as written"`
	WasAt     *placeEntry `json:"was_at"`
	At        *placeEntry `json:"at"`
}

type turnEntry struct {
	Key       string        `json:"key" jsonschema:"rule|about|which, of now; of a verdict that is gone as it was"`
	Direction directionWord `json:"direction"`
	Why       *string       `json:"why" jsonschema:"in a few words, where the verdicts do not say it"`
	Was       *verdictEntry `json:"was"`
	Now       *verdictEntry `json:"now"`
	Change    *float64      `json:"headroom_change" jsonschema:"headroom of now less that of was, as a share of the limit"`
}

type movedEntry struct {
	ID        string   `json:"id"`
	WasID     string   `json:"was_id"`
	Unit      string   `json:"unit"`
	Attribute bool     `json:"attribute" jsonschema:"written in a file, not computed"`
	Was       factSide `json:"was"`
	Now       factSide `json:"now"`
	Causes    []string `json:"causes" jsonschema:"ids of the blocks whose change moved it"`
	Judged    bool     `json:"judged" jsonschema:"a verdict that moved is about this very fact"`
}

type factSide struct {
	Known   bool         `json:"known"`
	Value   scalar       `json:"value" jsonschema:"null where unknown, and of a list or a series"`
	Values  []float64    `json:"values" jsonschema:"of a list; empty for what is none"`
	Series  *seriesEntry `json:"series" jsonschema:"the extent of a series; null for what is none"`
	AtLeast *float64     `json:"at_least" jsonschema:"a bound that holds although the value is unknown"`
	Missing []string     `json:"missing" jsonschema:"ids of the attributes to supply"`
}

type seriesEntry struct {
	Count int     `json:"count"`
	Least float64 `json:"least"`
	Most  float64 `json:"most"`
}

type comparisonSummaries struct {
	Designs int `json:"designs"`
	Changed int `json:"changed"`
	New     int `json:"new"`
	Gone    int `json:"gone"`
	Worse   int `json:"worse"`
	Better  int `json:"better"`
	Turned  int `json:"turned"`
	Lost    int `json:"headroom_lost"`
	Won     int `json:"headroom_won"`
	Held    int `json:"held"`
	Came    int `json:"came"`
	Left    int `json:"left"`
	Facts   int `json:"facts" jsonschema:"computed facts that moved; what is written in files is not counted"`
}

// Words from closed lists.
type (
	bookWord      string
	stateWord     string
	changeWord    string
	directionWord string
)

// CompareJSON writes a comparison as the JSON that schema/compare.schema.json
// describes.
func CompareJSON(w io.Writer, c *compare.Comparison) error {
	d := comparisonDocument{
		Format: Format, Tool: toolEntry{ToolName, c.Version}, Date: c.Date, Columns: "code_points",
		Was: sideJSON(&c.Was), Now: sideJSON(&c.Now),
		Codebooks: make([]bookChangeEntry, 0, len(c.Books)), Designs: make([]comparedEntry, 0, len(c.Designs)),
		Exit: c.Exit, Summary: comparisonSummaries(c.Summary),
	}
	for i := range c.Books {
		d.Codebooks = append(d.Codebooks, bookChangeOf(&c.Books[i]))
	}
	for i := range c.Designs {
		d.Designs = append(d.Designs, comparedOf(&c.Designs[i]))
	}
	return writeJSON(w, d)
}

func sideJSON(s *compare.Side) sideEntryJSON {
	return sideEntryJSON{s.Label, filled(s.Commit), errorEntries(s.Problems)}
}

func bookChangeOf(b *compare.BookChange) bookChangeEntry {
	side := func(u *lint.BookInUse) *bookSideEntry {
		if u == nil {
			return nil
		}
		return &bookSideEntry{u.Version, filled(u.Edition), u.Digest, len(u.Rules)}
	}
	e := bookChangeEntry{Name: b.Name, Change: "changed", Was: side(b.Was), Now: side(b.Now),
		Params: make([]parameterChangeEntry, 0, len(b.Parameters)), Grades: make([]gradeChangeEntry, 0, len(b.Grades)),
		RulesNew: list(b.RulesNew), RulesGone: list(b.RulesGone)}
	switch {
	case b.Was == nil:
		e.Change = "new"
	case b.Now == nil:
		e.Change = "gone"
	}
	parameter := func(p *lint.ParameterInUse) *parameterEntry {
		if p == nil {
			return nil
		}
		entry := parameterEntryOf(p)
		return &entry
	}
	for i := range b.Parameters {
		x := &b.Parameters[i]
		e.Params = append(e.Params, parameterChangeEntry{x.Name, parameter(x.Was), parameter(x.Now)})
	}
	for _, g := range b.Grades {
		e.Grades = append(e.Grades, gradeChangeEntry{g.Rule, gradeWord(g.Was), gradeWord(g.Now), place(g.WasAt), place(g.At)})
	}
	return e
}

func comparedOf(d *compare.Design) comparedEntry {
	e := comparedEntry{
		State: stateWord(d.State), Moved: d.Moved, File: filled(d.File), WasFile: filled(d.WasFile), Name: d.Name, WasName: d.WasName,
		Revision: filled(d.Revision), WasRevision: filled(d.WasRevision),
		Renamed: make([]renameEntry, 0, len(d.Renamed)), Changes: make([]changeEntry, 0, len(d.Changes)),
		Verdicts: make([]turnEntry, 0, len(d.Turns)), Facts: make([]movedEntry, 0, len(d.Facts)),
		Errors: errorEntries(d.Problems), WasErrors: errorEntries(d.WasProblems),
	}
	for _, r := range d.Renamed {
		e.Renamed = append(e.Renamed, renameEntry{r.Was, r.Now, place(r.At)})
	}
	for i := range d.Changes {
		c := &d.Changes[i]
		e.Changes = append(e.Changes, changeEntry{changeWord(c.Kind), c.About, filled(c.Attribute), filled(c.Was), filled(c.Now), place(c.WasAt), place(c.At)})
	}
	for i := range d.Turns {
		t := &d.Turns[i]
		entry := turnEntry{Key: eitherVerdict(t).Key(), Direction: directionWord(t.Direction), Why: filled(t.Why), Was: verdictOrNull(t.Was), Now: verdictOrNull(t.Now)}
		if by, ok := t.Change(); ok {
			entry.Change = number(&by)
		}
		e.Verdicts = append(e.Verdicts, entry)
	}
	for i := range d.Facts {
		f := &d.Facts[i]
		e.Facts = append(e.Facts, movedEntry{f.ID, f.WasID, f.Now.Unit, f.Attribute, factSideOf(&f.Was), factSideOf(&f.Now), list(f.Causes), f.Judged})
	}
	return e
}

func verdictOrNull(v *verdict.Verdict) *verdictEntry {
	if v == nil {
		return nil
	}
	e := verdictEntryOf(v)
	return &e
}

func factSideOf(f *facts.Fact) factSide {
	s := factSide{Known: f.Known, Values: []float64{}, Missing: list(f.Missing)}
	if !f.Known {
		if f.AtLeast != nil {
			bound := facts.InUnit(*f.AtLeast, f.Unit)
			s.AtLeast = number(&bound)
		}
		return s
	}
	switch value := f.Value().(type) {
	case []float64:
		if f.Kind == facts.List {
			s.Values = value
			break
		}
		s.Series = &seriesEntry{Count: len(value)}
		for i, v := range value {
			if i == 0 {
				s.Series.Least, s.Series.Most = v, v
			}
			s.Series.Least, s.Series.Most = min(s.Series.Least, v), max(s.Series.Most, v)
		}
	default:
		s.Value = scalar{value}
	}
	return s
}

// CompareSchema gives the JSON Schema (draft 2020-12) of what [CompareJSON]
// writes.
func CompareSchema() ([]byte, error) {
	return schemaOf[comparisonDocument]("what stringline compare --as json writes, format 1", typeSchemas{
		reflect.TypeFor[bookWord]():  words("changed", "new", "gone"),
		reflect.TypeFor[stateWord](): words(compare.Changed, compare.Same, compare.New, compare.Gone),
		reflect.TypeFor[changeWord](): words(compare.ValueSet, compare.ValueNew, compare.ValueGone,
			compare.BlockNew, compare.BlockGone, compare.PartNew, compare.PartGone, compare.FileOther, compare.WaiverNew, compare.WaiverGone),
		reflect.TypeFor[directionWord](): words(compare.Worse, compare.Better, compare.Turned,
			compare.Lost, compare.Won, compare.Held, compare.Came, compare.Left),
	})
}
