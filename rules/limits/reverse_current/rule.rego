# METADATA
# title: No string is driven backward beyond its panels' rating
# description: Strings of unlike voltage on one input drive current into each other whenever the controller does not draw, without any fault. Above the series-fuse rating the panel that takes it burns.
# custom:
#   grade: stop
#   each: pv_inputs
#   waivable: false
#   source: single-diode curves of the panels; IEC 61730 for the rating
#   cites: [de_soto, iec_61730]
#   remedy: put strings of unlike voltage on inputs of their own, or give each a blocking diode rated for it
package codebooks.limits.reverse_current

check contains {
	"about": i.id, "is": i.reverse_current,
	"at_most": fact.smallest([s.series_fuse_max | some s in input.strings; s.pv_input.id == i.id]),
} if some i in input.pv_inputs
