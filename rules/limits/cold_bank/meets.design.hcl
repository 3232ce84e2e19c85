# expect: meets limits.cold_bank on bank.house
