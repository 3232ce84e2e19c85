# expect: meets marine.shore_isolation on charge_source.shore
