# expect: meets limits.inverter_low_voltage on ac_output.cabin
