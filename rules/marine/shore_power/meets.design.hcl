# expect: meets marine.shore_power on charge_source.shore (separation)
# expect: meets marine.shore_power on charge_source.shore (residual current)
