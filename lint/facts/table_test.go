package facts_test

import (
	"strings"
	"testing"

	"stringline/lint/facts"
)

// contract is the table of ids in the specification of facts: subject, facts.
var contract = map[string]string{
	"strings": "panel_count voc_stc voc_cold vmp_stc vmp_hot isc_stc isc_max imp_stc pmax_stc series_fuse_max system_voltage_max fault_current",
	"pv_inputs": "voc_stc voc_cold vmp_stc vmp_hot vmp_cold voc_headroom start_headroom run_headroom isc_stc isc_max pmax_stc mpp_stc mpp_hot mismatch_loss " +
		"reverse_current fault_current parallel_strings cell_hot cell_cold",
	"arrays": "voc_stc voc_cold vmp_stc vmp_hot vmp_cold voc_headroom start_headroom run_headroom isc_stc isc_max pmax_stc mpp_stc mpp_hot mismatch_loss " +
		"reverse_current fault_current parallel_strings cell_hot cell_cold",
	"chargers": "pv_power full_power_nominal full_power_absorption power_headroom overpanel voc_headroom start_headroom run_headroom charge_current_limit " +
		"charge_current_expected charge_current_expected_hot clipped_energy clipped_hours overpanel_gain",
	"banks": "nominal system_voltage voltage_max capacity energy usable_energy bulk_voltage charge_current_total charge_current_rated charge_current_accepted " +
		"charge_current_accepted_one_lost bms_charge_cutoff charge_rate discharge_current_continuous discharge_current_peak daily_load autonomy short_circuit_current",
	"cable_runs":  "current current_operating resistance voltage_drop voltage_drop_share path_drop loss area fault_current_near fault_current_far",
	"protections": "kind",
	"system":      "daily_load yearly_yield worst_month worst_month_balance unserved_hours pv_voltage_max dc_voltage_max",
	"readings":    "expected difference difference_share",
}

func TestContractFactsArePresent(t *testing.T) {
	for collection, names := range contract {
		c, ok := facts.CollectionOf(collection)
		if !ok {
			t.Fatalf("no collection %s", collection)
		}
		for name := range strings.FieldsSeq(names) {
			id := collection + "." + name
			if _, there := c.Entry(name); !there {
				t.Errorf("%s is not in the table", id)
			}
		}
	}
}

// Ids that the specification spells out.
func TestIdsOfTheSpecification(t *testing.T) {
	s := load(t, hut)
	for _, id := range []string{
		"panel.slate-410.voc", "controller.ridge-70.pv_voltage_max", "battery.fell-200.bms.charge_cutoff", "charger.main.settings.absorption", "site.coldest",
		"string.south.a.cloud_edge", "bank.house.bulk_voltage_per_cell", "array.south.mounting_rise", "array.south.voc_cold", "pv_input.main.1.voc_cold",
		"cable_run.array.south.current", "cable_run.charger.main.area", "cable_run.string.south.b.loss", "cable_run.bank.house.path_drop",
		"protection.bank.house.kind", "protection.bank.house.each.rating", "protection.charger.main.rating", "disconnect.bank.house.rating", "system.dc_voltage_max",
		"grounding.dc_bonds", "load.pump.surge", "supply.twelve.current", "charge_source.engine.charge_current", "reading.a-open.value", "ac_output.cabin.low_cutoff",
	} {
		if f := get(t, s, id); f.ID != id {
			t.Errorf("asked for %s, got %s", id, f.ID)
		}
	}
	for _, id := range []string{"", ".", "bank", "bank.house", "bank.house.", "bank.house.nosuch", "bank.nosuch.nominal", "protection.bank.house.each", "bank.house.declared", "bank.house.declared.county", "pv_input.main.2.voc_cold", "array.south.charger", "array.south.pv_input"} {
		if f, ok := s.Fact(id); ok {
			t.Errorf("%q is a fact: %+v", id, f)
		}
	}
}
