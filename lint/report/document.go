package report

// These types are the JSON of a check, format 1: the contract that scripts rely
// on. The schema (schema/check.schema.json) is made from them and nowhere else.
// Within a format keys are added, never removed or retyped; every key is there,
// null or [] where nothing is to be told.

// Format is the number of the JSON's format.
const Format = 1

// document is the whole. It is written as it grows (see [NewJSON]): what stands
// before the designs is known when a run begins, what stands behind them at its end.
type document struct {
	Format    int             `json:"format" jsonschema:"number of this format; keys are added within one, never removed or retyped"`
	Tool      toolEntry       `json:"tool"`
	Date      string          `json:"date" jsonschema:"yyyy-mm-dd, the day that decides the ends of waivers"`
	Columns   columnUnit      `json:"columns" jsonschema:"what columns count"`
	Designs   []designEntry   `json:"designs" jsonschema:"ordered by file"`
	Codebooks []codebookEntry `json:"codebooks" jsonschema:"codebooks that judged at least one design"`
	Baseline  *baselineEntry  `json:"baseline" jsonschema:"what became of the findings that were accepted before; null without a baseline"`
	Errors    []errorEntry    `json:"errors" jsonschema:"errors of no one design: a path, a workshop file, a codebook, the baseline, a run that was called off"`
	Exit      int             `json:"exit" jsonschema:"0 nothing at or above the grade to reject; 1 findings; 2 something could not be read, or a verdict is void"`
	Summary   summaryEntry    `json:"summary"`
}

type toolEntry struct {
	Name    string `json:"name"`
	Version string `json:"version"`
}

type codebookEntry struct {
	Name     string           `json:"name"`
	Version  string           `json:"version"`
	Edition  *string          `json:"edition" jsonschema:"edition of the code that the codebook follows"`
	Digest   string           `json:"digest" jsonschema:"sha256: and 64 hexadecimal digits"`
	Embedded bool             `json:"embedded" jsonschema:"the codebook is part of the program"`
	Params   []parameterEntry `json:"params"`
}

type parameterEntry struct {
	Name  string      `json:"name"`
	Value scalar      `json:"value"`
	Unit  string      `json:"unit"`
	SetAt *placeEntry `json:"set_at" jsonschema:"place in the workshop file; null where the codebook's default stands"`
}

type designEntry struct {
	File     string         `json:"file" jsonschema:"relative path with /; - for standard input"`
	Workshop *string        `json:"workshop" jsonschema:"its workshop file"`
	Name     string         `json:"name"`
	Revision *string        `json:"revision"`
	Digest   string         `json:"digest" jsonschema:"over all files that were read"`
	Verdicts []verdictEntry `json:"verdicts" jsonschema:"ordered by grade, rule, about, which; those that do not apply are listed too but are no judgements"`
	Errors   []errorEntry   `json:"errors"`
	Supply   []supplyEntry  `json:"supply" jsonschema:"what leaves findings unproven: the worst grade first, then what most findings want"`
}

type supplyEntry struct {
	ID       *string   `json:"id" jsonschema:"id of the attribute to supply; null where a method has no answer"`
	Because  *string   `json:"because" jsonschema:"why a method has no answer although all that it rests on is given; null for an attribute"`
	Grade    gradeWord `json:"grade" jsonschema:"the worst grade of its findings"`
	Verdicts []string  `json:"verdicts" jsonschema:"keys of the findings that want it; one that wants several things stands under each"`
}

type verdictEntry struct {
	Key       string          `json:"key" jsonschema:"rule|about|which: the same from run to run"`
	Rule      string          `json:"rule"`
	About     string          `json:"about" jsonschema:"id of the subject"`
	Which     *string         `json:"which" jsonschema:"tells several verdicts of one rule on one subject apart"`
	Verdict   outcomeWord     `json:"verdict"`
	Grade     gradeWord       `json:"grade" jsonschema:"the grade in force"`
	BookGrade gradeWord       `json:"book_grade" jsonschema:"the grade that the codebook gives"`
	Title     string          `json:"title"`
	Message   string          `json:"message"`
	Relation  *relationWord   `json:"relation" jsonschema:"how is and limits are compared; null where nothing is"`
	Is        *measuredEntry  `json:"is" jsonschema:"what was found"`
	Limits    []measuredEntry `json:"limits" jsonschema:"what it was compared with; of all_equal the other formulas"`
	Spare     *spareEntry     `json:"spare" jsonschema:"distance to the limit, negative past it"`
	Headroom  *float64        `json:"headroom" jsonschema:"distance to the limit as a share of it, negative past it"`
	Because   *string         `json:"because" jsonschema:"the rule's own words: why it breaks, or why it does not apply; of an unproven verdict why a method has no answer although all that it rests on is given"`
	Missing   []string        `json:"missing" jsonschema:"ids of the attributes to supply"`
	Assumed   []string        `json:"assumed" jsonschema:"ids of facts that were assumed"`
	Params    []string        `json:"params" jsonschema:"names of the codebook's parameters that it rests on"`
	Waiver    *waiverEntry    `json:"waiver"`
	Fault     *faultEntry     `json:"fault" jsonschema:"why the rule failed; void verdicts only"`
	Accepted  *acceptedEntry  `json:"accepted" jsonschema:"the baseline's line for this finding; null where there is none"`
	Remedy    *string         `json:"remedy"`
	Source    string          `json:"source" jsonschema:"where the rule comes from"`
	At        []placeEntry    `json:"at" jsonschema:"the header of the subject's block, then the deciding attributes"`
}

type measuredEntry struct {
	ID      *string  `json:"id" jsonschema:"id of the fact or parameter; null for a formula"`
	Formula *string  `json:"formula" jsonschema:"the formula in words; null for a fact"`
	Value   scalar   `json:"value" jsonschema:"null where unknown"`
	Unit    string   `json:"unit"`
	AtLeast *float64 `json:"at_least" jsonschema:"a bound that holds although the value is unknown"`
}

type spareEntry struct {
	Value float64 `json:"value"`
	Unit  string  `json:"unit"`
}

type waiverEntry struct {
	Reason     string      `json:"reason"`
	ApprovedBy string      `json:"approved_by"`
	Expires    string      `json:"expires" jsonschema:"yyyy-mm-dd, in force through that day"`
	At         *placeEntry `json:"at"`
}

type acceptedEntry struct {
	Since    string      `json:"since" jsonschema:"yyyy-mm-dd, the day when it was accepted"`
	Verdict  outcomeWord `json:"verdict" jsonschema:"as it was then; grade, found and headroom likewise"`
	Grade    gradeWord   `json:"grade"`
	Found    *string     `json:"found"`
	Headroom *float64    `json:"headroom"`
	Worse    *string     `json:"worse" jsonschema:"why it is worse now, so that it counts as a finding; null where it is not"`
	At       *placeEntry `json:"at" jsonschema:"its line in the baseline"`
}

type baselineEntry struct {
	File     string      `json:"file"`
	Accepted int         `json:"accepted" jsonschema:"findings that it accepts"`
	Worse    int         `json:"worse" jsonschema:"findings that got worse since they were accepted"`
	New      int         `json:"new" jsonschema:"findings that it does not list"`
	Gone     []goneEntry `json:"gone" jsonschema:"findings that it lists and that are there no more"`
}

type goneEntry struct {
	File  string      `json:"file" jsonschema:"the design, relative to the baseline's folder"`
	Rule  string      `json:"rule"`
	About string      `json:"about"`
	Which *string     `json:"which"`
	Since string      `json:"since"`
	At    *placeEntry `json:"at"`
}

type faultEntry struct {
	Message string      `json:"message"`
	At      *placeEntry `json:"at"`
}

type errorEntry struct {
	Kind     string      `json:"kind" jsonschema:"one word from a closed list"`
	Message  string      `json:"message"`
	Block    *string     `json:"block" jsonschema:"id of the block that it stands in"`
	Expected *string     `json:"expected"`
	Found    *string     `json:"found"`
	Near     *string     `json:"near" jsonschema:"the nearest known name"`
	At       *placeEntry `json:"at"`
}

type placeEntry struct {
	File      string `json:"file"`
	Line      int    `json:"line" jsonschema:"from 1; 0 where the whole file is meant"`
	Column    int    `json:"column" jsonschema:"from 1, in code points"`
	EndLine   int    `json:"end_line"`
	EndColumn int    `json:"end_column" jsonschema:"one past the last"`
}

type summaryEntry struct {
	Designs      int `json:"designs"`
	Rules        int `json:"rules"`
	Judgements   int `json:"judgements" jsonschema:"verdicts without those that do not apply"`
	Meets        int `json:"meets"`
	Breaks       int `json:"breaks"`
	Unproven     int `json:"unproven"`
	Waived       int `json:"waived"`
	Void         int `json:"void"`
	DoesNotApply int `json:"does_not_apply"`
	Accepted     int `json:"accepted" jsonschema:"of those that break or are unproven: accepted by the baseline, and no worse since"`
	NotJudged    int `json:"not_judged" jsonschema:"designs that a run which was called off did not come to"`
}

// scalar is a number, a word, a yes or no, or null where unknown.
type scalar struct{ value any }

// MarshalJSON writes the value that it holds.
func (s scalar) MarshalJSON() ([]byte, error) { return marshal(s.value) }

// Words from closed lists.
type (
	outcomeWord  string
	gradeWord    string
	relationWord string
	columnUnit   string
)
