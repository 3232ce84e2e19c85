# expect: meets limits.discharge_current on bank.house
