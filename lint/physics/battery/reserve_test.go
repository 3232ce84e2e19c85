package battery

import (
	"encoding/json"
	"go/ast"
	"go/parser"
	"go/token"
	"math"
	"os"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// Source: check value F3, the hour-rate form of Peukert's relation, recomputed.
func TestDischargeTime(t *testing.T) {
	text, err := os.ReadFile("../../../testdata/published/peukert.json")
	if err != nil {
		t.Fatal(err)
	}
	var table struct {
		Rows []struct {
			Source, Capacity, Rate, Current string
			Exponent, Hours                 float64
			OneAmpere                       float64 `json:"one_ampere_form_hours"`
		} `json:"discharge"`
	}
	if err := json.Unmarshal(text, &table); err != nil || len(table.Rows) != 2 {
		t.Fatalf("%d rows, %v", len(table.Rows), err)
	}
	for _, row := range table.Rows {
		rated := Rated{Capacity: si(t, row.Capacity), Time: si(t, row.Rate)}
		got, err := rated.DischargeTime(si(t, row.Current), row.Exponent)
		if err != nil || math.Abs(got/3600-row.Hours) > 5e-4 { // published to 1 mh
			t.Errorf("%s: %v h, %v; published %v h", row.Source, got/3600, err, row.Hours)
		}
		if row.OneAmpere > 0 && math.Abs(got/3600-row.OneAmpere) < 1 {
			t.Errorf("%v h is the form with the capacity at 1 A", got/3600)
		}
	}
}

// The form with the capacity at 1 A must not be reachable from a rated capacity:
// whatever in this package takes a Peukert exponent belongs to a Rated, and a
// Rated without its time is refused.
func TestPeukertNeedsTheRate(t *testing.T) {
	files := token.NewFileSet()
	entries, err := os.ReadDir(".")
	if err != nil {
		t.Fatal(err)
	}
	found := 0
	for _, e := range entries {
		if !strings.HasSuffix(e.Name(), ".go") || strings.HasSuffix(e.Name(), "_test.go") {
			continue
		}
		tree, err := parser.ParseFile(files, e.Name(), nil, 0)
		if err != nil {
			t.Fatal(err)
		}
		for _, d := range tree.Decls {
			f, ok := d.(*ast.FuncDecl)
			if !ok || !f.Name.IsExported() {
				continue
			}
			for _, p := range f.Type.Params.List {
				for _, name := range p.Names {
					if name.Name != "exponent" {
						continue
					}
					found++
					if f.Recv == nil || f.Recv.List[0].Type.(*ast.Ident).Name != "Rated" {
						t.Errorf("%s takes an exponent without the rate of a capacity", f.Name.Name)
					}
				}
			}
		}
	}
	if found != 3 {
		t.Errorf("%d functions with an exponent found, want 3: does this test still see them?", found)
	}
	for _, rated := range []Rated{{Capacity: 360000}, {Capacity: 360000, Time: 1}, {Capacity: 360000, Time: 20}, {Time: 72000}, {Capacity: math.NaN(), Time: 72000}} {
		_, err := rated.DischargeTime(10, 1.2)
		refused(t, "a capacity without its rate", err)
		_, err = rated.CapacityAt(10, 1.2)
		refused(t, "a capacity without its rate", err)
		_, err = rated.CurrentFor(7200, 1.2)
		refused(t, "a capacity without its rate", err)
	}
	rated := Rated{Capacity: 360000, Time: 72000}
	for _, bad := range [][2]float64{{0, 1.2}, {-1, 1.2}, {10, 0.99}, {10, 2.01}, {10, math.NaN()}, {math.Inf(1), 1.2}} {
		_, err := rated.DischargeTime(bad[0], bad[1])
		refused(t, "bad input", err)
	}
}

func TestPeukertProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rated := Rated{
			Capacity: rapid.Float64Range(3600, 3.6e7).Draw(t, "capacity"),
			Time:     rapid.Float64Range(3600, 360000).Draw(t, "rate"),
		}
		k := rapid.Float64Range(1, 2).Draw(t, "exponent")
		// At the rated current it is the rated time, whatever the exponent.
		at, err := rated.DischargeTime(rated.Current(), k)
		if err != nil || math.Abs(at-rated.Time) > 1e-9*rated.Time {
			t.Fatalf("at the rate %v s, %v; want %v s", at, err, rated.Time)
		}
		current := rated.Current() * rapid.Float64Range(0.1, 20).Draw(t, "current")
		time, err := rated.DischargeTime(current, k)
		if err != nil {
			t.Fatal(err)
		}
		more, err := rated.DischargeTime(1.1*current, k)
		if err != nil || more >= time {
			t.Fatalf("more current lasts longer: %v s, then %v s, %v", time, more, err)
		}
		capacity, err := rated.CapacityAt(current, k)
		if err != nil || capacity > rated.Capacity || capacity <= 0 {
			t.Fatalf("capacity %v of %v, %v", capacity, rated.Capacity, err)
		}
		if time >= 1 && time <= 3.6e6 {
			back, err := rated.CurrentFor(time, k)
			if err != nil || math.Abs(back-current) > 1e-9*current {
				t.Fatalf("back to %v A from %v A, %v", back, current, err)
			}
		}
	})
}

// By hand: 25.6 V, 200 Ah, 80 % are 4096 Wh; 1024 Wh a day last four days.
func TestReserve(t *testing.T) {
	usable, err := UsableEnergy(25.6, 200*3600, 0.8)
	if err != nil || math.Abs(usable-4096*3600) > 1e-6 {
		t.Fatalf("usable energy %v J, %v", usable, err)
	}
	if days, err := Autonomy(usable, 1024*3600); err != nil || math.Abs(days-4) > 1e-12 {
		t.Errorf("autonomy %v d, %v", days, err)
	}
	// 2048 Wh a day more than the loads after the round trip: two days.
	if days, err := DaysToRefill(usable, 3840*3600, 1024*3600, 0.8); err != nil || math.Abs(days-2) > 1e-12 {
		t.Errorf("refill %v d, %v", days, err)
	}
	if days, err := DaysToRefill(0, 3840*3600, 1024*3600, 0.8); err != nil || days != 0 {
		t.Errorf("nothing to refill: %v d, %v", days, err)
	}
	_, err = DaysToRefill(usable, 1280*3600, 1024*3600, 0.8) // exactly nothing over
	refused(t, "nothing over", err)
	_, err = DaysToRefill(usable, 0, 0, 0.8)
	refused(t, "no yield, no load", err)
	_, err = Autonomy(usable, 0)
	refused(t, "no load", err)
	_, err = Autonomy(math.Inf(1), 1)
	refused(t, "no end of energy", err)
	_, err = UsableEnergy(25.6, 720000, 80)
	refused(t, "80 for 80 %", err)
}
