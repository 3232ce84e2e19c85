# expect: meets limits.cold_charging_source on charge_source.engine
