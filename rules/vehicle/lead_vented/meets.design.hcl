# expect: meets vehicle.lead_vented on bank.house
