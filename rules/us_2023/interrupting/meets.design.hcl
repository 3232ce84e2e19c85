# expect: meets us_2023.interrupting on protection.bank.house
