# expect: meets limits.cold_charging on charger.main
