package source

import (
	"unicode"
	"unicode/utf8"
)

// Nearest gives the known name that a mistyped word most likely means, or ""
// when none is near. Near is an edit distance (one letter added, left out,
// changed, or two neighbors swapped) of at most one for words of three and
// four letters, two up to eight, three beyond. Case, and "-" against "_",
// count for nothing. Among equally near names the first one wins. The word
// itself is never its own nearest name.
func Nearest(word string, known []string) string {
	// A longer word is no slip of the finger, and the distance is quadratic.
	const longest = 64
	if word == "" || len(word) > utf8.UTFMax*longest {
		return ""
	}
	folded := foldName(nil, word)
	length := len(folded)
	limit := 0
	switch {
	case length > longest:
		return ""
	case length > 8:
		limit = 3
	case length > 4:
		limit = 2
	case length > 2:
		limit = 1
	}
	var rows [3][68]int // longest, three letters more, and one
	other := make([]rune, 0, longest+4)
	best, nearest := limit+1, ""
	for _, name := range known {
		if name == word {
			continue
		}
		if gap := utf8.RuneCountInString(name) - length; gap >= best || -gap >= best {
			continue
		}
		other = foldName(other[:0], name)
		if d := editDistance(folded, other, &rows, best); d < best {
			best, nearest = d, name
		}
	}
	return nearest
}

// foldName appends the letters of a name as they are compared.
func foldName(to []rune, s string) []rune {
	for _, r := range s {
		if r == '-' {
			r = '_'
		}
		to = append(to, unicode.ToLower(r))
	}
	return to
}

// editDistance is the restricted Damerau-Levenshtein distance ("optimal string
// alignment"), kept in three rows. It gives up, with a figure of at least
// enough, when the distance cannot be less than that. The rows have room for b.
func editDistance(a, b []rune, rows *[3][68]int, enough int) int {
	before, row, next := rows[0][:len(b)+1], rows[1][:len(b)+1], rows[2][:len(b)+1]
	for j := range row {
		row[j] = j
	}
	rowLeast := 0
	for i := 1; i <= len(a); i++ {
		next[0] = i
		least := i
		for j := 1; j <= len(b); j++ {
			cost := 1
			if a[i-1] == b[j-1] {
				cost = 0
			}
			next[j] = min(row[j]+1, next[j-1]+1, row[j-1]+cost)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				next[j] = min(next[j], before[j-2]+1)
			}
			least = min(least, next[j])
		}
		// A swap reaches over one row, so two in a row must be hopeless.
		if least >= enough && rowLeast >= enough {
			return enough
		}
		rowLeast = least
		before, row, next = row, next, before
	}
	return row[len(b)]
}
