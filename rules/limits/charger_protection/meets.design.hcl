# expect: meets limits.charger_protection on charger.main
