# expect: meets vehicle.conductor_heat on cable_run.bank.house
