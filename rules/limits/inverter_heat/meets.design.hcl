# expect: meets limits.inverter_heat on ac_output.cabin
