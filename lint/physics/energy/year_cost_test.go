package energy

import (
	"fmt"
	"runtime"
	"testing"
)

// Nothing is allocated for a step: the number of allocations is that of a
// short series whatever the step, and an hourly year takes far less than 1 MB.
func TestYearAllocatesNothingPerStep(t *testing.T) {
	count := func(step float64) float64 {
		bank := system(calendar(t, step), 1)
		return testing.AllocsPerRun(2, func() {
			if _, err := bank.Year(func(*Step) {}); err != nil {
				t.Fatal(err)
			}
		})
	}
	// The race detector and the runtime add a few of their own now and then.
	hours, minutes := count(3600), count(300)
	if hours > 200 || minutes > 200 { // of 8,760 and 105,120 steps
		t.Errorf("%v allocations for a year of hours, %v for one of five minutes", hours, minutes)
	}
	bank := system(calendar(t, 3600), 1)
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	if _, err := bank.Year(nil); err != nil {
		t.Fatal(err)
	}
	runtime.ReadMemStats(&after)
	if taken := after.TotalAlloc - before.TotalAlloc; taken > 1<<20 {
		t.Errorf("a year of hours takes %d bytes", taken)
	}
}

// The cost of a step is to stay flat as the year gets finer: compare ns/step.
func BenchmarkYear(b *testing.B) {
	for _, step := range []float64{3600, 900, 300, 60} {
		bank := system(calendar(b, step), 1)
		b.Run(fmt.Sprintf("step=%vs", step), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if _, err := bank.Year(nil); err != nil {
					b.Fatal(err)
				}
			}
			b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N)/float64(bank.Calendar.Steps()), "ns/step")
		})
	}
}

func BenchmarkClip(b *testing.B) {
	for _, step := range []float64{3600, 60} {
		bank := system(calendar(b, step), 1)
		b.Run(fmt.Sprintf("step=%vs", step), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if _, err := Clip(bank.Calendar, bank.Chargers[0], 2000, 1300); err != nil {
					b.Fatal(err)
				}
			}
			b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N)/float64(bank.Calendar.Steps()), "ns/step")
		})
	}
}
