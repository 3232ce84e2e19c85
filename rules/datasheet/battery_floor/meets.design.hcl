# expect: meets datasheet.battery_floor on battery.peat-100
