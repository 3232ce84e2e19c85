# expect: meets limits.clearance on charger.main
