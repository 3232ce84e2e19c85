# METADATA
# title: All DC within extra-low voltage
# description: Up to 120 V of direct current who is not licensed may build; above it the whole of the low-voltage rules is in force.
# custom:
#   grade: fix
#   each: system
#   source: AS/NZS 3001.2 extra-low voltage, 120 V ripple-free (from memory; an article of 2019 says 110 V)
#   cites: [as_nzs_3001_2_memory]
#   remedy: put panels in parallel, not in series, or let a licensed electrician build it
package codebooks.vehicle.extra_low_voltage

import data.codebooks.vehicle.shared

check contains {
	"about": "system", "when": shared.by_as_nzs_3001(input.site), "otherwise": "not built by AS/NZS 3001.2",
	"is": input.system.dc_voltage_max, "at_most": fact.number(120, "V"),
}
