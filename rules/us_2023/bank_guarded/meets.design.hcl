# expect: meets us_2023.bank_guarded on bank.house
