package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"
)

// manualDay is the day on which the words of the manual page that stand in this
// file were last changed. The rest is made from the commands.
const manualDay = "2026-11-25"

// manual writes the manual page of the whole program for man(1), in the macros of
// man(7): the same bytes each time.
func manual(root *cobra.Command) string {
	m := &manualPage{}
	fmt.Fprintf(&m.b, ".TH STRINGLINE 1 %s \"stringline %s\" \"User Commands\"\n", manualDay, programVersion)
	m.macro("SH", "NAME")
	m.text("stringline - " + root.Short)
	commands := leaves(root)
	m.macro("SH", "SYNOPSIS")
	for i, c := range commands {
		if i > 0 {
			m.macro("br")
		}
		name, rest, _ := strings.Cut(strings.TrimSuffix(c.UseLine(), " [flags]"), " ")
		m.text(bold(name) + " " + plainText(rest))
	}
	m.macro("SH", "DESCRIPTION")
	m.paragraphs(root.Long)
	m.macro("PP")
	m.paragraphs(manualAbout)
	m.macro("SH", "COMMANDS")
	for _, c := range commands {
		m.command(c)
	}
	m.macro("SH", "OPTIONS OF EVERY COMMAND")
	m.options(root.PersistentFlags())
	m.entry("--help", "tell about a command; stringline help COMMAND does the same")
	m.pairs("EXIT STATUS", manualExit)
	m.pairs("FILES", manualFiles)
	m.pairs("ENVIRONMENT", manualEnvironment)
	m.macro("SH", "EXAMPLES")
	first := true
	for _, c := range commands {
		for line := range strings.Lines(c.Example) {
			if !first {
				m.macro("br")
			}
			first = false
			m.text(bold(strings.TrimSpace(line)))
		}
	}
	m.macro("SH", "CAUTIONS")
	m.paragraphs(manualCautions)
	m.macro("SH", "SEE ALSO")
	m.text(bold("git") + "(1), " + bold("gitattributes") + "(5), " + bold("githooks") + "(5)")
	return m.b.String()
}

const manualAbout = `A design is a text file. Its values are written as people write them, with their
units: "37.4 V", "-27 degC", "16 mm2". What is not known stays unproven and names
what to supply; nothing is passed in silence.

A finding is a stop (do not build or energize), a fix (put right before sign-off)
or a point of advice. An unproven stop is a stop.`

// Rows of two columns: what, and what about it.
var (
	manualExit = [][2]string{
		{"0", "Nothing was found at or above the grade to reject; nothing got worse; the output is complete."},
		{"1", "Findings; something got worse; a test of a codebook failed; tidy --show would change something."},
		{"2", "A design, a codebook or an option could not be read, a verdict is void, no design or no rule was found, or the output could not be written."},
	}
	manualFiles = [][2]string{
		{"*.design.hcl", "A design."},
		{"*.parts.hcl", "Data sheets of parts, shared by designs."},
		{"workshop.hcl", "What a workshop sets for all designs at and below its folder: where parts are, which codebooks are in force with which figures, grades of rules."},
		{"codebook.hcl", "Begins a codebook, a set of rules; one folder beside it is one rule."},
		{"*.epw", "A weather file, where a site names one."},
	}
	manualEnvironment = [][2]string{
		{"COLUMNS", "A whole number: the width of text for people, on a terminal and elsewhere (used from 40 to 100; help from 32)."},
		{"NO_COLOR", "Not empty: no color, unless --color asks for it."},
		{"CLICOLOR_FORCE", "Neither empty nor 0: color also where no terminal is."},
		{"TERM", "dumb: no color and no progress."},
		{"PATH", "Where git is looked for, by compare --since alone. Variables that begin with GIT_ are not handed on to it."},
		{"GOGC", "Set: the collector of memory is left as it says."},
	}
)

const manualCautions = `These figures support, and do not replace, the code in force where the system
stands, the makers' manuals and a licensed person. Arrays are live in any light and
batteries cannot be switched off. A design that checks clean can still be built
badly, and one that compares as no worse can still be bad.

A codebook from outside runs in a process of its own, with limits on time and
memory; --trust lifts them, and a system without such limits runs it only with
--trust. stringline codebook test runs a codebook inside the program: name only
those that you trust.

Nothing is sent or fetched over a network.`

// leaves lists the commands that do something, in the order of their help; the
// hidden ones are not for people.
func leaves(c *cobra.Command) []*cobra.Command {
	if !c.HasAvailableSubCommands() {
		return []*cobra.Command{c}
	}
	var all []*cobra.Command
	for _, sub := range c.Commands() {
		if !sub.Hidden {
			all = append(all, leaves(sub)...)
		}
	}
	return all
}

type manualPage struct{ b strings.Builder }

// macro writes a request with its arguments, quoted.
func (m *manualPage) macro(name string, args ...string) {
	m.b.WriteString("." + name)
	for _, a := range args {
		fmt.Fprintf(&m.b, ` "%s"`, strings.ReplaceAll(plainText(a), `"`, `\(dq`))
	}
	m.b.WriteByte('\n')
}

// text writes lines that are marked up already. A line that begins like a request
// is kept from being one.
func (m *manualPage) text(words string) {
	if strings.HasPrefix(words, ".") || strings.HasPrefix(words, "'") {
		words = `\&` + words
	}
	m.b.WriteString(words + "\n")
}

// paragraphs writes plain words; an empty line parts paragraphs.
func (m *manualPage) paragraphs(words string) {
	for i, paragraph := range strings.Split(words, "\n\n") {
		if i > 0 {
			m.macro("PP")
		}
		for line := range strings.Lines(paragraph) {
			m.text(plainText(strings.TrimSpace(line)))
		}
	}
}

func (m *manualPage) command(c *cobra.Command) {
	m.macro("SS", strings.TrimSuffix(c.UseLine(), " [flags]"))
	words := c.Long
	if words == "" {
		words = capital(c.Short) + "."
	}
	m.paragraphs(words)
	m.options(c.LocalNonPersistentFlags())
}

func capital(words string) string {
	if words == "" {
		return ""
	}
	return strings.ToUpper(words[:1]) + words[1:]
}

func (m *manualPage) options(flags *pflag.FlagSet) {
	flags.VisitAll(func(f *pflag.Flag) {
		if f.Hidden || f.Name == "help" {
			return
		}
		m.entry(optionHead(f), optionWords(f))
	})
}

func (m *manualPage) entry(head, words string) {
	m.macro("TP")
	m.text(bold(head))
	m.text(plainText(words))
}

func (m *manualPage) pairs(title string, rows [][2]string) {
	m.macro("SH", title)
	for _, r := range rows {
		m.entry(r[0], r[1])
	}
}

func bold(words string) string { return `\fB` + plainText(words) + `\fR` }

// plainText keeps every character as it is: a backslash, and a hyphen that must
// be one when it is copied.
func plainText(words string) string {
	return strings.NewReplacer(`\`, `\e`, "-", `\-`, "'", `\(aq`, "`", `\(ga`, "^", `\(ha`, "~", `\(ti`).Replace(words)
}
