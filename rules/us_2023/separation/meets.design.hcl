# expect: meets us_2023.separation on cable_run.array.south
