# METADATA
# title: Few hours of the year leave a load without energy
# description: "Month by month sun and loads may balance while the bank is empty before many a morning. Every hour of the year is counted: the weather file's where the site names one, else a clear sky, under which real weather is only worse."
# custom:
#   grade: advise
#   each: banks
#   source: conservation of energy, hour by hour; the hours allowed are common practice, from memory
#   remedy: add batteries or panels, take loads away or move them into the day, or count on another source
package codebooks.practice.unserved_hours

check contains {"about": b.id, "is": b.unserved_hours, "at_most": input.params.unserved_hours_max} if {
	some b in input.banks
	count(others(b)) == 0
}

check contains {"about": b.id, "does_not_apply": "another source charges it too, and fills these hours; when it runs a design does not tell"} if {
	some b in input.banks
	count(others(b)) > 0
}

others(b) := [c | some c in input.charge_sources; c.bank.id == b.id]
