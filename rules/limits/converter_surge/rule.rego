# METADATA
# title: Converter gives the start of its heaviest load
# description: A pump or a fridge takes several times its current for a moment, and a converter has no reserve. It lets its voltage sag or switches off, and what else hangs on it goes with it.
# custom:
#   grade: fix
#   each: loads
#   source: maker's data sheet; common practice
#   remedy: choose a larger converter, or feed the load from the bank itself
package codebooks.limits.converter_surge

# All others run while this one starts.
check contains {
	"about": l.id, "is": fact.plus([fact.minus(u.load_current, l.current), l.surge_current]), "at_most": u.converter.current,
} if {
	some l in input.loads
	some u in l.supplies
}

check contains {"about": l.id, "does_not_apply": "not on a converter"} if {
	some l in input.loads
	count(l.supplies) == 0
}
