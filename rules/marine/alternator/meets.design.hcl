# expect: meets marine.alternator on charge_source.engine
