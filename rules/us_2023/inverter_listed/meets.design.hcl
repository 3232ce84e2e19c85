# expect: meets us_2023.inverter_listed on ac_output.shop
