# expect: meets us_2023.voltage_drop on cable_run.array.south
