package source_test

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"stringline/schema/source"
)

// The large hostile inputs: texts that send the parser into minutes, gigabytes
// or a stack overflow. All of them are refused, whether by their size or by
// what is in them; where size alone would do, a piece just within it is tried too.
func bombs() map[string]string {
	bombs := map[string]string{
		"80k parentheses":       "x = " + strings.Repeat("(", 80_000) + "1" + strings.Repeat(")", 80_000),
		"100k lists":            "x = " + strings.Repeat("[", 100_000) + strings.Repeat("]", 100_000),
		"100k templates":        "x = " + strings.Repeat(`"${`, 100_000) + "1" + strings.Repeat(`}"`, 100_000),
		"1M unary not":          "x = " + strings.Repeat("!", 1_000_000) + "true",
		"1M unary minus":        "x = " + strings.Repeat("-", 1_000_000) + "1",
		"1M nested blocks":      strings.Repeat("a {\n", 1_000_000) + strings.Repeat("}\n", 1_000_000),
		"100k digits":           "x = " + strings.Repeat("9", 100_000),
		"10 MB line":            "x = \"" + strings.Repeat("a", 10<<20) + "\"",
		"1 MB string":           "x = \"" + strings.Repeat("a", 1<<20) + "\"",
		"100k sibling blocks":   strings.Repeat("a {}\n", 100_000),
		"100k attributes":       strings.Repeat("abc = 1\n", 100_000),
		"60k conditionals":      "x = " + strings.Repeat("a?b:", 60_000) + "c",
		"100k sums":             "x = 1" + strings.Repeat("+1", 100_000),
		"80k indexes":           "x = a" + strings.Repeat("[a]", 80_000),
		"100k attribute steps":  "x = a" + strings.Repeat(".a", 100_000),
		"40k for expressions":   "x = " + strings.Repeat("[for a in ", 20_000),
		"80k calls":             "x = " + strings.Repeat("f(", 80_000),
		"60k heredocs":          strings.Repeat("<<A\n", 60_000),
		"60k closed heredocs":   strings.Repeat("<<A\nA\n", 40_000),
		"80k objects":           "x = " + strings.Repeat("{a=", 80_000),
		"100k splats":           "x = a" + strings.Repeat("[*]", 80_000),
		"250k closing brackets": strings.Repeat("}", 250_000),
		"120k opening comments": strings.Repeat("/*", 120_000),
		"120k NULs in a line":   "x = \"" + strings.Repeat("\x00a", 120_000) + "\"",
		"120k invalid bytes":    "x = \"" + strings.Repeat("\xffa", 120_000) + "\"",
		"200k lone CR":          strings.Repeat("\r", 200_000),
		"250k conflict signs":   strings.Repeat("<", 250_000),
		"30k conflict markers":  strings.Repeat("<<<<<<<\n", 30_000),
		"120k bad escapes":      "x = \"" + strings.Repeat(`\q`, 120_000) + "\"",
		"250k line ends":        strings.Repeat("\n", 250_000),
		"250k commas":           "x = [" + strings.Repeat(",", 250_000) + "]",
		"50k signs":             "x = \"" + strings.Repeat("$a", 30_000) + "\"",
		"250k percent signs":    "x = \"" + strings.Repeat("%", 250_000) + "\"",
		"120k Cyrillic letters": strings.Repeat("я", 120_000),
		"60k Cyrillic words":    strings.Repeat("я ", 60_000),
		"80k exponents":         strings.Repeat("1e9", 80_000),
	}
	for name, text := range bombs {
		if len(text) > source.MaxBytes {
			bombs[name+", cut to size"] = text[:source.MaxBytes]
		}
	}
	return bombs
}

// What the guard lets through may be as large as its limits allow and as wrong
// as its author likes: HCL's parser must then still be cheap.
func largestAccepted() map[string]string {
	most := func(piece string, tokens int) string {
		return strings.Repeat(piece, min((source.MaxTokens-64)/tokens, (source.MaxBytes-200)/len(piece)))
	}
	letters := strings.Repeat("a", 150_000)
	return map[string]string{
		"attributes":            most("a = 1\n", 4),
		"distinct attributes":   distinct("a%d = 1\n", 20_000),
		"blocks":                most("a {}\n", 4),
		"labels":                "a " + most("b ", 1) + "{}\n",
		"names alone":           most("a\n", 2),
		"names in a row":        most("a ", 1),
		"list":                  "x = [" + most("1,", 2) + "]\n",
		"list of strings":       "x = [" + most("\"a\",", 4) + "]\n",
		"lists in a list":       "x = [" + most("[],", 3) + "]\n",
		"list without commas":   "x = [" + most("1 ", 1) + "]\n",
		"list of commas":        "x = [" + most(",", 1) + "]\n",
		"object":                "x = {" + most("a=1,", 4) + "}\n",
		"distinct keys":         "x = {" + distinct("k%d = 1,", 20_000) + "}\n",
		"object without values": "x = {" + most("a ", 1) + "}\n",
		"object of equal signs": "x = {" + most("= ", 1) + "}\n",
		"equal signs":           "x " + most("= ", 1),
		"equal signs in lines":  most("=\n", 2),
		"colons":                "x = {" + most(": ", 1) + "}\n",
		"strings alone":         most("\"a\"\n", 4),
		"strings in a row":      most("\"a\" ", 3),
		"values in a row":       "x = " + most("1 ", 1) + "\n",
		"minus signs":           "x = [" + most("-1,", 3) + "]\n",
		"blocks never right":    most("a {b}\n", 5),
		"blocks, two open":      most("a { b { } }\n", 7),
		"objects never right":   most("a = {b}\n", 6),
		"deep and wide": strings.Repeat("a {\n", source.MaxDepth-1) + most("b {}\n", 5) +
			strings.Repeat("}\n", source.MaxDepth-1),
		"wrong and deep":               most(strings.Repeat("a { ", 19)+strings.Repeat("= } ", 19)+"\n", 19*5),
		"comments":                     most("#\n", 2),
		"block comments":               most("/**/", 1),
		"line comment":                 "#" + letters,
		"one string":                   "x = \"" + letters + "\"\n",
		"percent signs":                "x = \"" + strings.Repeat("%", source.MaxSigns) + letters + "\"\n",
		"percent signs in strings":     most("x = \""+strings.Repeat("a%", source.MaxSigns)+"\"\n", 6+2*source.MaxSigns),
		"dollar signs":                 "x = \"" + letters + strings.Repeat("$a", source.MaxSigns) + "\"\n",
		"escapes":                      "x = \"" + strings.Repeat(`\u00e9`, 40_000) + "\"\n",
		"accents":                      "x = \"" + strings.Repeat("a\u0301\u0327", 50_000) + "\"\n",
		"one letter with 120k accents": "x = \"a" + strings.Repeat("\u0301\u0327", 60_000) + "\"\n",
		"flags":                        "x = \"" + strings.Repeat("\U0001F1E6", 60_000) + "\"\n",
		"emoji joined":                 "x = \"\u2764" + strings.Repeat("\uFE0F\u200D\u2764", 25_000) + "\"\n",
		"Hangul letters":               "x = \"" + strings.Repeat("\u1100\u1161", 40_000) + "\"\n",
		"accents in comments":          "#" + strings.Repeat("\u0301", 120_000) + "\n",
		"one line, many values":        most("a { b = \"°\", } ", 9),
	}
}

func distinct(format string, n int) string {
	var b strings.Builder
	for i := range n {
		if b.Len() > source.MaxBytes-200 {
			break
		}
		fmt.Fprintf(&b, format, i)
	}
	return b.String()
}

func BenchmarkGuard(b *testing.B) {
	sample, err := os.ReadFile("testdata/sample.design.hcl")
	if err != nil {
		b.Fatal(err)
	}
	texts := bombs()
	texts["the sample design"] = string(sample)
	for name, text := range texts {
		b.Run(name, func(b *testing.B) {
			content := []byte(text)
			b.SetBytes(int64(len(content)))
			b.ReportAllocs()
			for b.Loop() {
				source.Guard(source.NewFile("f", content))
			}
		})
	}
}

func BenchmarkParseLargestAccepted(b *testing.B) {
	for name, text := range largestAccepted() {
		b.Run(name, func(b *testing.B) {
			content := []byte(text)
			b.ReportAllocs()
			for b.Loop() {
				parse(content)
			}
		})
	}
}
