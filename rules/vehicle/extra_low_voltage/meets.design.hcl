# expect: meets vehicle.extra_low_voltage on system
