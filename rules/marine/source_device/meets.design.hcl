# expect: meets marine.source_device on charge_source.engine
