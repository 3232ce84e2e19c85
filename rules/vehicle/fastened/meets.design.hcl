# expect: meets vehicle.fastened on bank.house
