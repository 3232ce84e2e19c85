# expect: meets limits.inverter_dc_max on ac_output.cabin
