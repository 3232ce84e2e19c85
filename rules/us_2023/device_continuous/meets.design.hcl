# expect: meets us_2023.device_continuous on protection.string.south.a
# expect: meets us_2023.device_continuous on protection.charger.main
