# expect: meets limits.start_headroom on pv_input.main.1
