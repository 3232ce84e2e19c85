# METADATA
# title: Controller set to the bank's voltage
# description: A controller left at the old bank's voltage reports a fault, or charges at it. Automatic detection often works only the first time.
# custom:
#   grade: stop
#   each: chargers
#   waivable: false
#   source: common practice
#   remedy: set the bank's system voltage by hand before the bank is connected
package codebooks.limits.bank_voltage_setting

check contains {"about": c.id, "is": c.settings.bank_voltage, "equals": c.bank.system_voltage} if some c in input.chargers
