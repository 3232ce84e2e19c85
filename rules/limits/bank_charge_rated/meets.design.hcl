# expect: meets limits.bank_charge_rated on bank.house
