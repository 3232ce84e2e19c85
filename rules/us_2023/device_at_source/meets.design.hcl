# expect: meets us_2023.device_at_source on protection.charger.main
# expect: meets us_2023.device_at_source on protection.bank.house
