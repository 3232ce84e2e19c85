# expect: meets limits.first_device on protection.bank.house
