# expect: meets limits.source_voltage on charge_source.engine
