# expect: meets us_2023.gfci on ac_output.shop
