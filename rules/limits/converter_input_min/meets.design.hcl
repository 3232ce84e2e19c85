# expect: meets limits.converter_input_min on supply.twelve
