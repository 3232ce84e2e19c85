package main

import "github.com/fatih/color"

// paint is the one place that knows colors. After the safety-sign standards
// (ISO 3864, from memory): red prohibits, amber warns, blue tells what to do.
type paint struct{ stop, fix, supply *color.Color }

func newPaint() *paint {
	p := &paint{color.New(color.FgRed, color.Bold), color.New(color.FgYellow), color.New(color.FgBlue)}
	// The library looks at the process by itself; the decision is ours.
	for _, c := range []*color.Color{p.stop, p.fix, p.supply} {
		c.EnableColor()
	}
	return p
}

func (p *paint) Stop(text string) string   { return p.stop.Sprint(text) }
func (p *paint) Fix(text string) string    { return p.fix.Sprint(text) }
func (p *paint) Supply(text string) string { return p.supply.Sprint(text) }

// colored decides: the option first, then NO_COLOR, then CLICOLOR_FORCE, then
// whether people see the output on a terminal that knows colors.
func (s *streams) colored(option string) bool {
	switch {
	case option == "always":
		return true
	case option == "never":
		return false
	case s.env("NO_COLOR") != "":
		return false
	case s.env("CLICOLOR_FORCE") != "" && s.env("CLICOLOR_FORCE") != "0":
		return true
	}
	return s.outTerminal && s.env("TERM") != "dumb"
}
