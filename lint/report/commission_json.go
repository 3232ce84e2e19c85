package report

import (
	"io"
	"reflect"

	"stringline/lint/commission"
)

// CommissionJSON writes a plan of commissioning as the JSON that
// schema/commission.schema.json describes: format 1, numbers to 9 significant
// digits, every key there. version is the program's, exit the state that the run
// ends with.
func CommissionJSON(w io.Writer, plan *commission.Plan, version string, exit int) error {
	return writeJSON(w, planEntryOf(plan, version, exit))
}

// CommissionSchema gives the JSON Schema (draft 2020-12) of what [CommissionJSON]
// writes, made from the Go types.
func CommissionSchema() ([]byte, error) {
	return schemaOf[planEntry]("what stringline commission --as json writes, format 1", typeSchemas{
		reflect.TypeFor[sectionWord](): words(commission.Dead, commission.Battery, commission.Strings, commission.Order, commission.Settings,
			commission.Live, commission.Functional, commission.Labels),
		reflect.TypeFor[lineKindWord](): words(commission.Check, commission.Measure, commission.Set, commission.Do),
		reflect.TypeFor[lineStateWord](): words(commission.NotMeasured, commission.InBand, commission.OutOfBand, commission.Waived,
			commission.Unproven, commission.ByHand),
		reflect.TypeFor[expectWord](): words(commission.Between, commission.AtMost, commission.AtLeast, commission.Equals),
	})
}

type planEntry struct {
	Format     int           `json:"format" jsonschema:"number of this format; keys are added within one, never removed or retyped"`
	Tool       toolEntry     `json:"tool"`
	Date       string        `json:"date" jsonschema:"yyyy-mm-dd, the day that decides the ends of waivers"`
	Columns    columnUnit    `json:"columns" jsonschema:"what columns count"`
	File       string        `json:"file" jsonschema:"relative path with /; - for standard input"`
	Workshop   *string       `json:"workshop" jsonschema:"its workshop file"`
	Name       string        `json:"name"`
	Revision   *string       `json:"revision"`
	Digest     string        `json:"digest" jsonschema:"over all files that were read"`
	Codebooks  []planBook    `json:"codebooks" jsonschema:"codebooks that judged the design"`
	Waivers    []planWaiver  `json:"waivers" jsonschema:"waivers in force"`
	Now        planNow       `json:"now" jsonschema:"light and warmth that expected readings are given for"`
	Energize   bool          `json:"energize" jsonschema:"false where a stop was found or is unproven, a verdict is void, or something could not be read"`
	Standing   string        `json:"standing" jsonschema:"what the verdicts make of energizing, in one sentence"`
	Findings   []planFinding `json:"findings" jsonschema:"open findings of the check, worst first"`
	Errors     []errorEntry  `json:"errors"`
	Hazards    []string      `json:"hazards"`
	Serials    []planBlank   `json:"serials" jsonschema:"devices whose serial number and firmware are noted"`
	Blanks     []planBlank   `json:"blanks" jsonschema:"what else is noted by hand"`
	Sections   []planSection `json:"sections" jsonschema:"in the order in which they are done; all are there"`
	Tables     []planTable   `json:"tables" jsonschema:"what a meter shows on each string over warmth and light"`
	Signatures []planBlank   `json:"signatures"`
	Exit       int           `json:"exit" jsonschema:"0 nothing found; 1 findings, or a reading outside its band or unproven; 2 something could not be read, or a verdict is void"`
	Summary    planSummary   `json:"summary"`
}

type planBook struct {
	Name    string  `json:"name"`
	Version *string `json:"version"`
	Edition *string `json:"edition"`
	Digest  *string `json:"digest"`
}

type planWaiver struct {
	Rule       string `json:"rule"`
	About      string `json:"about"`
	Reason     string `json:"reason"`
	ApprovedBy string `json:"approved_by"`
	Expires    string `json:"expires"`
}

type planNow struct {
	CellTemperature *float64 `json:"cell_temperature" jsonschema:"degC; null where it was not given"`
	Irradiance      *float64 `json:"irradiance" jsonschema:"W/m2 in the plane of the array; null where it was not given"`
	Missing         []string `json:"missing" jsonschema:"now.cell_temperature and now.irradiance where they were not given"`
	Note            *string  `json:"note" jsonschema:"a warning that the light is too faint"`
}

type planFinding struct {
	Grade   gradeWord   `json:"grade"`
	Verdict outcomeWord `json:"verdict"`
	Rule    string      `json:"rule"`
	About   string      `json:"about"`
	Which   *string     `json:"which"`
	Message string      `json:"message"`
	Missing []string    `json:"missing"`
}

type planBlank struct {
	About *string `json:"about" jsonschema:"id of the block that it is about"`
	What  string  `json:"what"`
	Count int     `json:"count"`
}

type planSection struct {
	Key      sectionWord `json:"key"`
	Title    string      `json:"title"`
	Cautions []string    `json:"cautions" jsonschema:"to be read before anything of the section is done"`
	Lines    []planLine  `json:"lines"`
}

type planLine struct {
	Number   int            `json:"number" jsonschema:"from 1, through all sections"`
	Key      string         `json:"key" jsonschema:"section|about|what: the same from run to run"`
	Kind     lineKindWord   `json:"kind" jsonschema:"looked at, measured, programmed and read back, or done"`
	About    string         `json:"about" jsonschema:"id of the subject; system for the whole"`
	With     []string       `json:"with" jsonschema:"further subjects that the line is about"`
	Says     string         `json:"says"`
	Caution  *string        `json:"caution" jsonschema:"to be read before the step"`
	Expect   []planExpected `json:"expect" jsonschema:"what is due first, then limits"`
	Of       *string        `json:"of" jsonschema:"what a reading block says to record it; null where the design has no place for it"`
	Unit     string         `json:"unit" jsonschema:"of its reading boxes"`
	Due      int            `json:"due" jsonschema:"how many readings it wants"`
	Found    *float64       `json:"found" jsonschema:"what the readings of other lines come to, where it is judged on them"`
	Readings []planReading  `json:"readings"`
	Remains  int            `json:"remains" jsonschema:"how many of those due are not recorded"`
	State    lineStateWord  `json:"state" jsonschema:"by_hand where the design has no place for it"`
	Because  *string        `json:"because"`
}

type planExpected struct {
	ID        *string    `json:"id" jsonschema:"of the fact; one of the moment begins with now. and is no fact of the design; null where nothing in the design tells it"`
	Name      string     `json:"name"`
	Relation  expectWord `json:"relation"`
	Value     scalar     `json:"value" jsonschema:"null where unknown"`
	Unit      string     `json:"unit"`
	Low       *float64   `json:"low" jsonschema:"lower end of the band, itself allowed"`
	High      *float64   `json:"high" jsonschema:"upper end of the band, itself allowed"`
	Tolerance *float64   `json:"tolerance" jsonschema:"half width of the band as a share of the value"`
	Says      *string    `json:"says" jsonschema:"workings in one line"`
	Missing   []string   `json:"missing" jsonschema:"ids of what would make it known"`
	Supply    *string    `json:"supply" jsonschema:"what to supply where no id names it"`
	Assumed   []string   `json:"assumed"`
	Source    *string    `json:"source"`
}

type planReading struct {
	ID              string        `json:"id"`
	Title           *string       `json:"title"`
	Taken           *string       `json:"taken"`
	Of              string        `json:"of"`
	Value           *float64      `json:"value"`
	Unit            string        `json:"unit"`
	CellTemperature *float64      `json:"cell_temperature"`
	Irradiance      *float64      `json:"irradiance"`
	Expected        *float64      `json:"expected" jsonschema:"what was due at its own light and warmth"`
	Low             *float64      `json:"low"`
	High            *float64      `json:"high"`
	Tolerance       *float64      `json:"tolerance"`
	Difference      *float64      `json:"difference" jsonschema:"(value - expected) / expected"`
	AtCold          *float64      `json:"at_cold" jsonschema:"V: what an open-circuit voltage comes to on the coldest morning"`
	Limit           *float64      `json:"limit" jsonschema:"V: what the controller bears there"`
	State           lineStateWord `json:"state"`
	Because         *string       `json:"because"`
	Missing         []string      `json:"missing"`
	At              *placeEntry   `json:"at"`
}

type planTable struct {
	ID       string    `json:"id"`
	About    string    `json:"about"`
	Name     string    `json:"name"`
	Unit     string    `json:"unit"`
	Over     overEntry `json:"over"`
	Values   []float64 `json:"values" jsonschema:"as many as over has; none where they are unknown"`
	Constant string    `json:"constant" jsonschema:"what is held"`
	Missing  []string  `json:"missing"`
	Because  *string   `json:"because" jsonschema:"why there is no answer although all that it rests on is given"`
	Assumed  []string  `json:"assumed"`
}

type planSummary struct {
	Lines     int `json:"lines"`
	Due       int `json:"due" jsonschema:"readings that the design can record"`
	Recorded  int `json:"recorded"`
	Remain    int `json:"remain"`
	ByHand    int `json:"by_hand" jsonschema:"lines that the design has no place for"`
	InBand    int `json:"in_band"`
	OutOfBand int `json:"out_of_band"`
	Waived    int `json:"waived"`
	Unproven  int `json:"unproven"`
	Apart     int `json:"apart" jsonschema:"lines whose readings should agree and do not"`
}

// Words from closed lists.
type (
	sectionWord   string
	lineKindWord  string
	lineStateWord string
	expectWord    string
)
