# METADATA
# title: The coldest air is one that a place can have
# description: "Panels make more voltage the colder they are, and every limit of voltage goes by the coldest air. A figure above the 25 degC of the data sheets makes an array seem lower than its own label: the record low of no place is so warm. It is mostly a mean, a summer's figure or degrees of the other scale."
# custom:
#   grade: fix
#   each: site
#   source: common practice; the data sheets' 25 degC is that of the standard test conditions (IEC 61215)
#   remedy: write the extreme annual mean minimum of the nearest weather station, or name a weather file
package codebooks.practice.design_cold

check contains {"about": input.site.id, "is": input.site.coldest, "at_most": fact.number(25, "degC")}
