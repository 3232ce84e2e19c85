# expect: meets limits.overpanel on charger.main
