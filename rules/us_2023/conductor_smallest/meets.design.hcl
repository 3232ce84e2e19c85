# expect: meets us_2023.conductor_smallest on cable_run.load.lights
