package facts_test

import (
	"testing"

	"stringline/lint/facts"
)

func BenchmarkNew(b *testing.B) {
	d := load(b, hut).Design()
	b.ReportAllocs()
	for b.Loop() {
		facts.New(d)
	}
}

func BenchmarkAllFacts(b *testing.B) {
	d := load(b, hut).Design()
	b.ReportAllocs()
	for b.Loop() {
		s := facts.New(d)
		if n := len(known(s)); n < 300 {
			b.Fatalf("only %d facts", n)
		}
	}
}

func BenchmarkDocument(b *testing.B) {
	d := load(b, hut).Design()
	b.ReportAllocs()
	for b.Loop() {
		facts.New(d).Document()
	}
}
