# METADATA
# title: Fine-stranded conductors have terminals listed for them
# description: Fine strands work loose under screws made for coarse ones; the joint heats. Metric conductors count as class 5 unless the design says otherwise.
# custom:
#   grade: fix
#   each: cable_runs
#   source: NEC 2023 110.14, 690.31(C)(5)
#   cites: [nec_2023_memory]
#   remedy: use lugs listed for fine strands, or class 2 conductors
package codebooks.us_2023.fine_strands

import data.codebooks.us_2023.shared

check contains {
	"about": r.id, "when": fact.all([shared.covered(r, input.site), fact.one_of(r.strand, ["class_5"])]), "otherwise": "not fine-stranded, or not under this code",
	"is_true": r.declared.fine_strand_lugs, "because": "the terminals are not listed for fine strands",
} if some r in input.cable_runs
