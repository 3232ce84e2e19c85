# expect: meets practice.take_off on bank.house
