# expect: meets us_2023.voltage_band on pv_input.main.1
