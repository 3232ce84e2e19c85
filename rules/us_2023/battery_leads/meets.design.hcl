# expect: meets us_2023.battery_leads on bank.house
