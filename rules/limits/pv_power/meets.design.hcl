# expect: meets limits.pv_power on charger.main
