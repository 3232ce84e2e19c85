# expect: meets limits.load_voltage_min on load.lights
