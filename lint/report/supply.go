package report

import (
	"fmt"
	"slices"
	"strings"

	"stringline/lint/verdict"
)

// dataSheets are the kinds of block whose values a data sheet gives.
var dataSheets = []string{"panel", "controller", "battery", "inverter", "converter", "cable"}

// placed are the kinds of subject whose id goes on with the id of the block
// that they stand in.
var placed = []string{"cable_run", "protection", "disconnect"}

// subjectOf splits a fact's id into its subject's id and the fact's own name.
// The number of parts of a subject's id follows from its kind (spec, part 2).
func subjectOf(id string) (subject, name string) {
	parts := strings.Split(id, ".")
	n := subjectParts(parts)
	if n >= len(parts) {
		n = len(parts) - 1
	}
	return strings.Join(parts[:n], "."), strings.Join(parts[n:], ".")
}

func subjectParts(parts []string) int {
	switch {
	case len(parts) == 0:
		return 0
	case parts[0] == "site" || parts[0] == "grounding" || parts[0] == "system":
		return 1
	case parts[0] == "string" || parts[0] == "pv_input":
		return 3
	case slices.Contains(placed, parts[0]):
		n := 1 + subjectParts(parts[1:])
		if len(parts) > n && parts[n] == "each" {
			n++
		}
		return n
	}
	return 2
}

// supplies says what to supply, one entry for each subject: charge_current_max
// and chemistry of battery "fell-200", from its data sheet.
func supplies(missing []string) []string {
	type group struct {
		subject string
		names   []string
	}
	var groups []*group
	for _, id := range missing {
		subject, name := subjectOf(id)
		if book, question, declared := declaredOf(name); declared {
			subject, name = subject+", in its declared "+quoted(book), question
		}
		i := slices.IndexFunc(groups, func(g *group) bool { return g.subject == subject })
		if i < 0 || subject == "" {
			groups = append(groups, &group{subject, []string{name}})
		} else if !slices.Contains(groups[i].names, name) {
			groups[i].names = append(groups[i].names, name)
		}
	}
	words := make([]string, len(groups))
	for i, g := range groups {
		if g.subject == "" {
			words[i] = g.names[0]
			continue
		}
		words[i] = enumerate(g.names) + " of " + subjectWords(g.subject)
	}
	return words
}

// lacks says what an unknown wants: what to supply, and why a method has no answer
// although all that it reads is given.
func lacks(missing []string, because string) string {
	var parts []string
	if len(missing) > 0 {
		parts = append(parts, "supply "+strings.Join(supplies(missing), "; "))
	}
	if because != "" {
		parts = append(parts, "no answer: "+because)
	}
	return strings.Join(parts, "; ")
}

// reason is why a verdict is as it is, where its sentence and its measured values
// do not say that already.
func reason(v *verdict.Verdict) string {
	if v.Because == v.Message {
		return ""
	}
	for _, m := range measures(v) {
		if strings.Contains(m.note, v.Because) {
			return ""
		}
	}
	return v.Because
}

// enumerate joins words as a sentence does.
func enumerate(words []string) string {
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	last := len(words) - 1
	return strings.Join(words[:last], ", ") + " and " + words[last]
}

// subjectWords names a subject as a person would: battery "fell-200", from its
// data sheet.
func subjectWords(subject string) string {
	kind, label, labeled := strings.Cut(subject, ".")
	switch {
	case !labeled, slices.Contains(placed, kind), kind == "string", kind == "pv_input", strings.Contains(label, ","):
		return subject
	case slices.Contains(dataSheets, kind):
		return fmt.Sprintf("%s %q, from its data sheet", kind, label)
	}
	return fmt.Sprintf("%s %q", kind, label)
}

// declaredOf reads "declared.BOOK.ATTRIBUTE".
func declaredOf(name string) (book, question string, ok bool) {
	rest, ok := strings.CutPrefix(name, "declared.")
	if !ok {
		return "", "", false
	}
	return strings.Cut(rest, ".")
}
