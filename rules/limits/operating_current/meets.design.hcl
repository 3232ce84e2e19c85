# expect: meets limits.operating_current on pv_input.main.1
