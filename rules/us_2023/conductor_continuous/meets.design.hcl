# expect: meets us_2023.conductor_continuous on cable_run.array.south
# expect: meets us_2023.conductor_continuous on cable_run.string.south.a
# expect: meets us_2023.conductor_continuous on cable_run.bank.house
