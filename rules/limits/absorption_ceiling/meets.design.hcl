# expect: meets limits.absorption_ceiling on charger.main
