# METADATA
# title: Series-fuse rating above what the panel itself gives
# description: A panel bears in reverse at least a fuse that its own current does not blow. A smaller figure is a slip, such as Isc copied twice.
# custom:
#   grade: advise
#   each: panels
#   source: IEC 61730, from memory
#   cites: [iec_61730]
#   remedy: compare the part with its data sheet, and correct the value that was copied wrongly
package codebooks.datasheet.panel_series_fuse

check contains {"about": p.id, "is": p.max_series_fuse, "at_least": fact.times([1.25, p.isc])} if some p in input.panels
