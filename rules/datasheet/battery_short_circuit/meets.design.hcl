# expect: meets datasheet.battery_short_circuit on battery.peat-100
