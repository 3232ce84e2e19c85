# expect: meets limits.load_protection on load.lights
