# METADATA
# title: Switches carry their circuit's current
# description: "Contacts that carry more than their rating heat and weld, and the switch no longer opens when it must. On the PV side a quarter is added to the short-circuit current: bright cloud edges and snow bring it."
# custom:
#   grade: fix
#   each: disconnects
#   source: maker's data sheet; 1.25 for bright sun as IEC 62548-1 takes it
#   cites: [iec_62548_1]
#   remedy: use a larger switch
package codebooks.limits.disconnect_carries

import data.codebooks.limits.shared

check contains {"about": d.id, "is": shared.sustained(d), "at_most": d.rating} if some d in input.disconnects
