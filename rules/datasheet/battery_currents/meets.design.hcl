# expect: meets datasheet.battery_currents on battery.peat-100
