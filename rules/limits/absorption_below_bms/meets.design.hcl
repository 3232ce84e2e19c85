# expect: meets limits.absorption_below_bms on charger.main
