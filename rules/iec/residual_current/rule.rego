# METADATA
# title: Sockets on an inverter have a residual-current device that suits it
# description: "Who touches a live part is saved by nothing but a device of 30 mA. It must see the fault: type AC is blind to the pulses of electronic loads, and where nothing separates the bank from the AC side direct current blinds every type but B."
# custom:
#   grade: fix
#   each: ac_outputs
#   source: "IEC 60364-4-41 411.3.3: 30 mA for sockets; IEC 60364-7-712 712.530: type B where the converter has no separation (both from memory)"
#   cites: [iec_60364_4_41, iec_60364_7_712_memory]
#   remedy: fit a residual-current device of 30 mA and type A or F, or B where the inverter does not separate; its neutral must be bonded, or the device never acts
package codebooks.iec.residual_current

check contains {
	"about": o.id, "which": "sensitivity", "when": fact.no(none(o)), "otherwise": "there is none, which is judged by itself",
	"is": o.declared.residual_current, "between": [fact.number(5, "mA"), fact.number(30, "mA")],
} if some o in input.ac_outputs

check contains {
	"about": o.id, "which": "type",
	"is_true": fact.any([
		fact.one_of(o.declared.residual_type, ["B"]),
		fact.all([fact.one_of(o.declared.residual_type, ["A", "F"]), o.inverter.isolated]),
	]),
	"because": "there is no residual-current device, or its type does not see the faults that can happen here",
} if some o in input.ac_outputs

none(o) := fact.one_of(o.declared.residual_type, ["none"])
