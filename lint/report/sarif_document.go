package report

// These types are the part of SARIF 2.1.0 (OASIS standard, errata 01) that this
// program writes. Names and meanings are the standard's; the numbers in the
// comments are its sections.

// sarifSchema identifies the standard's own schema; nothing is fetched from there.
const (
	sarifSchema  = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"
	sarifVersion = "2.1.0"
)

type sarifLog struct {
	Schema  string     `json:"$schema"`
	Version string     `json:"version"`
	Runs    []sarifRun `json:"runs"`
}

type sarifRun struct {
	Tool        sarifTool         `json:"tool"`
	Invocations []sarifInvocation `json:"invocations"`
	ColumnKind  string            `json:"columnKind"` // 3.14.17: what columns count
	Results     []sarifResult     `json:"results"`
	Properties  sarifRunBag       `json:"properties"`
}

type sarifTool struct {
	Driver     sarifComponent   `json:"driver"`
	Extensions []sarifComponent `json:"extensions"` // 3.18.3: one a codebook
}

type sarifComponent struct {
	Name             string             `json:"name"`
	Version          string             `json:"version,omitempty"`
	ShortDescription *sarifText         `json:"shortDescription,omitempty"`
	FullDescription  *sarifText         `json:"fullDescription,omitempty"`
	Rules            []sarifRule        `json:"rules"`
	Properties       *sarifComponentBag `json:"properties,omitempty"`
}

type sarifComponentBag struct {
	Edition  *string `json:"edition"`
	Digest   string  `json:"digest"`
	Embedded bool    `json:"embedded"`
	InForce  int     `json:"rules_in_force"` // those without a result are not described
}

// sarifRule is a reportingDescriptor (3.49).
type sarifRule struct {
	ID               string             `json:"id"`
	ShortDescription sarifText          `json:"shortDescription"`
	FullDescription  sarifText          `json:"fullDescription"`
	Help             sarifHelp          `json:"help"`
	Default          sarifConfiguration `json:"defaultConfiguration"`
	Properties       sarifRuleBag       `json:"properties"`
}

type sarifConfiguration struct {
	Level string `json:"level"`
}

type sarifRuleBag struct {
	Tags     []string `json:"tags"`
	Severity string   `json:"problem.severity"` // where a code host looks for it
	Grade    string   `json:"grade"`
}

type sarifText struct {
	Text string `json:"text"`
}

type sarifHelp struct {
	Text     string `json:"text"`
	Markdown string `json:"markdown"`
}

type sarifInvocation struct {
	Successful    bool                `json:"executionSuccessful"`
	ExitCode      int                 `json:"exitCode"`
	ExitWords     string              `json:"exitCodeDescription"`
	Notifications []sarifNotification `json:"toolExecutionNotifications"`
}

type sarifNotification struct {
	Level     string          `json:"level"`
	Message   sarifText       `json:"message"`
	Locations []sarifLocation `json:"locations,omitempty"`
}

type sarifResult struct {
	RuleID        string             `json:"ruleId"`
	Rule          sarifRuleReference `json:"rule"`
	Kind          string             `json:"kind"`
	Level         string             `json:"level"`
	Message       sarifText          `json:"message"`
	Locations     []sarifLocation    `json:"locations"`
	Related       []sarifLocation    `json:"relatedLocations,omitempty"`
	Fingerprints  map[string]string  `json:"partialFingerprints"`
	BaselineState string             `json:"baselineState,omitempty"` // 3.27.24
	Suppressions  []sarifSuppression `json:"suppressions,omitempty"`  // 3.27.23
	Properties    sarifResultBag     `json:"properties"`
}

// sarifRuleReference is a reportingDescriptorReference (3.52).
type sarifRuleReference struct {
	ID        string                   `json:"id"`
	Index     int                      `json:"index"`
	Component *sarifComponentReference `json:"toolComponent,omitempty"` // the driver where there is none
}

type sarifComponentReference struct {
	Name  string `json:"name"`
	Index int    `json:"index"`
}

type sarifResultBag struct {
	Key      string   `json:"key"`
	Verdict  string   `json:"verdict"`
	Grade    string   `json:"grade"`
	About    string   `json:"about"`
	Headroom *float64 `json:"headroom"`
}

type sarifLocation struct {
	ID       *int          `json:"id,omitempty"`
	Physical sarifPhysical `json:"physicalLocation"`
	Message  *sarifText    `json:"message,omitempty"`
}

type sarifPhysical struct {
	Artifact sarifArtifact `json:"artifactLocation"`
	Region   *sarifRegion  `json:"region,omitempty"`
}

type sarifArtifact struct {
	URI string `json:"uri"`
}

type sarifRegion struct {
	StartLine   int `json:"startLine"`
	StartColumn int `json:"startColumn"`
	EndLine     int `json:"endLine"`
	EndColumn   int `json:"endColumn"`
}

type sarifSuppression struct {
	Kind          string `json:"kind"`   // inSource: a waiver in the design; external: a baseline
	Status        string `json:"status"` // accepted
	Justification string `json:"justification"`
}

type sarifRunBag struct {
	Date    string       `json:"date"`
	Summary summaryEntry `json:"summary"`
	Cut     int          `json:"results_not_told"`
}
