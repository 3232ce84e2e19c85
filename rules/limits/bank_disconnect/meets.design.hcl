# expect: meets limits.bank_disconnect on bank.house
