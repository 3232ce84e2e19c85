# expect: meets limits.wake_up on charger.main
