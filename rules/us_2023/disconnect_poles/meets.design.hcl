# expect: meets us_2023.disconnect_poles on disconnect.array.south
# expect: meets us_2023.disconnect_poles on disconnect.bank.house
