# expect: meets limits.precharge on ac_output.cabin
