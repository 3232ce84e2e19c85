# expect: meets limits.voltage_at_25 on pv_input.main.1
