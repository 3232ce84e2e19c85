# expect: meets iec.array_voltage on pv_input.main.1
