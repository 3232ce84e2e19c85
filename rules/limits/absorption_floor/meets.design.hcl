# expect: meets limits.absorption_floor on charger.main
