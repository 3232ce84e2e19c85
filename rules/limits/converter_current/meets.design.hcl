# expect: meets limits.converter_current on supply.twelve
