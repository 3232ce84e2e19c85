# expect: meets datasheet.battery_bms_voltages on battery.peat-100
