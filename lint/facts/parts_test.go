package facts_test

import (
	"slices"
	"testing"
)

const yard = `
design "Yard" {}

panel "a" {
  voc = "40 V"
}

panel "b" {
  voc = "38 V"
}

controller "c" {
  charge_current_max = "60 A"
}

battery "cell" {
  nominal = "12 V"
}

inverter "i" {
  continuous = "500 W"
}

converter "k" {
  output = "12 V"
}

bank "house" {
  battery  = "cell"
  series   = 2
  parallel = 3
  each {
    fuse {
      rating = "100 A"
    }
  }
  main {
    fuse {
      rating = "200 A"
    }
    cable_run {
      size     = "70 mm2"
      length   = "1.5 m"
      per_pole = 2
    }
  }
}

charger "one" {
  controller = "c"
  bank       = "house"
}

charger "two" {
  controller = "c"
  bank       = "house"
}

array "roof" {
  charger = "one"
  string "s" {
    panels   = { "a" = 2, "b" = 1 }
    parallel = 4
    cable_run {
      size   = "4 mm2"
      length = "6 m"
    }
    fuse {
      rating = "15 A"
    }
    disconnect {
      rating = "20 A"
    }
  }
}

array "wall" {
  charger = "two"
  string "s" {
    panels = { "a" = 3 }
  }
}

ac_output "o" {
  inverter = "i"
  bank     = "house"
}

supply "p" {
  converter = "k"
  from      = "bank.house"
}
`

// TestQuantities counts by hand what the yard takes.
func TestQuantities(t *testing.T) {
	s := load(t, yard)
	for id, want := range map[string]float64{
		"panel.a.quantity":                        2*4 + 3, // roof 2 in series x 4, wall 3
		"panel.b.quantity":                        4,
		"controller.c.quantity":                   2,
		"battery.cell.quantity":                   2 * 3,
		"inverter.i.quantity":                     1,
		"converter.k.quantity":                    1,
		"protection.bank.house.quantity":          1,
		"protection.bank.house.each.quantity":     3, // one for each string of batteries, not for each battery
		"protection.string.roof.s.quantity":       4,
		"disconnect.string.roof.s.quantity":       4,
		"cable_run.string.roof.s.route_total":     4 * 6,
		"cable_run.string.roof.s.conductor_total": 2 * 4 * 6,
		"cable_run.bank.house.route_total":        1.5,
		"cable_run.bank.house.conductor_total":    2 * 2 * 1.5, // two conductors for each pole, both ways
	} {
		if got := number(t, s, id); !near(got, want, 1e-12) {
			t.Errorf("%s is %g, by hand %g", id, got, want)
		}
	}
}

// TestQuantitiesUnknown: what the design does not tell, or names and has not,
// stays unknown, with what is known as the least.
func TestQuantitiesUnknown(t *testing.T) {
	s, _ := loose(`
design "Silent" {}

battery "cell" {
  nominal = "12 V"
}

bank "house" {
  battery = "cell"
  series  = 2
}

load "lamp" {
  from = "bank.house"
  cable_run {
    size = "4 mm2"
  }
}
`)
	if f := get(t, s, "battery.cell.quantity"); f.Known || !slices.Equal(f.Missing, []string{"bank.house.parallel"}) {
		t.Errorf("without parallel: known %v, missing %v", f.Known, f.Missing)
	}
	if f := get(t, s, "cable_run.load.lamp.conductor_total"); f.Known || !slices.Equal(f.Missing, []string{"cable_run.load.lamp.length"}) {
		t.Errorf("without length: known %v, missing %v", f.Known, f.Missing)
	}

	lost, problems := loose(yard + `
array "barn" {
  charger = "three"
  string "s" {
    panels = { "a" = 5 }
  }
}

charger "four" {
  controller = "nowhere"
  bank       = "house"
}
`)
	if len(problems) == 0 {
		t.Fatal("names that are not there were accepted")
	}
	for id, least := range map[string]float64{"panel.a.quantity": 11, "panel.b.quantity": 4, "controller.c.quantity": 2} {
		if f := get(t, lost, id); f.Known || f.AtLeast == nil || *f.AtLeast != least {
			t.Errorf("%s with a block left out: known %v, at least %v, want %g", id, f.Known, f.AtLeast, least)
		}
	}
}
