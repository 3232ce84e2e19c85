# expect: meets vehicle.first_device on protection.bank.house
