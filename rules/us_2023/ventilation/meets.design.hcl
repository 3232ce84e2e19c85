# expect: meets us_2023.ventilation on bank.house
