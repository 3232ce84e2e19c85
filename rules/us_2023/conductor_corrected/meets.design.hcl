# expect: meets us_2023.conductor_corrected on cable_run.array.south
# expect: meets us_2023.conductor_corrected on cable_run.string.south.a
