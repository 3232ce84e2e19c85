# expect: meets limits.inverter_load on ac_output.cabin
