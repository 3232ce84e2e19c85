# expect: meets us_2023.disconnect_dc on disconnect.bank.house
