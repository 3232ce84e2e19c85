# expect: meets limits.load_terminals_surge on load.porch
