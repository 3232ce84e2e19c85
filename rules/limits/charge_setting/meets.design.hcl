# expect: meets limits.charge_setting on charger.main
