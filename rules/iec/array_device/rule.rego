# METADATA
# title: Array has a device where the bank can feed back into it
# description: Through a simple controller, or one that does not block, the bank feeds a fault in the array's cable with all that it has. Only a device in the array's own conductors ends that.
# custom:
#   grade: fix
#   each: arrays
#   source: IEC 62548-1 6.3, systems with batteries (from memory)
#   cites: [iec_62548_1_memory]
#   remedy: put a fuse or breaker for direct current in the array's conductors, or use a controller that cannot feed back
package codebooks.iec.array_device

check contains {
	"about": a.id,
	"is_true": fact.no(fact.any([fact.one_of(a.charger.controller.kind, ["pwm"]), fact.more_than(a.charger.controller.pv_backfeed_max, fact.number(0, "A"))])),
	"because": "the bank can feed a fault in the array, which has no device of its own",
} if {
	some a in input.arrays
	count(a.protections) == 0
}

check contains {"about": a.id, "does_not_apply": "it has a device"} if {
	some a in input.arrays
	count(a.protections) > 0
}
