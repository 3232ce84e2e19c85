# expect: meets marine.battery_switch on bank.start
