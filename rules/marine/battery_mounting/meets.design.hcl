# expect: meets marine.battery_mounting on bank.house
