# expect: meets vehicle.source_device on charge_source.engine
