# expect: meets iec.smallest_conductor on cable_run.load.lights
