# expect: meets us_2023.device_protects_conductor on protection.array.south
# expect: meets us_2023.device_protects_conductor on protection.bank.house
