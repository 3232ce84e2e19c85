# expect: meets marine.battery_vented on bank.start
