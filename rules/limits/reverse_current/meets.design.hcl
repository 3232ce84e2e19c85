# expect: meets limits.reverse_current on pv_input.main.1
