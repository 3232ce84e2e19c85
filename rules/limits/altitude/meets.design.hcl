# expect: meets limits.altitude on charger.main
