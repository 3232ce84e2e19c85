# METADATA
# title: Switches carry their circuit's current
# description: Contacts that carry more than their rating heat and weld, and the switch no longer opens when it must.
# custom:
#   grade: fix
#   each: disconnects
#   source: maker's data sheet
#   remedy: use a larger switch
package codebooks.limits.disconnect_carries

check contains {"about": d.id, "is": d.current, "at_most": d.rating} if some d in input.disconnects
