package facts_test

import (
	"slices"
	"strings"
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

// Makers state the largest array as a power or as a share of the output: 24 V x 70 A
// is 1680 W, of which 130 % are 2184 W, and 2100 W are 125 %. A sheet with neither
// leaves both limits unknown, for want of either.
func TestLargestArray(t *testing.T) {
	const power, share = "charger.main.pv_power_limit", "charger.main.overpanel_limit"
	for name, c := range map[string]struct {
		sheet          string
		watts, percent float64
	}{
		"a power": {`pv_power_max = "2100 W"`, 2100, 125},
		"a share": {`overpanel_max = "130 %"`, 2184, 130},
		"both":    {"pv_power_max = \"2500 W\"\n  overpanel_max = \"140 %\"", 2500, 140},
	} {
		s := load(t, strings.Replace(hut, "  charge_current_max   = \"70 A\"\n", "  charge_current_max   = \"70 A\"\n  "+c.sheet+"\n", 1))
		if w, p := number(t, s, power), number(t, s, share); !near(w, c.watts, 1e-9) || !near(p, c.percent, 1e-9) {
			t.Errorf("%s: %v W and %v %%, want %v W and %v %%", name, w, p, c.watts, c.percent)
		}
	}
	s := load(t, hut)
	for _, id := range []string{power, share} {
		f := get(t, s, id)
		if f.Known || !slices.Contains(f.Missing, "controller.ridge-70.pv_power_max") || !slices.Contains(f.Missing, "controller.ridge-70.overpanel_max") {
			t.Errorf("%s without either figure: known %v, missing %v", id, f.Known, f.Missing)
		}
	}
}
