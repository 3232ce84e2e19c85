# METADATA
# title: Converter gives what hangs on it
# description: A converter that is asked for more lets its voltage sag, or switches off.
# custom:
#   grade: fix
#   each: supplies
#   source: maker's data sheet
#   remedy: choose a larger converter, or share the loads out
package codebooks.limits.converter_current

check contains {"about": u.id, "is": u.load_current, "at_most": u.converter.current} if some u in input.supplies
