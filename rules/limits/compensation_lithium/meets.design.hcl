# expect: meets limits.compensation_lithium on charger.main
