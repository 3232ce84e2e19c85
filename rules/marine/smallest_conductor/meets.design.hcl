# expect: meets marine.smallest_conductor on cable_run.load.lights
