# expect: meets limits.bank_charge on bank.house
