# expect: meets limits.controller_heat on charger.main
