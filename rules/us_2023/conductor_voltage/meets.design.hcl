# expect: meets us_2023.conductor_voltage on cable_run.array.south
