# expect: meets marine.critical_drop on cable_run.load.lights
