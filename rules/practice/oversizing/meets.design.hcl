# expect: meets practice.oversizing on charger.main
