# expect: meets marine.stranded on cable_run.load.lights
