# expect: meets iec.input_short_circuit on pv_input.main.1
