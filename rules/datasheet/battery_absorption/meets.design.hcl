# expect: meets datasheet.battery_absorption on battery.peat-100
