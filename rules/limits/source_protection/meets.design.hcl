# expect: meets limits.source_protection on charge_source.engine
