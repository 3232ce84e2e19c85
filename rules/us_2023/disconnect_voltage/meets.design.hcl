# expect: meets us_2023.disconnect_voltage on disconnect.array.south
