# METADATA
# title: Fuse in the functional earth small enough
# description: A fuse in the earthed pole ends the current of a fault to earth. One that is too large lets it burn.
# custom:
#   grade: fix
#   each: grounding
#   source: "IEC 62548-1 6.4 (from memory): 1 A up to 25 kW, 2 A up to 50 kW, 3 A up to 100 kW"
#   cites: [iec_62548_1_memory]
#   remedy: use the fuse that the array's power allows
package codebooks.iec.functional_earth_fuse

check contains {
	"about": "grounding",
	"when": fact.all([
		fact.no(fact.one_of(input.grounding.dc, ["floating"])),
		fact.one_of(input.grounding.declared.earthing, ["fuse"]),
		fact.at_least(fact.number(100, "kW"), power),
	]),
	"otherwise": "no pole is earthed through a fuse, or the array is beyond 100 kW",
	"is": input.grounding.declared.functional_earth_fuse, "at_most": fact.lookup("functional_earth_fuse", [power]),
} if {
	count(input.pv_inputs) > 0
	power := fact.plus([i.pmax_stc | some i in input.pv_inputs])
}

check contains {"about": "grounding", "does_not_apply": "there is no array"} if count(input.pv_inputs) == 0
