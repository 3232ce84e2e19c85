# expect: meets limits.supply_protection on supply.twelve
