package design_test

import (
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/schema/design"
	"stringline/schema/quantity"
)

// The attributes that the language's specification names, block by block.
// Every one is in the table; what the table has besides is listed in extra.
var specified = map[string]string{
	"panel": `pmax voc isc vmp imp temp_voc temp_isc temp_pmax noct nmot cells technology tolerance isc_bifacial max_system_voltage
		max_series_fuse bypass_diodes connector length width mass`,
	"controller": `kind pv_voltage_max pv_voltage_max_25 mppt_voltage_min mppt_voltage_max pv_short_circuit_max pv_current_max pv_power_max
		pv_backfeed_max charge_current_max bank_voltages start_above_bank run_above_bank overpanel_max efficiency idle full_power_to derate
		altitude_max clearance_min pv_inputs parallel_max common isolated load_current_max compensation_min compensation_max
		wakes_empty_bank survives_bank_loss`,
	"battery": `chemistry nominal capacity capacity_rate cells absorption_min absorption_max float_min float_max equalize_max charge_current_max
		discharge_current_max discharge_voltage_min charge_above charge_below discharge_above usable round_trip peukert short_circuit_current
		internal_resistance series_max parallel_max heater`,
	"bms":       `charge_cutoff discharge_cutoff over_voltage under_voltage cold_charge_cutoff precharge`,
	"inverter":  `dc_min dc_max continuous surge surge_time efficiency idle isolated charge_current_max full_power_to ac_voltage`,
	"converter": `input_min input_max output current efficiency idle isolated`,
	"cable":     `size material strand tinned insulation voltage ampacity resistance`,
	"breaker":   `rating voltage interrupts dc_rated polarized poles class continuous_rated distance breaker`,
	"fuse":      `rating voltage interrupts dc_rated polarized poles class continuous_rated distance fuse`,
	"design":    `revision parts codebooks`,
	"site":      `latitude longitude elevation coldest hottest place weather albedo`,
	"bank":      `battery series parallel coldest hottest take_off matched low_voltage_disconnect`,
	"each":      ``, "main": ``, "declared": ``,
	"charger": `controller bank hottest`,
	"settings": `bank_voltage charge_current absorption float equalize temperature_compensation cold_charge_cutoff bank_temperature_sensor
		passcode_changed`,
	"array":  `charger pv_input tilt azimuth mounting losses`,
	"string": `panels parallel`,
	"cable_run": `size length insulation ambient grouped method cores above_roof per_pole indoors cable material strand tinned sheathed engine_space
		terminal_temperature grounding_size connector voltage ampacity resistance`,
	"disconnect":    `rating voltage dc_rated load_break poles`,
	"ac_output":     `inverter bank low_cutoff hours_per_day`,
	"load":          `from power hours_per_day daily_energy surge voltage_min voltage_max between months`,
	"supply":        `converter from`,
	"charge_source": `bank charge_current charge_voltage together`,
	"grounding":     `dc dc_bonds neutral_bonds frames_bonded ground_fault_protection surge_protection`,
	"reading":       `title of value taken cell_temperature irradiance`,
	"waiver":        `on reason approved_by expires`,
}

// extra are attributes that the specification's rules speak of without naming
// one.
var extra = map[string]string{
	"bank":          `ventilated`,              // a way out for the gas of lead
	"charger":       `clearance over_bank`,     // clear air; never above a vented battery
	"settings":      `equalize_voltage locked`, // "equalize if on" needs its voltage; settings locked
	"charge_source": `cold_charge_cutoff`,      // cold charging by every source
}

func TestEveryAttributeOfTheSpecification(t *testing.T) {
	for _, k := range design.Kinds() {
		want := append(strings.Fields(specified[k.Name]), strings.Fields(extra[k.Name])...)
		if _, ok := specified[k.Name]; !ok {
			t.Errorf("the specification has no block %s", k.Name)
		}
		got := []string{}
		for _, a := range k.Attributes {
			got = append(got, a.Name)
		}
		slices.Sort(want)
		slices.Sort(got)
		if want == nil {
			want = []string{}
		}
		if diff := cmp.Diff(want, got); diff != "" {
			t.Errorf("attributes of %s (-specified +table):\n%s", k.Name, diff)
		}
	}
	if len(specified) != len(design.Kinds()) {
		t.Errorf("%d kinds are specified, %d are in the table", len(specified), len(design.Kinds()))
	}
}

func TestTableIsConsistent(t *testing.T) {
	for _, k := range design.Kinds() {
		if design.KindOf(k.Name) != k {
			t.Errorf("KindOf(%q) is another kind, so the name stands twice", k.Name)
		}
		if k.Means == "" {
			t.Errorf("%s: no meaning", k.Name)
		}
		for _, inner := range k.Blocks {
			if design.KindOf(inner) == nil {
				t.Errorf("%s holds %s, which is no kind", k.Name, inner)
			}
		}
		if k.Part && !k.Top {
			t.Errorf("%s is a part that stands nowhere", k.Name)
		}
		seen := map[string]bool{}
		for _, a := range k.Attributes {
			id := k.Name + "." + a.Name
			if seen[a.Name] {
				t.Errorf("%s is declared twice", id)
			}
			seen[a.Name] = true
			if a.Means == "" {
				t.Errorf("%s: no meaning", id)
			}
			if a.Required && a.Default != "" {
				t.Errorf("%s: required, and a default", id)
			}
			if a.RefersTo != "" && design.KindOf(a.RefersTo) == nil {
				t.Errorf("%s refers to %s, which is no kind", id, a.RefersTo)
			}
			for _, word := range append([]string{a.Name}, k.Name) {
				if !design.ValidLabel(word) {
					t.Errorf("%s: %q cannot enter an id", id, word)
				}
			}
			switch a.Form {
			case design.Quantity, design.QuantityList:
				if _, ok := quantity.DocumentUnit(a.Unit); !ok || a.Unit == "" {
					t.Errorf("%s: %q is no unit of the documents", id, a.Unit)
				}
				if a.Min >= a.Max {
					t.Errorf("%s: no range", id)
				}
				for _, u := range a.Accepts {
					if _, ok := quantity.Lookup(u); !ok {
						t.Errorf("%s accepts %q, which is no unit", id, u)
					}
				}
			case design.Number, design.Count, design.NumberList, design.PanelCounts:
				if a.Min >= a.Max || a.Unit != "" {
					t.Errorf("%s: a bare number with a range and no unit is due", id)
				}
			default:
				if a.Unit != "" || a.Min != 0 || a.Max != 0 {
					t.Errorf("%s: a unit or a range on what is no number", id)
				}
			}
		}
	}
}

// Only silences for which the language documents a default have one.
func TestDefaultsAreTheDocumentedOnes(t *testing.T) {
	want := map[string]string{
		"array.pv_input": "1", "array.losses": "10 %", "string.parallel": "1", "controller.pv_inputs": "1",
		"cable_run.material": "Cu", "cable_run.strand": "class_5 for sizes in mm2, class_2 for AWG and kcmil",
		"cable_run.per_pole": "1", "cable_run.terminal_temperature": "60 degC",
		"ac_output.hours_per_day": "24", "site.albedo": "0.2",
		// Ours: a few percent of a drop, shown as assumed; no fire hangs on it.
		"cable_run.tinned": "false",
	}
	got := map[string]string{}
	for _, k := range design.Kinds() {
		for _, a := range k.Attributes {
			if a.Default != "" {
				got[k.Name+"."+a.Name] = a.Default
			}
		}
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("defaults (-documented +table):\n%s", diff)
	}
}

func TestLaterLanguageIsRefusedByName(t *testing.T) {
	for _, name := range []string{"wind", "wind_turbine", "hydro", "three_phase", "phases", "optimizer", "microinverter", "ac_coupling", "ac_coupled", "seasonal_tilt", "horizon"} {
		for place, text := range map[string]string{
			"block":     name + " \"a\" {}\n",
			"attribute": "site { " + name + " = 1 }\n",
			"inside":    "bank \"b\" {\n battery = \"x\"\n series = 1\n parallel = 1\n " + name + " {}\n}\nbattery \"x\" {}\n",
		} {
			d := load(t, "design \"t\" {}\n"+text)
			if len(d.Problems) != 1 || d.Problems[0].Kind != "later" || !strings.HasSuffix(d.Problems[0].Message, "not part of the language yet") {
				t.Errorf("%s as %s: %v", name, place, d.Problems)
			}
		}
	}
}
