# expect: meets marine.conductor_heat on cable_run.bank.house
