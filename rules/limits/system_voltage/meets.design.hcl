# expect: meets limits.system_voltage on string.south.a
