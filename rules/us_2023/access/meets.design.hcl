# expect: meets us_2023.access on cable_run.string.south.a
# expect: meets us_2023.access on cable_run.array.south
