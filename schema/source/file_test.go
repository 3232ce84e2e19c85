package source_test

import (
	"strings"
	"testing"
	"unicode/utf16"
	"unicode/utf8"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"stringline/schema/source"
)

func TestPosition(t *testing.T) {
	tests := []struct {
		name   string
		text   string
		offset int
		want   source.Position
	}{
		{"empty", "", 0, source.Position{Line: 1, Column: 1, Byte: 0}},
		{"before the beginning", "ab", -3, source.Position{Line: 1, Column: 1, Byte: 0}},
		{"beyond the end", "ab", 99, source.Position{Line: 1, Column: 3, Byte: 2}},
		{"second line", "a\nbc", 3, source.Position{Line: 2, Column: 2, Byte: 3}},
		{"after the last line end", "a\n", 2, source.Position{Line: 2, Column: 1, Byte: 2}},
		{"CRLF is one line end", "a\r\nb", 3, source.Position{Line: 2, Column: 1, Byte: 3}},
		{"the LF of CRLF is on its line", "a\r\nb", 2, source.Position{Line: 1, Column: 3, Byte: 2}},
		{"a lone CR ends a line", "a\rb", 2, source.Position{Line: 2, Column: 1, Byte: 2}},
		{"a lone CR at the end", "a\r", 2, source.Position{Line: 2, Column: 1, Byte: 2}},
		{"after a degree sign", "5 °C", 4, source.Position{Line: 1, Column: 4, Byte: 4}},
		{"inside a degree sign", "5 °C", 3, source.Position{Line: 1, Column: 3, Byte: 2}},
		{"after an emoji", "\U0001F50B!", 4, source.Position{Line: 1, Column: 2, Byte: 4}},
		{"a byte order mark takes no column", "\uFEFFab", 4, source.Position{Line: 1, Column: 2, Byte: 4}},
		{"inside the byte order mark", "\uFEFFab", 1, source.Position{Line: 1, Column: 1, Byte: 3}},
		{"an invalid byte is one column", "\xE9b", 1, source.Position{Line: 1, Column: 2, Byte: 1}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			got := source.NewFile("f", []byte(tt.text)).Position(tt.offset)
			if diff := cmp.Diff(tt.want, got); diff != "" {
				t.Errorf("Position(%d) of %q (-want +got):\n%s", tt.offset, tt.text, diff)
			}
			// A File made by hand has no index and must say the same.
			bare := source.File{Name: "f", Text: []byte(tt.text)}
			if diff := cmp.Diff(tt.want, bare.Position(tt.offset)); diff != "" {
				t.Errorf("without index (-want +got):\n%s", diff)
			}
		})
	}
}

func TestUTF16(t *testing.T) {
	// "a" + battery (two UTF-16 units) + "°" + "x"
	f := source.NewFile("f", []byte("first\r\na\U0001F50B°x\nlast"))
	tests := []struct {
		offset, line, character int
	}{
		{0, 0, 0}, {5, 0, 5}, {7, 1, 0}, {8, 1, 1}, {12, 1, 3}, {14, 1, 4}, {15, 1, 5}, {16, 2, 0}, {20, 2, 4},
	}
	for _, tt := range tests {
		line, character := f.UTF16(f.Position(tt.offset))
		if line != tt.line || character != tt.character {
			t.Errorf("UTF16 of byte %d = %d:%d, want %d:%d", tt.offset, line, character, tt.line, tt.character)
		}
		if got := f.Offset(tt.line, tt.character); got != tt.offset {
			t.Errorf("Offset(%d, %d) = %d, want %d", tt.line, tt.character, got, tt.offset)
		}
	}
	// Places that an editor may send though the text has none there.
	for _, tt := range []struct{ line, character, want int }{
		{0, 99, 5}, {1, 2, 8}, {1, 99, 15}, {-1, 4, 0}, {9, 0, 20}, {2, -1, 16},
	} {
		if got := f.Offset(tt.line, tt.character); got != tt.want {
			t.Errorf("Offset(%d, %d) = %d, want %d", tt.line, tt.character, got, tt.want)
		}
	}
	// A position made by hand has no byte.
	if line, character := f.UTF16(source.Position{Line: 2, Column: 3}); line != 1 || character != 3 {
		t.Errorf("UTF16 of line 2, column 3 = %d:%d, want 1:3", line, character)
	}
	if line, character := f.UTF16(source.Position{}); line != 0 || character != 0 {
		t.Errorf("UTF16 of the zero position = %d:%d, want 0:0", line, character)
	}
}

// Lines, columns and UTF-16 units counted in the plainest way, from the
// beginning of the text each time.
func plainPosition(text string, offset int) (line, column, character int) {
	line, column = 1, 1
	for i, r := range text {
		if i >= offset {
			break
		}
		column++
		character += len(utf16.Encode([]rune{r}))
		if r == '\n' || r == '\r' && !strings.HasPrefix(text[i+1:], "\n") {
			line, column, character = line+1, 1, 0
		}
	}
	return line, column, character
}

func TestPositionAgreesWithPlainCount(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		runes := rapid.SliceOfN(rapid.SampledFrom([]rune("a°Ω\U0001F50B\n\r \"")), 0, 80).Draw(t, "runes")
		// Long enough that the index has several steps on one line.
		text := strings.Repeat("é\U0001F50B", rapid.IntRange(0, 400).Draw(t, "filler")) + string(runes)
		f := source.NewFile("f", []byte(text))
		offset := rapid.IntRange(0, len(text)).Draw(t, "offset")
		for offset < len(text) && !utf8.RuneStart(text[offset]) {
			offset++
		}
		line, column, character := plainPosition(text, offset)
		got := f.Position(offset)
		if want := (source.Position{Line: line, Column: column, Byte: offset}); got != want {
			t.Fatalf("Position(%d) = %+v, want %+v", offset, got, want)
		}
		gotLine, gotCharacter := f.UTF16(got)
		if gotLine != line-1 || gotCharacter != character {
			t.Fatalf("UTF16 = %d:%d, want %d:%d", gotLine, gotCharacter, line-1, character)
		}
		handLine, handCharacter := f.UTF16(source.Position{Line: got.Line, Column: got.Column})
		back := f.Offset(gotLine, gotCharacter)
		// Between CR and LF an editor knows no place: it is led before the CR.
		if offset > 0 && offset < len(text) && text[offset] == '\n' && text[offset-1] == '\r' {
			if back != offset-1 {
				t.Fatalf("Offset between CR and LF = %d, want %d", back, offset-1)
			}
			return
		}
		if back != offset {
			t.Fatalf("Offset(%d, %d) = %d, want %d", gotLine, gotCharacter, back, offset)
		}
		if handLine != gotLine || handCharacter != gotCharacter {
			t.Fatalf("UTF16 by line and column = %d:%d, want %d:%d", handLine, handCharacter, gotLine, gotCharacter)
		}
	})
}

func TestRange(t *testing.T) {
	f := source.NewFile("hut.design.hcl", []byte("a = 1\n  b = 2\n"))
	r := f.Range(8, 9)
	if got, want := r.String(), "hut.design.hcl:2:3"; got != want {
		t.Errorf("Range.String() = %q, want %q", got, want)
	}
	if !r.Valid() || r.End.Column != 4 {
		t.Errorf("Range = %+v, want it valid and up to column 4", r)
	}
	if back := f.Range(9, 2); back.End.Byte < back.Start.Byte {
		t.Errorf("Range(9, 2) ends before it starts: %+v", back)
	}
}

func TestNearest(t *testing.T) {
	known := []string{"voc", "isc", "vmp", "imp", "charge_current_max", "absorption_min", "absorption_max", "latitude", "take_off", "noct", "nmot"}
	tests := []struct{ word, want string }{
		{"vco", "voc"},                               // neighbors swapped
		{"VOC", "voc"},                               // case
		{"take-off", "take_off"},                     // hyphen
		{"lattitude", "latitude"},                    // one letter more
		{"charge_curent_max", "charge_current_max"},  // one less
		{"charge_currnet_mx", "charge_current_max"},  // two slips
		{"absorbtion_max", "absorption_max"},         // changed
		{"noct", ""},                                 // itself: its neighbor nmot is two away
		{"xyz", ""}, {"", ""}, {"a", ""}, {"vo", ""}, // nothing near
		{strings.Repeat("a", 100_000), ""},
	}
	for _, tt := range tests {
		if got := source.Nearest(tt.word, known); got != tt.want {
			t.Errorf("Nearest(%.20q) = %q, want %q", tt.word, got, tt.want)
		}
	}
	if got := source.Nearest("amp", []string{"imp", "vmp"}); got != "imp" {
		t.Errorf("Nearest(amp) = %q, want the first of two equally near names", got)
	}
}

// The plainest form of the distance, by its recursive definition (optimal
// string alignment, from memory): cheap enough for short words only.
func plainDistance(a, b []rune) int {
	switch {
	case len(a) == 0:
		return len(b)
	case len(b) == 0:
		return len(a)
	}
	cost := 1
	if a[len(a)-1] == b[len(b)-1] {
		cost = 0
	}
	d := min(plainDistance(a[:len(a)-1], b)+1, plainDistance(a, b[:len(b)-1])+1, plainDistance(a[:len(a)-1], b[:len(b)-1])+cost)
	if len(a) > 1 && len(b) > 1 && a[len(a)-1] == b[len(b)-2] && a[len(a)-2] == b[len(b)-1] {
		d = min(d, plainDistance(a[:len(a)-2], b[:len(b)-2])+1)
	}
	return d
}

func TestNearestAgreesWithPlainDistance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		letters := rapid.SliceOfN(rapid.SampledFrom([]rune("abcé")), 1, 6)
		word := letters.Draw(t, "word")
		var known []string
		for range rapid.IntRange(0, 4).Draw(t, "known") {
			known = append(known, string(letters.Draw(t, "name")))
		}
		limit := map[int]int{3: 1, 4: 1, 5: 2, 6: 2}[len(word)]
		want, best := "", limit+1
		for _, name := range known {
			if d := plainDistance(word, []rune(name)); name != string(word) && d < best {
				want, best = name, d
			}
		}
		if got := source.Nearest(string(word), known); got != want {
			t.Fatalf("Nearest(%q, %q) = %q, want %q", string(word), known, got, want)
		}
	})
}
