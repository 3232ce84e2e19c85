# expect: meets limits.low_voltage_disconnect on bank.house
