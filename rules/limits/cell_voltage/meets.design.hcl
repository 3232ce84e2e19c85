# expect: meets limits.cell_voltage on bank.house
