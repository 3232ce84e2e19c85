# expect: meets limits.bank_voltage_setting on charger.main
