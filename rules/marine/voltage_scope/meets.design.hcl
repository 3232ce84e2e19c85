# expect: meets marine.voltage_scope on bank.house
