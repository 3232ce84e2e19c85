# METADATA
# title: Site no higher than the controller is rated for
# description: Thin air cools less and insulates less. Above its altitude a controller must be derated, in power and in voltage.
# custom:
#   grade: fix
#   each: chargers
#   source: maker's data sheet; IEC 62109
#   cites: [iec_62109]
#   remedy: ask the maker for a derating, or choose another controller
package codebooks.limits.altitude

check contains {"about": c.id, "is": input.site.elevation, "at_most": c.controller.altitude_max} if some c in input.chargers
