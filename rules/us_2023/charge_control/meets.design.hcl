# expect: meets us_2023.charge_control on charger.main
