# expect: meets limits.inverter_isolation on ac_output.cabin
