# expect: meets limits.converter_input_max on supply.twelve
