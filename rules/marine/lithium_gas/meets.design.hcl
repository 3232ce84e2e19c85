# expect: meets marine.lithium_gas on bank.house
