# expect: meets limits.load_power on load.pump
