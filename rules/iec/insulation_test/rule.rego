# METADATA
# title: Insulation as measured is good enough
# description: A resistance to earth that is too small shows a chafed cable or a wet plug before it becomes an arc. It is measured with a voltage that fits the array's.
# custom:
#   grade: fix
#   each: strings
#   source: IEC 62446-1 6.7, by 1.25 x open-circuit voltage
#   cites: [iec_62446_1]
#   remedy: measure again with the right voltage; find the place where it leaks
package codebooks.iec.insulation_test

check contains {
	"about": s.id, "which": "test voltage",
	"is": s.declared.insulation_test_voltage, "at_least": s.insulation_test_voltage,
} if {
	some s in input.strings
	measured(s)
}

check contains {
	"about": s.id, "which": "resistance",
	"is": s.declared.insulation_resistance, "at_least": s.insulation_resistance_min,
} if {
	some s in input.strings
	measured(s)
}

check contains {"about": s.id, "does_not_apply": "no reading has been made on it yet"} if {
	some s in input.strings
	not measured(s)
}

measured(s) if {
	some r in input.readings
	some of in r.strings
	of.id == s.id
}
