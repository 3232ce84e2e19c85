# METADATA
# title: Ampacity of a conductor no more than any table gives for its area
# description: "The maker's ampacity wins over the tables of codes, so a figure from the row below, from a short-time rating, or with a digit too many lets a fault burn the cable. No table gives one conductor in free air of 30 degC more than this, for what its insulation bears."
# custom:
#   grade: fix
#   each: cable_runs
#   source: EN 50618 Table A.3, from memory; the square root of the warmth above the air, common practice
#   cites: [en_50618, heat_balance]
#   remedy: compare area, insulation and ampacity with the cable's data sheet, and with the conditions that its figure is for
#   yields: [ampacity]
package codebooks.datasheet.conductor_ampacity

check contains {"about": r.id, "is": r.ampacity, "at_most": most(r)} if some r in input.cable_runs

# Thinner conductors and cooler insulation than the tables begin with bear no more
# than those that they begin with; above 200 degC nothing is gained.
most(r) := fact.times([
	fact.interpolate("ampacity_most", [fact.largest([r.area, fact.number(1.5, "mm2")])]),
	fact.interpolate("ampacity_warmth", [fact.smallest([fact.largest([r.insulation, fact.number(60, "degC")]), fact.number(200, "degC")])]),
	fact.either(fact.one_of(r.material, ["Al"]), fact.number(0.79, ""), fact.number(1, "")),
])
