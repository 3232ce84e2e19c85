# expect: meets marine.tinned on cable_run.load.lights
