# METADATA
# title: Storage in a dwelling stands in no living or sleeping room, and within the energy for its place
# description: "A lithium battery that burns gives off gas that kills and cannot be put out with what is at hand. In a one- or two-family dwelling storage stands outside living and sleeping rooms: up to 40 kWh in closets, basements and utility spaces, up to 80 kWh in a garage, a building of its own or outdoors. More is judged by the fire code. Lead is not held to it here. The energy of all banks counts."
# custom:
#   grade: fix
#   each: banks
#   source: "IRC R328 (2021); NFPA 855 (2023), chapter 15; the code itself, article 706, leaves the place to them"
#   cites: [storage_rooms]
#   remedy: put the bank into a garage, a building of its own, a utility space or outdoors, in an enclosure made for it
package codebooks.us_2023.storage_place

import data.codebooks.us_2023.shared

check contains {
	"about": b.id, "which": "room", "when": due(b), "otherwise": "lead, no one- or two-family dwelling, or not under this code",
	"is_true": fact.one_of(b.declared.room, ["utility", "garage", "detached", "outdoors"]), "because": "the bank stands in a room that people live or sleep in",
} if some b in input.banks

check contains {
	"about": b.id, "which": "energy", "when": due(b), "otherwise": "lead, no one- or two-family dwelling, or not under this code",
	"is": fact.plus([x.energy | some x in input.banks]),
	"at_most": fact.either(fact.one_of(b.declared.room, ["garage", "detached", "outdoors"]), fact.number(80, "kWh"), fact.number(40, "kWh")),
} if some b in input.banks

due(b) := fact.all([shared.premises(input.site), shared.dwelling(input.site), fact.no(fact.one_of(b.battery.chemistry, ["flooded", "agm", "gel"]))])
