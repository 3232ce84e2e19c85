# expect: meets limits.run_headroom on pv_input.main.1
