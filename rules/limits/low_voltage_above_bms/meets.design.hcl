# expect: meets limits.low_voltage_above_bms on bank.house
