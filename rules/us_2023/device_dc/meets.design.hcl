# expect: meets us_2023.device_dc on protection.charger.main
