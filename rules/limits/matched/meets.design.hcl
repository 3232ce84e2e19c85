# expect: meets limits.matched on bank.house
