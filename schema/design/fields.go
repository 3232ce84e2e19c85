package design

import (
	"stringline/schema/hcltext"
	"stringline/schema/source"
)

// Fields reads the attributes of a block that is no part of a design, such as
// one of workshop.hcl, by the same rules and with the same problems as a
// design's: unknown names with the nearest known one, ranges, words, what is
// missing. The block's id in problems is kind.label. broken says that the
// file's syntax had errors, so that nothing is said to be missing.
func Fields(k *Kind, label string, from []hcltext.Attribute, header source.Range, broken bool, into *hcltext.Collector) map[string]*Value {
	d := &decoder{Collector: into, broken: broken, refused: map[string]bool{}}
	b := &Block{Kind: k, Name: label, Values: map[string]*Value{}, Header: header}
	d.attributes(b, &hcltext.Block{Body: hcltext.Body{Attributes: from}})
	return b.Values
}
