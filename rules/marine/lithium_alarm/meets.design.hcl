# expect: meets marine.lithium_alarm on bank.house
