# expect: meets us_2023.storage_voltage on bank.house
