# expect: meets us_2023.pv_device_listed on protection.string.south.a
# expect: meets us_2023.pv_device_listed on protection.array.south
