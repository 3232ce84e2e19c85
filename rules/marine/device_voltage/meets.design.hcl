# expect: meets marine.device_voltage on protection.charger.main
