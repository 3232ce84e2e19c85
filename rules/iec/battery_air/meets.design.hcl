# expect: meets iec.battery_air on bank.house
