# expect: meets limits.compensation_supported on charger.main
