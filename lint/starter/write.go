package starter

import (
	"bytes"
	"embed"
	"fmt"
	"regexp"
	"strings"
	"text/template"

	"stringline/schema/hcltext"
	"stringline/schema/quantity"
	"stringline/schema/source"
)

//go:embed template
var templates embed.FS

// Hooks is the folder of git hooks in a first workshop.
const Hooks = "hooks"

// Files that every first workshop has.
const (
	partsFile    = "parts/invented.parts.hcl"
	workshopFile = "workshop.hcl"
	hookFile     = Hooks + "/pre-commit"
)

// Fixed lists the files that every first workshop has under the same names, as
// paths from its folder. The design's name follows from its title.
func Fixed() []string { return []string{partsFile, workshopFile, hookFile} }

// File is one file of a workshop: its path below the workshop's folder, with "/"
// between folders.
type File struct {
	Path string
	Text []byte
	Run  bool // a program, to be run by git
}

// Write gives the files of a first workshop, tidy and ready to be judged. Each
// answer must have gone through [Question.Check]. hooks is the folder of hooks as
// git is to be told it. The error says which answers do not go together.
func Write(a Answers, hooks string) ([]File, error) {
	for _, q := range Questions() {
		if q.Needed && a[q.Option] == "" {
			return nil, fmt.Errorf("%s: nothing can be drawn without it", q.Option)
		}
	}
	p, err := newPlan(a)
	if err != nil {
		return nil, err
	}
	p.HooksPath, p.DesignFile = hooks, fileName(p.Name)+".design.hcl"
	var files []File
	for _, f := range []struct{ path, template string }{
		{p.DesignFile, "design.hcl"}, {partsFile, "parts.hcl"}, {workshopFile, "workshop.hcl"}, {hookFile, "pre-commit"},
	} {
		text, err := p.fill(f.template)
		if err != nil {
			return nil, err
		}
		one := File{Path: f.path, Text: text, Run: f.template == "pre-commit"}
		if !one.Run {
			tidy, problems := hcltext.Tidy(source.NewFile(f.path, text))
			if len(problems) > 0 {
				return nil, fmt.Errorf("writing %s: %w", f.path, problems)
			}
			one.Text = tidy
		}
		files = append(files, one)
	}
	return files, nil
}

func (p *plan) fill(name string) ([]byte, error) {
	t, err := template.New("").Funcs(template.FuncMap{
		"plan": p.promise, "given": p.given, "declared": p.declared, "q": quoted,
		"volts": p.scaled, "cells": func(n int) int { return n * p.V / 12 },
	}).ParseFS(templates, "template/"+name+".tmpl")
	if err != nil {
		return nil, fmt.Errorf("reading the template %s: %w", name, err)
	}
	var b bytes.Buffer
	if err := t.ExecuteTemplate(&b, name+".tmpl", p); err != nil {
		return nil, fmt.Errorf("filling the template %s: %w", name, err)
	}
	// A line of blanks is one on which a template had nothing to say.
	return blanks.ReplaceAll(b.Bytes(), nil), nil
}

var blanks = regexp.MustCompile(`(?m)^[ \t]+\n`)

var notInNames = regexp.MustCompile(`[^a-z0-9]+`)

// fileName makes a title fit for a file: "Larch Col hut" is larch-col-hut.
func fileName(title string) string {
	name := strings.Trim(notInNames.ReplaceAllString(strings.ToLower(title), "-"), "-")
	if name == "" {
		return "first"
	}
	return name[:min(len(name), 40)]
}

// run describes a cable run. inside: it lies where people and devices are.
func (p *plan) run(what string, c conductor, length, ambient, method string, inside bool) run {
	r := run{What: what, Length: length, Ambient: ambient, Method: method, Terminal: "75 degC", Indoors: inside,
		Boat: p.Place == "boat" || p.Place == "vehicle" || p.Code == "marine" || p.Code == "vehicle"}
	r.Cable = cable{Size: c.metric, Strand: "class_5", Insulation: "90 degC", Ampacity: c.ampacity, Tinned: p.Code == "marine" || what == "string_run"}
	if p.Code == "us_2023" {
		r.Cable.Size = c.gauge
		r.Grounding = c.ground
	}
	switch {
	case p.Code == "marine":
		r.Cable.Insulation = "105 degC"
	case !inside && p.Code != "us_2023":
		r.Cable.Insulation = "120 degC"
	}
	kind := "cable"
	if !inside {
		kind = "cable-pv"
	}
	r.Cable.Part = "invented-" + kind + "-" + fileName(r.Cable.Size)
	return r
}

func (p *plan) insideMethod() string {
	if p.Code == "us_2023" {
		return "conduit"
	}
	return "surface"
}

// warmer adds kelvins to a temperature as written.
func warmer(temperature string, kelvins float64) string {
	q, err := quantity.ParseAs(temperature, "degC")
	if err != nil { // checked before
		return ""
	}
	return number(quantity.MustLookup("degC").FromSI(q.SI+kelvins)) + " degC"
}

// numbers gives the answers that sizes follow from, 0 where one is not known.
func (a Answers) numbers() (numbers, error) {
	var n numbers
	for _, q := range Questions() {
		into := map[string]*float64{"panels": &n.panels, "batteries": &n.batteries, "dc-power": &n.dc, "ac-power": &n.ac, "ac-surge": &n.surge, "run": &n.run}[q.Option]
		if into == nil || a[q.Option] == "" {
			continue
		}
		v, err := q.read(a[q.Option])
		if err != nil {
			return n, err
		}
		*into = v.SI
	}
	return n, nil
}
