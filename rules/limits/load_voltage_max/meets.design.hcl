# expect: meets limits.load_voltage_max on load.lights
