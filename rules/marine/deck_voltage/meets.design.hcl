# expect: meets marine.deck_voltage on pv_input.main.1
