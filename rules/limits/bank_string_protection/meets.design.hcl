# expect: meets limits.bank_string_protection on bank.house
