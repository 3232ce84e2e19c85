# expect: meets marine.device_rating on protection.charger.main
