package fit_test

import (
	"context"
	"testing"

	"stringline/lint"
	"stringline/lint/fit"
)

// BenchmarkFind judges a thousand arrangements of sixty panels and one of unlike
// ones; a year of sun for the best twenty is in it. BenchmarkSingle is the whole
// pipeline on the one design, codebooks loaded anew: the ratio of ns/arrangement
// to it is what the open bench saves.
func BenchmarkFind(b *testing.B) {
	texts := farm(b)
	for name, hand := range map[string][]fit.Panels{"panels=60": {{Name: "shale-410", Count: 60}}} {
		b.Run(name, func(b *testing.B) {
			bench, err := lint.OpenBench(context.Background(), options(texts, "growth/farm.design.hcl"))
			if err != nil {
				b.Fatal(err)
			}
			defer bench.Close()
			b.ReportAllocs()
			judged := 0
			for b.Loop() {
				r, err := fit.Find(context.Background(), bench, fit.Options{Panels: hand, Most: 1000})
				if err != nil || r.Judged < 500 {
					b.Fatal(r, err)
				}
				judged += r.Judged
			}
			b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(judged), "ns/arrangement")
		})
	}
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
