# expect: meets marine.lithium_cells on bank.house
