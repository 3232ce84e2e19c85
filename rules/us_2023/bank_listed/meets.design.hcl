# expect: meets us_2023.bank_listed on bank.house
