# expect: meets limits.passcode on charger.main
