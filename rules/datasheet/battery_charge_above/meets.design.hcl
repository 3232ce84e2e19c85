# expect: meets datasheet.battery_charge_above on battery.peat-100
