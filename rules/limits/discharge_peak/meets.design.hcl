# expect: meets limits.discharge_peak on bank.house
