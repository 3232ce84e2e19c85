# expect: meets us_2023.disconnect_current on disconnect.array.south
# expect: meets us_2023.disconnect_current on disconnect.bank.house
