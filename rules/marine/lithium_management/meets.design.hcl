# expect: meets marine.lithium_management on bank.house
