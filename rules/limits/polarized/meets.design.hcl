# expect: meets limits.polarized on protection.charger.main
