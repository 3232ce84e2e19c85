# expect: meets datasheet.battery_nominal on battery.peat-100
