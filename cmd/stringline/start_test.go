package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// On a terminal each question is asked with its reason and an example, and asked
// again where the answer cannot be read. What an option answers is not asked.
func TestStartAsks(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "cabin")
	s, out, said := testStreams(nil)
	s.inTerminal = true
	answers := []string{
		"Larch Col hut", "", "", "iec", "46.5deg", "", "", "-20", "-27 degC", "-28 degC", "29 degC", "", "", "12 m",
		"24 V", "lifepo4", "2", "5 degC", "4 degC", "30 degC", "3.5", "5", "4", "60 W", "4", "", "",
	}
	s.in = strings.NewReader(strings.Join(answers, "\n") + "\n")
	if code := run(t.Context(), []string{"start", dir, "--place", "building"}, s); code != 0 {
		t.Fatalf("exit status %d: %s", code, said)
	}
	for _, want := range []string{
		"Which code is in force there?\n", "It judges conductors", "(us_2023, iec, marine, vehicle, none) ",
		"hottest: coldest, -27 degC, is above hottest, -28 degC\n  (such as 29 degC; empty: left out) ",
		"bank-hottest: bank-coldest, 5 degC, is above bank-hottest, 4 degC\n", "panels: 5 do not make strings of 2, as 24 V needs them\n",
		"code: nothing can be drawn without it", `found "-20" without a unit`, "panels: expected a whole number, found 3.5",
		"(such as -27 degC; empty: left out) ", "(yes, no; empty: no) ",
	} {
		if !strings.Contains(said.String(), want) {
			t.Errorf("the questions lack %q:\n%s", want, said)
		}
	}
	for _, none := range []string{"What does it stand in or on?", "By which standard", "moment of starting"} {
		if strings.Contains(said.String(), none) {
			t.Errorf("asked needlessly: %q", none)
		}
	}
	if !strings.Contains(out.String(), "Not known, so left out of the design: longitude, elevation, tilt, azimuth.\nWhat a build must keep as planned stands in the design as comments") {
		t.Errorf("put out:\n%s", out)
	}
	text, err := os.ReadFile(filepath.Join(dir, "larch-col-hut.design.hcl"))
	if err != nil || !strings.Contains(string(text), `  latitude = "46.5 deg" #`) || !strings.Contains(string(text), `# longitude = "9.9 deg" # not known yet`) {
		t.Errorf("the design (%v):\n%s", err, text)
	}
	if info, err := os.Stat(filepath.Join(dir, "hooks", "pre-commit")); err != nil || info.Mode().Perm()&0o111 == 0 {
		t.Errorf("the hook cannot be run: %v, %v", info, err)
	}
}

// An option that does not go with one before it ends the questions at once.
func TestStartRefusesOptionsBeforeItAsks(t *testing.T) {
	s, _, said := testStreams(nil)
	s.inTerminal = true
	s.in = strings.NewReader(strings.Repeat("\n", 3) + "iec\n" + strings.Repeat("\n", 40))
	if code := run(t.Context(), []string{"start", filepath.Join(t.TempDir(), "cabin"), "--place", "building", "--title", "x", "--coldest=20degC", "--hottest=10degC"}, s); code != 2 {
		t.Errorf("exit status %d", code)
	}
	if !strings.Contains(said.String(), "--hottest: coldest, 20 degC, is above hottest, 10 degC") || strings.Contains(said.String(), "Tilt of the panels") {
		t.Errorf("said %q", said)
	}
}

// Where a workshop stands already nobody is asked two dozen questions first.
func TestStartRefusesBeforeItAsks(t *testing.T) {
	for _, name := range []string{"workshop.hcl", "parts/invented.parts.hcl", "hooks/pre-commit"} {
		dir := t.TempDir()
		if err := createAll(dir, []newFile{{path: name, text: []byte("mine\n")}}); err != nil {
			t.Fatal(err)
		}
		s, _, said := testStreams(nil)
		s.inTerminal = true
		s.in = strings.NewReader("A hut\n")
		if code := run(t.Context(), []string{"start", dir}, s); code != 2 {
			t.Errorf("%s: exit status %d", name, code)
		}
		if !strings.Contains(said.String(), name+" is there already; nothing is written over") || strings.Contains(said.String(), "What is the system called?") {
			t.Errorf("%s: said %q", name, said)
		}
	}
}

// An input that ends writes nothing, and an answer cannot write on the terminal.
func TestStartEndsEarly(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "cabin")
	s, _, said := testStreams(nil)
	s.inTerminal = true
	s.in = strings.NewReader("A hut\n\x1b[2Jcastle\n")
	if code := run(t.Context(), []string{"start", dir}, s); code != 2 {
		t.Errorf("exit status %d", code)
	}
	if !strings.Contains(said.String(), "the input ended at the question for place; nothing was written") || strings.Contains(said.String(), "\x1b") {
		t.Errorf("said %q", said)
	}
	if _, err := os.Stat(dir); err == nil {
		t.Error("a folder was made")
	}
}
