# expect: meets datasheet.conductor_ampacity on cable_run.bank.house
