# expect: meets vehicle.vent_area on bank.house
