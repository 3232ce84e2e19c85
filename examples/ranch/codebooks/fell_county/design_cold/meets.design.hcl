# expect: meets fell_county.design_cold on site
