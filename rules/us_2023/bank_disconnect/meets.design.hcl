# expect: meets us_2023.bank_disconnect on bank.house (switch)
