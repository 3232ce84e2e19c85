# expect: meets limits.float on charger.main
