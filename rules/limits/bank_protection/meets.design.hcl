# expect: meets limits.bank_protection on bank.house
