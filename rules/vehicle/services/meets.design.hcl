# expect: meets vehicle.services on bank.house
