package fit_test

import (
	"context"
	"testing"

	"stringline/lint"
	"stringline/lint/fit"
)

// BenchmarkFind judges a thousand arrangements of 76 panels; the year of sun for
// the likeliest twenty is in it. BenchmarkSingle is the whole pipeline on the one
// design, codebooks loaded anew: its ratio to ns/arrangement is what the open bench
// saves.
func BenchmarkFind(b *testing.B) {
	texts := farm(b)
	bench, err := lint.OpenBench(context.Background(), options(texts, "growth/farm.design.hcl"))
	if err != nil {
		b.Fatal(err)
	}
	defer bench.Close()
	b.ReportAllocs()
	judged := 0
	for b.Loop() {
		r, err := fit.Find(context.Background(), bench, fit.Options{Panels: []fit.Panels{{Name: "shale-410", Count: 76}}})
		if err != nil || r.Judged != 1000 {
			b.Fatal(r.Judged, err)
		}
		judged += r.Judged
	}
	b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(judged), "ns/arrangement")
}

func BenchmarkSingle(b *testing.B) {
	texts := farm(b)
	b.ReportAllocs()
	for b.Loop() {
		r, err := lint.Run(context.Background(), options(texts, "growth/farm.design.hcl"))
		if err != nil || len(r.Designs) != 1 {
			b.Fatal(err)
		}
	}
}
