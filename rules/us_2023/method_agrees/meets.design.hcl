# expect: meets us_2023.method_agrees on cable_run.string.south.a (free air)
# expect: meets us_2023.method_agrees on cable_run.array.south (conduit)
