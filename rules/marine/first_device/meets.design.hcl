# expect: meets marine.first_device on protection.charger.main
