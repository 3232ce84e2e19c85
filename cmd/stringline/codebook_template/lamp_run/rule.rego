# METADATA
# title: Conductors to lamps no longer than their size bears
# description: On a long thin conductor lamps are dim, and dimmer when another one is switched on.
# custom:
#   grade: advise
#   each: cable_runs
#   source: common practice; the workshop's own table
#   cites: [workshop]
#   remedy: take the next larger conductor
package codebooks.bookname.lamp_run

# A table is named, and holds its source: data/longest_run.json.
check contains {"about": r.id, "is": r.length, "at_most": fact.lookup("longest_run", [r.area])} if {
	some r in input.cable_runs
	count(r.loads) > 0
}

# Every member of `each` is owed a record. Where structure alone decides that
# there is nothing to judge, say so.
check contains {"about": r.id, "does_not_apply": "not the conductor of a load"} if {
	some r in input.cable_runs
	count(r.loads) == 0
}
