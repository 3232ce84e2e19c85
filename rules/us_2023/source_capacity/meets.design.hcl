# expect: meets us_2023.source_capacity on ac_output.shop
