# expect: meets iec.conductor_heat on cable_run.bank.house
