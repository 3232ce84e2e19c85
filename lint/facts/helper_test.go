package facts_test

import (
	"testing"
	"testing/fstest"

	"stringline/lint/facts"
	"stringline/schema/design"
)

// load reads a design from text. Any problem fails the test.
func load(t testing.TB, text string) *facts.System {
	t.Helper()
	s, problems := loose(text)
	for _, p := range problems {
		t.Errorf("loading the design: %v", p)
	}
	return s
}

// loose reads a design from text and gives its problems.
func loose(text string) (*facts.System, []string) {
	d := design.Load(design.Options{
		Files: fstest.MapFS{"a.design.hcl": {Data: []byte(text)}},
		Path:  "a.design.hcl",
	})
	var problems []string
	for _, p := range d.Problems {
		problems = append(problems, p.Error())
	}
	return facts.New(d), problems
}

// near tells whether two numbers agree within a relative tolerance.
func near(a, b, tolerance float64) bool {
	apart, size := a-b, max(abs(a), abs(b))
	return abs(apart) <= tolerance*size
}

func abs(x float64) float64 {
	if x < 0 {
		return -x
	}
	return x
}

// get gives a fact, which must be there.
func get(t testing.TB, s *facts.System, id string) facts.Fact {
	t.Helper()
	f, ok := s.Fact(id)
	if !ok {
		t.Fatalf("no fact %s", id)
	}
	return f
}

// number gives a known quantity in its document's unit, unrounded to 9 digits.
func number(t testing.TB, s *facts.System, id string) float64 {
	t.Helper()
	f := get(t, s, id)
	if !f.Known || f.Kind != facts.Quantity {
		t.Fatalf("%s is not a known quantity: missing %v", id, f.Missing)
	}
	v, _ := f.Value().(float64)
	return v
}

const hut = `
design "Hut" {
  revision = "C"
}

site {
  latitude  = "46.52 deg"
  elevation = "1840 m"
  coldest   = "-27 degC"
  hottest   = "29 degC"
  place     = "building"
}

panel "slate-410" {
  pmax               = "410 W"
  voc                = "37.4 V"
  isc                = "13.9 A"
  vmp                = "31.4 V"
  imp                = "13.06 A"
  temp_voc           = "-0.26 %/K"
  temp_isc           = "0.05 %/K"
  temp_pmax          = "-0.34 %/K"
  noct               = "44 degC"
  cells              = 54
  technology         = "mono_si"
  bypass_diodes      = 3
  max_system_voltage = "1000 V"
  max_series_fuse    = "25 A"
}

panel "dusk-380" {
  pmax               = "380 W"
  voc                = "41.0 V"
  isc                = "11.4 A"
  vmp                = "34.4 V"
  imp                = "10.9 A"
  temp_voc           = "-0.28 %/K"
  temp_isc           = "0.05 %/K"
  temp_pmax          = "-0.36 %/K"
  nmot               = "43 degC"
  cells              = 60
  technology         = "mono_si"
  bypass_diodes      = 3
  max_system_voltage = "1500 V"
  max_series_fuse    = "20 A"
}

controller "ridge-70" {
  kind                 = "mppt"
  pv_voltage_max       = "150 V"
  pv_short_circuit_max = "60 A"
  pv_backfeed_max      = "0 A"
  charge_current_max   = "70 A"
  bank_voltages        = ["12 V", "24 V", "48 V"]
  start_above_bank     = "5 V"
  run_above_bank       = "1 V"
  full_power_to        = "40 degC"
  derate               = "2 %/K"
}

battery "fell-200" {
  chemistry             = "lifepo4"
  nominal               = "25.6 V"
  capacity              = "200 Ah"
  cells                 = 8
  charge_current_max    = "100 A"
  discharge_current_max = "150 A"
  short_circuit_current = "3 kA"
  bms {
    charge_cutoff    = "90 A"
    discharge_cutoff = "160 A"
  }
}

inverter "moor-2000" {
  dc_min     = "20 V"
  dc_max     = "32 V"
  continuous = "2000 W"
  surge      = "4000 W"
  efficiency = "90 %"
  ac_voltage = "230 V"
}

converter "brook-20" {
  input_min  = "18 V"
  input_max  = "35 V"
  output     = "12 V"
  current    = "20 A"
  efficiency = "92 %"
}

bank "house" {
  battery                = "fell-200"
  series                 = 1
  parallel               = 2
  coldest                = "5 degC"
  hottest                = "30 degC"
  low_voltage_disconnect = "22 V"
  each {
    fuse {
      rating = "125 A"
    }
  }
  main {
    cable_run {
      size   = "70 mm2"
      length = "1.2 m"
    }
    fuse {
      class      = "T"
      rating     = "200 A"
      voltage    = "125 V"
      interrupts = "20 kA"
      dc_rated   = true
      distance   = "0.2 m"
    }
  }
  disconnect {
    rating = "275 A"
  }
}

charger "main" {
  controller = "ridge-70"
  bank       = "house"
  hottest    = "35 degC"
  settings {
    bank_voltage             = "24 V"
    charge_current           = "60 A"
    absorption               = "28.4 V"
    float                    = "27.0 V"
    equalize                 = false
    temperature_compensation = "0 mV/K"
  }
  cable_run {
    size   = "25 mm2"
    length = "2.5 m"
  }
  breaker {
    rating    = "100 A"
    polarized = false
  }
}

array "south" {
  charger  = "main"
  mounting = "open_rack"
  string "a" {
    panels   = { "slate-410" = 2 }
    parallel = 2
  }
  string "b" {
    panels = { "slate-410" = 1, "dusk-380" = 1 }
    cable_run {
      size   = "4 mm2"
      length = "3 m"
    }
    fuse {
      rating = "20 A"
    }
  }
  cable_run {
    size   = "16 mm2"
    length = "14 m"
  }
  disconnect {
    rating = "63 A"
  }
}

ac_output "cabin" {
  inverter   = "moor-2000"
  bank       = "house"
  low_cutoff = "23 V"
}

load "pump" {
  from  = "ac_output.cabin"
  power = "700 W"
  surge = "1.9 kW"
}

load "lights" {
  from        = "bank.house"
  power       = "60 W"
  surge       = "60 W"
  voltage_min = "21 V"
}

supply "twelve" {
  converter = "brook-20"
  from      = "bank.house"
}

load "radio" {
  from  = "supply.twelve"
  power = "24 W"
  surge = "24 W"
}

load "fan" {
  from  = "charger.main.load_terminals"
  power = "22 W"
  surge = "22 W"
}

charge_source "engine" {
  bank           = "house"
  charge_current = "40 A"
  charge_voltage = "28.6 V"
  together       = true
}

grounding {
  dc       = "negative"
  dc_bonds = 1
}

reading "a-open" {
  of    = "string.south.a.voc"
  value = "72.1 V"
}
`
