# expect: meets limits.pv_short_circuit on pv_input.main.1
