# expect: meets limits.bank_charge_one_lost on bank.house
