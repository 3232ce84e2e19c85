# expect: meets us_2023.device_voltage on protection.array.south
