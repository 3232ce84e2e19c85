# expect: meets iec.voltage_ceiling on pv_input.main.1
