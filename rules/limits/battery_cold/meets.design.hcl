# expect: meets limits.battery_cold on bank.house
