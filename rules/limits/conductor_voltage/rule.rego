# METADATA
# title: Conductors' insulation bears the highest voltage of their circuit
# description: Cable for vehicles and boats is often insulated for 50 or 60 V only. On the roof a cold morning brings much more, and so does an inverter.
# custom:
#   grade: stop
#   each: cable_runs
#   source: maker's data sheet
#   remedy: use cable whose insulation is rated for the voltage
package codebooks.limits.conductor_voltage

check contains {"about": r.id, "is": r.bus_voltage, "at_most": r.voltage} if some r in input.cable_runs
