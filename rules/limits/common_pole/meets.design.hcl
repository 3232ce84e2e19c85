# expect: meets limits.common_pole on charger.main
