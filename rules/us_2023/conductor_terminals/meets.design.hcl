# expect: meets us_2023.conductor_terminals on cable_run.array.south
# expect: meets us_2023.conductor_terminals on cable_run.ac_output.shop
