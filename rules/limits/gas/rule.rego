# METADATA
# title: No controller above a battery that gasses
# description: Flooded batteries give off hydrogen when they charge, which rises. A relay or switch above them lights it, and the acid mist corrodes the board.
# custom:
#   grade: stop
#   each: chargers
#   source: common practice; IEC 62485-2
#   cites: [iec_62485_2]
#   remedy: move the controller beside the bank, or behind a tight partition
package codebooks.limits.gas

check contains {
	"about": c.id, "when": fact.one_of(c.bank.battery.chemistry, ["flooded"]), "otherwise": "the battery does not gas in normal service",
	"is_true": fact.no(c.over_bank), "because": "the controller stands in the way of the bank's gas",
} if some c in input.chargers
