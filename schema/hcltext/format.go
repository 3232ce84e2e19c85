package hcltext

import (
	"bytes"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/hashicorp/hcl/v2/hclwrite"
)

// Format gives a text with the blanks that HCL's own formatter puts between its
// tokens. A text whose lines all end with CRLF keeps that. The text must be one
// that [Parse] reads without a problem: the formatter looks at nothing else.
func Format(text []byte) []byte {
	crlf := bytes.Count(text, []byte("\r\n"))
	if crlf == 0 || crlf < bytes.Count(text, []byte("\n")) {
		return hclwrite.Format(text)
	}
	plain := hclwrite.Format(bytes.ReplaceAll(text, []byte("\r\n"), []byte("\n")))
	return bytes.ReplaceAll(plain, []byte("\n"), []byte("\r\n"))
}

// Comment is one comment as written, without the end of its line.
type Comment struct {
	Text       string
	Start, End int // bytes
}

// Comments gives the comments of a text in their order. As [Format] it takes
// only a text that [Parse] reads without a problem.
func Comments(text []byte) []Comment {
	tokens, _ := hclsyntax.LexConfig(text, "", hcl.InitialPos) // what is wrong with it is Parse's to say
	var all []Comment
	for _, t := range tokens {
		if t.Type == hclsyntax.TokenComment {
			words := strings.TrimRight(string(t.Bytes), "\r\n")
			all = append(all, Comment{Text: words, Start: t.Range.Start.Byte, End: t.Range.Start.Byte + len(words)})
		}
	}
	return all
}
