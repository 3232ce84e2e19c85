# expect: meets datasheet.battery_float on battery.peat-100
