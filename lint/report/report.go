// Package report shows what a run found: as a deficiency list for people, as
// the JSON that scripts rely on, as tables and worksheets of facts.
//
// One entry function for each output: [Text] and [JSON] show a [lint.Result],
// [Facts], [FactsCSV] and [FactsJSON] the facts of one design, [Worksheet] and
// [WorksheetJSON] how one fact came about, [Commission] and [CommissionJSON] a
// plan of commissioning. All of them write to the writer that
// they are handed and return its error; none reads a clock, an environment or a
// file. The same input gives the same bytes.
//
// What comes from a design or a codebook is never written as it is: control
// characters, escape sequences and characters that reorder text are shown as
// their code, so that a design cannot paint on the reader's terminal.
package report

// Style paints words for people. Color never carries meaning alone: every
// painted word says the same in plain text. The meanings follow the safety-sign
// standards (ISO 3864, from memory): red prohibits, amber warns, blue tells what
// to do.
type Style interface {
	Stop(text string) string   // a stop, or a mark past its limit
	Fix(text string) string    // a fix
	Supply(text string) string // what to supply
}

// Page says how a text for people is laid out.
type Page struct {
	Style Style // nil: no color
	Width int   // columns of the terminal; 0: 80. Used from 40 to 100.
}

// ink is what a stretch of text is painted with.
type ink uint8

const (
	plain ink = iota
	inkStop
	inkFix
	inkSupply
)

func (i ink) paint(style Style, text string) string {
	if style == nil || text == "" {
		return text
	}
	switch i {
	case inkStop:
		return style.Stop(text)
	case inkFix:
		return style.Fix(text)
	case inkSupply:
		return style.Supply(text)
	}
	return text
}
