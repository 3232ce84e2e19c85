# expect: meets limits.converter_pole on supply.twelve
