# expect: meets limits.bank_voltage_supported on charger.main
