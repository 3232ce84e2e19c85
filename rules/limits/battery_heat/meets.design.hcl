# expect: meets limits.battery_heat on bank.house
