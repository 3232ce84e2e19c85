# expect: meets marine.lithium_switch on bank.house
