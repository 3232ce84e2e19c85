# expect: meets limits.cold_charging_first on charger.main
