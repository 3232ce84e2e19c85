# expect: meets limits.mppt_window on pv_input.main.1
