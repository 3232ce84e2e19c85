# expect: meets us_2023.method_agrees on cable_run.string.south.a
# expect: meets us_2023.method_agrees on cable_run.array.south
