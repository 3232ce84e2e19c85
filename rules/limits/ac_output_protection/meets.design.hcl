# expect: meets limits.ac_output_protection on ac_output.cabin
