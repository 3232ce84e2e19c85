# METADATA
# title: No finger reaches a bank's terminals above 60 V
# description: Up to 60 V of direct current dry skin may be touched by it. A bank of 48 V goes above that while it equalizes, and in the cold.
# custom:
#   grade: fix
#   each: banks
#   source: IEC 60364-4-41 414.4 (60 V without basic protection, dry and indoors, from memory)
#   cites: [iec_60364_4_41]
#   remedy: cover the terminals (IP2X), or keep the highest charging voltage within 60 V
package codebooks.iec.shrouded_terminals

check contains {
	"about": b.id, "when": fact.more_than(b.voltage_max, fact.number(60, "V")), "otherwise": "up to 60 V",
	"is_true": b.declared.terminals_shrouded, "because": "its terminals are bare",
} if some b in input.banks
