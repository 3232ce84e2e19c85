package starter

import (
	"fmt"
	"slices"
	"strings"
)

// promises holds what each code asks of the blocks of a first design, as a careful
// plan answers it. They are the plan's promises: written as such when the person
// wants them, as comments otherwise. A measurement is never among them.
var promises = map[string]map[string][]string{
	"us_2023": {
		"site": {`occupancy = "one_two_family" # or other, or none`, `structure = "building" # or pv_only, or open_detached`},
		"bank": {"listed = true # UL 1973 or the like, with a mark on it", "ventilated = true", "guarded = true # nobody can touch what is live",
			"emergency_shutdown = true # outside, for a dwelling", "in_sight_disconnect = true", `room = "garage" # or utility, detached, outdoors; never a room to live or sleep in`},
		"fuse":     {"at_source = true # the supply end of its conductor", "current_limiting = true"},
		"run":      {"fine_strand_lugs = true # lugs listed for fine strands"},
		"main_run": {"fine_strand_lugs = true # lugs listed for fine strands", "through_wall = false"},
		"string_run": {"on_roof = true", "readily_accessible = false", `raceway = "none"`, `cable_type = "pv_wire"`, `marking = "plus_minus"`,
			"shares_raceway = false", "fine_strand_lugs = true"},
		"array_run": {"on_roof = false", "readily_accessible = true", `raceway = "metal"`, `cable_type = "thwn2"`, `marking = "plus_minus"`,
			"shares_raceway = false", "fine_strand_lugs = true"},
		"string_fuse": {"pv_listed = true", `pole = "positive"`},
		"breaker":     {"pv_listed = true", `pole = "both"`},
		"disconnect":  {"readily_accessible = true", "lockable = true", `distance_to_equipment = "1 m"`, `fault_current = "20 kA"`},
		"array_disconnect": {"readily_accessible = true", "lockable = true", "isolating_only = false", `distance_to_equipment = "1 m"`,
			`fault_current = "10 kA"`},
		"array": {"on_building = true", "arc_fault = true # a listed interrupter watches it", "rapid_shutdown = true", `shutdown_voltage_outside = "20 V"`,
			`shutdown_voltage_inside = "70 V"`, "hazard_control = false", "initiator_outside = true", "connectors_intermatable = false # all plugs of one make",
			"labels = true"},
		"ac_output": {"listed = true", "split_panel = false", "multiwire = false", "gfci = true # receptacles, wherever the code asks"},
		"grounding": {"electrode = true", "rod_only = false"},
	},
	"iec": {
		"bank": {`ventilation = "natural"`, `vent_area = "400 cm2" # inlet, and as much again outlet`, `spark_distance = "0.7 m"`,
			"terminals_shrouded = true # no finger can touch them"},
		"run":              {"perforated = true", "single_layer = true"},
		"main_run":         {"perforated = true", "single_layer = true"},
		"string_run":       {"under_modules = true"},
		"array_run":        {"under_modules = false"},
		"string":           {"class_two = true # double or reinforced insulation"},
		"array":            {`spd_ucpv = "180 V" # of its surge protection`},
		"array_disconnect": {`category = "PV2" # DC-PV2, may be opened under load`},
		"ac_output":        {`residual_type = "A" # before the sockets; its neutral must be bonded, or it never acts`, `residual_current = "30 mA"`},
		"load":             {"lighting = false"},
		"lamp":             {"lighting = true"},
		"grounding":        {`bond_size = "6 mm2" # to the panels' frames`, `earthing = "solid"`, "insulation_monitor = true"},
	},
	"marine": {
		"site":        {"petrol = false # neither engine nor can"},
		"bank":        {"restrained = true", "terminals_covered = true", "clear_of_fuel = true", "vented = true # led outboard", `cold_cranking = "1800 A" # of all batteries together`, `cell_standard = "IEC 62619 and IEC 62620"`, "pre_alarm = true", "remote_switch_direct = true"},
		"fuse":        {"petrol_space = false", "ignition_protected = false"},
		"string_fuse": {"petrol_space = false", "ignition_protected = false"},
		"breaker":     {"petrol_space = false", "ignition_protected = false"},
		"ac_output":   {`residual_current = "30 mA" # before the sockets; its neutral must be bonded, or it never acts`},
		"load":        {"critical = false", "second_source = false"},
		"lamp":        {"critical = false # navigation lights are", "second_source = false"},
	},
	"vehicle": {
		"bank": {"vented_outside = true # top and bottom", `vent_area = "16000 mm2"`, "sealed_from_cabin = true", "spark_free = true # nothing in its compartment sparks or burns", "restrained = true # stays in a crash",
			"clear_of_services = true # gas, diesel, water", `cell_standard = "IEC 62619"`, "listed = true"},
		"ac_output":  {`residual_current = "30 mA" # before the sockets; its neutral must be bonded, or it never acts`},
		"fuse":       {"enclosed_cable = true", "outside_enclosure = true"},
		"run":        {"chassis_return = false"},
		"main_run":   {"chassis_return = false"},
		"string_run": {"chassis_return = false"},
		"array_run":  {"chassis_return = false"},
	},
}

// declared writes what the code in force asks about a block; nothing where it asks
// nothing.
func (p *plan) declared(what string) string {
	lines := promises[p.Code][what]
	if p.Code == "vehicle" && what == "site" && p.Standard != "" {
		return "declared \"vehicle\" {\nstandard = " + quoted(p.Standard) + "\n}"
	}
	switch {
	case what == "bank" && !p.Lithium && p.Code != "iec" && p.Code != "us_2023":
		// What is asked of lithium cells alone is no promise about lead.
		lines = slices.DeleteFunc(slices.Clone(lines), func(line string) bool {
			name, _, _ := strings.Cut(line, " ")
			return slices.Contains([]string{"cell_standard", "pre_alarm", "remote_switch_direct", "listed"}, name)
		})
	case p.Code == "us_2023" && what == "bank" && p.Batteries > 1:
		lines = append(slices.Clone(lines), fmt.Sprintf(`leads_ampacity = "%d A" # of the leads of each battery, by their size and insulation`, p.EachFuse))
	case p.Code == "us_2023" && what == "grounding":
		lines = append(slices.Clone(lines), "gec_size = "+quoted(p.MainRun.Cable.Size)+" # of the grounding electrode conductor")
	case p.Code == "vehicle" && what == "grounding":
		lines = []string{"chassis_bond_size = " + quoted(p.MainRun.Cable.Size) + " # of the bank to the chassis: it bears what the bank's own lead bears"}
	case p.Code == "iec" && what == "bank" && !p.Lithium:
		lines = append(slices.Clone(lines), `gas_current = "1 A" # for each 100 Ah, from the maker of the battery: invented like it`)
	}
	if len(lines) == 0 {
		return ""
	}
	block := append(append([]string{"declared \"" + p.Code + "\" {"}, lines...), "}")
	for i := range block {
		if !p.Plan && i > 0 && i < len(block)-1 {
			block[i] = "  " + block[i]
		}
		block[i] = p.promise(block[i])
	}
	return strings.Join(block, "\n")
}

// promise writes a line of the plan, as a comment where the person made none.
func (p *plan) promise(line string) string {
	if p.Plan {
		return line
	}
	return "# " + line
}

// given writes an answer, or, where it is not known, a comment that says so.
func (p *plan) given(name, answer, such, why string) string {
	if answer == "" {
		return "# " + name + " = " + written(name, such) + " # not known yet: " + why
	}
	return name + " = " + written(name, answer) + " # " + why
}

func written(name, answer string) string {
	if name == "hours_per_day" {
		return answer
	}
	return quoted(answer)
}
