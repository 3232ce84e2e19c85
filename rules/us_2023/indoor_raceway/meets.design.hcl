# expect: meets us_2023.indoor_raceway on cable_run.array.south
